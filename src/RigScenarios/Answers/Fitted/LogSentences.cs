using System.Globalization;
using RigScenarios.Fits.Logs;

namespace RigScenarios.Answers.Fitted;

/// <summary>What a power log says of a battery, and how it was read, in sentences.</summary>
public static class LogSentences
{
    /// <summary>What it says of the battery, and what stays open. The answer, first.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Battery(LogAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Result.Estimates.Select(FitSentences.Estimate), .. FitSentences.Open(answer.Result)];
    }

    /// <summary>The cautions.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Cautions(LogAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. FitSentences.WornOut(answer.Result)];
    }

    /// <summary>How the log was read, what was done to it, and what was taken.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Reading(LogAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var reading = answer.Reading;
        return
        [
            FitSentences.Log(reading, answer.Result.Logs[0]),
            .. reading.Counts.FirstDropped is { } dropped ? [Dropped(dropped)] : (string[])[],
            Columns(reading),
            string.Create(CultureInfo.InvariantCulture, $"Taken: {answer.Charge.Percent:0.#} % charged at its begin, the air at "
                + $"{answer.Air.DegreesCelsius:0.#} °C.").Replace("-", "−", StringComparison.Ordinal),
        ];
    }

    /// <summary>What an error says, without the name of the argument that .NET puts behind it.</summary>
    internal static string Plain(ArgumentException exception) => exception.ParamName is { } name
        ? exception.Message.Replace($" (Parameter '{name}')", "", StringComparison.Ordinal) : exception.Message;

    /// <summary>What is said of voltages that this battery can't have.</summary>
    internal static string OtherBattery(double found, double cutoff, double full) => string.Create(CultureInfo.InvariantCulture,
        $"Half of the log's voltages are above {found:0.0#} V, half below; this battery lies between {cutoff:0.0} and "
            + $"{full:0.0} V.")
        + " Is it a log of this battery, and are its units right?";

    private static string Dropped(DroppedCell cell) => $"The first row left out is line {cell.Line}: "
        + (cell.Found.Length > 0 ? $"\"{cell.Found}\" is no number" : "nothing stands") + $" under \"{cell.Column}\".";

    private static string Columns(LogReading reading) =>
        AnswerSentences.Upper(string.Join(", ", reading.Columns.Select(Column))) + ".";

    private static string Column(ReadColumn column)
    {
        var what = column.Quantity switch
        {
            LogQuantity.Time => "time", LogQuantity.Voltage => "voltage", _ => "current",
        };
        var unit = Unit(column);
        return $"{what} from \"{column.Name}\" " + column.UnitFrom switch
        {
            UnitFrom.Clock => "as clock times",
            UnitFrom.Size => $"in {unit}, for no unit stands there and the numbers are too large for more",
            UnitFrom.Usual => $"in {unit}, for no unit stands there",
            _ => $"in {unit}",
        };
    }

    private static string Unit(ReadColumn column)
    {
        var units = column.Quantity switch
        {
            LogQuantity.Time => (ReadOnlySpan<(double, string)>)[(1, "s"), (1e-3, "ms"), (1e-6, "µs"), (60, "min"), (3600, "h")],
            LogQuantity.Voltage => [(1, "V"), (1e-3, "mV")],
            _ => [(1, "A"), (1e-3, "mA")],
        };
        foreach (var (factor, name) in units)
        {
            if (column.Factor == factor)
                return name;
        }
        return string.Create(CultureInfo.InvariantCulture, $"{units[0].Item2} times {column.Factor:G6}");
    }
}

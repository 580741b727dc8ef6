using System.Globalization;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Sweeps;

/// <summary>A field of a scenario and the values that it takes in a sweep.</summary>
/// <param name="Path">The field, by the path that it has in the scenario file.</param>
/// <param name="Values">The values, as texts that the file would accept.</param>
public sealed record SweepAxis(string Path, IReadOnlyList<string> Values)
{
    /// <summary>More steps than this on one axis are refused.</summary>
    public const int MostSteps = 2000;

    private const int StandardSteps = 9;

    private const string Accepted = "PATH=FROM..TO or PATH=FROM..TO:STEPS, such as \"days.day-one.ambient=-10 °C..10 °C:5\"; "
        + "a list, such as \"builds.tripod.battery.item=brick | spare\"; or all parts of a kind, such as "
        + "\"kit.brick.part=each battery in the library\"";

    /// <summary>Evenly spaced values from one quantity to another, both included.</summary>
    /// <param name="path">The field.</param>
    /// <param name="from">The first value.</param>
    /// <param name="to">The last value, in the unit of the first.</param>
    /// <param name="steps">How many values; 2 to <see cref="MostSteps"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too few or too many steps.</exception>
    public static SweepAxis Between(string path, IQuantity from, IQuantity to, int steps = StandardSteps)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        if (steps is < 2 or > MostSteps)
            throw new ArgumentOutOfRangeException(nameof(steps), $"steps is {steps}; accepted: 2 to {MostSteps}.");
        var (low, high) = ((double)from.Value, (double)to.As(from.Unit));
        return new SweepAxis(path, [.. Enumerable.Range(0, steps).Select(step =>
            QuantityText.Write(Quantity.From(Tidy(low, high, step, steps), from.Unit)))]);
    }

    /// <summary>Evenly spaced days from one to another, both included, to whole days: a battery growing older.</summary>
    /// <param name="path">The field.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    /// <param name="steps">How many values; 2 to <see cref="MostSteps"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too few or too many steps.</exception>
    public static SweepAxis Dates(string path, DateOnly from, DateOnly to, int steps = StandardSteps)
    {
        if (steps is < 2 or > MostSteps)
            throw new ArgumentOutOfRangeException(nameof(steps), $"steps is {steps}; accepted: 2 to {MostSteps}.");
        return new SweepAxis(path, [.. Enumerable.Range(0, steps).Select(step => from.AddDays((int)Math.Round(
            (double)(to.DayNumber - from.DayNumber) * step / (steps - 1))).ToString(DateFormat.Pattern,
            CultureInfo.InvariantCulture))]);
    }

    /// <summary>
    /// Reads the short form of the command line: a range, <c>PATH=FROM..TO</c> or <c>PATH=FROM..TO:STEPS</c>, such as
    /// <c>days.day-one.ambient=-10 °C..10 °C:5</c>; a list, <c>PATH=ONE | OTHER</c>; or all parts of a kind,
    /// <c>kit.brick.part=each battery in the library</c>. The scenario says what quantity the field is.
    /// </summary>
    /// <param name="scenario">The scenario that has the field.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="ScenarioProblemsException">The text is not of that form, or the field doesn't exist.</exception>
    public static SweepAxis Parse(Scenario scenario, string text)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(text);
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals <= 0)
            throw Problem(text, "This is not an axis of a sweep.", Accepted);
        var (path, values) = (text[..equals].Trim(), text[(equals + 1)..].Trim());
        if (values.StartsWith(EachPart.Word, StringComparison.OrdinalIgnoreCase))
            return new SweepAxis(path, EachPart.In(scenario, path, values));
        if (values.Contains('|', StringComparison.Ordinal))
            return Listed(path, values);
        var dots = values.IndexOf("..", StringComparison.Ordinal);
        if (dots < 0)
            throw Problem(text, "This is not an axis of a sweep.", Accepted);
        var from = WrittenDigits.Plain(values[..dots]);
        var (to, steps) = WithSteps(path, WrittenDigits.Plain(values[(dots + 2)..]), FieldNumbers.IsClock(from));
        return FieldNumbers.Of(scenario, path, [from, to]) is { } ends
            ? new SweepAxis(path, [.. Enumerable.Range(0, steps)
                .Select(step => ends.Unit.Text(Tidy(ends.Numbers[0], ends.Numbers[1], step, steps))).Distinct()])
            : throw Problem(path, $"\"{from}\" and \"{to}\" are not two values of the same quantity.", Accepted);
    }

    private static SweepAxis Listed(string path, string values)
    {
        string[] each = [.. values.Split('|').Select(value => value.Trim())];
        if (Array.Exists(each, value => value.Length == 0))
            throw Problem(path, $"Found \"{values}\", in which a value is missing.", Accepted);
        if (each.Length > MostSteps)
            throw Problem(path, $"Found {each.Length} values.", $"up to {MostSteps}");
        return each.GroupBy(value => value).FirstOrDefault(same => same.Skip(1).Any()) is { Key: var twice }
            ? throw Problem(path, $"Found \"{twice}\" twice.", "each value once")
            : new SweepAxis(path, each);
    }

    /// <summary>The last value and the number of steps behind it; the colon of a time of day is not the one before
    /// them.</summary>
    private static (string To, int Steps) WithSteps(string path, string text, bool isClock)
    {
        var colon = text.LastIndexOf(':');
        if (colon < 0 || (isClock && colon == text.IndexOf(':', StringComparison.Ordinal)))
            return (text, StandardSteps);
        if (!int.TryParse(text[(colon + 1)..].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var steps)
            || steps is < 2 or > MostSteps)
            throw Problem(path, $"Found \"{text[(colon + 1)..]}\" for the number of steps.", $"2 to {MostSteps}");
        return (text[..colon].Trim(), steps);
    }

    /// <summary>Twelve digits are more than any field means, and keep 0.1 + 0.2 from showing as 0.30000000000000004.</summary>
    private static double Tidy(double low, double high, int step, int steps)
    {
        var value = low + ((high - low) * step / (steps - 1));
        return double.Parse(value.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static ScenarioProblemsException Problem(string path, string problem, string accepted) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, path, problem, accepted)]);
}

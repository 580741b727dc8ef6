using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using RigScenarios.Files.Formats;

namespace RigScenarios.Fits.Notes;

/// <summary>How a log is named in field notes.</summary>
internal static class LogFormat
{
    private static readonly TextFormat Column = new(100);

    private static readonly Format<LogColumnNames> Columns = new RecordFormat<LogColumnNames>(
        () => new LogColumnNames(), "The names of the columns, as they stand in the log's first line.",
        Fields<LogColumnNames>.Required("time", Column, names => names.Time, (names, value) => names with { Time = value },
            "The column of the time."),
        Fields<LogColumnNames>.Required("voltage", Column, names => names.Voltage,
            (names, value) => names with { Voltage = value }, "The column of the voltage at the battery."),
        Fields<LogColumnNames>.Required("current", Column, names => names.Current,
            (names, value) => names with { Current = value }, "The column of the current out of the battery."));

    private static readonly Format<LogColumnUnits> Units = new RecordFormat<LogColumnUnits>(
        () => new LogColumnUnits(), "The units of the columns; seconds, volts and amperes where they are left out.",
        new Field<LogColumnUnits, LogTimeUnit>("time", new SignFormat<LogTimeUnit>(("s", LogTimeUnit.S), ("ms", LogTimeUnit.Ms),
            ("min", LogTimeUnit.Min), ("h", LogTimeUnit.H)), units => units.Time != LogTimeUnit.S, units => units.Time,
            (units, value) => units with { Time = value }, false, "Of the time; s if left out."),
        new Field<LogColumnUnits, LogVoltageUnit>("voltage", new SignFormat<LogVoltageUnit>(("V", LogVoltageUnit.V),
            ("mV", LogVoltageUnit.Millivolt)), units => units.Voltage != LogVoltageUnit.V, units => units.Voltage,
            (units, value) => units with { Voltage = value }, false, "Of the voltage; V if left out."),
        new Field<LogColumnUnits, LogCurrentUnit>("current", new SignFormat<LogCurrentUnit>(("A", LogCurrentUnit.A),
            ("mA", LogCurrentUnit.Milliampere)), units => units.Current != LogCurrentUnit.A, units => units.Current,
            (units, value) => units with { Current = value }, false, "Of the current; A if left out."));

    /// <summary>A log.</summary>
    public static readonly RecordFormat<WrittenLog> Whole = new(
        () => new WrittenLog(), "A log of voltage and current over time.",
        [
            Fields<WrittenLog>.Required("file", new TextFormat(500), log => log.File, (log, value) => log with { File = value },
                "The file, from the folder of this one."),
            .. UseFormat.Of<WrittenLog>(),
            Fields<WrittenLog>.OptionalGroup("columns", Columns, log => log.Columns,
                (log, value) => log with { Columns = value }, "The columns' names; found by their names if left out."),
            Fields<WrittenLog>.WithDefault("units", Units, new LogColumnUnits(), log => log.Units,
                (log, value) => log with { Units = value }, "The columns' units."),
            Fields<WrittenLog>.Optional("separator", new ChoiceFormat<LogSeparator>(), log => log.Separator,
                (log, value) => log with { Separator = value },
                "What stands between two columns; found in the first line if left out."),
            new Field<WrittenLog, DecimalMark>("decimal", new ChoiceFormat<DecimalMark>(), log => log.Decimal != DecimalMark.Point,
                log => log.Decimal, (log, value) => log with { Decimal = value }, false,
                "The decimal mark; point if left out."),
            new Field<WrittenLog, LogRowKind>("rows", new ChoiceFormat<LogRowKind>(), log => log.Rows != LogRowKind.Mean,
                log => log.Rows, (log, value) => log with { Rows = value }, false,
                "Whether a row is the mean until the next one, or a sample; mean if left out."),
            Fields<WrittenLog>.WithDefault("drawn-is-negative", new YesNoFormat(), false, log => log.DrawnIsNegative,
                (log, value) => log with { DrawnIsNegative = value },
                "Whether the logger writes a current below zero while the battery delivers. No if left out."),
        ]);
}

/// <summary>One of a few signs of units.</summary>
/// <typeparam name="T">What they mean.</typeparam>
/// <param name="signs">The signs with their meanings, in order.</param>
internal sealed class SignFormat<T>(params (string Sign, T Meaning)[] signs) : PlainFormat<T>
    where T : struct, Enum
{
    /// <inheritdoc/>
    public override string Accepted => string.Join(", ", Words);

    /// <inheritdoc/>
    protected override IEnumerable<string> Words => signs.Select(sign => sign.Sign);

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["enum"] = new JsonArray([.. Words.Select(word => (JsonNode)word)]) };

    /// <inheritdoc/>
    protected override bool TryParse(string text, [MaybeNullWhen(false)] out T value)
    {
        var place = Array.FindIndex(signs, sign => sign.Sign == text);
        value = place < 0 ? default : signs[place].Meaning;
        return place >= 0;
    }

    /// <inheritdoc/>
    protected override string Text(T value) =>
        signs[Array.FindIndex(signs, sign => EqualityComparer<T>.Default.Equals(sign.Meaning, value))].Sign;
}

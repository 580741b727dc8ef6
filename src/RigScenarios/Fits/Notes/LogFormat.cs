using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using RigScenarios.Files.Formats;

namespace RigScenarios.Fits.Notes;

/// <summary>How a log is named in field notes.</summary>
internal static class LogFormat
{
    private static readonly TextFormat Column = new(100);

    private static readonly Format<LogColumnNames> Columns = new RecordFormat<LogColumnNames>(
        () => new LogColumnNames(),
        "The names of the columns as they stand in the log's first line, or their numbers from the left; found if left out.",
        Fields<LogColumnNames>.OptionalGroup("time", Column, names => names.Time,
            (names, value) => names with { Time = value }, "The column of the time."),
        Fields<LogColumnNames>.OptionalGroup("voltage", Column, names => names.Voltage,
            (names, value) => names with { Voltage = value }, "The column of the voltage at the battery."),
        Fields<LogColumnNames>.OptionalGroup("current", Column, names => names.Current,
            (names, value) => names with { Current = value }, "The column of the current out of the battery."));

    private static readonly Format<LogColumnUnits> Units = new RecordFormat<LogColumnUnits>(
        () => new LogColumnUnits(), "The units of the columns that are named; as the log says, else s, V and A, if left out.",
        Fields<LogColumnUnits>.Optional("time", new SignFormat<LogTimeUnit>(("s", LogTimeUnit.S), ("ms", LogTimeUnit.Ms),
            ("min", LogTimeUnit.Min), ("h", LogTimeUnit.H)), units => units.Time,
            (units, value) => units with { Time = value }, "Of the time."),
        Fields<LogColumnUnits>.Optional("voltage", new SignFormat<LogVoltageUnit>(("V", LogVoltageUnit.V),
            ("mV", LogVoltageUnit.Millivolt)), units => units.Voltage,
            (units, value) => units with { Voltage = value }, "Of the voltage."),
        Fields<LogColumnUnits>.Optional("current", new SignFormat<LogCurrentUnit>(("A", LogCurrentUnit.A),
            ("mA", LogCurrentUnit.Milliampere)), units => units.Current,
            (units, value) => units with { Current = value }, "Of the current."));

    /// <summary>A log.</summary>
    public static readonly RecordFormat<WrittenLog> Whole = new(
        () => new WrittenLog(), "A log of voltage and current over time.",
        [
            Fields<WrittenLog>.Required("file", new TextFormat(500), log => log.File, (log, value) => log with { File = value },
                "The file, from the folder of this one."),
            .. UseFormat.Of<WrittenLog>(),
            Fields<WrittenLog>.WithDefault("columns", Columns, new LogColumnNames(), log => log.Columns,
                (log, value) => log with { Columns = value }, "The columns' names."),
            Fields<WrittenLog>.WithDefault("units", Units, new LogColumnUnits(), log => log.Units,
                (log, value) => log with { Units = value }, "The columns' units."),
            Fields<WrittenLog>.Optional("separator", new ChoiceFormat<LogSeparator>(), log => log.Separator,
                (log, value) => log with { Separator = value }, "What stands between two columns; found if left out."),
            Fields<WrittenLog>.Optional("decimal", new ChoiceFormat<DecimalMark>(), log => log.DecimalMark,
                (log, value) => log with { DecimalMark = value }, "The decimal mark; found if left out."),
            new Field<WrittenLog, LogRowKind>("rows", new ChoiceFormat<LogRowKind>(), log => log.Rows != LogRowKind.Mean,
                log => log.Rows, (log, value) => log with { Rows = value }, false,
                "Whether a row is the mean until the next one, or a sample; mean if left out."),
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

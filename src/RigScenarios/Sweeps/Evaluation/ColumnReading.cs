namespace RigScenarios.Sweeps.Evaluation;

/// <summary>What a column wants to be asked.</summary>
[Flags]
internal enum ColumnNeeds
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>When and why the days end, simulated or by a batch of discharges.</summary>
    Days = 1,

    /// <summary>What the batteries are like at the end of the days: one more discharge, where these are run as such.</summary>
    Batteries = 2,

    /// <summary>The rig at rest, its prices or its journeys: no day is run.</summary>
    AtRest = 4,

    /// <summary>The whole answer.</summary>
    Answer = 8,
}

/// <summary>A column with the way to read it.</summary>
/// <param name="Column">The column.</param>
/// <param name="Needs">What it wants to be asked.</param>
/// <param name="Read">Reads it.</param>
internal sealed record ColumnReading(SweepColumn Column, ColumnNeeds Needs, Func<ScenarioOutcome, SweepCell> Read)
{
    /// <summary>A column of the days' figures.</summary>
    public static ColumnReading OfDays(string name, string unit, ColumnKind kind, string meaning,
        Func<DayFigures, SweepCell> read, ColumnNeeds needs = ColumnNeeds.Days) =>
        new(new(name, unit, kind, meaning), needs, outcome => read(outcome.Days)) { ReadDays = read };

    /// <summary>A column of numbers.</summary>
    public static ColumnReading Number(string name, string unit, string meaning, ColumnNeeds needs,
        Func<ScenarioOutcome, double?> read) =>
        new(new(name, unit, ColumnKind.Number, meaning), needs, outcome => SweepCell.Of(read(outcome)));

    /// <summary>A column of words.</summary>
    public static ColumnReading Words(string name, string meaning, ColumnNeeds needs, Func<ScenarioOutcome, string?> read) =>
        new(new(name, "", ColumnKind.Text, meaning), needs, outcome => SweepCell.Of(read(outcome)));

    /// <summary>A column of yes and no.</summary>
    public static ColumnReading YesNo(string name, string meaning, ColumnNeeds needs, Func<ScenarioOutcome, bool?> read) =>
        new(new(name, "", ColumnKind.YesNo, meaning), needs, outcome => SweepCell.Of(read(outcome)));

    /// <summary>Reads it from the days' figures alone; null where it needs something else.</summary>
    public Func<DayFigures, SweepCell>? ReadDays { get; private init; }
}

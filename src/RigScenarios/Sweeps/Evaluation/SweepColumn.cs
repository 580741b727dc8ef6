namespace RigScenarios.Sweeps.Evaluation;

/// <summary>What the cells of a column hold.</summary>
public enum ColumnKind
{
    /// <summary>A number in the column's unit.</summary>
    Number,

    /// <summary>Words.</summary>
    Text,

    /// <summary>Yes or no.</summary>
    YesNo,
}

/// <summary>A column of results of a sweep: one figure of the answer that a scenario gets.</summary>
/// <param name="Name">Its name in tables and on the command line, with the unit at its end where it has one:
/// <c>runtime_h</c>.</param>
/// <param name="Unit">The unit of its numbers, as files write it (<c>h</c>, <c>Wh</c>, <c>°C</c>, <c>%</c>, <c>EUR</c>); empty
/// where it has none.</param>
/// <param name="Kind">What its cells hold.</param>
/// <param name="Meaning">What it is, in a sentence for people.</param>
public sealed record SweepColumn(string Name, string Unit, ColumnKind Kind, string Meaning);

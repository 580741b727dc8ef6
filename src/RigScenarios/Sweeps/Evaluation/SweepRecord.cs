namespace RigScenarios.Sweeps.Evaluation;

/// <summary>One scenario of a sweep with what it gave.</summary>
/// <param name="Number">Its number in the plan, from 0.</param>
/// <param name="Values">The value of each field that the plan moves, in the order of its paths, as the file would say it.</param>
/// <param name="Cells">The results, in the order of the columns that were asked for.</param>
public sealed record SweepRecord(long Number, IReadOnlyList<string> Values, IReadOnlyList<SweepCell> Cells);

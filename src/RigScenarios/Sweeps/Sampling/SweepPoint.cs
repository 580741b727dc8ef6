namespace RigScenarios.Sweeps.Sampling;

/// <summary>One scenario of a plan.</summary>
/// <param name="Number">Its number in the plan, 0 to one less than <see cref="SweepPlan.Count"/>.</param>
/// <param name="Values">The value of each of <see cref="SweepPlan.Paths"/>, as the scenario file would say it.</param>
public sealed record SweepPoint(long Number, IReadOnlyList<string> Values);

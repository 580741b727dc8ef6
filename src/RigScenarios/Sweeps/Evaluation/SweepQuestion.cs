using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>What a sweep asks: one build through its days, for every point of a plan, and the figures that are wanted of
/// each.</summary>
/// <param name="Scenario">The scenario, read or checked; the plan's values are set on it.</param>
/// <param name="Build">The build's short name.</param>
/// <param name="Days">The days' short names, one after the other; all of the scenario if empty.</param>
/// <param name="Plan">The values that are tried.</param>
/// <param name="Columns">The figures, of those that <see cref="SweepColumns"/> lists; one or more.</param>
public sealed record SweepQuestion(
    Scenario Scenario, string Build, IReadOnlyList<string> Days, SweepPlan Plan, IReadOnlyList<SweepColumn> Columns)
{
    /// <summary>The day on which it is asked: the life of a battery goes until it where it names no other end, and a journey
    /// without a date is meant for it. Null where nobody says.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>The names of the days, all of the scenario where none was named.</summary>
    internal IReadOnlyList<string> DayNames => Days.Count > 0 ? Days : [.. Scenario.Days.Keys];
}

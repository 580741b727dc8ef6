using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;

namespace RigScenarios.Drafts;

/// <summary>What the day of a draft gave. Where things sit has no part in it.</summary>
/// <param name="Day">How long one battery lasts, and why it ends.</param>
/// <param name="Wiring">Every limit of the wiring; null where the wiring could not be looked at.</param>
/// <param name="Rotation">The day with all batteries; null where nobody said how many there are.</param>
public sealed record DraftRun(DayResult Day, WiringOfDay? Wiring, RotationOfDay? Rotation)
{
    /// <summary>The one answer.</summary>
    public required RigAnswer Answer { get; init; }

    internal static DraftRun Of(Scenario scenario, string build, string day, bool rotates, CancellationToken cancellation) => new(
        ScenarioRun.Run(scenario, build, day, new DayRunOptions(SeriesPoints: 400), cancellation),
        WiringOf(scenario, build, day, cancellation),
        rotates ? RotationOf(scenario, build, day, cancellation) : null)
    {
        Answer = RigAnswer.Of(scenario, build, [day], cancellation: cancellation),
    };

    private static RotationOfDay RotationOf(Scenario scenario, string build, string day, CancellationToken cancellation)
    {
        var (powered, plan) = ScenarioPlan.Of(scenario, build, [day]);
        return new RotationOfDay(plan, DaySimulation.Run(powered, plan, cancellation: cancellation), NotPlanned.Of(scenario, build));
    }

    private static WiringOfDay? WiringOf(Scenario scenario, string build, string day, CancellationToken cancellation)
    {
        try
        {
            return ScenarioWiring.WithoutFixes(scenario, build, day, cancellation);
        }
        catch (ScenarioProblemsException)
        {
            // What is wrong with a wiring is told by the check of the scenario; the day's answer stands without it.
            return null;
        }
    }
}

/// <summary>A day with several batteries.</summary>
/// <param name="Plan">The batteries, chargers and swaps.</param>
/// <param name="Result">How it went.</param>
/// <param name="NotPlanned">What was taken for what nobody planned, each in a sentence.</param>
public sealed record RotationOfDay(DayPlan Plan, SimulationResult Result, IReadOnlyList<string> NotPlanned);

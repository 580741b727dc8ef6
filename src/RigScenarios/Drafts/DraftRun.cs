using RigScenarios.Days;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>What the day of a draft gave. Where things sit has no part in it.</summary>
/// <param name="Day">How long one battery lasts, and why it ends.</param>
/// <param name="Wiring">Every limit of the wiring; null where the wiring could not be looked at.</param>
public sealed record DraftRun(DayResult Day, WiringOfDay? Wiring)
{
    internal static DraftRun Of(Scenario scenario, string build, string day, CancellationToken cancellation) =>
        new(ScenarioRun.Run(scenario, build, day, new DayRunOptions(SeriesPoints: 400), cancellation), WiringOf(scenario, build, day, cancellation));

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

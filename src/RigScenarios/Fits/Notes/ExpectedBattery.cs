using RigScenarios.Batteries;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Fits.Notes;

/// <summary>The battery of a build as the scenario has it before notes and logs speak.</summary>
public static class ExpectedBattery
{
    /// <summary>The battery with its age. What an earlier fit left in the scenario would count the same notes twice, so it is put
    /// aside.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="isMeasuredAgain">Whether also what somebody measured is put aside, because it is measured now.</param>
    public static PackAssumptions Of(Scenario scenario, string build, bool isMeasuredAgain = false)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(build);
        var chosen = scenario.Builds[build];
        var battery = chosen.Battery.RuntimeKnownTo is null && !isMeasuredAgain ? chosen.Battery
            : chosen.Battery with { CapacityLeft = null, ResistanceGrowth = null };
        var alone = scenario with
        {
            Batteries = OrderedMap<BatteryAtStart>.Empty,
            Builds = scenario.Builds.With(build, chosen with { Battery = battery }),
        };
        return ScenarioPlan.Of(alone, build, [scenario.Days.Keys.First()]).Plan.Batteries.Values.First().MakePack();
    }
}

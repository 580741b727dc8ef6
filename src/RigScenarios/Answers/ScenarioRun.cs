using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;

namespace RigScenarios.Answers;

/// <summary>Runs a build of a scenario through one of its days.</summary>
public static class ScenarioRun
{
    /// <summary>Runs one build through one day.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="day">The day's short name.</param>
    /// <param name="options">What is kept.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day.</exception>
    public static DayResult Run(Scenario scenario, string build, string day, DayRunOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var chosenBuild = Chosen.From(scenario.Builds, build, "build", "builds");
        var chosenDay = Chosen.From(scenario.Days, day, "day", "days");
        var (powered, plan) = ScenarioPlan.Of(scenario with { Batteries = Parts.OrderedMap<BatteryAtStart>.Empty, HotSwap = null }, build, [day]);
        var points = (options ?? new DayRunOptions()).SeriesPoints;
        var result = DayResult.From(powered, DaySimulation.Run(powered, plan, new SimulationOptions(points, points > 0), null, cancellation));
        return result with { Assumed = [.. PartAssumptions.In(scenario, chosenBuild, chosenDay), .. result.Assumed] };
    }
}

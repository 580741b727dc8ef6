using RigScenarios.Builds;
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
        var chosenBuild = Choose(scenario.Builds, build, "build", "builds");
        var chosenDay = Choose(scenario.Days, day, "day", "days");
        var powered = PoweredBuild.From(chosenBuild, scenario.PartOf);
        var result = DayRun.Run(powered, chosenDay, scenario.AmbientOn(chosenDay), options, cancellation);
        return result with { Assumed = [.. PartAssumptions.In(scenario, chosenBuild, chosenDay), .. result.Assumed] };
    }

    internal static T Choose<T>(Parts.OrderedMap<T> things, string name, string what, string path)
        where T : notnull =>
        things.TryGetValue(name, out var found)
            ? found
            : throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, path, $"The scenario has no {what} \"{name}\".", string.Join(", ", things.Keys), NearestName.To(name, things.Keys))]);
}

using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using RigScenarios.Wiring;

namespace RigScenarios.Answers;

/// <summary>Runs the wiring of a build through a planned day and holds it against every limit.</summary>
public static class ScenarioWiring
{
    private const int SeriesPoints = 400;

    /// <summary>Looks at the wiring of one build on one day, on the battery that the build starts with.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="day">The day's short name.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day, or a voltage is wrong.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static WiringOfDay Of(Scenario scenario, string build, string day, CancellationToken cancellation = default)
    {
        return WithoutFixes(scenario, build, day, cancellation);
    }

    /// <summary>The same without a search for what would fix it, which takes many runs: for whoever changes a wiring and waits for the answer.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="day">The day's short name.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day, or a voltage is wrong.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static WiringOfDay WithoutFixes(Scenario scenario, string build, string day, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var chosenDay = Chosen.From(scenario.Days, day, "day", "days");
        try
        {
            var (powered, plan) = ScenarioPlan.Of(scenario with { Batteries = Parts.OrderedMap<BatteryAtStart>.Empty, HotSwap = null }, build, [day]);
            var result = DaySimulation.Run(powered, plan, new SimulationOptions(SeriesPoints, FindsReserve: false), null, cancellation);
            var start = result.Days[0].Start;
            var blocks = chosenDay.Blocks.Keys.ToList();
            var wiring = new WiringOfDay
            {
                BuildName = build,
                DayName = day,
                Day = chosenDay,
                Ambient = scenario.AmbientOn(chosenDay),
                Powered = powered,
                Pack = plan.Batteries.Values.First().MakePack(),
                Network = result.Network,
                Run = WiringResult.From(result),
                Moments = [.. result.Series.Where(point => point.Wiring is not null).Select(point => new WiringMoment(
                    point.Time - start, blocks.IndexOf(result.Stretches[point.Stretch].Block), point.Wiring!,
                    [.. result.DropOuts.Where(drop => drop.At < point.Time).Select(drop => drop.Element)], point.StateOfCharge, point.Temperature))],
            };
            return wiring with { Findings = WiringFindings.Of(wiring, start) };
        }
        catch (WiringException problem)
        {
            throw Told(problem, build);
        }
    }

    private static ScenarioProblemsException Told(WiringException problem, string build) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, $"builds.{build}", problem.Message)]);
}

using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Days;
using RigScenarios.Scenarios;
using RigScenarios.Wiring;
using UnitsNet;

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
        var wiring = WithoutFixes(scenario, build, day, cancellation);
        try
        {
            return wiring with { Fixes = new WiringFixes(scenario, wiring, cancellation).All() };
        }
        catch (WiringException problem)
        {
            throw Told(problem, build);
        }
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
        var chosenBuild = ScenarioRun.Choose(scenario.Builds, build, "build", "builds");
        var chosenDay = ScenarioRun.Choose(scenario.Days, day, "day", "days");
        var powered = PoweredBuild.From(chosenBuild, scenario.PartOf);
        var ambient = scenario.AmbientOn(chosenDay);
        var pack = PackOf(powered);
        try
        {
            var network = BuildWiring.Of(powered, ambient);
            var run = Run(powered, network, pack.Pack, chosenDay, ambient, SeriesPoints, cancellation);
            var wiring = new WiringOfDay
            {
                BuildName = build,
                DayName = day,
                Day = chosenDay,
                Ambient = ambient,
                Powered = powered,
                Pack = pack,
                Network = network,
                Run = run,
                Moments = WiringTrace.Of(network, Blocks(powered, chosenDay), run),
            };
            return wiring with { Findings = WiringFindings.Of(wiring) };
        }
        catch (WiringException problem)
        {
            throw Told(problem, build);
        }
    }

    private static ScenarioProblemsException Told(WiringException problem, string build) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, $"builds.{build}", problem.Message)]);

    internal static WiringResult Run(
        PoweredBuild powered, WiringNetwork network, Pack pack, ShootingDay day, Temperature ambient, int points, CancellationToken cancellation)
    {
        var battery = powered.Build.Battery;
        var start = new DischargeStart { StateOfCharge = battery.Charge ?? Ratio.FromPercent(100), Temperature = battery.StartTemperature ?? ambient };
        return WiringRun.Run(network, pack, ambient, start, Blocks(powered, day), new DischargeOptions { TimeLimit = day.Length, SeriesPoints = points }, cancellation);
    }

    private static PackAssumptions PackOf(PoweredBuild powered)
    {
        var battery = powered.Build.Battery;
        var age = battery.CapacityLeft is null && battery.ResistanceGrowth is null
            ? null
            : new Age(battery.CapacityLeft ?? Ratio.FromPercent(100), battery.ResistanceGrowth ?? 1);
        return PackModel.From(powered.Battery.Battery!, powered.Battery.Mass, powered.Battery.Size, age);
    }

    private static WiringBlock[] Blocks(PoweredBuild powered, ShootingDay day) =>
        [.. day.Blocks.Values.Select(block => new WiringBlock(block.Length, BuildWiring.States(powered, block.StateOf)))];
}

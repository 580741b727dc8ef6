using RigScenarios.Builds;
using RigScenarios.Charts.Timeline;
using RigScenarios.Charts.Pages;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Notebooks.Tests.Domain;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Days with several batteries that are hard to draw: many swaps, many batteries with long names, days that
/// break.</summary>
internal static class TimelineGallery
{
    public const int Charts = 2;

    private static readonly (PoweredBuild Build, DayPlan Plan) Made =
        ScenarioPlan.Of(ScenarioFile.Read(Path.Combine(DemoData.Root, "data/scenarios/island-crossing.yaml")), "tripod", []);

    public static DayPlan Island => Made.Plan;

    /// <summary>Without its largest battery it breaks.</summary>
    public static DayPlan Broken { get; } = Island with { Batteries = new(Island.Batteries.Where(item => item.Key != "big")) };

    /// <summary>One day, ten small batteries with long names, and a second charger.</summary>
    public static DayPlan Many { get; } = Island with
    {
        Days = [Island.Days[1]],
        Batteries = new(Enumerable.Range(1, 10).Select(i => KeyValuePair.Create(
            $"the one with the mark {i}", Island.Batteries["used"] with { CapacityLeft = Ratio.FromPercent(28 + i) }))),
        Chargers = Island.Chargers.With("second-charger-in-the-van",
            new DayCharger(ElectricCurrent.FromAmperes(2)) { Bays = 1,
            PowerHours = [new(new TimeOnly(22, 0), new TimeOnly(6, 0)), new(new TimeOnly(7, 15), new TimeOnly(8, 0))] }),
    };

    public static SimulationResult Run(DayPlan plan) =>
        DaySimulation.Run(Made.Build, plan, cancellation: TestContext.Current.CancellationToken);

    public static ChartPage Page()
    {
        var page = new ChartPage { Title = "Days with several batteries" };
        foreach (var plan in new[] { Island, Broken, Many })
            page = page.With(new DrawingPart(DayTimeline.Of(plan, Run(plan))));
        return page.With(ChargeOverDay.Of(Island, Run(Island))).With(ChargeOverDay.Of(Broken, Run(Broken)));
    }
}

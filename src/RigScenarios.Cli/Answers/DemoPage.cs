using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Charts.Answers;
using RigScenarios.Charts.Days;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Sweeps;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>The demo's page: the answer, the day, and what battery size, load mix and cold do to it.</summary>
internal static class DemoPage
{
    public static ChartPage Of(Scenario scenario, Answer answer, CancellationToken cancellation)
    {
        var one = RigAnswer.Of(scenario, answer.BuildName, [answer.DayName], cancellation: cancellation);
        var page = new ChartPage { Title = scenario.Title, Footer = "Made by RigScenarios from invented demo data. Predictions, not measurements: the makers' limits go first." }
            .WithProse(scenario.Note ?? "")
            .WithHeading($"{answer.BuildTitle}: {answer.DayTitle}, {answer.Ambient.DegreesCelsius:0.#} °C")
            .With(AnswerBlock.Of(one))
            .With(DayChart.Of(one, "The day on this battery"))
            .WithHeading("A larger battery, or fewer devices?")
            .With(RuntimeOverCapacity.Of(LoadMixes(scenario, answer, cancellation), "Runtime by battery size, for three load mixes"))
            .WithHeading("What does the cold cost?")
            .With(OverAmbient.Of(OverCold(scenario, answer, cancellation), "Runtime and energy by air temperature"));
        return page.With(SweepHeatMap.Of(ColdAndAge(scenario, answer, cancellation), "Runtime by cold and battery age",
            ($"{answer.Ambient.DegreesCelsius:0} °C", $"{answer.Build.Battery.CapacityLeft?.Percent ?? 100:0} %")));
    }

    private static List<LoadMixSweep> LoadMixes(Scenario scenario, Answer answer, CancellationToken cancellation)
    {
        var axis = SweepAxis.Between($"parts.{scenario.Kit[answer.Build.Battery.Item].Part}.battery.energy", Energy.FromWattHours(50), Energy.FromWattHours(290), 9);
        var essential = answer.Build with { Devices = new(answer.Build.Devices.Where(device => device.Value.Essential)) };
        var last = answer.Build.Devices.Keys.Last(device => !answer.Build.Devices[device].Essential);
        var mixes = new List<(string Name, Build Build)>
        {
            ("essential devices only", essential),
            ($"without the {scenario.PartOf(last)!.Name}", answer.Build with { Devices = answer.Build.Devices.Without(last) }),
            ("everything", answer.Build),
        };
        return [.. mixes.Select(mix => new LoadMixSweep(mix.Name, GridSweep.Run(
            scenario with { Builds = scenario.Builds.With(answer.BuildName, mix.Build) }, answer.BuildName, answer.DayName, [axis], cancellation: cancellation)))];
    }

    private static SweepTable OverCold(Scenario scenario, Answer answer, CancellationToken cancellation) =>
        GridSweep.Run(scenario, answer.BuildName, answer.DayName, [Air(answer, 26)], cancellation: cancellation);

    private static SweepTable ColdAndAge(Scenario scenario, Answer answer, CancellationToken cancellation) =>
        GridSweep.Run(scenario, answer.BuildName, answer.DayName,
            [Air(answer, 11), SweepAxis.Between($"builds.{answer.BuildName}.battery.capacity-left", Ratio.FromPercent(60), Ratio.FromPercent(100), 9)], cancellation: cancellation);

    private static SweepAxis Air(Answer answer, int steps) =>
        SweepAxis.Between($"days.{answer.DayName}.ambient", Temperature.FromDegreesCelsius(-20), Temperature.FromDegreesCelsius(30), steps);
}

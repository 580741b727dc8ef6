using RigScenarios.Answers;
using RigScenarios.Charts.Answers;
using RigScenarios.Charts.Days;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Sweeps;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>The demo's page: the answer, the day that is tightest, and what battery size, load mix and cold do to it.</summary>
internal sealed class DemoPage
{
    private const string Footer =
        "Made by RigScenarios from invented demo data. Predictions, not measurements: the makers' limits go first.";

    private readonly RigAnswer answer;
    private readonly string day;
    private readonly CancellationToken cancellation;

    private DemoPage(RigAnswer answer, CancellationToken cancellation)
    {
        (this.answer, this.cancellation) = (answer, cancellation);
        // The day on which it stops first; the first one where it lasts them all.
        day = answer.Days[(answer.Simulation.FirstToStop?.FirstStop?.Day ?? 1) - 1];
    }

    private Scenario Scenario => answer.Scenario;

    public static ChartPage Of(RigAnswer answer, CancellationToken cancellation) => new DemoPage(answer, cancellation).Page();

    private ChartPage Page()
    {
        var ambient = Scenario.AmbientOn(Scenario.Days[day]);
        var title = Scenario.Days[day].Title ?? day;
        return new ChartPage { Title = Scenario.Title, Footer = Footer }
            .WithProse(Scenario.Note ?? "")
            .WithHeading(AnswerText.Title(answer))
            .With(AnswerBlock.Of(answer))
            .With(DayChart.Of(answer, "The days on this battery"))
            .WithHeading($"A larger battery, or fewer devices? ({title})")
            .With(RuntimeOverCapacity.Of(LoadMixes(), "Runtime by battery size, for three load mixes"))
            .WithHeading("What does the cold cost?")
            .With(OverAmbient.Of(Swept(answer.TheBuild, Air(26)), "Runtime and energy by air temperature"))
            .With(SweepHeatMap.Of(ColdAndAge(), "Runtime by cold and battery age",
                ($"{ambient.DegreesCelsius:0} °C", $"{answer.TheBuild.Battery.CapacityLeft?.Percent ?? 100:0} %")));
    }

    private List<LoadMixSweep> LoadMixes()
    {
        var build = answer.TheBuild;
        var axis = SweepAxis.Between(
            $"parts.{Scenario.Kit[build.Battery.Item].Part}.battery.energy", Energy.FromWattHours(50),
            Energy.FromWattHours(290), 9);
        var last = build.Devices.Keys.Last(device => !build.Devices[device].Essential);
        return
        [
            new("essential devices only",
                Swept(build with { Devices = new(build.Devices.Where(device => device.Value.Essential)) }, axis)),
            new($"without the {Scenario.PartOf(last)!.Name}", Swept(build with { Devices = build.Devices.Without(last) }, axis)),
            new("everything", Swept(build, axis)),
        ];
    }

    private SweepTable ColdAndAge() => Swept(
        answer.TheBuild, Air(11), SweepAxis.Between($"builds.{answer.Build}.battery.capacity-left", Ratio.FromPercent(60),
            Ratio.FromPercent(100), 9));

    private SweepTable Swept(Builds.Build build, params IReadOnlyList<SweepAxis> axes) => GridSweep.Run(
        Scenario with { Builds = Scenario.Builds.With(answer.Build, build) }, answer.Build, day, axes,
        cancellation: cancellation);

    private SweepAxis Air(int steps) =>
        SweepAxis.Between($"days.{day}.ambient", Temperature.FromDegreesCelsius(-20), Temperature.FromDegreesCelsius(30), steps);
}

using RigScenarios.Files;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Evaluation;

/// <summary>Which way a sweep goes, and that the quick one gives what the simulation gives.</summary>
public sealed class SweepWayTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private static readonly string[] AtRest = ["mass_kg", "stand_left_pct", "cost"];

    [Theory]
    [InlineData("winter-harbour.yaml", "tripod", "day-one")]
    [InlineData("winter-harbour.yaml", "shoulder", "day-two")]
    [InlineData("winter-harbour.yaml", "tripod", "day-one,day-two,day-three")]
    [InlineData("night-dolly.yaml", "heavy-lead", "night")]
    [InlineData("pottery-class.yaml", "tripod", "firing")]
    [InlineData("market-hall.yaml", "hand", "morning")]
    [InlineData("teaching-kit.yaml", "full-rig", "workshop")]
    public void The_batch_gives_what_the_simulation_gives(string file, string build, string days)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", file));
        var names = days.Split(',');
        var part = scenario.Kit[scenario.Builds[build].Battery.Item].Part;
        var energy = scenario.FindPart(part)!.Battery!.Energy.WattHours;
        Compare(new(scenario, build, names, new()
        {
            Uncertain =
            [
                new($"parts.{part}.battery.energy", Spread.Normal(Energy.FromWattHours(energy),
                    Energy.FromWattHours(0.05 * energy))),
                .. names.Select(day => new UncertainField($"days.{day}.ambient",
                    Spread.Uniform(Temperature.FromDegreesCelsius(-12), Temperature.FromDegreesCelsius(28)))),
                new($"builds.{build}.battery.load-scale", Spread.Uniform(0.75, 1.3)),
                new($"builds.{build}.battery.capacity-left", Spread.Uniform(Ratio.FromPercent(65), Ratio.FromPercent(100))),
            ],
            Samples = 60, Seed = 5,
        }, [.. SweepColumns.Usual, .. SweepColumns.Choose(scenario, AtRest)]));
    }

    [Fact]
    public void What_is_shared_between_scenarios_is_what_each_would_have_alone() => Compare(
        SweptHarbour.Ask(new()
        {
            // Of states, counts, lengths and parts some act on the wiring alone, some together, some not at all.
            Axes =
            [
                new("builds.tripod.devices.monitor.count", ["1"]), new("kit.monitor.count", ["2", "3"]),
                new("days.day-one.blocks.first-wait.states.monitor", ["off", "record"]),
                new("builds.tripod.devices.monitor.power.standby", ["4 W", "9 W"]),
                new("days.day-one.blocks.lunch.length", ["30 min", "1 h"]), new("kit.camera.part", ["compact-body-b"]),
                new("parts.plate-guarded.plate.switch-off-voltage", ["11.3 V", "11.9 V"]),
            ],
            Uncertain = [new("conditions.night", Spread.Uniform(Temperature.FromDegreesCelsius(10),
                Temperature.FromDegreesCelsius(15)))],
            Samples = 2,
        }));

    [Theory]
    [InlineData("winter-harbour.yaml", "tripod", "reserve_h", SweepWayKind.Batch, "discharges of one battery")]
    [InlineData("winter-harbour.yaml", "tripod", "mass_kg", SweepWayKind.AtRest, "none is run")]
    [InlineData("winter-harbour.yaml", "tripod", "reserve_h,mass_kg", SweepWayKind.Batch, "discharges of one battery")]
    [InlineData("winter-harbour.yaml", "tripod", "reserve_h,wiring_left_pct", SweepWayKind.Answer, "wiring_left_pct")]
    [InlineData("winter-harbour.yaml", "tripod", "verdict", SweepWayKind.Answer, "verdict")]
    [InlineData("island-crossing.yaml", "tripod", "reserve_h", SweepWayKind.Simulation, "Several batteries take turns")]
    [InlineData("river-ferry.yaml", "tripod", "reserve_h", SweepWayKind.Simulation, "air changes")]
    [InlineData("night-dolly.yaml", "thin-lead", "reserve_h", SweepWayKind.Simulation, "can't be reduced")]
    public void The_way_is_told_with_its_reason(string file, string build, string column, SweepWayKind kind, string reason)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", file));
        var way = SweepRun.WayOf(new(scenario, build, [], new()
        {
            Uncertain = [new($"builds.{build}.battery.load-scale", Spread.Uniform(0.9, 1.1))], Samples = 8,
        }, SweepColumns.Choose(scenario, column.Split(','))), Cancellation);
        Assert.Equal(kind, way.Kind);
        Assert.Contains(reason, way.Reason, StringComparison.Ordinal);
        Assert.Equal(kind == SweepWayKind.Batch, way.ReductionError is not null);
    }

    [Fact]
    public void Usual_columns_go_the_quick_way() =>
        Assert.Equal(SweepWayKind.Batch, SweepRun.WayOf(SweptHarbour.Ask(SweptHarbour.Drawn(10)), Cancellation).Kind);

    [Fact]
    public void A_table_of_few_values_is_simulated_as_a_single_answer_is() =>
        Assert.Equal(SweepWayKind.Simulation, SweepRun.WayOf(SweptHarbour.Ask(SweptHarbour.Grid), Cancellation).Kind);

    [Fact]
    public void What_a_scenario_gives_does_not_hang_on_the_others_of_its_batch()
    {
        var question = SweptHarbour.Ask(SweptHarbour.Drawn(3000));
        var alone = SweepRun.Records(question, 1234, 1, null, Cancellation).Single();
        var among = SweepRun.Records(question, 0, 3000, null, Cancellation).ElementAt(1234);
        Assert.Equal(alone.Cells, among.Cells);
    }

    private static void Compare(SweepQuestion question)
    {
        Assert.Equal(SweepWayKind.Batch, SweepRun.WayOf(question, Cancellation).Kind);
        var names = question.Columns.Select(column => column.Name).ToList();
        var simulation = new ScenarioByScenario(new(question, Cancellation),
            SweepColumns.ReadingsOf(question.Scenario, question.Columns), "", Cancellation);
        Each.Of(SweepRun.Records(question, null, Cancellation), record =>
        {
            var simulated = simulation.One(question.Plan.At(record.Number), Cancellation);
            foreach (var (name, one, other) in names.Zip(record.Cells, simulated.Cells))
            {
                Assert.Equal(one.Text, other.Text);
                // End times to a thousandth of the runtime, energies to a few hundredths of a watt-hour, temperatures to what
                // the batch looks at oftener.
                var runtime = simulated.Cells[names.IndexOf("runtime_h")].Number!.Value;
                if (one.Number is { } number)
                    Assert.Equal(other.Number!.Value, number, AtRest.Contains(name) ? 0
                        : name.EndsWith("_h", StringComparison.Ordinal)
                        ? 1e-3 * (0.1 + runtime) : name.EndsWith("_Wh", StringComparison.Ordinal) ? 0.2 : 0.1);
            }
        }, atLeast: 60);
    }
}

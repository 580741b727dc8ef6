using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps;

public sealed class GridSweepTests
{
    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    private static readonly SweepAxis Cold = new("days.day-one.ambient", ["-12 °C", "-2 °C", "8 °C"]);

    private static readonly SweepAxis Energy = new("parts.brick-190wh.battery.energy", ["150 Wh", "190 Wh"]);

    [Fact]
    public void Rows_stand_in_the_order_of_the_axes_with_the_last_one_fastest() =>
        Assert.Equal(
            ["-12 °C|150 Wh", "-12 °C|190 Wh", "-2 °C|150 Wh", "-2 °C|190 Wh", "8 °C|150 Wh", "8 °C|190 Wh"],
            Run(Cold, Energy).Rows.Select(row => string.Join('|', row.Values)));

    [Fact]
    public void Each_row_is_what_a_single_run_of_the_changed_scenario_gives()
    {
        foreach (var row in Run(Cold, Energy).Rows)
        {
            var changed = ScenarioPath.SetAll(Harbour, [(Cold.Path, row.Values[0]), (Energy.Path, row.Values[1])]);
            var single = RigAnswer.Of(
                changed, "tripod", ["day-one"], AnswerOptions.EndOnly, cancellation: TestContext.Current.CancellationToken);
            Assert.Equal(single.Simulation.Runtime, row.Result.Runtime);
            Assert.Equal(single.Reserve, row.Result.Reserve);
            Assert.Equal(single.Simulation.EnergyLeft, row.Result.EnergyLeft);
        }
    }

    [Fact]
    public async Task The_table_is_the_same_on_one_processor_as_on_all()
    {
        var one = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, maxConcurrencyLevel: 1).ExclusiveScheduler;
        var alone = await Task.Factory.StartNew(() => Run(Cold, Energy).ToCsv(), TestContext.Current.CancellationToken,
            TaskCreationOptions.None, one);
        for (var turn = 0; turn < 3; turn++)
            Assert.Equal(alone, Run(Cold, Energy).ToCsv());
    }

    [Fact]
    public void Progress_rises_and_ends_at_one()
    {
        var told = new Told();
        GridSweep.Run(Harbour, "tripod", "day-one", [Cold, Energy], told, TestContext.Current.CancellationToken);
        Assert.Equal(6, told.Shares.Count);
        Assert.Equal(1, told.Shares.Max());
        Each.Of(told.Shares, share => Assert.InRange(share, 0, 1));
    }

    [Fact]
    public void A_sweep_that_is_stopped_says_so_and_gives_no_table()
    {
        using var source = new CancellationTokenSource();
        var told = new Told { Each = source.Cancel };
        Assert.ThrowsAny<OperationCanceledException>(() => GridSweep.Run(
            Harbour, "tripod", "day-one",
            [SweepAxis.Between("days.day-one.ambient", Temperature.FromDegreesCelsius(-15), Temperature.FromDegreesCelsius(10),
            500)], told, source.Token));
        Assert.True(told.Shares.Count < 500);
    }

    [Fact]
    public void Refused_values_of_all_axes_are_told_before_anything_runs()
    {
        var told = new Told();
        var problems = Assert.Throws<ScenarioProblemsException>(() => GridSweep.Run(
            Harbour, "tripod", "day-one", [Cold with { Values = ["-8 °C", "-90 °C", "cold"] },
                Energy with { Values = ["190 Wh", "190"] }], told, TestContext.Current.CancellationToken)).Problems;
        Assert.Equal(["days.day-one.ambient", "days.day-one.ambient", "parts.brick-190wh.battery.energy"],
            problems.Select(problem => problem.Path));
        Assert.Empty(told.Shares);
    }

    [Fact]
    public void An_axis_without_effect_is_pointed_out()
    {
        var idle = new SweepAxis("days.day-two.ambient", ["0 °C", "5 °C"]);
        var notice = Assert.Single(Run(Cold, idle).Notices);
        Assert.Contains("days.day-two.ambient", notice, StringComparison.Ordinal);
        Assert.Empty(Run(Cold, Energy).Notices);
    }

    [Fact]
    public void An_axis_that_only_changes_what_is_left_is_not_called_without_effect()
    {
        // Ten days pass with next to no draw in each case, so the runtimes are equal; the charge left is not.
        var scenario = SmallScenario.Read(SmallScenario.Text(devices: "{camera: {essential: yes, power: {record: 0.1 W}}}"));
        var table = GridSweep.Run(scenario, "one", "day", [new("builds.one.devices.camera.power.record", ["0.1 W", "0.2 W"])],
            null, TestContext.Current.CancellationToken);
        Assert.Equal(table.Rows[0].Result.Runtime, table.Rows[1].Result.Runtime);
        Assert.Empty(table.Notices);
    }

    [Fact]
    public void None_three_or_too_many_combinations_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Run());
        Assert.Throws<ArgumentException>(() => Run(Cold, Energy, Cold));
        var many = SweepAxis.Between("days.day-one.ambient", Temperature.FromDegreesCelsius(-15),
            Temperature.FromDegreesCelsius(10), 2000);
        Assert.Throws<ArgumentException>(() => Run(many, Energy with { Values = [.. Enumerable.Repeat("190 Wh", 21)] }));
    }

    [Fact]
    public void An_unknown_build_or_day_is_told_with_the_nearest_one()
    {
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() =>
            GridSweep.Run(Harbour, "tripot", "day-one", [Cold], null, TestContext.Current.CancellationToken)).Problems);
        Assert.Equal("tripod", problem.Nearest);
    }

    [Fact]
    public void The_table_as_text_quotes_what_needs_it_and_has_units_in_its_headings()
    {
        var table = Run(Energy);
        var odd = table with { Rows = [table.Rows[0] with { Values = ["a \"b\",\nc"] }] };
        var lines = odd.ToCsv().Split("\r\n");
        Assert.Equal("parts.brick-190wh.battery.energy,"
            + "lasts,runtime_h,reserve_h,reserve_is_lower_bound,stopped_by,stopped_in,"
            + "from_batteries_Wh,energy_left_Wh,coldest_battery_C", lines[0]);
        Assert.StartsWith("\"a \"\"b\"\",\nc\",", lines[1], StringComparison.Ordinal);
        Assert.Equal("", lines[^1]);
    }

    private static SweepTable Run(params SweepAxis[] axes) =>
        GridSweep.Run(Harbour, "tripod", "day-one", axes, null, TestContext.Current.CancellationToken);

    private sealed class Told : IProgress<double>
    {
        public Action? Each { get; init; }

        public List<double> Shares { get; } = [];

        public void Report(double value)
        {
            lock (Shares)
                Shares.Add(value);
            Each?.Invoke();
        }
    }
}

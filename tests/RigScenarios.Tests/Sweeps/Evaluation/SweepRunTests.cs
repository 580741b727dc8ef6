using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Tests.Sweeps.Evaluation;

public sealed class SweepRunTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public void Records_stand_in_the_order_of_the_plan() => Assert.Equal(
        ["0 -12 °C|150 Wh", "1 -12 °C|190 Wh", "2 -2 °C|150 Wh", "3 -2 °C|190 Wh", "4 8 °C|150 Wh", "5 8 °C|190 Wh"],
        SweepRun.Records(SweptHarbour.Ask(SweptHarbour.Grid, "lasts"), cancellation: Cancellation)
            .Select(record => $"{record.Number} {string.Join('|', record.Values)}"));

    [Theory]
    [InlineData("all")]
    [InlineData("energy_left_Wh")]
    [InlineData("reserve_h")]
    public async Task One_core_gives_what_many_give(string column)
    {
        var question = SweptHarbour.Ask(SweptHarbour.Drawn(40), column);
        var one = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, maxConcurrencyLevel: 1).ExclusiveScheduler;
        var alone = await Task.Factory.StartNew(() => Texts(question), Cancellation, TaskCreationOptions.None, one);
        Assert.Equal(40, alone.Count);
        Assert.Equal(alone, Texts(question));
    }

    [Fact]
    public void Parts_give_what_the_whole_gives()
    {
        var question = SweptHarbour.Ask(SweptHarbour.Drawn(30), "reserve_h", "stopped_by");
        var parts = new[] { (0, 7), (7, 1), (8, 22) }
            .SelectMany(part => SweepRun.Records(question, part.Item1, part.Item2, null, Cancellation)).Select(Text);
        Assert.Equal(Texts(question), parts);
    }

    [Fact]
    public void Points_of_the_plan_give_the_numbers_of_its_records()
    {
        var plan = SweptHarbour.Drawn(12);
        var question = SweptHarbour.Ask(plan, "reserve_h");
        var points = Enumerable.Range(0, 12).Select(number => plan.Unit(number)).ToList();
        var reserve = question.Columns[0];
        Assert.Equal(SweepRun.Records(question, null, Cancellation).Select(record => record.Cells[0].Number!.Value),
            SweepRun.Numbers(question, reserve, points, null, Cancellation));
        var words = SweepColumns.Choose(SweptHarbour.Scenario, ["stopped_by"])[0];
        Assert.Throws<ArgumentException>(() => SweepRun.Numbers(question, words, points, null, Cancellation));
    }

    [Fact]
    public void Yes_and_no_are_one_and_zero_as_numbers()
    {
        var question = SweptHarbour.Ask(SweptHarbour.Drawn(1));
        var lasts = SweepColumns.Choose(SweptHarbour.Scenario, ["lasts"])[0];
        // Cold with a small battery; warm with a large one and little load.
        Assert.Equal([0, 1], SweepRun.Numbers(question, lasts, [[0, 0, 1], [1, 1, 0]], null, Cancellation));
    }

    [Fact]
    public void Progress_rises_to_the_count()
    {
        var told = new Told();
        var question = SweptHarbour.Ask(SweptHarbour.Drawn(50), "lasts");
        Assert.Equal(50, SweepRun.Records(question, told, Cancellation).Count());
        Assert.Equal(new SweepProgress(50, 50), told.All[^1]);
        Each.Of(told.All, progress => Assert.InRange(progress.Done, 1, 50));
    }

    [Fact]
    public void A_sweep_that_is_stopped_says_so_and_leaves_nothing_running()
    {
        using var stop = new CancellationTokenSource();
        var question = SweptHarbour.Ask(SweptHarbour.Drawn(1_000_000), "energy_left_Wh");
        var seen = 0;
        Assert.ThrowsAny<OperationCanceledException>(() =>
        {
            foreach (var _ in SweepRun.Records(question, null, stop.Token))
            {
                if (++seen == 3)
                    stop.Cancel();
            }
        });
        Assert.InRange(seen, 3, 100_000);
    }

    [Fact]
    public void Whoever_has_seen_enough_may_go() =>
        Assert.Equal(5, SweepRun.Records(SweptHarbour.Ask(SweptHarbour.Drawn(1_000_000_000), "reserve_h"), null, Cancellation)
            .Take(5).Count());

    [Fact]
    public void Numbers_beyond_the_plan_are_refused()
    {
        var question = SweptHarbour.Ask(SweptHarbour.Grid, "lasts");
        Assert.Throws<ArgumentOutOfRangeException>(() => SweepRun.Records(question, 7, 0, null, Cancellation));
        Assert.Throws<ArgumentOutOfRangeException>(() => SweepRun.Records(question, 2, 5, null, Cancellation));
        Assert.Empty(SweepRun.Records(question, 6, 0, null, Cancellation));
    }

    [Fact]
    public void What_is_refused_is_told_before_anything_runs()
    {
        var question = SweptHarbour.Ask(SweptHarbour.Grid with
        {
            Axes = [SweptHarbour.Cold with { Values = ["-8 °C", "-90 °C", "cold"] }],
        }, "lasts");
        var problems = Assert.Throws<ScenarioProblemsException>(() => SweepRun.Records(question, null, Cancellation)).Problems;
        Assert.Equal(["days.day-one.ambient", "days.day-one.ambient"], problems.Select(problem => problem.Path));
        var build = Assert.Throws<ScenarioProblemsException>(() =>
            SweepRun.Records(SweptHarbour.Ask(SweptHarbour.Grid) with { Build = "tripot" }, null, Cancellation));
        Assert.Equal("tripod", Assert.Single(build.Problems).Nearest);
    }

    [Fact]
    public void A_combination_that_does_not_fit_is_told_with_its_number_and_values()
    {
        // Each is accepted alone, but the build may not have more of a thing than the kit.
        var plan = new SweepPlan
        {
            Axes = [new("kit.monitor.count", ["1", "2"]), new("builds.tripod.devices.monitor.count", ["1"])],
        };
        var fits = SweepRun.Records(SweptHarbour.Ask(plan, "lasts"), null, Cancellation).ToList();
        Assert.Equal(2, fits.Count);
        var problems = Assert.Throws<ScenarioProblemsException>(() => SweepRun.Records(SweptHarbour.Ask(plan with
        {
            Axes = [new("kit.monitor.count", ["2", "1"]), new("builds.tripod.devices.monitor.count", ["1", "2"])],
        }, "lasts"), null, Cancellation)).Problems;
        Assert.Contains("count", Assert.Single(problems).Path, StringComparison.Ordinal);
    }

    [Fact]
    public void A_combination_that_only_the_middle_of_a_sweep_has_is_refused_when_its_turn_comes()
    {
        // Both ends of each list fit those of the other; 600 scenarios, of which two dozen are tried beforehand.
        var counts = Enumerable.Range(1, 30).Select(count => count == 17 ? "2" : "1").ToList();
        var plan = new SweepPlan
        {
            Axes =
            [
                new("builds.tripod.devices.monitor.count", counts),
                new("kit.monitor.count", [.. Enumerable.Range(1, 20).Select(count => count is 3 or 8 ? "1" : "2")]),
            ],
        };
        var question = SweptHarbour.Ask(plan, "lasts") with
        {
            Scenario = RigScenarios.Files.ScenarioPath.Set(SweptHarbour.Scenario, "kit.monitor.count", "2"),
        };
        var seen = 0L;
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() =>
        {
            foreach (var record in SweepRun.Records(question, null, Cancellation))
                seen = record.Number;
        }).Problems);
        Assert.Equal("builds.tripod.devices.monitor.count", problem.Path);
        Assert.Contains("scenario 323 of the sweep", problem.Problem, StringComparison.Ordinal);
        Assert.InRange(seen, 0, 322);
    }

    private static List<string> Texts(SweepQuestion question) =>
        [.. SweepRun.Records(question, cancellation: Cancellation).Select(Text)];

    private static string Text(SweepRecord record) =>
        $"{record.Number}: {string.Join(", ", record.Values)}: {string.Join(" | ", record.Cells)}";

    private sealed class Told : IProgress<SweepProgress>
    {
        public List<SweepProgress> All { get; } = [];

        public void Report(SweepProgress value) => All.Add(value);
    }
}

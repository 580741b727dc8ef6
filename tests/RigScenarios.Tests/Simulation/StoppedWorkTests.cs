using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Search;
using RigScenarios.Simulation;
using RigScenarios.Sweeps;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>
/// Whatever takes long hears at once that it is to stop: counted in steps after the stop, not in seconds, so that a slow machine
/// changes nothing.
/// </summary>
public sealed class StoppedWorkTests
{
    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    /// <summary>300 blocks of takes and resets of a second: 6,000 stretches of one state each, and a reserve.</summary>
    private static readonly DayPlan ManyTakes = Plans.Plan(1, 1) with
    {
        Days =
        [
            new ShootingDay
            {
                Blocks = new(Enumerable.Range(0, 300).Select(i => KeyValuePair.Create($"block-{i}", new DayBlock
                {
                    Length = Duration.FromSeconds(20), Others = PowerState.Record,
                    Cycle = new TakeCycle(Duration.FromSeconds(1), Duration.FromSeconds(1)),
                }))),
            },
        ],
    };

    /// <summary>The last of them is in the reserve, which may go on for ten days after the last block.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3000)]
    [InlineData(6000)]
    [InlineData(6500)]
    public void A_run_begins_no_further_stretch(int stretch) =>
        Assert.Equal(0, StepsAfterStop<double>(stretch, (progress, stop) =>
            DaySimulation.Run(Plans.Rig, ManyTakes, new SimulationOptions(), progress, stop)));

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    public void A_search_for_what_would_make_it_work_tries_nothing_more(int trial)
    {
        var answer = RigAnswer.Of(Harbour, "tripod", ["day-one"], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        Assert.NotEqual(Verdict.Holds, answer.Verdict);
        Assert.Equal(0, StepsAfterStop<double>(trial, (progress, stop) => WouldWork.Find(answer, null, progress, stop)));
    }

    [Fact]
    public void A_look_at_what_is_assumed_tries_nothing_more()
    {
        var answer = RigAnswer.Of(Harbour, "tripod", ["day-one"], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(0, StepsAfterStop<double>(2, (progress, stop) =>
            LeadingAssumptions.Find(answer, progress: progress, cancellation: stop)));
    }

    [Fact]
    public void A_search_for_the_least_kit_tries_nothing_more() =>
        Assert.Equal(0, StepsAfterStop<LeastKitProgress>(1, (progress, stop) =>
            LeastKit.Find(Plans.Rig, Plans.Plan(5, 6), KitWish.None, progress, stop)));

    /// <summary>Each processor may have been in the middle of one run.</summary>
    [Fact]
    public void A_sweep_ends_no_more_than_one_run_on_each_processor() =>
        Assert.InRange(StepsAfterStop<double>(3, (progress, stop) => GridSweep.Run(Harbour, "tripod", ["day-one"],
            [new SweepAxis("conditions.ambient", [.. Enumerable.Range(-20, 60).Select(celsius => $"{celsius} °C")])],
            progress, stop)), 0, Environment.ProcessorCount);

    /// <summary>Stops the work at one of its steps and gives the number of steps after that.</summary>
    private static int StepsAfterStop<T>(int at, Action<IProgress<T>, CancellationToken> work)
    {
        using var stop = new CancellationTokenSource();
        var steps = 0;
        var progress = new Told<T>(() =>
        {
            if (Interlocked.Increment(ref steps) == at)
                stop.Cancel();
        });
        Assert.ThrowsAny<OperationCanceledException>(() => work(progress, stop.Token));
        Assert.True(steps >= at, $"it took {steps} steps only, and was to be stopped at step {at}");
        return steps - at;
    }

    private sealed class Told<T>(Action step) : IProgress<T>
    {
        public void Report(T value) => step();
    }
}

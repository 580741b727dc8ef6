using RigScenarios.Fits;
using UnitsNet;
using static RigScenarios.Tests.Fits.Noted;

namespace RigScenarios.Tests.Fits;

/// <summary>What must hold for any notes.</summary>
public sealed class FitPropertyTests
{
    private const int Cases = 25;

    [Fact]
    public void The_order_of_the_notes_means_nothing() => Drawn.Cases(20_000, Cases, random =>
    {
        var notes = Any(random, 5);
        var (one, other) = (Fit(notes), Fit([.. notes.Reverse()]));

        Assert.Equal(one.Cost, other.Cost, 1e-6 * (1 + one.Cost));
        Each.Pair(one.Estimates, other.Estimates, (a, b) =>
        {
            Assert.Equal(a.Log, b.Log, 1e-3 * a.StandardError);
            Assert.Equal(a.StandardError, b.StandardError, 1e-3 * a.StandardError);
        }, atLeast: 3);
    });

    [Fact]
    public void A_note_without_weight_changes_nothing() => Drawn.Cases(21_000, Cases, random =>
    {
        var notes = Any(random, 3);
        var useless = Note("useless", Run(33), 1000) with { ClockError = Duration.FromDays(1000) };
        var (before, after) = (Fit(notes), Fit([.. notes, useless]));

        Assert.Equal(before.Data + 1, after.Data);
        Each.Pair(before.Estimates, after.Estimates, (a, b) =>
        {
            Assert.Equal(a.Log, b.Log, 1e-3 * a.StandardError);
            Assert.Equal(a.StandardError, b.StandardError, 1e-4 * a.StandardError);
        }, atLeast: 3);
    });

    [Fact]
    public void A_bound_far_below_changes_nothing() => Drawn.Cases(22_000, Cases, random =>
    {
        var notes = Any(random, 3);
        var (before, after) = (Fit(notes), Fit([.. notes, Still("short", Run(30), 10)]));

        Assert.Equal(before.Data, after.Data);
        Each.Pair(before.Estimates, after.Estimates, (a, b) => Assert.Equal(a.Log, b.Log, 1e-3 * a.StandardError), atLeast: 3);
    });

    [Fact]
    public void A_note_that_says_what_is_known_narrows_and_never_widens() => Drawn.Cases(23_000, Cases, atLeast: 15,
        (random, looked) =>
    {
        var notes = Any(random, 3);
        var before = Fit(notes);
        var run = AnyRun(random);
        var expected = before.Forecast(run, TestContext.Current.CancellationToken);

        var after = Fit([.. notes, Note("again", run, expected.Runtime.Minutes)]);

        // A fit that scatters is another matter: one note that fits well makes the scatter less.
        if (before.Inflation > 1 || before.Outliers.Count != after.Outliers.Count)
            return;
        looked.One();
        Each.Pair(before.Estimates, after.Estimates, (a, b) =>
        {
            Assert.Equal(a.Log, b.Log, 0.01 * a.StandardError);
            Assert.True(b.StandardError <= 1.001 * a.StandardError, $"{a} became {b}");
        }, atLeast: 3);
        Assert.True(after.Forecast(run, TestContext.Current.CancellationToken).BatteryDeviation < expected.BatteryDeviation);
    });

    [Fact]
    public void The_same_problem_gives_the_same_answer_to_the_last_digit() => Drawn.Cases(24_000, 5, random =>
    {
        var notes = Any(random, 4);

        var (one, other) = (Fit(notes, checks: true), Fit(notes, checks: true));

        Each.Pair(one.Estimates, other.Estimates, (a, b) => Assert.Equal(a, b), atLeast: 3);
    });

    private static IReadOnlyList<FieldNote> Any(Random random, int count)
    {
        var (capacity, resistance) = (Between(random, 0.75, 1), Between(random, 0.9, 1.8));
        return [.. Enumerable.Range(0, count).Select(i =>
        {
            var run = AnyRun(random);
            return Note($"n{i}", run, Minutes(run, capacity, resistance) * Between(random, 0.93, 1.07));
        })];
    }

    private static BatteryRun AnyRun(Random random) => random.Next(3) switch
    {
        0 => Run(Between(random, 15, 50), Between(random, -5, 35)),
        1 => Run(Between(random, 15, 50), Between(random, -5, 35), charge: Between(random, 0.5, 0.95)),
        _ => Run(Between(random, 15, 50), 20, 1, new RunStretch(Duration.FromMinutes(30),
            [new RunState(Ratio.FromPercent(50), Camera(40)), new RunState(Ratio.FromPercent(50), Camera(10))])),
    };

    private static double Between(Random random, double low, double high) => low + ((high - low) * random.NextDouble());
}

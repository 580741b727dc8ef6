using RigScenarios.Sweeps.Sensitivity;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Sensitivity;

public class SobolDesignTests
{
    private static readonly UncertainThing[] Two = [UncertainThing.Of("one", 0), UncertainThing.Of("other", 1)];

    [Fact]
    public void The_same_seed_gives_the_same_indices_and_another_seed_others()
    {
        var (one, again, other) = (Run(7), Run(7), Run(8));

        Assert.Equal(one.Things.Select(thing => thing.FirstOrder), again.Things.Select(thing => thing.FirstOrder));
        Assert.Equal(one.Things.Select(thing => thing.Total), again.Things.Select(thing => thing.Total));
        Assert.NotEqual(one.Things[0].FirstOrder, other.Things[0].FirstOrder);

        static SobolIndices Run(long seed) => SobolDesign.Run(2, Two, Sum, new() { Rows = 64, Redraws = 50, Seed = seed },
            TestContext.Current.CancellationToken);
    }

    [Fact]
    public void A_figure_that_does_not_vary_has_no_shares()
    {
        var found = SobolDesign.Run(2, Two, points => [.. points.Select(_ => 12345.678)], new() { Rows = 64 },
            TestContext.Current.CancellationToken);

        Assert.Equal(0, found.Variance);
        Assert.Equal(0, found.Together);
        Each.Of(found.Things, thing => Assert.Equal((new IndexEstimate(), new IndexEstimate()),
            (thing.FirstOrder, thing.Total)), 2);
    }

    [Fact]
    public void A_large_constant_beside_it_changes_no_share()
    {
        var plain = SobolDesign.Run(2, Two, Sum, new() { Rows = 256 }, TestContext.Current.CancellationToken);
        var far = SobolDesign.Run(2, Two, points => [.. Sum(points).Select(value => value + 1e6)], new() { Rows = 256 },
            TestContext.Current.CancellationToken);

        Each.Pair(plain.Things, far.Things, (one, other) =>
        {
            Assert.Equal(one.FirstOrder.Value, other.FirstOrder.Value, 1e-6);
            Assert.Equal(one.Total.High, other.Total.High, 1e-6);
        }, 2);
    }

    [Fact]
    public void Rows_with_a_figure_that_is_not_known_are_left_out_and_told()
    {
        var found = SobolDesign.Run(2, Two, points => [.. points.Select(point => point[0] > 0.9 ? double.NaN : point[0])],
            new() { Rows = 1000 }, TestContext.Current.CancellationToken);

        // A row is left out where one of A, B and the two swapped points is above: those have one of two coordinates.
        Assert.InRange(found.RowsUnknown, 130, 250);
        Assert.Equal("one", found.Things[0].Name);
        Assert.Equal(0.81 / 12, found.Variance, 0.01);
        Assert.Equal(0, found.Things[1].Total.Value);
    }

    [Fact]
    public void Where_nothing_is_known_the_mean_is_none_and_nothing_has_a_share()
    {
        var found = SobolDesign.Run(2, Two, points => [.. points.Select(_ => double.NaN)], new() { Rows = 16 },
            TestContext.Current.CancellationToken);

        Assert.Equal(16, found.RowsUnknown);
        Assert.True(double.IsNaN(found.Mean));
        Assert.Equal(0, found.Things[0].Total.Value);
    }

    [Fact]
    public void The_figure_is_asked_for_each_row_and_thing_and_twice_more()
    {
        var asked = 0;

        var found = SobolDesign.Run(2, Two, points =>
        {
            asked += points.Count;
            return Sum(points);
        }, new() { Rows = 32 }, TestContext.Current.CancellationToken);

        Assert.Equal(4 * 32, asked);
        Assert.Equal(4 * 32, found.Runs);
    }

    [Fact]
    public void Wrong_orders_are_refused_in_words()
    {
        var never = TestContext.Current.CancellationToken;
        var wrong = Assert.Throws<ArgumentException>(() => SobolDesign.Run(1, Two, Sum, null, never));
        Assert.Contains("\"other\" has coordinates 1; accepted: one or more from 0 to 0", wrong.Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => SobolDesign.Run(2, Two, _ => [1, 2, 3], null, never));
        Assert.Throws<ArgumentOutOfRangeException>(() => new VarianceOptions { Rows = 4 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new VarianceOptions { Redraws = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new VarianceOptions { Level = Ratio.FromPercent(100) });
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();

        Assert.Throws<OperationCanceledException>(() => SobolDesign.Run(2, Two, points =>
        {
            stop.Cancel();
            return Sum(points);
        }, new() { Rows = 32 }, stop.Token));
    }

    private static IReadOnlyList<double> Sum(IReadOnlyList<double[]> points) =>
        [.. points.Select(point => (2 * point[0]) + point[1])];
}

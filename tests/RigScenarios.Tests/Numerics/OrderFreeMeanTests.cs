using RigScenarios.Numerics;

namespace RigScenarios.Tests.Numerics;

/// <summary>The order-free mean by its own definition and its properties, on drawn games.</summary>
public class OrderFreeMeanTests
{
    [Fact]
    public void It_is_the_mean_over_all_orders() => Drawn.Cases(100, 30, random =>
    {
        var (changes, worths) = Game(random);
        var orders = Orders([.. Enumerable.Range(0, changes)]).ToList();
        var expected = new double[changes];
        foreach (var order in orders)
        {
            var set = 0;
            foreach (var change in order)
            {
                expected[change] += (worths[set | (1 << change)] - worths[set]) / orders.Count;
                set |= 1 << change;
            }
        }

        Each.Pair(expected, OrderFreeMean.Of(changes, set => worths[set]), (one, other) => Assert.Equal(one, other, 1e-9));
    });

    [Fact]
    public void The_shares_add_up_to_the_whole_effect() => Drawn.Cases(200, 30, random =>
    {
        var (changes, worths) = Game(random);

        Assert.Equal(worths[^1] - worths[0], OrderFreeMean.Of(changes, set => worths[set]).Sum(), 1e-9);
    });

    [Fact]
    public void A_change_that_does_nothing_has_no_share_and_twins_have_the_same()
    {
        // Worth: change 0 adds 3 once change 1 or 2 is made; change 3 does nothing.
        var shares = OrderFreeMean.Of(4, set => (set & 1) != 0 && (set & 0b110) != 0 ? 3 : 0);

        Assert.Equal(0, shares[3]);
        Assert.Equal(shares[1], shares[2], 12);
        // By hand: of the six orders of the first three, change 0 comes first in two, and then the next one brings the 3.
        Assert.Equal(2, shares[0], 12);
    }

    [Fact]
    public void Leaving_one_out_is_the_same_for_a_sum_and_leaves_something_over_elsewhere()
    {
        double[] parts = [5, -2, 0.5];
        double Sum(int set) => parts.Where((_, i) => (set & (1 << i)) != 0).Sum();
        Each.Pair(parts, OrderFreeMean.LeaveOneOut(3, Sum), (one, other) => Assert.Equal(one, other, 12));

        // Two that only work together: each alone loses all of it.
        Assert.Equal([1.0, 1.0], OrderFreeMean.LeaveOneOut(2, set => set == 3 ? 1 : 0));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(21)]
    public void A_number_of_changes_that_can_not_be_is_refused(int changes) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderFreeMean.Of(changes, _ => 0));

    private static (int Changes, double[] Worths) Game(Random random)
    {
        var changes = random.Next(1, OrderFreeMean.MostChanges + 1);
        return (changes, [.. Enumerable.Range(0, 1 << changes).Select(_ => random.NextDouble() * 100)]);
    }

    private static IEnumerable<IReadOnlyList<int>> Orders(IReadOnlyList<int> left) => left.Count == 0 ? [[]]
        : left.SelectMany(first => Orders([.. left.Where(other => other != first)]).Select(rest => (IReadOnlyList<int>)[first,
            .. rest]));
}

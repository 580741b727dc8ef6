using RigScenarios.Numerics;

namespace RigScenarios.Tests.Numerics;

public sealed class SeededSequenceTests
{
    // The first five numbers of SplitMix64 for the seed 1234567: Rosetta Code, "Pseudo-random numbers/Splitmix64", Task.
    [Fact]
    public void It_gives_the_published_numbers()
    {
        var sequence = new SeededSequence(1_234_567);
        ulong[] published = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431,
            16408922859458223821];
        Assert.Equal(published, published.Select(_ => sequence.Next()));
    }

    [Fact]
    public void A_shuffle_keeps_every_item_and_hits_every_order_about_as_often()
    {
        var orders = Enumerable.Range(0, 6000).Select(seed => string.Concat(new SeededSequence(seed).Shuffled("abc")))
            .GroupBy(order => order).ToDictionary(order => order.Key, order => order.Count());
        Assert.Equal(6, orders.Count);
        // 1000 expected; six standard deviations of a count are 173.
        Each.Of(orders.Values, count => Assert.InRange(count, 827, 1173), atLeast: 6);
    }

    [Fact]
    public void A_number_stays_below_its_bound()
    {
        var sequence = new SeededSequence(7);
        var drawn = Enumerable.Range(0, 1000).Select(_ => sequence.Below(5)).Distinct().Order();
        Assert.Equal([0, 1, 2, 3, 4], drawn);
    }
}

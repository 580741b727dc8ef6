using RigScenarios.Numerics;

namespace RigScenarios.Tests.Numerics;

public sealed class SortedPlaceTests
{
    [Fact]
    public void It_is_the_number_of_leading_items_whatever_their_number()
    {
        for (var count = 0; count <= 17; count++)
        {
            for (var leading = 0; leading <= count; leading++)
                Assert.Equal(leading, SortedPlace.CountWhile(count, i => i < leading));
        }
    }

    /// <summary>Halving asks at most log2(n) + 1 times; a search from one end would ask 72,000 times.</summary>
    [Fact]
    public void It_asks_seldom()
    {
        var asked = 0;
        Assert.Equal(50_000, SortedPlace.CountWhile(72_000, i =>
        {
            asked++;
            return i < 50_000;
        }));
        Assert.InRange(asked, 1, 17);
    }
}

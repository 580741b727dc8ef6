using RigScenarios.Numerics;

namespace RigScenarios.Tests.Numerics;

public class NeverFallingTests
{
    [Fact]
    public void Falling_neighbours_become_their_mean()
    {
        var (values, changed) = NeverFalling.Of([1, 3, 2, 4, 4, 1]);

        Assert.Equal([1, 2.5, 2.5, 3, 3, 3], values);
        Assert.Equal(5, changed);
    }

    [Fact]
    public void No_other_never_falling_values_are_nearer()
    {
        Drawn.Cases(1, 300, random =>
        {
            var given = Enumerable.Range(0, random.Next(1, 30)).Select(_ => random.NextDouble()).ToArray();
            var (nearest, _) = NeverFalling.Of(given);
            var other = Enumerable.Range(0, given.Length).Select(_ => random.NextDouble()).Order().ToArray();
            // On the way to any other one the distance grows at once: the set is convex.
            var along = nearest.Zip(other, (one, two) => one + (0.01 * (two - one))).ToArray();

            Each.Step(nearest, (before, after) => Assert.True(after >= before), atLeast: 0);
            Assert.True(Distance(given, nearest) <= Distance(given, along) + 1e-15);
        });
    }

    private static double Distance(double[] one, double[] other) =>
        one.Zip(other, (a, b) => (a - b) * (a - b)).Sum();
}

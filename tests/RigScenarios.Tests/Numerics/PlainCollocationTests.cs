using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Tests.Numerics;

/// <summary>What the browser sums lane by lane is what vectors give elsewhere, to a rounding.</summary>
public class PlainCollocationTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1e-6)]
    [InlineData(0.49)]
    [InlineData(0.51)]
    [InlineData(0.8)]
    [InlineData(3)]
    [InlineData(3000)]
    public void A_branch_answers_alike(double ratio)
    {
        // Just above 0.5 both lose the digits of 120/x^5.
        var off = ratio is > 0.5 and < 1 ? 1e-9 : 1e-13;
        Span<Vector512<double>> vectors = stackalloc Vector512<double>[Collocation.Count];
        Span<Vector512<double>> plain = stackalloc Vector512<double>[Collocation.Count];
        Span<double> one = stackalloc double[Collocation.Count];
        Collocation.Branch(Collocation.Places, ratio, vectors, out var decay);
        PlainCollocation.Branch(Collocation.Places, ratio, plain, out var plainDecay);

        for (var lane = 0; lane < Vector512<double>.Count; lane++)
        {
            Assert.Equal(decay[lane], plainDecay[lane], 1e-15);
            Assert.Equal(decay[lane], PlainCollocation.BranchAt(Collocation.Places[lane], ratio, one), 1e-15);
            for (var j = 0; j < Collocation.Count; j++)
            {
                Assert.Equal(vectors[j][lane], plain[j][lane], off);
                Assert.Equal(vectors[j][lane], one[j], off);
            }
        }
    }

    [Fact]
    public void Sums_and_the_largest_are_alike()
    {
        Span<Vector512<double>> weights = stackalloc Vector512<double>[Collocation.Count];
        Collocation.Branch(Collocation.Places, 0.7, weights, out var decay);
        var values = Vector512.Create(3.0, -7, 2, 0.25, 6, 1, -9, 4);

        Same(Collocation.Weighted(weights, values), PlainCollocation.Weighted(weights, values));
        Same(Collocation.Response(weights, values, 11, decay, -2), PlainCollocation.Response(weights, values, 11, decay, -2));
        Assert.Equal(6, PlainCollocation.Largest(values));
        Assert.Equal(6, Collocation.Largest(values));
        Assert.Equal(9, PlainCollocation.LargestSize(values));
        Assert.Equal(9, Collocation.LargestSize(values));
    }

    [Theory]
    [InlineData(0.2, true)]
    [InlineData(0.05, false)]
    [InlineData(double.NaN, false)]
    public void Lanes_are_near_alike(double limit, bool near)
    {
        var values = Vector512.Create(1.0);
        var others = values.WithElement(5, 1.1);

        Assert.Equal(near, PlainCollocation.IsNear(values, others, limit));
        Assert.Equal(near, Collocation.IsNear(values, others, limit));
        Assert.False(PlainCollocation.IsNear(values, others.WithElement(2, double.NaN), limit));
        Assert.False(Collocation.IsNear(values, others.WithElement(2, double.NaN), limit));
    }

    private static void Same(Vector512<double> expected, Vector512<double> actual)
    {
        for (var lane = 0; lane < Vector512<double>.Count; lane++)
            Assert.Equal(expected[lane], actual[lane], 1e-13 * Math.Max(1, Math.Abs(expected[lane])));
    }
}

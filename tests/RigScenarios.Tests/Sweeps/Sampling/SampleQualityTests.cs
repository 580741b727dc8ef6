using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Tests.Sweeps.Sampling;

/// <summary>What docs/what-if.md says of the ways of sampling, tried on sums that are known.</summary>
public sealed class SampleQualityTests
{
    private const int Samples = 1024;
    private const int Fields = 20;

    [Theory]
    [InlineData(SamplingMethod.Random)]
    [InlineData(SamplingMethod.LatinHypercube)]
    [InlineData(SamplingMethod.Sobol)]
    public void No_two_fields_hang_together_by_chance(SamplingMethod method)
    {
        var points = Points(method, Fields, 5);
        var pairs = Enumerable.Range(0, Fields)
            .SelectMany(first => Enumerable.Range(first + 1, Fields - first - 1).Select(second => (first, second)));

        // Five deviations of 1/√1024: of 190 pairs of independent fields none is so far off.
        Each.Of(pairs, pair => Assert.InRange(12 * points.Average(point =>
            (point[pair.first] - 0.5) * (point[pair.second] - 0.5)), -0.16, 0.16), 190);
    }

    [Fact]
    public void A_Sobol_sequence_has_by_far_the_smallest_error_and_dice_the_largest()
    {
        var errors = Enum.GetValues<SamplingMethod>().ToDictionary(method => method, method => Math.Sqrt(
            Enumerable.Range(1, 20).Average(seed => Math.Pow(Points(method, 6, seed).Average(Smooth) - 1, 2))));

        Assert.InRange(errors[SamplingMethod.LatinHypercube], 0, errors[SamplingMethod.Random] / 2);
        Assert.InRange(errors[SamplingMethod.Sobol], 0, errors[SamplingMethod.LatinHypercube] / 2);
    }

    [Theory]
    [InlineData(SamplingMethod.Random)]
    [InlineData(SamplingMethod.LatinHypercube)]
    [InlineData(SamplingMethod.Sobol)]
    public void Over_many_seeds_every_sample_is_anywhere_as_often(SamplingMethod method)
    {
        // The first sample alone: neither a corner nor the middle.
        var plan = Plan(method, 1);
        var shares = Enumerable.Range(1, 4000).Select(seed => (plan with { Seed = seed }).Unit(0)[0]).Order().ToList();

        // The 99.9 % point of the largest gap between such shares and a uniform distribution is 1.95/√4000 (A. Kolmogorov).
        Assert.InRange(shares.Select((share, place) => Math.Abs(share - ((place + 0.5) / 4000))).Max(),
            0, 1.95 / Math.Sqrt(4000));
    }

    // Its mean over the cube is 1.
    private static double Smooth(double[] point) => point.Aggregate(1.0, (product, share) => product * (1 + ((share - 0.5) / 2)));

    private static List<double[]> Points(SamplingMethod method, int fields, long seed)
    {
        var plan = Plan(method, fields) with { Seed = seed };
        return [.. Enumerable.Range(0, Samples).Select(number => plan.Unit(number))];
    }

    private static SweepPlan Plan(SamplingMethod method, int fields) => new()
    {
        Uncertain = [.. Enumerable.Range(0, fields).Select(field => new UncertainField($"field-{field}", Spread.Uniform(0, 1)))],
        Method = method, Samples = Samples,
    };
}

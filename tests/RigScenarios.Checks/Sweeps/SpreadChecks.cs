using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Checks.Sweeps;

/// <summary>Spreads against published quantiles and closed forms.</summary>
public class SpreadChecks
{
    private const int Draws = 1 << 16;

    // Table 26.5 gives x for Q(x) = p: 0.1, 0.05, 0.025, 0.01, 0.001 (two or more digits of p).
    [Theory]
    [InlineData(0.10, 1.28155)]
    [InlineData(0.05, 1.64485)]
    [InlineData(0.025, 1.95996)]
    [InlineData(0.01, 2.32635)]
    [InlineData(0.001, 3.09023)]
    [Source(SourceKind.Handbook, "M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), table 26.5, values "
        + "of x for the normal distribution in terms of Q; from memory")]
    public void Quantiles_of_the_normal_spread(double above, double deviations)
    {
        // The ends at five deviations take 3e-7 from each side.
        Assert.Equal(deviations, Spread.Normal(0, 1).NumberAt(1 - above), 2e-4);
        Assert.Equal(-deviations, Spread.Normal(0, 1).NumberAt(above), 2e-4);
        Assert.Equal(Math.Pow(1.2, deviations), Spread.Lognormal(1, 1.2).NumberAt(1 - above), 1e-4);
    }

    [Theory]
    [InlineData(-1, 2)]
    [InlineData(0, 1)]
    [InlineData(1, 3)]
    [InlineData(3, 5)]
    [InlineData(-5, -4)]
    [Source(SourceKind.ClosedForm, "N. L. Johnson, S. Kotz and N. Balakrishnan, Continuous Univariate Distributions, volume 1, "
        + "2nd edition 1994, section 10.1: mean (φ(a) - φ(b))/(Φ(b) - Φ(a)) of a normal variable cut to a…b; Φ by the series of "
        + "Abramowitz and Stegun 26.2.11")]
    public void The_mean_of_a_normal_spread_that_is_cut(double low, double high)
    {
        static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
        var spread = Spread.Normal(0, 1).Within(low, high);

        var mean = Mean(spread);

        Assert.Equal((Density(low) - Density(high)) / (Below(high) - Below(low)), mean, 2e-4);
    }

    [Fact]
    [Source(SourceKind.ClosedForm, "Mean (low + likely + high)/3 and variance (a² + b² + c² - ab - ac - bc)/18 of a triangle")]
    public void The_mean_and_the_variance_of_a_triangular_spread()
    {
        var spread = Spread.Triangular(2, 3, 7);

        Assert.Equal(4, Mean(spread), 1e-4);
        Assert.Equal((4 + 9 + 49 - 6 - 14 - 21) / 18.0, Mean(spread, 2) - 16, 1e-3);
    }

    [Fact]
    [Source(SourceKind.ClosedForm, "Mean median·exp(ln²(factor)/2) of a lognormal variable")]
    public void The_mean_of_a_lognormal_spread() =>
        Assert.Equal(190 * Math.Exp(Math.Log(1.1) * Math.Log(1.1) / 2),
            Mean(Spread.Lognormal(Energy.FromWattHours(190), 1.1)), 0.01);

    [Theory]
    [InlineData(0.8)]
    [InlineData(0.3)]
    [InlineData(-0.6)]
    [Source(SourceKind.ClosedForm, "K. Pearson, On further methods of determining correlation (1907): the rank correlation of "
        + "two normal variables is 6/π·asin(r/2)")]
    public void The_rank_correlation_of_fields_that_go_together(double coefficient)
    {
        var plan = new SweepPlan
        {
            // Ranks don't ask which spread it is.
            Uncertain = [new("a", Spread.Lognormal(1, 2)), new("b", Spread.Uniform(0, 1))],
            Correlations = [new("a", "b", coefficient)], Samples = Draws,
        };
        var points = Enumerable.Range(0, Draws).Select(number => plan.At(number).Values
            .Select(value => double.Parse(value, System.Globalization.CultureInfo.InvariantCulture)).ToArray()).ToList();

        Assert.Equal(6 / Math.PI * Math.Asin(coefficient / 2), RankCorrelation(points), 0.003);
    }

    private static double RankCorrelation(List<double[]> points)
    {
        double[] Ranks(int field)
        {
            var ranks = new double[points.Count];
            foreach (var (rank, number) in Enumerable.Range(0, points.Count).OrderBy(number => points[number][field]).Index())
                ranks[number] = rank;
            return ranks;
        }
        var squares = Ranks(0).Zip(Ranks(1), (one, other) => (one - other) * (one - other)).Sum();
        return 1 - (6 * squares / (points.Count * (((double)points.Count * points.Count) - 1)));
    }

    private static double Mean(Spread spread, int power = 1) => Enumerable.Range(0, Draws)
        .Average(number => Math.Pow(spread.NumberAt((number + 0.5) / Draws), power));

    private static double Below(double z)
    {
        var (term, sum) = (z, z);
        for (var n = 1; n < 200; n++)
        {
            term *= z * z / ((2 * n) + 1);
            sum += term;
        }
        return 0.5 + (sum * Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI));
    }
}

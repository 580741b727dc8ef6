using RigScenarios.Sweeps.Sensitivity;
using UnitsNet;

namespace RigScenarios.Checks.Sweeps;

/// <summary>Intervals of probabilities against published ones.</summary>
public class ChanceChecks
{
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    [Source(SourceKind.FromMemory, "R. G. Newcombe, Two-sided confidence intervals for the single proportion: comparison of "
        + "seven methods, Statistics in Medicine 17 (1998), pp. 857-872, table I, method 3 (Wilson without correction), 95 %")]
    public void Intervals_of_four_published_proportions(int yes, int of, double low, double high)
    {
        var interval = new Chance(yes, of - yes).Interval()!.Value;

        Assert.Equal(low, interval.Low.DecimalFractions, 0.00005);
        Assert.Equal(high, interval.High.DecimalFractions, 0.00005);
    }

    [Fact]
    [Source(SourceKind.ReferenceLibrary, "astropy, documentation of binom_conf_interval, interval \"wilson\", at its usual level "
        + "of one standard deviation (68.269 %): 4 of 5 gives 0.57921724, 0.92078259; read")]
    public void An_interval_of_one_deviation()
    {
        var interval = new Chance(4, 1).Interval(Ratio.FromPercent(68.269))!.Value;

        Assert.Equal(0.57921724, interval.Low.DecimalFractions, 5e-7);
        Assert.Equal(0.92078259, interval.High.DecimalFractions, 5e-7);
    }
}

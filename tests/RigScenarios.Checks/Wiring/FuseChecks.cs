using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>What a fuse is taken to carry for hours, against what makers and standards say.</summary>
public class FuseChecks
{
    /// <summary>
    /// At 25 °C the steady current of a fuse of UL 248-14 is to stay at or below 75 % of its rating: fuse makers' selection
    /// guides, as circuitprotection.ca tells it [second-hand]. That
    /// is below the 100 % that it carries and the 135 % at which it opens within an hour (UL 248-14 [second-hand]).
    /// </summary>
    [Theory]
    [InlineData(5, 3.75)]
    [InlineData(10, 7.5)]
    public void At_25_degrees_three_quarters_of_the_rating(double rating, double steady)
    {
        var found = new FuseData(ElectricCurrent.FromAmperes(rating)).SteadyAt(Temperature.FromDegreesCelsius(25)).Amperes;

        Assert.Equal(steady, found, 1e-12);
        Assert.True(found < rating);
    }

    /// <summary>About 0.2 %/K (fast) to 0.5 %/K (slow) less above 25 °C: interfacebus.com, "Fuse derating" [second-hand, a rule
    /// of thumb]. At 65 °C a slow one has 80 % left, a fast one 92 %.</summary>
    [Theory]
    [InlineData(0.5, 0.80)]
    [InlineData(0.2, 0.92)]
    public void Warm_fuses_carry_less(double percentPerKelvin, double left)
    {
        var fuse = new FuseData(ElectricCurrent.FromAmperes(10), Ratio.FromPercent(100), Ratio.FromPercent(percentPerKelvin));

        Assert.Equal(10 * left, fuse.SteadyAt(Temperature.FromDegreesCelsius(65)).Amperes, 1e-9);
        // Cold is not counted in its favour.
        Assert.Equal(10, fuse.SteadyAt(Temperature.FromDegreesCelsius(-20)).Amperes, 1e-12);
    }
}

using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Checks.Cells.Aging;

/// <summary>Usual lives by each set, as an independent program has them from the same equations.</summary>
[Source(SourceKind.IndependentProgram, "The program that solved data/aging-cases.json: two shoots a month, half emptied; figures "
    + "to the digits that its author's table has, read in the source")]
public class UsualLifeChecks
{
    private static readonly Duration ThreeYears = Duration.FromDays(3 * 365.25);

    // Years to 80 %, 0 for more than 40, and what is left after three years, by nmc, nca and nmc811si.
    [Theory]
    [InlineData("fridge", "half", 28, 0, 3.2, 0.946, 0.961, 0.810)]
    [InlineData("room", "half", 14, 32, 2.7, 0.924, 0.941, 0.782)]
    [InlineData("room", "full", 7.8, 11, 2.4, 0.894, 0.896, 0.761)]
    [InlineData("warm store", "full", 3.4, 5.7, 2.0, 0.815, 0.856, 0.735)]
    public void Years_and_what_is_left_after_three(string place, string kept, double nmc, double nca, double silicon,
        double nmcLeft, double ncaLeft, double siliconLeft)
    {
        var said = LifeInWords.Usual with { Place = StoragePlace.Find(place), Kept = Kept.Find(kept) };
        var lives = AgingBand.Of(AgingSets.Nmc, [], said.Use(ThreeYears)).Lives;
        Each.Pair(lives, [(nmc, nmcLeft), (nca, ncaLeft), (silicon, siliconLeft)], (life, expected) =>
        {
            var (years, left) = expected;
            var found = life.TimeTo(LifeResult.Replaced)?.Days / 365.25 ?? 0;
            Assert.Equal(years, found, years > 12 ? 0.5 : years > 10 ? 0.55 : 0.051);
            Assert.Equal(left, life.After(ThreeYears).CapacityLeft.DecimalFractions, 5.1e-4);
        });
    }

    [Fact]
    public void A_battery_of_which_nothing_is_said_would_be_so_after_three_years()
    {
        var band = AgingBand.Of(AgingSets.Nmc, [LifeInWords.Usual.Use(ThreeYears)]);
        Assert.Equal((0.894, 1.16), (Math.Round(band.Lives[0].Age.CapacityLeft.DecimalFractions, 3),
            Math.Round(band.Lives[0].Age.ResistanceFactor, 2)));
        Assert.Equal((0.76, 0.90), (Math.Round(band.Least.DecimalFractions, 2), Math.Round(band.Greatest.DecimalFractions, 2)));
    }

    // Full at 20 °C for 100 days, then at 30 °C for a year: an explicit step in the loss would give 9.84 %.
    [Fact]
    public void The_loss_is_carried_not_the_time()
    {
        Ratio full = Ratio.FromDecimalFractions(1);
        var age = BatteryLife.After(AgingSets.Nmc, false,
            [new Storage(Duration.FromDays(100), Temperature.FromDegreesCelsius(20), full),
                new Storage(Duration.FromDays(365), Temperature.FromDegreesCelsius(30), full)]).Age;
        Assert.Equal(6.94, 100 - age.CapacityLeft.Percent, 0.005);
    }
}

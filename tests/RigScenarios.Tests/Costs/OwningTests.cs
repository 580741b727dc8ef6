using RigScenarios.Costs;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Costs;

/// <summary>Owning over some years, by hand.</summary>
public sealed class OwningTests
{
    private static readonly OwningTerms Three = new() { Years = 3 };

    private static readonly OwnedThing Body = new("body", 1000);

    private static OwnedThing Battery(double? years) => new("battery", 300) { WearsOutIn = _ => years };

    // 1000 loses 30 % in its first year and 15 % in each of the next two: 1000 · 0.7 · 0.85 · 0.85 = 505.75.
    [Fact]
    public void A_thing_loses_of_its_value_what_is_given()
    {
        Assert.Equal(505.75m, Three.Resale(1000));
        Assert.Equal(700m, (Three with { Years = 1 }).Resale(1000));
        Assert.Equal(0m, (Three with { FirstYearLoss = Ratio.FromPercent(100) }).Resale(1000));
    }

    [Fact]
    public void Price_repairs_and_consumables_add_up_and_what_is_sold_counts_against_them()
    {
        var cost = Owning.Of([Body with { Count = 2 }], Three with { RepairsPerYear = 50, ConsumablesPerDay = 2 }, 40);
        Assert.Equal(new OwningCost(2000, 0, 150, 240, 1011.5m), cost);
        Assert.Equal(1378.5m, cost.Total);
    }

    [Fact]
    public void What_it_brings_is_taken_where_somebody_says() =>
        Assert.Equal(1000 - 620, Owning.Of([Body with { Resale = 620 }], Three, 0).Total);

    [Fact]
    public void Payments_count_in_the_middle_of_their_year_and_the_sale_at_its_end()
    {
        var cost = Owning.Of([Body with { Resale = 121 }],
            Three with { Years = 2, Rate = Ratio.FromPercent(10), RepairsPerYear = 100 }, 0);
        // 121 / 1.1² = 100; 100 / √1.1 + 100 / (1.1 √1.1).
        Assert.Equal(100, cost.Resale, 9);
        Assert.Equal((100 / Math.Sqrt(1.1)) + (100 / (1.1 * Math.Sqrt(1.1))), (double)cost.Repairs, 9);
    }

    // 300 each. Worn out after 2 of 3 years: one more, used for half of its life. After 0.75: three more, all used up. After 1.3:
    // one more whole, and of the next 0.4 / 1.3. A battery that lasts is sold like anything else: 300 · 0.50575 = 151.725.
    [Theory]
    [InlineData(2.0, 150, 0)]
    [InlineData(0.75, 900, 0)]
    [InlineData(1.3, 392.3076923077, 0)]
    [InlineData(3.0, 0, 151.725)]
    [InlineData(null, 0, 151.725)]
    public void A_battery_is_replaced_when_it_is_worn_out_the_last_one_in_part(double? years, double more, double sold)
    {
        var cost = Owning.Of([Battery(years)], Three, 20);
        Assert.Equal(more, (double)cost.Replacement, 9);
        Assert.Equal(sold, (double)cost.Resale, 9);
    }

    [Fact]
    public void Renting_the_same_is_each_years_rent()
    {
        var thing = Body with { Rent = new RentPrice(40), Count = 2 };
        Assert.Equal(3 * 2 * 120, Owning.Renting([thing], Three, 5));
        Assert.Equal(3 * 2 * 200, Owning.Renting([thing], Three with { DaysInARow = 1 }, 5));
        Assert.Null(Owning.Renting([thing, Body], Three, 5));
    }

    [Fact]
    public void The_terms_of_a_scenario_have_their_defaults_filled_in()
    {
        var terms = OwningTerms.Of(new CostTerms());
        Assert.Equal((3, 0.0), (terms.Years, terms.Rate.Percent));
        Assert.Equal((30.0, 15.0), (terms.FirstYearLoss.Percent, terms.LaterLoss.Percent));
        Assert.Equal((0m, 0m, null), (terms.RepairsPerYear, terms.ConsumablesPerDay, terms.DaysInARow));
    }

    [Fact]
    public void Years_of_a_battery_are_those_stated_else_those_of_its_aging()
    {
        var scenario = PricedScenario.Read();
        Assert.Null(BatteryWear.Of(scenario, "camera", new CostTerms()));
        Assert.Equal(2.5, BatteryWear.Of(scenario, "flat", new CostTerms { BatteryYears = 2.5 })!(80));
        var aging = BatteryWear.Of(scenario, "flat", new CostTerms())!;
        // Never used it ages on its shelf; the more it is used the sooner it is worn out.
        Each.Step(new[] { 0, 40, 120, 365 }.Select(days => aging(days)!.Value), (less, more) => Assert.True(more < less));
    }

    [Fact]
    public void A_kit_over_the_years_is_what_is_bought_and_what_is_rented()
    {
        var scenario = PricedScenario.Read(
            "others-are: owned, years: 2, days-per-year: 10, battery-years: 1, repairs-per-year: 20 EUR",
            "camera: rented, flat: bought");
        var kit = KitCost.Of(scenario, "one");
        var cost = YearsCost.Of(scenario, kit, scenario.Costs!)!;
        // Ten days of the camera a year are a week of 250 and 250 more; the battery of 200 is bought twice, and repaired.
        Assert.Equal(2 * 500, cost.Rented);
        Assert.Equal(200 + 200 + 40, cost.Bought.Total);
        Assert.Equal(400, cost.Batteries);
        Assert.Equal(1440, cost.Total);
        Assert.False(cost.IsAtLeast);
        var each = CostQuotients.Of(cost, Energy.FromWattHours(500), Duration.FromHours(4));
        // 20 days, 10 kWh.
        Assert.Equal(new CostQuotients(72, 40, 100), each);
        Assert.Equal(new CostQuotients(72, null, null), CostQuotients.Of(cost, Energy.Zero, Duration.FromHours(-1)));
        Assert.Null(YearsCost.Of(scenario, kit, scenario.Costs! with { DaysPerYear = null }));
    }
}

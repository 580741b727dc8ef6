using RigScenarios.Costs;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Costs;

/// <summary>What a kit costs now, added up by hand.</summary>
public sealed class KitCostTests
{
    [Fact]
    public void Where_nobody_says_more_everything_of_a_build_is_bought()
    {
        var cost = KitCost.Of(PricedScenario.Read(costs: null), "one");
        // Battery, camera and the kit's three lights; the plate is on no build, and the regulator has no price.
        Assert.Equal(200 + 3000 + 300, cost.Total);
        Assert.Equal(["flat", "camera", "light", "regulator"], cost.Lines.Select(line => line.Name));
        Assert.Equal("regulator", Assert.Single(cost.NotPriced).Name);
        Assert.True(cost.IsAtLeast);
        Each.Of(cost.Lines, line => Assert.True(line.IsHadAssumed));
        Assert.Null(cost.Budget);
        Assert.Null(cost.Left);
        Assert.Equal("EUR", cost.TotalMoney!.Value.Currency);
    }

    [Fact]
    public void What_is_owned_costs_nothing_and_what_is_rented_its_days()
    {
        var scenario = PricedScenario.Read("budget: 900 EUR, others-are: owned, rented-days: 4, vat: net",
            "camera: rented, light: bought");
        var cost = KitCost.Of(scenario, "one");
        // Four days of the camera are cheapest as a week: 250 instead of 4 times 90.
        Assert.Equal((250m, 300m, 550m, 350m), (cost.Rented, cost.Bought, cost.Total, cost.Left));
        Assert.False(cost.IsAtLeast);
        Assert.Equal(ValueAddedTax.Net, cost.Vat);
        Assert.Equal([0m, 250, 300, 0], cost.Lines.Select(line => line.Total!.Value));
        Assert.Equal(4, cost.RentedDays);
    }

    [Fact]
    public void Without_days_it_is_rented_for_the_days_of_the_scenario() =>
        Assert.Equal(90, KitCost.Of(PricedScenario.Read("others-are: rented"), ["camera"]).Total);

    [Fact]
    public void A_thing_without_the_price_that_it_needs_is_not_known_whatever_other_price_it_has()
    {
        var cost = KitCost.Of(PricedScenario.Read(had: "plate: rented"), ["plate"]);
        Assert.Equal("plate", Assert.Single(cost.NotPriced).Name);
        Assert.Null(cost.Lines[0].Total);
        Assert.Equal(0, cost.Total);
    }

    [Fact]
    public void The_whole_kit_is_asked_for_too()
    {
        var cost = KitCost.OfAll(PricedScenario.Read());
        Assert.Equal(3550, cost.Total);
        Assert.Equal(5, cost.Lines.Count);
    }

    [Fact]
    public void Names_that_are_not_there_are_told_with_the_nearest()
    {
        var scenario = PricedScenario.Read();
        Assert.Equal("camera", Assert.Single(Assert.Throws<ScenarioProblemsException>(
            () => KitCost.Of(scenario, ["camra"])).Problems).Nearest);
        Assert.Throws<ScenarioProblemsException>(() => KitCost.Of(scenario, "two"));
    }

    [Theory]
    [InlineData("others-are: bougt", "costs.others-are", "Did you mean \"bought\"?")]
    [InlineData("budget: 900", "costs.budget", "2400 EUR")]
    [InlineData("budget: 900 USD", "parts.plate.buy", "(USD)")]
    [InlineData("vat: with", "costs.vat", "net, gross")]
    [InlineData("years: 0", "costs.years", "1 to 20")]
    [InlineData("yearly-rate: 0.04", "costs.yearly-rate", "4 %")]
    [InlineData("budgt: 900 EUR", "costs.budgt", "Did you mean \"budget\"?")]
    public void Every_mistake_is_told_at_its_field(string costs, string path, string part)
    {
        var problems = PricedScenario.Problems(PricedScenario.Text(costs));
        Assert.Contains(problems, problem => problem.Path == path && problem.ToString().Contains(part, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_currencies_are_an_error_at_the_one_that_is_odd()
    {
        var problem = Assert.Single(PricedScenario.Problems(PricedScenario.Text(costs: null, currency: "USD")));
        Assert.Equal("parts.plate.buy", problem.Path);
        Assert.Equal(Severity.Error, problem.Severity);
        Assert.Contains("50 USD", problem.Problem, StringComparison.Ordinal);
        Assert.Equal("an amount in EUR", problem.Accepted);
    }

    [Fact]
    public void All_terms_are_written_as_they_were_read()
    {
        var scenario = PricedScenario.Read("budget: 900 EUR, contingency: 10 %, vat: gross, others-are: rented, rented-days: 4, "
            + "years: 5, days-per-year: 30, days-in-a-row: 3, yearly-rate: 4 %, first-year-loss: 25 %, later-loss: 10 %, "
            + "repairs-per-year: 60 EUR, consumables-per-day: 2.5 EUR, battery-years: 2.5", "camera: owned");
        var again = SmallScenario.Read(ScenarioFile.Text(scenario));
        Assert.Equal(scenario.Costs, again.Costs);
        Assert.Equal(Had.Owned, again.Kit["camera"].Had);
        Assert.Null(again.Kit["light"].Had);
    }
}

using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Costs;

/// <summary>What a thing costs that somebody has yet to get for a rig: its price, or its rent where the scenario says that it is
/// rented. What would be owned is bought: nobody owns what is yet to be got.</summary>
/// <param name="Had">How it is got: bought or rented.</param>
/// <param name="RentedDays">The days of its rent.</param>
/// <param name="Each">What one costs; null where no price is known.</param>
public sealed record NewThing(Had Had, int RentedDays, Money? Each)
{
    /// <summary>The price of a thing of a kit, by the same rules as the kit's.</summary>
    /// <param name="scenario">A scenario that was read or checked, with the thing in its kit.</param>
    /// <param name="name">Its name in the kit.</param>
    /// <exception cref="ScenarioProblemsException">The kit has no such thing, or its price and the budget are in two
    /// currencies.</exception>
    public static NewThing Of(Scenario scenario, string name)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var item = Chosen.From(scenario.Kit, name, "thing in the kit", "kit");
        var had = (item.Had ?? scenario.Costs?.OthersAre) == Had.Rented ? Had.Rented : Had.Bought;
        var cost = KitCost.Of(scenario with { Kit = scenario.Kit.With(name, item with { Had = had }) }, [name]);
        return new(had, cost.RentedDays, cost is { Lines: [{ Each: { } each }], Currency: { } currency }
            ? new Money(each, currency) : null);
    }
}

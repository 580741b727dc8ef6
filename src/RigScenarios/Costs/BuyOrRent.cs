using RigScenarios.Scenarios;

namespace RigScenarios.Costs;

/// <summary>Buying held against renting, for all things of a kit that are not owned yet and can be had both ways, together and
/// one by one.</summary>
public sealed record BuyOrRent
{
    /// <summary>Over how long, and at what.</summary>
    public required OwningTerms Terms { get; init; }

    /// <summary>All of them together, with repairs and consumables; null where there is none.</summary>
    public required BreakEven? Together { get; init; }

    /// <summary>Each by itself, without repairs and consumables, which are told for all together only.</summary>
    public required IReadOnlyList<(KitCostLine Line, BreakEven BreakEven)> Each { get; init; }

    /// <summary>What is not owned and lacks the one price or the other, so that it is in none of the figures.</summary>
    public required IReadOnlyList<KitCostLine> LeftOut { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="kit">What the kit costs now.</param>
    /// <param name="terms">The terms.</param>
    public static BuyOrRent Of(Scenario scenario, KitCost kit, CostTerms terms)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(terms);
        var owning = OwningTerms.Of(terms);
        var wanted = kit.Lines.Where(line => line.Had != Had.Owned).Select(line => (Line: line,
            Thing: scenario.FindPart(line.Part) is { } part && RentPrice.Of(part) is not null
                ? OwnedThing.Of(line, part, Once(BatteryWear.Of(scenario, line.Name, terms))) : null)).ToList();
        List<(KitCostLine Line, OwnedThing Thing)> both =
            [.. wanted.Where(one => one.Thing is not null).Select(one => (one.Line, one.Thing!))];
        var bare = owning with { RepairsPerYear = 0, ConsumablesPerDay = 0 };
        return new BuyOrRent
        {
            Terms = owning, Together = BreakEven.Of([.. both.Select(one => one.Thing)], owning),
            Each = [.. both.Select(one => (one.Line, BreakEven.Of([one.Thing], bare)!))],
            LeftOut = [.. wanted.Where(one => one.Thing is null).Select(one => one.Line)],
        };
    }

    // Each number of days is worked out once, although it is asked for all things together and for the battery by itself.
    private static Func<int, double?>? Once(Func<int, double?>? years)
    {
        if (years is null)
            return null;
        var known = new Dictionary<int, double?>();
        return days => known.TryGetValue(days, out var told) ? told : known[days] = years(days);
    }
}

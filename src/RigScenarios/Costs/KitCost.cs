using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Costs;

/// <summary>What one thing of a kit costs now.</summary>
/// <param name="Name">Its name in the kit.</param>
/// <param name="Part">The id of its part.</param>
/// <param name="Title">The part's name for people.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Had">How it is had.</param>
/// <param name="Count">How many there are in the kit.</param>
/// <param name="Each">What one of them costs: the price, or the rent of all days; 0 where it is owned, null where no price is
/// known.</param>
public sealed record KitCostLine(string Name, string Part, string Title, PartKind Kind, Had Had, int Count, decimal? Each)
{
    /// <summary>What all of them cost; null where no price is known.</summary>
    public decimal? Total => Count * Each;

    /// <summary>Whether nobody said how it is had, and the kit's usual way, or buying, was taken.</summary>
    public bool IsHadAssumed { get; init; }
}

/// <summary>
/// What a kit, or what a build and its days need of it, costs now: what is bought at its price, what is rented for its days, what
/// is owned at nothing. A thing without a price is listed as such, so that the total says "at least".
/// </summary>
public sealed record KitCost
{
    /// <summary>Everything that was asked about, in the order of the kit.</summary>
    public required IReadOnlyList<KitCostLine> Lines { get; init; }

    /// <summary>The currency of all amounts; null where no amount is known at all.</summary>
    public required string? Currency { get; init; }

    /// <summary>The days for which rented things are rented.</summary>
    public required int RentedDays { get; init; }

    /// <summary>Whether the prices have value added tax in them; null where nobody says.</summary>
    public required ValueAddedTax? Vat { get; init; }

    /// <summary>The budget; null where none is given.</summary>
    public required Money? Budget { get; init; }

    /// <summary>What is paid for all things with a price, bought and rented.</summary>
    public decimal Total => Bought + Rented;

    /// <summary>What is paid for things that are bought.</summary>
    public decimal Bought => Lines.Where(line => line.Had == Had.Bought).Sum(line => line.Total ?? 0);

    /// <summary>What is paid for things that are rented.</summary>
    public decimal Rented => Lines.Where(line => line.Had == Had.Rented).Sum(line => line.Total ?? 0);

    /// <summary>Things that are bought or rented and have no price: what they cost is not in the total.</summary>
    public IReadOnlyList<KitCostLine> NotPriced => [.. Lines.Where(line => line.Each is null)];

    /// <summary>Whether the total is the least that it costs, because something has no price.</summary>
    public bool IsAtLeast => Lines.Any(line => line.Each is null);

    /// <summary>The total with its currency; null where there is no amount at all.</summary>
    public Money? TotalMoney => Currency is { } currency ? new Money(Total, currency) : null;

    /// <summary>What is left of the budget, below 0 where it is passed; null where none is given. Where something has no price it
    /// is the most that can be left.</summary>
    public decimal? Left => Budget is { } budget ? budget.Amount - Total : null;

    /// <summary>What a build and its days cost: all that is on the build, the batteries in turn, in devices and for the hot swap,
    /// and the kit's chargers; of each as many as the kit has.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="terms">The terms; null for those of the scenario, or none.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build, or prices are in several currencies.</exception>
    public static KitCost Of(Scenario scenario, string build, CostTerms? terms = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Of(scenario, [.. Needed(scenario, build)], terms);
    }

    /// <summary>What all of the kit costs.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="terms">The terms; null for those of the scenario, or none.</param>
    /// <exception cref="ScenarioProblemsException">Prices are in several currencies.</exception>
    public static KitCost OfAll(Scenario scenario, CostTerms? terms = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Of(scenario, [.. scenario.Kit.Keys], terms);
    }

    /// <summary>What some things of the kit cost.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="kitNames">Their names in the kit; one that is named twice counts once.</param>
    /// <param name="terms">The terms; null for those of the scenario, or none.</param>
    /// <exception cref="ScenarioProblemsException">The kit has no such thing, or prices are in several currencies.</exception>
    public static KitCost Of(Scenario scenario, IReadOnlyList<string> kitNames, CostTerms? terms = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(kitNames);
        terms ??= scenario.Costs ?? new CostTerms();
        foreach (var name in kitNames)
            _ = Chosen.From(scenario.Kit, name, "thing in the kit", "kit");
        var wanted = kitNames.ToHashSet(StringComparer.Ordinal);
        var days = terms.RentedDays ?? scenario.Days.Count;
        var currencies = new HashSet<string>(StringComparer.Ordinal);
        string? ofOwned = null;
        if (terms.Budget is { } budget)
            currencies.Add(budget.Currency);
        List<KitCostLine> lines =
            [.. scenario.Kit.Where(item => wanted.Contains(item.Key)).Select(item => Line(item.Key, item.Value))];
        if (currencies.Count > 1)
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "costs",
                $"The prices are in several currencies ({string.Join(", ", currencies)}), and nothing is converted.",
                "prices in one currency")]);
        return new KitCost { Lines = lines, Currency = currencies.FirstOrDefault() ?? ofOwned, RentedDays = days, Vat = terms.Vat,
            Budget = terms.Budget };

        KitCostLine Line(string name, KitItem item)
        {
            var part = scenario.FindPart(item.Part);
            var had = item.Had ?? terms.OthersAre ?? Had.Bought;
            Money?[] prices = part is null || had == Had.Owned ? [] : had == Had.Bought ? [part.Buy]
                : [part.RentPerDay, part.RentPerWeek, part.RentPerMonth];
            currencies.UnionWith(prices.OfType<Money>().Select(price => price.Currency));
            ofOwned ??= part?.Buy?.Currency;
            decimal? each = had switch
            {
                Had.Owned => 0,
                Had.Bought => part?.Buy?.Amount,
                _ => part is null ? null : RentPrice.Of(part)?.For(days),
            };
            return new(name, item.Part, part?.Name ?? item.Part, part?.Kind ?? default, had, item.Count, each)
            {
                IsHadAssumed = item.Had is null && terms.OthersAre is null,
            };
        }
    }

    private static IEnumerable<string> Needed(Scenario scenario, string build)
    {
        var chosen = Chosen.From(scenario.Builds, build, "build", "builds");
        var inDevices = scenario.InternalBatteries.Where(one => chosen.Devices.ContainsKey(one.Key));
        return chosen.Things.Concat(scenario.Batteries.Values.Select(battery => battery.Item))
            .Concat(inDevices.Select(one => one.Value.Item)).Concat(scenario.HotSwap is { } reserve ? [reserve.Pack.Item] : [])
            .Concat(scenario.Kit.Keys.Where(name => scenario.PartOf(name)?.Kind == PartKind.Charger))
            .Distinct().Where(scenario.Kit.ContainsKey);
    }
}

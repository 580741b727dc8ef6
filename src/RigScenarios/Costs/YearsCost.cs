using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Costs;

/// <summary>What a kit costs over some years at so many shooting days a year, had as the scenario says: what is bought is owned
/// then, what is rented is rented on those days, what is owned costs nothing more.</summary>
public sealed record YearsCost
{
    /// <summary>Over how long, and at what.</summary>
    public required OwningTerms Terms { get; init; }

    /// <summary>Shooting days a year.</summary>
    public required int DaysPerYear { get; init; }

    /// <summary>What is bought; repairs and consumables only where something is.</summary>
    public required OwningCost Bought { get; init; }

    /// <summary>What is rented, as it is worth today.</summary>
    public required decimal Rented { get; init; }

    /// <summary>What of both is for batteries.</summary>
    public required decimal Batteries { get; init; }

    /// <summary>Whether it is the least that it costs, because something has no price.</summary>
    public required bool IsAtLeast { get; init; }

    /// <summary>All of it.</summary>
    public decimal Total => Bought.Total + Rented;

    /// <summary>Adds it up.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="kit">What the kit costs now.</param>
    /// <param name="terms">The terms.</param>
    /// <returns>Null where nobody says how many shooting days a year has.</returns>
    public static YearsCost? Of(Scenario scenario, KitCost kit, CostTerms terms)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(terms);
        if (terms.DaysPerYear is not { } days)
            return null;
        var owning = OwningTerms.Of(terms);
        var bare = owning with { RepairsPerYear = 0, ConsumablesPerDay = 0 };
        var bought = Things(Had.Bought);
        List<KitCostLine> rented = [.. kit.Lines.Where(line => line is { Had: Had.Rented, Each: not null })];
        return new YearsCost
        {
            Terms = owning, DaysPerYear = days, IsAtLeast = kit.IsAtLeast,
            Bought = Owning.Of(bought, bought.Count > 0 ? owning : bare, days),
            Rented = rented.Sum(Rent),
            Batteries = Owning.Of([.. bought.Where(thing => thing.WearsOutIn is not null)], bare, days).Total
                + rented.Where(line => line.Kind == PartKind.Battery).Sum(Rent),
        };

        List<OwnedThing> Things(Had had) => [.. kit.Lines.Where(line => line.Had == had && line.Each is not null)
            .Select(line => OwnedThing.Of(line, scenario.FindPart(line.Part)!, BatteryWear.Of(scenario, line.Name, terms)))
            .OfType<OwnedThing>()];
        decimal Rent(KitCostLine line) => owning.EachYear * line.Count
            * RentPrice.Of(scenario.FindPart(line.Part)!)!.ForJobs(days, owning.DaysInARow);
    }
}

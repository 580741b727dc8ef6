namespace RigScenarios.Costs;

/// <summary>What owning things costs over some years, every amount as it is worth today.</summary>
/// <param name="Price">What they cost to buy, now.</param>
/// <param name="Replacement">Batteries that are bought anew when the old ones are worn out; the last only for the part of its
/// life that lies within the years.</param>
/// <param name="Repairs">Repairs and service.</param>
/// <param name="Consumables">What the shooting days use up.</param>
/// <param name="Resale">What they bring at the end; it counts against the others.</param>
public sealed record OwningCost(decimal Price, decimal Replacement, decimal Repairs, decimal Consumables, decimal Resale)
{
    /// <summary>All of it, less what is brought by selling.</summary>
    public decimal Total => Price + Replacement + Repairs + Consumables - Resale;
}

/// <summary>Owning over some years, beside renting the same things on the same days (docs/costs.md).</summary>
public static class Owning
{
    /// <summary>What owning costs.</summary>
    /// <param name="things">The things.</param>
    /// <param name="terms">Over how long, and at what.</param>
    /// <param name="daysPerYear">Shooting days a year, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="daysPerYear"/> is below 0.</exception>
    public static OwningCost Of(IReadOnlyList<OwnedThing> things, OwningTerms terms, int daysPerYear)
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentOutOfRangeException.ThrowIfNegative(daysPerYear);
        decimal replacement = 0, resale = 0;
        foreach (var thing in things)
        {
            if (thing.WearsOutIn?.Invoke(daysPerYear) is { } life && life < terms.Years)
                replacement += thing.Count * Replaced(thing.Price, life, terms);
            else
                resale += thing.Count * (thing.Resale ?? terms.Resale(thing.Price));
        }
        return new OwningCost(things.Sum(thing => thing.Count * thing.Price), replacement, terms.RepairsPerYear * terms.EachYear,
            terms.ConsumablesPerDay * daysPerYear * terms.EachYear, resale * PresentValue.Factor(terms.Rate, terms.Years));
    }

    /// <summary>What renting the same things costs over the same years; null where one of them has no rent.</summary>
    /// <param name="things">The things.</param>
    /// <param name="terms">Over how long, and at what.</param>
    /// <param name="daysPerYear">Shooting days a year, 0 or more.</param>
    public static decimal? Renting(IReadOnlyList<OwnedThing> things, OwningTerms terms, int daysPerYear)
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(terms);
        return things.Any(thing => thing.Rent is null) ? null
            : terms.EachYear * things.Sum(thing => thing.Count * thing.Rent!.ForJobs(daysPerYear, terms.DaysInARow));
    }

    // A worn battery brings nothing, and each new one is paid when the one before is worn out.
    private static decimal Replaced(decimal price, double life, OwningTerms terms)
    {
        var sum = 0m;
        for (var count = 1; count * life < terms.Years; count++)
        {
            var at = count * life;
            sum += price * (decimal)Math.Min(1, (terms.Years - at) / life) * PresentValue.Factor(terms.Rate, at);
        }
        return sum;
    }
}

namespace RigScenarios.Costs;

/// <summary>Whole shooting days a year, both ends among them.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last.</param>
public sealed record DayStretch(int From, int To);

/// <summary>
/// At how many shooting days a year owning costs no more than renting the same things. Rents go in steps (a week costs the same
/// on its fourth day and on its seventh) while owning goes on to cost more, so that there may be several stretches; all are
/// given.
/// </summary>
public sealed record BreakEven
{
    /// <summary>The most shooting days a year that are looked at.</summary>
    public const int MostDays = 365;

    /// <summary>What owning costs over the years, at 0, 1, 2 … shooting days a year, as it is worth today.</summary>
    public required IReadOnlyList<decimal> Owning { get; init; }

    /// <summary>What renting the same costs, at the same days.</summary>
    public required IReadOnlyList<decimal> Renting { get; init; }

    /// <summary>The stretches, from 1 day on, at which owning costs no more; empty where there is none.</summary>
    public required IReadOnlyList<DayStretch> Stretches { get; init; }

    /// <summary>The fewest days at which owning costs no more; null where there are none.</summary>
    public int? Least => Stretches.Count > 0 ? Stretches[0].From : null;

    /// <summary>Whether owning costs no more at so many days a year.</summary>
    /// <param name="daysPerYear">1 to the most that was looked at.</param>
    public bool IsOwningCheaper(int daysPerYear) =>
        Stretches.Any(stretch => stretch.From <= daysPerYear && daysPerYear <= stretch.To);

    /// <summary>Tries every number of days.</summary>
    /// <param name="things">The things.</param>
    /// <param name="terms">Over how long, and at what.</param>
    /// <param name="mostDays">The most shooting days a year, 1 or more.</param>
    /// <returns>Null where there is nothing, or one of the things has no rent: then nobody can say.</returns>
    public static BreakEven? Of(IReadOnlyList<OwnedThing> things, OwningTerms terms, int mostDays = MostDays)
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostDays, 1);
        if (things.Count == 0 || things.Any(thing => thing.Rent is null))
            return null;
        var row = terms.DaysInARow is { } given ? Math.Min(given, mostDays) : mostDays;
        // The rents of all lengths at once; a year is so many whole jobs and what is left.
        var jobs = things.Select(thing => (thing.Count, Rents: thing.Rent!.UpTo(row))).ToList();
        var each = terms.EachYear;
        decimal[] owning = [.. Enumerable.Range(0, mostDays + 1).Select(days => Costs.Owning.Of(things, terms, days).Total)];
        decimal[] renting = [.. Enumerable.Range(0, mostDays + 1)
            .Select(days => each * jobs.Sum(job => job.Count * ((days / row * job.Rents[row]) + job.Rents[days % row])))];
        return new BreakEven { Owning = owning, Renting = renting, Stretches = [.. Cheaper(owning, renting)] };
    }

    private static IEnumerable<DayStretch> Cheaper(decimal[] owning, decimal[] renting)
    {
        int? from = null;
        for (var days = 1; days <= owning.Length; days++)
        {
            var cheaper = days < owning.Length && owning[days] <= renting[days];
            if (cheaper)
                from ??= days;
            else if (from is { } first)
            {
                yield return new(first, days - 1);
                from = null;
            }
        }
    }
}

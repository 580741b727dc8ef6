using RigScenarios.Parts;

namespace RigScenarios.Costs;

/// <summary>
/// What a thing costs to rent: by the day, the week of 7 days, the month of 30. A week that nobody prices is 3 days' rent and a
/// month 10 (common practice, no source).
/// </summary>
public sealed record RentPrice
{
    /// <summary>Days of a rented week.</summary>
    public const int DaysOfWeek = 7;

    /// <summary>Days of a rented month.</summary>
    public const int DaysOfMonth = 30;

    /// <summary>A week as so many days' rent.</summary>
    public const int UsualWeek = 3;

    /// <summary>A month as so many days' rent.</summary>
    public const int UsualMonth = 10;

    /// <param name="day">For a day, 0 or more; null where it is let by longer times only.</param>
    /// <param name="week">For a week, 0 or more; null for <see cref="UsualWeek"/> days' rent.</param>
    /// <param name="month">For a month, 0 or more; null for <see cref="UsualMonth"/> days' rent.</param>
    /// <exception cref="ArgumentException">None of the three is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">One of them is below 0.</exception>
    public RentPrice(decimal? day, decimal? week = null, decimal? month = null)
    {
        if (day is null && week is null && month is null)
            throw new ArgumentException("No rent is given; accepted: a price for a day, a week or a month.", nameof(day));
        foreach (var price in new[] { day, week, month })
            ArgumentOutOfRangeException.ThrowIfNegative(price ?? 0, nameof(day));
        (Day, Week, Month) = (day, week ?? (UsualWeek * day), month ?? (UsualMonth * day));
    }

    /// <summary>For a day; null where it is let by longer times only.</summary>
    public decimal? Day { get; }

    /// <summary>For a week; null where nobody says and no day's rent stands for it.</summary>
    public decimal? Week { get; }

    /// <summary>For a month; null where nobody says and no day's rent stands for it.</summary>
    public decimal? Month { get; }

    /// <summary>The rent of a part; null where no price is known.</summary>
    /// <param name="part">The part.</param>
    public static RentPrice? Of(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.RentPerDay is null && part.RentPerWeek is null && part.RentPerMonth is null ? null
            : new RentPrice(part.RentPerDay?.Amount, part.RentPerWeek?.Amount, part.RentPerMonth?.Amount);
    }

    /// <summary>The rent of so many days in a row: the cheapest months, weeks and days that cover them, exactly.</summary>
    /// <param name="days">How many; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="days"/> is below 0.</exception>
    public decimal For(int days) => UpTo(days)[days];

    /// <summary>The rents of 0, 1, 2 … days in a row.</summary>
    /// <param name="days">The most days; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="days"/> is below 0.</exception>
    public IReadOnlyList<decimal> UpTo(int days)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(days);
        var least = new decimal[days + 1];
        for (var n = 1; n <= days; n++)
        {
            least[n] = new[] { With(Day, 1), With(Week, DaysOfWeek), With(Month, DaysOfMonth) }.OfType<decimal>().Min();
            decimal? With(decimal? price, int covers) => price + least[Math.Max(0, n - covers)];
        }
        return least;
    }

    /// <summary>The rent of so many days that come in jobs of so many days in a row, each job rented by itself.</summary>
    /// <param name="days">All days; 0 or more.</param>
    /// <param name="inARow">Days of a job, 1 or more; null for all in one go.</param>
    public decimal ForJobs(int days, int? inARow)
    {
        if (inARow is not { } row)
            return For(days);
        ArgumentOutOfRangeException.ThrowIfLessThan(row, 1, nameof(inARow));
        return (days / row * For(row)) + For(days % row);
    }
}

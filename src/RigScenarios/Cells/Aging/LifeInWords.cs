using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>
/// What somebody says of a battery's age in plain words: "bought March 2023, kept full in a warm store, two shoots a month, half
/// emptied". What is left open is null: nobody knows it.
/// </summary>
public sealed record LifeInWords
{
    /// <summary>Days of a month on the average.</summary>
    public const double DaysOfMonth = 30.4375;

    /// <summary>What is taken where somebody says that a battery is old and leaves the rest open, and the example for one of
    /// which nothing is said: kept full in a room, two shoots a month that empty half of it.</summary>
    public static LifeInWords Usual { get; } = new()
    {
        Kept = Kept.Full,
        Place = StoragePlace.Room,
        ShootsPerMonth = 2,
        Emptied = Emptied.Half,
    };

    /// <summary>When it was bought new; null: nobody knows.</summary>
    public MonthOrDay? Bought { get; init; }

    /// <summary>The date for which its age is asked.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>At which charge it is kept between shoots.</summary>
    public Kept? Kept { get; init; }

    /// <summary>Where it is kept between shoots.</summary>
    public StoragePlace? Place { get; init; }

    /// <summary>Shoots with it in a month; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0 or no number.</exception>
    public double? ShootsPerMonth
    {
        get;
        init
        {
            if (value is { } given)
                Require.NotNegative(given, "a month");
            field = value;
        }
    }

    /// <summary>How far a shoot empties it.</summary>
    public Emptied? Emptied { get; init; }

    /// <summary>Whether somebody else had it before: nothing before the measurement counts then.</summary>
    public bool SecondHand { get; init; }

    /// <summary>Its measured capacity on the date, over the capacity when new, else over the label; null: not measured.</summary>
    public Ratio? MeasuredCapacity { get; init; }

    /// <summary>Its measured resistance on the date over that when new; null: not measured. It counts with a measured
    /// capacity.</summary>
    public double? MeasuredResistance { get; init; }

    /// <summary>The same with all that is left open about its use taken from <see cref="Usual"/>.</summary>
    public LifeInWords Completed => this with
    {
        Kept = Kept ?? Usual.Kept,
        Place = Place ?? Usual.Place,
        ShootsPerMonth = ShootsPerMonth ?? Usual.ShootsPerMonth,
        Emptied = Emptied ?? Usual.Emptied,
    };

    /// <summary>Whether what it went through is known: when it was bought, and that nobody else had it.</summary>
    public bool HistoryKnown => Bought is not null && Until is not null && !SecondHand;

    /// <summary>What it went through until the date: its use, then the measurement. Empty where neither is known.</summary>
    /// <exception cref="ArgumentException">It was bought after the date, or the shoots don't fit into the time.</exception>
    public IReadOnlyList<LifePhase> Phases()
    {
        var phases = new List<LifePhase>(2);
        if (HistoryKnown)
            phases.Add(Use(Between(Bought!.Value, Until!.Value)));
        if (MeasuredCapacity is { } capacity)
            phases.Add(new Measured(capacity, MeasuredResistance, HistoryKnown));
        return phases;
    }

    private static Duration Between(MonthOrDay bought, DateOnly until)
    {
        var days = until.DayNumber - bought.Date.DayNumber;
        return days >= 0 ? Duration.FromDays(days) : throw new ArgumentException(
            $"It was bought on {bought} and asked for on {until:yyyy-MM-dd}, which is earlier.", nameof(bought));
    }

    /// <summary>A further time of the same use.</summary>
    /// <param name="length">How long; 0 or more.</param>
    /// <exception cref="ArgumentException">The shoots don't fit into the time.</exception>
    public Shooting Use(Duration length)
    {
        var whole = Completed;
        return new Shooting(length, whole.Place!.Temperature, whole.Kept!.ChargeAfter(whole.Emptied!),
            whole.ShootsPerMonth!.Value * length.Days / DaysOfMonth, whole.Emptied!.Depth);
    }

    /// <summary>The battery on the date by the set of its chemistry; the same use goes on after it.</summary>
    /// <param name="chemistry">"nmc", "nca", "lfp"; null: nobody knows.</param>
    /// <exception cref="ArgumentException">As for <see cref="Phases"/>.</exception>
    public LifeResult Life(string? chemistry)
    {
        var (set, assumed) = AgingSets.For(chemistry);
        return BatteryLife.After(set, assumed, Phases(), Use(Duration.FromDays(DaysOfMonth)));
    }
}

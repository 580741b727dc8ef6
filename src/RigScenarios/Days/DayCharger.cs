using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Days;

/// <summary>How a charger serves its bays.</summary>
public enum BayOrder
{
    /// <summary>All at once; the wall power is divided equally between those that charge.</summary>
    Shared,

    /// <summary>One after the other, first come, first served, each with all of the power.</summary>
    InTurn,
}

/// <summary>What a charger has its power from.</summary>
public enum PowerSource
{
    /// <summary>The wall of a building.</summary>
    Mains,

    /// <summary>A generator with an engine.</summary>
    Generator,

    /// <summary>An outlet of a vehicle.</summary>
    Vehicle,
}

/// <summary>Hours of every day.</summary>
/// <param name="From">Begin.</param>
/// <param name="To">End; one before the begin lies on the next day. Begin and end at one time are no hours at all.</param>
public sealed record ClockRange(TimeOnly From, TimeOnly To)
{
    /// <summary>The begin, seconds from midnight.</summary>
    internal double FromSeconds => From.ToTimeSpan().TotalSeconds;

    /// <summary>How long, s.</summary>
    internal double LengthSeconds => To >= From ? (To - From).TotalSeconds : 86400 - (From - To).TotalSeconds;
}

/// <summary>A charger with its bays and the power it has. The maker's limits of charger and battery go before all values
/// here.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record DayCharger
{
    /// <param name="current">Charging current of each bay; above 0.</param>
    public DayCharger(ElectricCurrent current) => Current = current;

    /// <summary>How many batteries it takes; 0 or more (0: it stays at home).</summary>
    public int Bays
    {
        get;
        init
        {
            Require.AtLeast(value, 0);
            field = value;
        }
    } = 1;

    /// <summary>Charging current of each bay; above 0.</summary>
    public ElectricCurrent Current
    {
        get;
        init
        {
            Require.Positive(value.Amperes, "A");
            field = value;
        }
    }

    /// <summary>Current at which a battery counts as full; a twentieth of its capacity in an hour if null. Above 0.</summary>
    public ElectricCurrent? Termination { get; init; }

    /// <summary>How it serves its bays.</summary>
    public BayOrder Order { get; init; }

    /// <summary>Largest power from the wall, generator or vehicle outlet; no limit if null. 0 or more; with 0 W nothing is
    /// charged.</summary>
    public Power? WallLimit
    {
        get;
        init
        {
            if (value is { } given)
                Require.NotNegative((double)given.Watts, "W");
            field = value;
        }
    }

    /// <summary>What the outlet is rated for in volt-amperes, as labels of generators, inverters and wall circuits have it; null
    /// where nobody says. Above 0.</summary>
    public ElectricApparentPower? SupplyRating
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive((double)given.Voltamperes, "VA");
            field = value;
        }
    }

    /// <summary>Watts over volt-amperes that the charger draws; above 0, up to 1. <see cref="UsualPowerFactor"/> if
    /// null.</summary>
    public Ratio? PowerFactor
    {
        get;
        init
        {
            if (value is { } given)
                Require.AboveUpTo(given.DecimalFractions, 0, 1, "");
            field = value;
        }
    }

    /// <summary>Of a charger whose power factor nobody gives: a little below the 0.65 that a supplier prints for a single-phase
    /// supply without correction (read; with correction it is 0.98).</summary>
    public static Ratio UsualPowerFactor { get; } = Ratio.FromPercent(60);

    /// <summary>The largest power from the wall that both limits let through, W; null if neither is given.</summary>
    public Power? LargestFromWall
    {
        get
        {
            if (SupplyRating is not { } rating)
                return WallLimit;
            var factor = (PowerFactor ?? UsualPowerFactor).DecimalFractions;
            var watts = (double)rating.Voltamperes * factor;
            return WallLimit is { } limit && (double)limit.Watts < watts ? limit : Power.FromWatts(watts);
        }
    }

    /// <summary>Where it stands, for people: "on the stone floor of the hall"; null where nobody says.</summary>
    public string? Stands { get; init; }

    /// <summary>What it has its power from; null where nobody says.</summary>
    public PowerSource? PowerFrom { get; init; }

    /// <summary>Power into the battery over power from the wall; above 0, up to 1. 88 % unless given: common practice, no
    /// source.</summary>
    public Ratio Efficiency
    {
        get;
        init
        {
            Require.AboveUpTo(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromPercent(88);

    /// <summary>The hours of every day in which it has power; at all hours if empty.</summary>
    /// <exception cref="ArgumentException">One of them ends when it begins.</exception>
    public IReadOnlyList<ClockRange> PowerHours
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            if (value.FirstOrDefault(range => range.From == range.To) is { } empty)
                throw new ArgumentException(
                    $"The hours {empty.From:HH:mm} to {empty.To:HH:mm} are empty; accepted: an end that differs from the begin.",
                    nameof(value));
            field = value;
        }
    } = [];

    /// <summary>Temperature of the air around it; that of the moment if null.</summary>
    public Temperature? Ambient { get; init; }

    /// <summary>Below this temperature of the battery it waits; 10 °C unless given (IEC 62133, a laboratory's summary).</summary>
    public Temperature Lowest { get; init; } = Temperature.FromDegreesCelsius(10);

    /// <summary>Above this temperature of the battery it waits; 45 °C unless given (IEC 62133, a laboratory's summary).</summary>
    public Temperature Highest { get; init; } = Temperature.FromDegreesCelsius(45);

    // Lists compare by reference by themselves, and two chargers that say the same are the same.

    /// <summary>Whether two chargers are the same in everything.</summary>
    public bool Equals(DayCharger? other) => other is not null && Bays == other.Bays
        && Current.Amperes.Equals(other.Current.Amperes) && Termination.Equals(other.Termination) && Order == other.Order
        && WallLimit.Equals(other.WallLimit) && SupplyRating.Equals(other.SupplyRating)
        && PowerFactor.Equals(other.PowerFactor) && PowerFrom == other.PowerFrom
        && string.Equals(Stands, other.Stands, StringComparison.Ordinal)
        && Efficiency.DecimalFractions.Equals(other.Efficiency.DecimalFractions)
            && PowerHours.SequenceEqual(other.PowerHours) && Ambient.Equals(other.Ambient)
        && Lowest.Kelvins.Equals(other.Lowest.Kelvins) && Highest.Kelvins.Equals(other.Highest.Kelvins);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Bays, Order, PowerHours.Count);

    private bool NeverHasPower => WallLimit is { Watts: 0 };

    /// <summary>Whether it has power at a time, seconds from midnight of the first day.</summary>
    internal bool HasPower(double seconds) =>
        !NeverHasPower && (PowerHours.Count == 0 || PowerHours.Any(range => Since(range, seconds) < range.LengthSeconds));

    /// <summary>The next time at which power comes or goes; infinite if it is always there, or never.</summary>
    internal double NextEdge(double seconds)
    {
        var next = double.PositiveInfinity;
        if (NeverHasPower)
            return next;
        foreach (var range in PowerHours)
        {
            var since = Since(range, seconds);
            next = Math.Min(next, seconds + 86400 - since);
            if (range.LengthSeconds > since)
                next = Math.Min(next, seconds + range.LengthSeconds - since);
        }
        return Math.Round(next, 6);
    }

    // To the microsecond, so that an edge is met although times come from sums of rounded numbers.
    private static double Since(ClockRange range, double seconds)
    {
        var since = Math.Round((seconds - range.FromSeconds) % 86400, 6);
        since = since < 0 ? since + 86400 : since;
        return since >= 86400 ? since - 86400 : since;
    }
}

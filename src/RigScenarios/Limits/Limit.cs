using UnitsNet;

namespace RigScenarios.Limits;

/// <summary>
/// One limit with the worst that stood against it: the only kind of limit there is, whichever model found it. Words for it are
/// made in
/// <c>Answers</c>; here are numbers with units, and names.
/// </summary>
/// <param name="Element">What is limited, by its name in the wiring or the kit: "cable of camera", "battery", "head".</param>
/// <param name="Kind">Which of its limits.</param>
/// <param name="Worst">The worst value there was.</param>
/// <param name="Allowed">The value allowed, a quantity of the same kind; null where no rating is known, so that there is no
/// verdict.</param>
/// <param name="Basis">Where the allowed value comes from.</param>
public sealed record Limit(string Element, LimitKind Kind, IQuantity Worst, IQuantity? Allowed, LimitBasis Basis)
{
    // As a share of the allowed value: a machine that multiplies and adds at once gives other last digits than one that does not.
    private const double Rounding = 1e-12;

    /// <summary>Steady, or for a moment.</summary>
    public LoadCase Case { get; init; }

    /// <summary>When it was worst, for limits that a day is held against; null for those of a rig at rest.</summary>
    public LimitMoment? At { get; init; }

    /// <summary>The case of a rig at rest in which it was worst, such as "battery off", or the devices that drew for a moment;
    /// empty for the usual one.</summary>
    public string Situation { get; init; } = "";

    /// <summary>Whether the worst must stay under the allowed value, or over it.</summary>
    public LimitSide Side => Kind.Side();

    /// <summary>What is left, in the unit of the allowed value; negative where the limit is passed; null where no rating is
    /// known.</summary>
    public double? Left
    {
        get
        {
            if (Allowed is null)
                return null;
            var (allowed, worst) = ((double)Allowed.Value, Worst.As(Allowed.Unit));
            // What a device switches off at is met to the last digit but one; the last one says nothing.
            return Math.Abs(allowed - worst) <= Rounding * Math.Abs(allowed) ? 0
                : (Side == LimitSide.StaysUnder ? 1 : -1) * (allowed - worst);
        }
    }

    /// <summary>
    /// What is left as a share of the allowed value (temperatures: of the figure in °C, good for an order and for nothing else);
    /// negative where the limit is passed; null where no rating is known. A rating of 0 is a rating: whatever is beyond it is
    /// so without bound, and where nothing stands against it nothing is left.
    /// </summary>
    public double? Share => Left is not { } left ? null
        : (double)Allowed!.Value != 0 ? left / Math.Abs((double)Allowed.Value)
        : left < 0 ? double.NegativeInfinity : left > 0 ? double.PositiveInfinity : 0;

    /// <summary>Whether the limit is passed; false where no rating is known.</summary>
    public bool IsPassed => Left < 0;

    /// <summary>Whether passing it counts against the rig: a yardstick has no such force.</summary>
    public bool HasForce => Basis.Force != LimitForce.Yardstick && Allowed is not null;

    /// <summary>The order in which limits are told: the least share left first, those without a rating at the end.</summary>
    /// <param name="limits">The limits.</param>
    public static IReadOnlyList<Limit> LeastLeftFirst(IEnumerable<Limit> limits) =>
        [.. limits.OrderBy(limit => limit.Rank)
            .ThenBy(limit => limit.Left is { } left ? Math.Round(left, 9) : double.PositiveInfinity)];

    /// <summary>The share, by which limits are ranked: those that differ by roundings keep their order, on every machine the
    /// same. Infinite where no rating is known.</summary>
    public double Rank => Share is { } share ? Math.Round(share, 12) : double.PositiveInfinity;
}

/// <summary>Whether a value must stay under its limit or over it.</summary>
public enum LimitSide
{
    /// <summary>Currents, temperatures, loads.</summary>
    StaysUnder,

    /// <summary>Voltages, travel, tip angles.</summary>
    StaysOver,
}

/// <summary>How long a load stands.</summary>
public enum LoadCase
{
    /// <summary>For minutes and hours: what the devices draw in their states, the rig at rest.</summary>
    Steady,

    /// <summary>For a moment: everything that works draws its most at once.</summary>
    Peak,

    /// <summary>For a moment: devices begin to draw together.</summary>
    StartUp,
}

/// <summary>When a limit was worst.</summary>
/// <param name="Time">From midnight of the first day.</param>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Short name of the block.</param>
public sealed record LimitMoment(Duration Time, int Day, string Block);

/// <summary>Where an allowed value comes from, and what weight it has.</summary>
/// <param name="Force">Its weight.</param>
/// <param name="Source">The source in words: "parts file", "battery label", an author and year.</param>
public sealed record LimitBasis(LimitForce Force, string Source)
{
    /// <summary>The maker's rating, as a part's file gives it.</summary>
    public static LimitBasis PartsFile { get; } = new(LimitForce.Rating, "parts file");
}

/// <summary>The weight of an allowed value.</summary>
public enum LimitForce
{
    /// <summary>A maker's rating in the file.</summary>
    Rating,

    /// <summary>A default that stands in for a rating, with its source.</summary>
    Default,

    /// <summary>A figure to compare with that binds nobody.</summary>
    Yardstick,
}

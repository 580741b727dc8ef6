using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// The demand at the pack's terminals over time: segments that repeat back to back from the first one until the discharge ends.
/// </summary>
public sealed record Demand
{
    /// <param name="segments">One segment or more.</param>
    /// <exception cref="ArgumentException">There is no segment.</exception>
    public Demand(IEnumerable<DemandSegment> segments)
    {
        ArgumentNullException.ThrowIfNull(segments);
        Segments = [.. segments];
        if (Segments.Count == 0)
            throw new ArgumentException("The demand has no segment; accepted: one or more.", nameof(segments));
    }

    /// <summary>The segments in the order in which they repeat.</summary>
    public IReadOnlyList<DemandSegment> Segments { get; }

    /// <summary>Time after which the demand begins again: the lengths of all segments together.</summary>
    public Duration Period => Duration.FromSeconds(Segments.Sum(segment => segment.Length.Seconds));

    /// <summary>The same power all the time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or no number.</exception>
    public static Demand OfPower(Power power) =>
        new([new DemandSegment(Duration.FromHours(1), power, ElectricCurrent.Zero, ElectricConductance.Zero)]);

    /// <summary>The same current all the time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or no number.</exception>
    public static Demand OfCurrent(ElectricCurrent current) =>
        new([new DemandSegment(Duration.FromHours(1), Power.Zero, current, ElectricConductance.Zero)]);
}

using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>What a fluid head's data sheet says.</summary>
public sealed record HeadData
{
    /// <summary>How far its plate slides, from end to end; 0 where it doesn't.</summary>
    public Length Slide { get; init; }

    /// <summary>From the top of its plate down to the tilt axis.</summary>
    public Length AxisBelowPlate { get; init; }

    /// <summary>The steps of its counterbalance, each the greatest moment of an ideal spring; empty where it is set without
    /// steps.</summary>
    public IReadOnlyList<Torque> CounterbalanceSteps { get; init; } = [];

    /// <summary>The least that a counterbalance without steps gives.</summary>
    public Torque? CounterbalanceFrom { get; init; }

    /// <summary>The most that a counterbalance without steps gives.</summary>
    public Torque? CounterbalanceTo { get; init; }

    /// <summary>The moment that holds it at rest, by friction alone; null if not known.</summary>
    public Torque? Friction { get; init; }

    /// <summary>The moment of its tilt drag at 10 °/s, at the setting that is used; null if not known.</summary>
    public Torque? Drag { get; init; }

    /// <summary>The moment that its tilt lock holds; null if not known.</summary>
    public Torque? TiltLock { get; init; }

    /// <summary>How far it tilts up.</summary>
    public Angle TiltUp { get; init; }

    /// <summary>How far it tilts down.</summary>
    public Angle TiltDown { get; init; }

    /// <summary>Equal with the same figures, the steps one by one.</summary>
    public bool Equals(HeadData? other) => other is not null && Figures.SequenceEqual(other.Figures)
        && CounterbalanceSteps.Count == other.CounterbalanceSteps.Count;

    /// <inheritdoc/>
    public override int GetHashCode() => Figures.Aggregate(CounterbalanceSteps.Count, HashCode.Combine);

    private IEnumerable<double?> Figures =>
    [
        Slide.Meters, AxisBelowPlate.Meters, CounterbalanceFrom?.NewtonMeters, CounterbalanceTo?.NewtonMeters,
        Friction?.NewtonMeters, Drag?.NewtonMeters, TiltLock?.NewtonMeters, TiltUp.Degrees, TiltDown.Degrees,
        .. CounterbalanceSteps.Select(step => (double?)step.NewtonMeters),
    ];
}

using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// A part is taken off, with all that hangs on it, while plate and counterbalance stay as they were: what friction at rest and
/// what the tilt lock then hold, each
/// alone (friction is not added to the lock).
/// </summary>
public sealed record PartOff
{
    private PartOff(string part, IReadOnlyList<string> off, PlacedBuild left, HeadBalance asItWas, HeadBalance rebalanced) =>
        (Part, Off, Left, AsItWas, Rebalanced) = (part, off, left, asItWas, rebalanced);

    /// <summary>The part.</summary>
    public string Part { get; }

    /// <summary>All that comes off, in the order of the build.</summary>
    public IReadOnlyList<string> Off { get; }

    /// <summary>What is left.</summary>
    public PlacedBuild Left { get; }

    /// <summary>What is left, with plate and counterbalance as they were.</summary>
    public HeadBalance AsItWas { get; }

    /// <summary>What is left, with plate and counterbalance chosen anew.</summary>
    public HeadBalance Rebalanced { get; }

    /// <summary>Friction at rest less the worst moment over the tilt range; below 0 the rig moves by itself somewhere.</summary>
    public Torque FrictionMargin => AsItWas.TiltMargin;

    /// <summary>Friction at rest less the moment with the rig level.</summary>
    public Torque FrictionMarginAtZero => AsItWas.Head.Friction - Size(AsItWas.MomentAtZero);

    /// <summary>Tilt lock less the worst moment; null where the lock is not known.</summary>
    public Torque? LockMargin => AsItWas.Head.TiltLock - AsItWas.WorstResidual;

    /// <summary>Tilt lock less the moment with the rig level; null where the lock is not known.</summary>
    public Torque? LockMarginAtZero => AsItWas.Head.TiltLock - Size(AsItWas.MomentAtZero);

    /// <summary>Takes a part off.</summary>
    /// <param name="build">The build with the part.</param>
    /// <param name="present">How it is balanced now.</param>
    /// <param name="part">The part's name.</param>
    /// <exception cref="ArgumentException">There is no such part, or nothing is left.</exception>
    public static PartOff Of(PlacedBuild build, HeadBalance present, string part)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(present);
        var left = build.Without(part);
        return new(part, build.WithAllOn(part), left,
            HeadBalance.At(present.Head, left.MassProperties, present.CameraPlate, present.Counterbalance, present.StepIndex),
            HeadBalance.Of(present.Head, left.MassProperties));
    }

    private static Torque Size(Torque torque) => Torque.FromNewtonMeters(Math.Abs(torque.NewtonMeters));
}

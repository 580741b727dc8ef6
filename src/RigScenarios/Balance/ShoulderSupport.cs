using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>Where a rig rests on the shoulder and where the hands hold it; the pad lies in the plane y = 0.</summary>
public sealed record ShoulderSupport
{
    /// <param name="pad">x of the pad's contact.</param>
    /// <param name="hands">x of the hands; not that of the pad.</param>
    /// <exception cref="ArgumentException">Both are at one x: the hands have no lever.</exception>
    public ShoulderSupport(Length pad, Length hands)
    {
        if (!((hands - pad).Meters != 0) || !double.IsFinite((hands - pad).Meters))
            throw new ArgumentException(
                $"The hands are at {hands.Millimeters:G6} mm and the pad at {pad.Millimeters:G6} mm; accepted: two different "
                    + "places.", nameof(hands));
        (Pad, Hands) = (pad, hands);
    }

    /// <summary>x of the pad's contact.</summary>
    public Length Pad { get; }

    /// <summary>x of the hands.</summary>
    public Length Hands { get; }
}

/// <summary>A rig on the shoulder, held level at rest: <c>F = m g (x - x_p)/(x_h - x_p)</c>, the pad carries the rest of the
/// weight.</summary>
public sealed record ShoulderBalance
{
    private readonly PointMass rig;

    private ShoulderBalance(ShoulderSupport support, PointMass rig) => (Support, this.rig) = (support, rig);

    /// <summary>Pad and hands.</summary>
    public ShoulderSupport Support { get; }

    /// <summary>What the hands carry; below 0 they must hold the rig down.</summary>
    public Force HandLoad => Force.FromNewtons(Weight * Lever / (Support.Hands - Support.Pad).Meters);

    /// <summary>What the pad carries; below 0 the rig lifts off the shoulder.</summary>
    public Force PadLoad => Force.FromNewtons(Weight - HandLoad.Newtons);

    /// <summary>m g y: positive when the rig rolls to the left (minus the right-hand moment about x).</summary>
    public Torque RollMoment => Torque.FromNewtonMeters(Weight * rig.Centre.Y);

    private double Weight => rig.Kilograms * StandardGravity.MetresPerSecondSquared;

    private double Lever => rig.Centre.X - Support.Pad.Meters;

    /// <summary>The rig on the shoulder.</summary>
    public static ShoulderBalance Of(ShoulderSupport support, MassProperties rig)
    {
        ArgumentNullException.ThrowIfNull(support);
        ArgumentNullException.ThrowIfNull(rig);
        return new(support, rig.Point);
    }

    /// <summary>The mass that zeroes the hand load when its centre is at a place: <c>m_c = m (x - x_p)/(x_p - x_c)</c>.</summary>
    /// <param name="place">x of the counterweight.</param>
    public Counterweight CounterweightAt(Length place)
    {
        var arm = (Support.Pad - place).Meters;
        if (Lever == 0)
            return new(CounterweightNeed.NoneNeeded, Mass.Zero);
        if (arm == 0)
            return new(CounterweightNeed.NoLever, null);
        var kilograms = rig.Kilograms * Lever / arm;
        return kilograms < 0 ? new(CounterweightNeed.WrongSide, null)
            : new(CounterweightNeed.Needed, Mass.FromKilograms(kilograms));
    }
}

/// <summary>Whether a counterweight helps at the place asked for.</summary>
public enum CounterweightNeed
{
    /// <summary>The mass given zeroes the hand load.</summary>
    Needed,

    /// <summary>The hands carry nothing already.</summary>
    NoneNeeded,

    /// <summary>The place lies on the heavy side of the pad: weight there makes it worse.</summary>
    WrongSide,

    /// <summary>The place is over the pad: weight there changes nothing for the hands.</summary>
    NoLever,
}

/// <summary>A counterweight.</summary>
/// <param name="Need">Whether it helps.</param>
/// <param name="Mass">The mass; null where none helps.</param>
public sealed record Counterweight(CounterweightNeed Need, Mass? Mass)
{
    /// <summary>"needed", "none needed", "wrong side", "no lever".</summary>
    public string InWords => Need switch
    {
        CounterweightNeed.Needed => "needed",
        CounterweightNeed.NoneNeeded => "none needed",
        CounterweightNeed.WrongSide => "wrong side",
        _ => "no lever",
    };
}

using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>A fluid head with its plate.</summary>
public sealed record FluidHead
{
    /// <summary>
    /// What the plate allows: the rig's x that can be put over the head's centre, from its rear end (least) to its front end
    /// (greatest).
    /// </summary>
    public required LengthRange CameraPlateTravel { get; init; }

    /// <summary>From the rig's z = 0 down to the tilt axis, whatever lies between.</summary>
    public required Length AxisDepth { get; init; }

    /// <summary>What it gives against the rig's weight.</summary>
    public required Counterbalance Counterbalance { get; init; }

    /// <summary>f: the moment that the unlocked head holds at rest, by friction alone; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public required Torque Friction { get; init => field = Checked(value); }

    /// <summary>
    /// c: the moment of its fluid drag at a tilt of <see cref="DragSpeed"/>; null if not known. It is in proportion to the speed,
    /// so that it slows and holds nothing.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Torque? Drag { get; init => field = value is { } torque ? Checked(torque) : null; }

    /// <summary>The friction at rest of a head whose own is not known: 0.3 N·m (from memory).</summary>
    public static Torque UsualFriction { get; } = Torque.FromNewtonMeters(0.3);

    /// <summary>The speed that a head's drag is given for: 10 °/s.</summary>
    public static RotationalSpeed DragSpeed { get; } = RotationalSpeed.FromDegreesPerSecond(10);

    /// <summary>Up to this speed a head that is let go is said to creep, beyond it to fall: 2 °/s, our choice.</summary>
    public static RotationalSpeed GreatestCreep { get; } = RotationalSpeed.FromDegreesPerSecond(2);

    /// <summary>The largest moment under which it does not fall: friction and what the drag gives at
    /// <see cref="GreatestCreep"/>.</summary>
    public Torque CreepMoment => Friction + ((Drag ?? Torque.Zero) * (GreatestCreep / DragSpeed));

    /// <summary>The moment that its tilt lock holds, friction not added; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Torque? TiltLock { get; init => field = value is { } torque ? Checked(torque) : null; }

    /// <summary>Tilt upwards, nose up: 0 or below, above -180°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside of that.</exception>
    public required Angle TiltUp
    {
        get;
        init
        {
            Require.Within(value.Degrees, -180, 0, "°");
            field = value;
        }
    }

    /// <summary>Tilt downwards, nose down: 0 or above, up to 180°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside of that.</exception>
    public required Angle TiltDown
    {
        get;
        init
        {
            Require.Within(value.Degrees, 0, 180, "°");
            field = value;
        }
    }

    /// <summary>The load that its maker rates it for; null if not known.</summary>
    public Mass? RatedLoad { get; init; }

    private static Torque Checked(Torque value, [System.Runtime.CompilerServices.CallerMemberName] string name = "")
    {
        Require.NotNegative(value.NewtonMeters, "N·m", name);
        return value;
    }
}

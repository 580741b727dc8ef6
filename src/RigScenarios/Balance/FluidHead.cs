using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>A fluid head with its plate.</summary>
public sealed record FluidHead
{
    /// <summary>
    /// What the plate allows: the rig's x that can be put over the head's centre, from its rear end (least) to its front end (greatest).
    /// </summary>
    public required LengthRange PlateTravel { get; init; }

    /// <summary>From the rig's z = 0 down to the tilt axis, whatever lies between.</summary>
    public required Length AxisDepth { get; init; }

    /// <summary>What it gives against the rig's weight.</summary>
    public required Counterbalance Counterbalance { get; init; }

    /// <summary>The moment that its tilt drag holds; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public required Torque Drag { get; init => field = Checked(value); }

    /// <summary>The moment that its tilt lock holds, drag not added; null if not known.</summary>
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

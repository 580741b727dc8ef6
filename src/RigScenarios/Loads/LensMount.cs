using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// A lens in its mount with a support under it, both springs: <c>φ = W b/(k_m + k_s a²)</c>; the mount carries <c>k_m φ</c>, the
/// support <c>k_s a φ</c>.
/// Without a support k_s is 0.
/// </summary>
/// <param name="MountStiffness">k_m: moment a radian of the mount; 0 or more.</param>
/// <param name="SupportStiffness">k_s: force a length of the support; 0 or more.</param>
/// <param name="SupportAhead">a: from the mount to the support.</param>
public sealed record LensMount(RotationalStiffness MountStiffness, ForcePerLength SupportStiffness, Length SupportAhead)
{
    /// <summary>A mount with nothing under the lens.</summary>
    public static LensMount Unsupported(RotationalStiffness mountStiffness) =>
        new(mountStiffness, ForcePerLength.Zero, Length.Zero);

    /// <summary>The mount under a lens.</summary>
    /// <param name="weight">W: of the lens, handling factor included.</param>
    /// <param name="centreAhead">b: from the mount to the lens's centre.</param>
    /// <exception cref="ArgumentOutOfRangeException">A stiffness is below 0, or nothing holds the lens.</exception>
    public LensMountLoad Under(Force weight, Length centreAhead)
    {
        double mount = MountStiffness.NewtonMetersPerRadian, support = SupportStiffness.NewtonsPerMeter, a = SupportAhead.Meters;
        Require.NotNegative(mount, "N·m/rad", nameof(MountStiffness));
        Require.NotNegative(support, "N/m", nameof(SupportStiffness));
        var stiffness = mount + (support * a * a);
        Require.Positive(stiffness, "N·m/rad", "MountStiffness with the support");
        var turn = weight.Newtons * centreAhead.Meters / stiffness;
        return new(Angle.FromRadians(turn), Torque.FromNewtonMeters(mount * turn), Force.FromNewtons(support * a * turn));
    }
}

/// <summary>How a lens's weight is shared.</summary>
/// <param name="Rotation">How far the lens nods.</param>
/// <param name="MountMoment">What the mount carries.</param>
/// <param name="SupportForce">What the support carries.</param>
public sealed record LensMountLoad(Angle Rotation, Torque MountMoment, Force SupportForce);

using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// A unified coarse thread, as on tripods (ISO 1222 names 1/4-20 and 3/8-16 and rates neither). Stress area <c>π/4 (d -
/// 0.9743/n)²</c> (ASME B1.1, from
/// memory; it reproduces the printed tables). In a camera's base the weak part is most often the thread in its light alloy, not
/// the screw.
/// </summary>
public sealed record ScrewThread
{
    private ScrewThread(string name, double inches, double threadsPerInch) =>
        (Name, Diameter, ThreadsPerInch) = (name, Length.FromInches(inches), threadsPerInch);

    /// <summary>1/4-20 UNC.</summary>
    public static ScrewThread Quarter20 { get; } = new("1/4-20", 0.25, 20);

    /// <summary>3/8-16 UNC.</summary>
    public static ScrewThread ThreeEighths16 { get; } = new("3/8-16", 0.375, 16);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Nominal diameter, d.</summary>
    public Length Diameter { get; }

    /// <summary>Threads an inch, n.</summary>
    public double ThreadsPerInch { get; }

    /// <summary>From thread to thread.</summary>
    public Length Pitch => Length.FromInches(1 / ThreadsPerInch);

    /// <summary>The area on which tension is counted.</summary>
    public Area StressArea => Area.FromSquareInches(Math.PI / 4 * Math.Pow(Diameter.Inches - (0.9743 / ThreadsPerInch), 2));

    /// <summary>The force with which a tightened screw clamps: <c>F = T/(K d)</c>. By hand it scatters by
    /// <see cref="JointFinding.ByFeel"/> either way.</summary>
    /// <param name="torque">The tightening torque.</param>
    /// <param name="friction">K: 0.20 dry, 0.15 lubricated; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">K is not above 0.</exception>
    public Force ClampingForce(Torque torque, double friction = 0.2)
    {
        Require.Positive(friction, "", nameof(friction));
        return Force.FromNewtons(torque.NewtonMeters / (friction * Diameter.Meters));
    }

    /// <summary>The torque for a clamping force: <c>T = K d F</c>.</summary>
    /// <param name="clamping">The force.</param>
    /// <param name="friction">K: 0.20 dry, 0.15 lubricated; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">K is not above 0.</exception>
    public Torque TighteningTorque(Force clamping, double friction = 0.2)
    {
        Require.Positive(friction, "", nameof(friction));
        return Torque.FromNewtonMeters(friction * Diameter.Meters * clamping.Newtons);
    }

    /// <summary>
    /// One screw in a plate: the joint's moment is a couple of the screw's tension and the pressure at the plate's edge, over the
    /// lever between them; the
    /// plate begins to lift where that tension is larger than the clamping force.
    /// </summary>
    /// <param name="moment">The moment that wants to lift the plate.</param>
    /// <param name="lever">From the screw to the edge that it tips over; above 0.</param>
    /// <param name="clamping">The clamping force.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lever is not above 0.</exception>
    public ScrewLoad Under(Torque moment, Length lever, Force clamping)
    {
        Require.Positive(lever.Meters, "m", nameof(lever));
        var tension = Math.Abs(moment.NewtonMeters) / lever.Meters;
        return new(Force.FromNewtons(tension), Force.FromNewtons(clamping.Newtons - tension),
            Pressure.FromPascals(Math.Max(tension, clamping.Newtons) / StressArea.SquareMeters));
    }
}

/// <summary>What a screw carries.</summary>
/// <param name="Tension">The tension of the moment's couple.</param>
/// <param name="LiftMargin">Clamping force less that tension; below 0 the plate lifts at one edge.</param>
/// <param name="Stress">The larger of both forces over the stress area.</param>
public sealed record ScrewLoad(Force Tension, Force LiftMargin, Pressure Stress);

using RigScenarios.Builds;
using RigScenarios.Limits;

namespace RigScenarios.Loads;

/// <summary>What the joints of a build are held against. A rating in kilograms meets the mass at rest, as makers rate it; the
/// others the weight with its handling factor.</summary>
public static class JointLimits
{
    /// <summary>What is said of a load that the handling factor is in.</summary>
    public const string Handled = "weight taken twice";

    private static readonly LimitBasis NoRating = new(LimitForce.Rating, "no rating known: no verdict");

    /// <summary>All limits of the joints, in no order.</summary>
    /// <param name="joints">The joints.</param>
    /// <param name="carriers">Parts with a rated load.</param>
    /// <param name="rods">Rods.</param>
    /// <param name="mounts">Lens mounts.</param>
    public static IEnumerable<Limit> Of(
        IEnumerable<JointFinding> joints, IEnumerable<CarrierFinding> carriers, IEnumerable<RodFinding> rods,
        IEnumerable<LensMountFinding> mounts) =>
        [.. carriers.Select(Of), .. joints.Select(Of).OfType<Limit>(), .. rods.Select(Of), .. mounts.Select(Of)];

    private static Limit Of(CarrierFinding carrier) =>
        new(carrier.Part, LimitKind.Load, carrier.Carried, carrier.Rated, LimitBasis.PartsFile);

    /// <summary>Null for a lens mount, which is a finding of its own, and for a joint that carries nothing.</summary>
    private static Limit? Of(JointFinding joint) => joint switch
    {
        { Rating.Moment: { } moment } => new(joint.RatedBy!, LimitKind.Moment, joint.Load.Moment, moment,
            LimitBasis.PartsFile) { Situation = $"lock under {joint.Load.Part}" },
        { Screw: { } screw } =>
            new(joint.Load.Part, LimitKind.Clamping, screw.Tension, screw.Tension + screw.LiftMargin, new(LimitForce.Default,
            $"{(joint.Fixing == Fixing.QuarterInchScrew ? "1/4-20" : "3/8-16")} at "
                + $"{JointFinding.HandTightened.NewtonMeters:0.#} N·m by hand, good to {JointFinding.ByFeel.Percent:0} % either "
                    + $"way, edge {JointFinding.PlateEdge.Millimeters:0} mm away (common practice, no source)"))
            { Situation = joint.On is { } on ? $"screwed to {on}" : "screwed to the camera plate" },
        { Fixing: Fixing.LensMount } or { Load.Force.Newtons: 0 } => null,
        _ => new(joint.Load.Part, LimitKind.Moment, joint.Load.Moment, null,
            NoRating) { Situation = joint.On is { } on ? $"on {on}" : "on the camera plate" },
    };

    private static Limit Of(RodFinding rods) =>
        new(rods.Rods, LimitKind.Stress, rods.Stress, rods.Material.YieldStrength,
        new(LimitForce.Default, $"{rods.Material.Name}; the clamp's give not counted"))
    {
        Situation = rods.InFront ? "front end" : "rear end",
    };

    private static Limit Of(LensMountFinding mount) => new(mount.Lens, LimitKind.Moment, mount.MomentUnsupported, null, NoRating)
    {
        Situation = mount.Support is { } support ? $"lens mount, if {support} gives way" : "lens mount, nothing under the lens",
    };
}

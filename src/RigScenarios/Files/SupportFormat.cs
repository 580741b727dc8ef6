using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How heads, legs, rods and arms stand in a parts file.</summary>
internal static class SupportFormat
{
    /// <summary>Distances on a rig, also backward, right and down.</summary>
    public static readonly QuantityFormat<Length> Distances = new(Length.FromMillimeters(-3000),
        Length.FromMillimeters(3000), "-180 mm");

    /// <summary>Lengths that can be 0.</summary>
    public static readonly QuantityFormat<Length> Depths = new(Length.FromMillimeters(0), Length.FromMillimeters(3000), "42 mm");

    public static readonly QuantityFormat<Torque> Moments = new(Torque.FromNewtonMeters(0),
        Torque.FromNewtonMeters(500), "3.5 N·m");

    public static readonly QuantityFormat<Length> Heights = new(Length.FromMillimeters(50),
        Length.FromMillimeters(10_000), "1400 mm");

    public static readonly QuantityFormat<Length> FootRadii = new(Length.FromMillimeters(50),
        Length.FromMillimeters(5000), "620 mm");

    private static readonly QuantityFormat<Angle> TiltReach = new(Angle.FromDegrees(0), Angle.FromDegrees(180), "70 °");

    private static readonly QuantityFormat<Length> Diameters = new(Length.FromMillimeters(4),
        Length.FromMillimeters(60), "15 mm");

    public static readonly Format<AxisOffsets> Offsets = new RecordFormat<AxisOffsets>(
        () => AxisOffsets.None, "A way along three axes; what is left out is 0.",
        Fields<AxisOffsets>.WithDefault("forward", Distances, Length.Zero, offsets => offsets.Forward,
            (offsets, value) => offsets with { Forward = value }, "Along the lens; below zero: backward."),
        Fields<AxisOffsets>.WithDefault("left", Distances, Length.Zero, offsets => offsets.Left,
            (offsets, value) => offsets with { Left = value }, "To the camera's left; below zero: to the right."),
        Fields<AxisOffsets>.WithDefault("up", Distances, Length.Zero, offsets => offsets.Up,
            (offsets, value) => offsets with { Up = value }, "Upward; below zero: downward."));

    public static readonly Format<HeadData> Head = new RecordFormat<HeadData>(
        () => new HeadData(), "A tripod head with its camera plate.",
        Fields<HeadData>.Required("slide", Depths, head => head.Slide, (head, value) => head with { Slide = value },
            "How far the camera plate slides, from end to end."),
        Fields<HeadData>.Required("axis-below-plate", Depths, head => head.AxisBelowPlate,
            (head, value) => head with { AxisBelowPlate = value }, "From the top of the camera plate down to the tilt axis."),
        new Field<HeadData, IReadOnlyList<Torque>>("counterbalance-steps", new ListFormat<Torque>(Moments, 40),
            head => head.CounterbalanceSteps.Count > 0, head => head.CounterbalanceSteps, (head, value) =>
            head with { CounterbalanceSteps = value }, false,
            "What each step of the counterbalance gives at most; 0 N·m is a step only if it stands here."),
        Fields<HeadData>.Optional("counterbalance-from", Moments, head => head.CounterbalanceFrom,
            (head, value) => head with { CounterbalanceFrom = value }, "The least of a counterbalance without steps."),
        Fields<HeadData>.Optional("counterbalance-to", Moments, head => head.CounterbalanceTo,
            (head, value) => head with { CounterbalanceTo = value }, "The most of a counterbalance without steps."),
        Fields<HeadData>.Optional("friction", Moments, head => head.Friction, (head, value) => head with { Friction = value },
            "The moment that holds it at rest, unlocked; 0.3 N·m is assumed if left out."),
        Fields<HeadData>.Optional("drag", Moments, head => head.Drag, (head, value) => head with { Drag = value },
            "The moment of the tilt drag at 10 °/s, at the setting that is used. It slows; it holds nothing."),
        Fields<HeadData>.Optional("tilt-lock", Moments, head => head.TiltLock, (head, value) => head with { TiltLock = value },
            "The moment that the tilt lock holds."),
        Fields<HeadData>.Required("tilt-up", TiltReach, head => head.TiltUp, (head, value) => head with { TiltUp = value },
            "How far it tilts up."),
        Fields<HeadData>.Required("tilt-down", TiltReach, head => head.TiltDown, (head, value) => head with { TiltDown = value },
            "How far it tilts down."));

    public static readonly Format<LegsData> Legs = new RecordFormat<LegsData>(
        () => new LegsData(Length.Zero, Length.Zero), "A tripod's legs as they usually stand.",
        Fields<LegsData>.Required("height", Heights, legs => legs.Height, (legs, value) => legs with { Height = value },
            "From the ground to where the head sits."),
        Fields<LegsData>.Required("foot-radius", FootRadii, legs => legs.FootRadius,
            (legs, value) => legs with { FootRadius = value }, "From the middle between the feet to a foot."),
        Fields<LegsData>.Optional("centre-height", Heights, legs => legs.CentreHeight,
            (legs, value) => legs with { CentreHeight = value },
            "Height of the legs' own centre of gravity; half of the height if left out."));

    public static readonly Format<RodData> Rods = new RecordFormat<RodData>(
        () => new RodData(Length.Zero, Length.Zero, RodMaterialKind.Aluminium), "A pair of rods.",
        Fields<RodData>.Required("diameter", Diameters, rods => rods.Diameter, (rods, value) => rods with { Diameter = value },
            "Outer diameter of one rod."),
        Fields<RodData>.WithDefault("bore", Depths, Length.Zero, rods => rods.Bore, (rods, value) => rods with { Bore = value },
            "Inner diameter; left out for solid rods."),
        Fields<RodData>.Required("material", new ChoiceFormat<RodMaterialKind>(), rods => rods.Material,
            (rods, value) => rods with { Material = value }, "What they are made of."));

    public static readonly Format<ArmData> Arm = new RecordFormat<ArmData>(
        () => new ArmData(Torque.Zero), "An arm that holds an accessory.",
        Fields<ArmData>.Required("lock-torque", Moments, arm => arm.LockTorque, (arm, value) => arm with { LockTorque = value },
            "The moment that its weakest lock holds."));
}

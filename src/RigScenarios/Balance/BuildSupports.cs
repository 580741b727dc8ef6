using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Limits;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>What holds a build up: its head, its legs, the shoulder; each null where the build has none or its figures are not
/// known.</summary>
public sealed record BuildSupports
{
    /// <summary>The head.</summary>
    public FluidHead? Head { get; private init; }

    /// <summary>The head's name in the kit; null if the build has none.</summary>
    public string? HeadName { get; private init; }

    /// <summary>The stand with the head on it.</summary>
    public Stand? Stand { get; private init; }

    /// <summary>The name of the legs in the kit; null if the build has none.</summary>
    public string? LegsName { get; private init; }

    /// <summary>Pad and hands.</summary>
    public ShoulderSupport? Shoulder { get; private init; }

    /// <summary>What was taken because nobody gave it.</summary>
    public IReadOnlyList<AssumedValue> Assumed { get; private init; } = [];

    /// <summary>Whether the head's file gives its friction at rest.</summary>
    public bool IsFrictionKnown { get; private init; }

    /// <summary>What the tripod carries, rig and head, against its rated load; null without a tripod.</summary>
    public Limit? LegsLoad { get; private init; }

    /// <summary>What is missing to say whether it balances on head or shoulder, each a sentence.</summary>
    public IReadOnlyList<string> MissingForBalance { get; private init; } = [];

    /// <summary>What is missing to say when it tips over, each a sentence.</summary>
    public IReadOnlyList<string> MissingForStand { get; private init; } = [];

    /// <summary>All that is missing.</summary>
    public IEnumerable<string> Missing => [.. MissingForBalance, .. MissingForStand];

    /// <summary>Finds the supports of a build.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    /// <param name="partOf">The part behind a name in the kit; null for an unknown name.</param>
    public static BuildSupports Of(BuildInPlace rig, Func<string, Part?> partOf)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(partOf);
        var build = rig.Build;
        var assumed = new List<AssumedValue>();
        List<string> missing = [], missingForStand = [];
        string? headName = Named(build, partOf, PartKind.Head), legsName = Named(build, partOf, PartKind.Tripod);
        var depth = build.OnHead?.BaseDepth ?? UsualBaseDepth(rig);
        if (headName is not null && build.OnHead?.BaseDepth is null)
            assumed.Add(new("on-head.base-depth", "from the body's base plane down to the top of the camera plate",
                $"{depth.Millimeters:F0} mm", "the lowest of body, cage and rods",
                Citation.CommonPractice("rigs that stand on their base")));
        if (headName is not null && build.OnHead?.SlideMiddle is null)
            assumed.Add(new("on-head.slide-middle", "where the camera plate is screwed on", "under the body's tripod socket",
                "not given", Citation.CommonPractice("plates screwed on at the socket")));
        var head = headName is null ? null : HeadOf(build, partOf(headName)!, depth);
        if (head is not null && partOf(headName!)!.Head!.Friction is null)
            assumed.Add(new("head.friction", "friction that holds the head at rest", $"{head.Friction.NewtonMeters:0.#} N·m",
                "the head's parts file gives none", Citation.FromMemory("a middle fluid head, drag set low")));
        if (headName is not null && head is null)
            missing.Add($"The head \"{headName}\" has no figures of its own, such as slide and "
                + "counterbalance: whether it balances can't be said.");
        if (headName is null && build.Stance == Stance.Tripod)
            missing.Add("The build stands on a tripod but no head is among its things: add one to be told whether it "
                + "balances.");
        var stand = legsName is null || headName is null
            ? null : StandOf(build, partOf(legsName)!, partOf(headName)!, depth, assumed, missingForStand, legsName);
        if (legsName is null && build.Stance == Stance.Tripod)
            missingForStand.Add("The build stands on a tripod but no tripod is among its things: add one to be told when it "
                + "tips over.");
        return new()
        {
            Head = head,
            HeadName = headName,
            Stand = stand,
            LegsName = legsName,
            Shoulder = build.Stance == Stance.Shoulder ? ShoulderOf(rig, missing) : null,
            Assumed = assumed,
            IsFrictionKnown = headName is not null && partOf(headName)!.Head?.Friction is not null,
            LegsLoad = legsName is null
                ? null : new(legsName, LimitKind.Load, rig.Placed.MassProperties.Mass
                + ((headName is null ? null : partOf(headName)!.Mass) ?? Mass.Zero), partOf(legsName)!.RatedLoad,
                LimitBasis.PartsFile),
            MissingForBalance = missing,
            MissingForStand = missingForStand,
        };
    }

    private static string? Named(Build build, Func<string, Part?> partOf, PartKind kind) =>
        build.Carries.FirstOrDefault(name => partOf(name)?.Kind == kind);

    private static FluidHead? HeadOf(Build build, Part part, Length depth)
    {
        if (part.Head is not { } data)
            return null;
        var middle = build.OnHead?.SlideMiddle ?? Length.Zero;
        return new()
        {
            CameraPlateTravel = new(middle - (data.Slide / 2), middle + (data.Slide / 2)),
            AxisDepth = depth + data.AxisBelowPlate,
            Counterbalance = data.CounterbalanceTo is { } most
                ? Counterbalance.OfRange(data.CounterbalanceFrom ?? Torque.Zero, most)
                : Counterbalance.OfSteps(data.CounterbalanceSteps),
            Friction = data.Friction ?? FluidHead.UsualFriction,
            Drag = data.Drag,
            TiltLock = data.TiltLock,
            TiltUp = -data.TiltUp,
            TiltDown = data.TiltDown,
            RatedLoad = part.RatedLoad,
        };
    }

    private static Stand? StandOf(Build build, Part legs, Part head, Length depth,
        List<AssumedValue> assumed, List<string> missing, string name)
    {
        var use = build.OnLegs;
        var height = use?.Height ?? legs.Legs?.Height;
        var radius = use?.FootRadius ?? legs.Legs?.FootRadius;
        if (height is null || radius is null || legs.Mass is not { } mass || head.Mass is not { } headMass
            || head.Size is not { } size)
        {
            missing.Add($"The tripod \"{name}\" or its head lacks a height, a foot radius, a mass or a size: when it tips "
                + "over can't be said.");
            return null;
        }
        var centre = use?.CentreHeight ?? legs.Legs?.CentreHeight;
        if (centre is null)
            assumed.Add(new("on-legs.centre-height", "height of the tripod's own centre of gravity",
                $"{(height.Value / 2).Millimeters:F0} mm", "half of its height",
                Citation.CommonPractice("legs of even thickness")));
        var ballast = use?.Ballast ?? Mass.Zero;
        var total = mass + headMass + ballast;
        var above = height.Value + size.Height + depth;
        return new()
        {
            FootRadius = radius.Value,
            Mass = total,
            CentreHeight = (((centre ?? height.Value / 2) * mass.Kilograms)
                + ((height.Value + (size.Height / 2)) * headMass.Kilograms)
                + ((use?.BallastHeight ?? Stand.UsualHook(above)) * ballast.Kilograms)) / total.Kilograms,
            CameraPlateHeight = above,
        };
    }

    private static ShoulderSupport? ShoulderOf(BuildInPlace rig, List<string> missing)
    {
        var pad = rig.Build.OnShoulder?.Pad ?? Centre(rig,
            rig.Things.FirstOrDefault(thing => thing.Value.Kind == PartKind.ShoulderPad).Key);
        var handles = rig.Things.Where(thing => thing.Value.Kind == PartKind.Handle).Select(thing => Centre(rig, thing.Key))
            .Where(at => at is not null).ToList();
        var hands = rig.Build.OnShoulder?.Hands ?? (handles.Count > 0 ? handles.Max() : null);
        if (pad is null)
            missing.Add("The build goes on the shoulder but has no shoulder pad: give one, or \"on-shoulder: {pad: -120 mm, "
                + "hands: 180 mm}\".");
        if (hands is null)
            missing.Add("The build goes on the shoulder but has no handle: give one, or \"on-shoulder: {pad: -120 mm, hands: "
                + "180 mm}\".");
        if (pad is null || hands is null)
            return null;
        if ((pad.Value - hands.Value).Meters is not 0)
            return new(pad.Value, hands.Value);
        missing.Add("Pad and hands are at the same place along the lens: the hands then have no lever.");
        return null;
    }

    private static Length? Centre(BuildInPlace rig, string? name) =>
        name is null ? null : rig.Placed.MassProperties.Parts[name].Centre.X;

    /// <summary>The lowest point of body, cage and rods, which the camera plate is under.</summary>
    private static Length UsualBaseDepth(BuildInPlace rig)
    {
        var lowest = 0d;
        foreach (var (name, part) in rig.Things.Where(thing => thing.Value.Kind is PartKind.Cage or PartKind.Rods
            or PartKind.Body))
            lowest = Math.Min(lowest, rig.Placed.MassProperties.Parts[name].BoxMiddle.Z - ((part.Size?.Height.Meters ?? 0) / 2));
        return Length.FromMillimeters(Math.Round(-lowest * 1000));
    }
}

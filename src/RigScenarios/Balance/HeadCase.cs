using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// Something that happens to a balanced rig between or during takes, plate and counterbalance left as they were: what the head
/// must then hold.
/// </summary>
public sealed record HeadCase
{
    /// <summary>What happens, as a heading: "battery off".</summary>
    public required string Title { get; init; }

    /// <summary>The part that it happens to, by name.</summary>
    public required string Part { get; init; }

    /// <summary>The rig as it then is.</summary>
    public required PlacedBuild Rig { get; init; }

    /// <summary>How it sits on the head then.</summary>
    public required HeadBalance Balance { get; init; }

    /// <summary>The moment of a hand on the rig, nose-down positive, with the head level; 0 where there is none.</summary>
    public Torque Hand { get; init; } = Torque.Zero;

    /// <summary>Whether something comes off.</summary>
    public bool IsOff { get; init; }

    /// <summary>Whether the tilt lock must be tight before something comes off: friction at rest does not hold what is
    /// left.</summary>
    public bool NeedsLock => IsOff && Margin.NewtonMeters < 0;

    /// <summary>The moment with the head level, nose-down positive, hand included.</summary>
    public Torque Level => Balance.MomentAtZero + Hand;

    /// <summary>
    /// Friction at rest less the worst moment over the tilt range; with a hand on the rig, less the moment with the head level.
    /// Below 0 the rig moves by itself.
    /// </summary>
    public Torque Margin => Balance.Head.Friction - Worst;

    /// <summary>The worst moment over the tilt range, without its sign; with a hand on the rig, that with the head
    /// level.</summary>
    public Torque Worst => Hand.NewtonMeters == 0 ? Balance.WorstResidual : Torque.FromNewtonMeters(Math.Abs(Level.NewtonMeters));

    /// <summary>What it then does when it is let go.</summary>
    public LetGo WhenLetGo => Balance.Under(Worst);

    /// <summary>How far the centre of gravity is to the left of the plane through the lens.</summary>
    public Length CentreLeft => Rig.MassProperties.Centre.Y;

    /// <summary>The moment that rolls it to the left, <c>m g y</c>.</summary>
    public Torque Roll => Torque.FromNewtonMeters(StandardGravity.Weight(Rig.MassProperties.Mass).Newtons * CentreLeft.Meters);

    /// <summary>The cases that a build has: battery and lens off, a monitor swung to the left, the lens zoomed, a hand on the
    /// focus.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    /// <param name="present">How it is balanced.</param>
    public static IReadOnlyList<HeadCase> Of(BuildInPlace rig, HeadBalance present)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(present);
        var cases = new List<HeadCase>();
        foreach (var (name, part) in rig.Things)
        {
            if (part.Kind is PartKind.Battery or PartKind.Lens or PartKind.Monitor
                && rig.Placed.Parts.Count > rig.Placed.WithAllOn(name).Count && rig.Placed.Parts[name].Mass > Mass.Zero)
                cases.Add(Off(rig.Placed, present, name));
            if (part.Kind == PartKind.Arm && rig.Placed.WithAllOn(name).Count > 1)
                cases.Add(As(present, "swung to the left", name, Turned(rig.Placed, name)));
            if (part is { Kind: PartKind.Lens, CentreMoves: { } moves })
                cases.Add(As(present, "zoomed or focused to its end", name, Zoomed(rig.Placed, name, moves)));
        }
        var drive = rig.Things.FirstOrDefault(thing => thing.Value.Kind is PartKind.FollowFocus).Key
            ?? rig.Things.FirstOrDefault(thing => thing.Value.Kind is PartKind.Lens).Key;
        if (drive is not null)
        {
            var force = rig.Build.OnHead?.FocusHand ?? HeadInUse.UsualFocusHand;
            var lever = rig.Placed.MassProperties.Parts[drive].Centre.X - present.CameraPlate;
            cases.Add(As(present, "a hand on the focus", drive,
                rig.Placed) with { Hand = Torque.FromNewtonMeters(force.Newtons * lever.Meters) });
        }
        return cases;
    }

    private static HeadCase Off(PlacedBuild rig, HeadBalance present, string part)
    {
        var off = PartOff.Of(rig, present, part);
        return new() { Title = "off", Part = part, Rig = off.Left, Balance = off.AsItWas, IsOff = true };
    }

    private static HeadCase As(HeadBalance present, string title, string part, PlacedBuild rig) => new()
    {
        Title = title,
        Part = part,
        Rig = rig,
        Balance = HeadBalance.At(present.Head, rig.MassProperties, present.CameraPlate, present.Counterbalance,
            present.StepIndex),
    };

    private static PlacedBuild Turned(PlacedBuild rig, string arm)
    {
        var part = rig.Parts[arm];
        var turned = part.Placement.Orientation;
        return rig.With(arm,
            part with { Placement =
            part.Placement with { Orientation = turned with { Yaw = turned.Yaw + Angle.FromDegrees(90) } } });
    }

    private static PlacedBuild Zoomed(PlacedBuild rig, string lens, Length moves)
    {
        var part = rig.Parts[lens];
        return rig.With(lens, part with { MassCentre = part.CentreUsed with { X = part.CentreUsed.X + moves } });
    }
}

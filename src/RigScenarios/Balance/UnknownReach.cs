using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>A thing on the rig with a mass and no size: it is taken as a point where it is mounted, and its weight may act
/// further out.</summary>
/// <param name="Thing">Its name in the kit.</param>
/// <param name="Kind">What it is.</param>
/// <param name="AtMost">How far out its weight may act.</param>
/// <param name="Moment">Its weight there, about its mount.</param>
public sealed record UnknownReach(string Thing, PartKind Kind, Length AtMost, Torque Moment)
{
    // A box four times as long as wide, of 0.3 kg a litre, held at its end: longer and lighter than nearly all that sits on a rig
    // (common practice, no source).
    private const double KilogramsPerCubicMetre = 300;
    private const double LengthOverWidth = 4;

    /// <summary>Whether nobody can say where the rig's centre of gravity is without its size, however light it is.</summary>
    public bool IsHeavyPart => Kind is PartKind.Body or PartKind.Lens or PartKind.Battery;

    /// <summary>All of them on a rig.</summary>
    /// <param name="rig">The rig.</param>
    public static IReadOnlyList<UnknownReach> On(BuildInPlace rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return
        [
            .. from thing in rig.Things
               let part = thing.Value
               where part is { Size: null, Kind: not PartKind.Cable }
                   && (part.HeldAt ?? part.Kind.Usual()) != MountingFace.Middle
               let one = part.Mass ?? Mass.Zero
               where one > Mass.Zero
               let mass = rig.Placed.Parts[thing.Key].Mass
               let reach = AtMostOf(one)
               select new UnknownReach(thing.Key, part.Kind, reach,
                   Torque.FromNewtonMeters(mass.Kilograms * StandardGravity.MetresPerSecondSquared * reach.Meters)),
        ];
    }

    /// <summary>Those whose size has to be known: body, lens and battery, and the others where together they may turn the rig by
    /// more than what holds it.</summary>
    /// <param name="all">Those on the rig.</param>
    /// <param name="held">The moment that is held: friction at rest, or what the centre is known to anyway.</param>
    public static IReadOnlyList<UnknownReach> Needed(IReadOnlyList<UnknownReach> all, Torque held)
    {
        ArgumentNullException.ThrowIfNull(all);
        var light = all.Where(thing => !thing.IsHeavyPart).Sum(thing => thing.Moment.NewtonMeters) <= held.NewtonMeters;
        return [.. all.Where(thing => thing.IsHeavyPart || !light)];
    }

    private static Length AtMostOf(Mass mass) => Length.FromMeters(
        LengthOverWidth / 2 * Math.Cbrt(mass.Kilograms / KilogramsPerCubicMetre / LengthOverWidth));
}

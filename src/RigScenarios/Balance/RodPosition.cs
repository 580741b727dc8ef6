using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>Where a part sits on rods, as a tape measure finds it: from the ends of the rods, not from a mounting point that
/// nobody sees.</summary>
/// <param name="Rods">The rods, by their name in the kit.</param>
/// <param name="Part">The part, by its name in the kit.</param>
/// <param name="FromFront">From the front end of the rods back to the part's mounting point; below zero where it sits ahead of
/// that end.</param>
/// <param name="FromRear">From the rear end of the rods forward to the part's mounting point; below zero where it sits behind
/// that end.</param>
public sealed record RodPosition(string Rods, string Part, Length FromFront, Length FromRear)
{
    /// <summary>Every part that sits on rods, rods in the order of the build, on each the foremost first; rods whose length
    /// nobody gave are left out, for they have no known ends.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    public static IReadOnlyList<RodPosition> Of(BuildInPlace rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return [.. rig.Things.Where(thing => thing.Value is { Kind: PartKind.Rods, Size: not null })
            .SelectMany(rods => On(rig, rods.Key))];
    }

    private static IEnumerable<RodPosition> On(BuildInPlace rig, string rods)
    {
        var placed = rig.Placed.Parts[rods];
        var (front, rear) = (placed.BoxMiddle.X + (placed.Size.Length / 2), placed.BoxMiddle.X - (placed.Size.Length / 2));
        return rig.Placed.Parts.Where(part => part.Value.Placement.Carrier == rods)
            .OrderByDescending(part => part.Value.Placement.Offset.X.Meters)
            .Select(part => new RodPosition(rods, part.Key, front - part.Value.Placement.Offset.X,
                part.Value.Placement.Offset.X - rear));
    }
}

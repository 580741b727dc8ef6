using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// What a lens does to its mount. How stiff mount and support are nobody says, so both ends are given: nothing under the lens,
/// and a support that takes
/// all that it can. The truth lies between; no maker's rating is known, so there is no verdict.
/// </summary>
/// <param name="Lens">The lens.</param>
/// <param name="Weight">Its weight with what hangs on it, handling factor included.</param>
/// <param name="CentreAhead">From the mount to their centre.</param>
/// <param name="MomentUnsupported">The mount's moment with nothing under the lens.</param>
/// <param name="Support">The name of the support under it; null if there is none.</param>
/// <param name="SupportForce">What a stiff support carries; null without one.</param>
public sealed record LensMountFinding(string Lens, Force Weight, Length CentreAhead, Torque MomentUnsupported, string? Support,
    Force? SupportForce)
{
    /// <summary>The mounts of all lenses of a build.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    /// <param name="handlingFactor">Factor on the weight; 1 or more.</param>
    public static IReadOnlyList<LensMountFinding> All(BuildInPlace rig, double handlingFactor = JointLoad.SuddenLoad)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return [.. rig.Things.Where(thing => thing.Value.Kind == PartKind.Lens && rig.Places[thing.Key].On is not null)
            .Select(thing => Of(rig, thing.Key, handlingFactor))];
    }

    private static LensMountFinding Of(BuildInPlace rig, string lens, double factor)
    {
        var load = JointLoad.Of(rig.Placed, lens, factor);
        var parts = rig.Placed.MassProperties.Parts;
        var ahead = load.Force.Newtons > 0 ? Length.FromMeters(load.NoseDown.NewtonMeters / load.Force.Newtons) : Length.Zero;
        var support = rig.Things.FirstOrDefault(thing => thing.Value.Kind == PartKind.Support
            && parts[thing.Key].Centre.X > parts[lens].MountingPoint.X).Key;
        return new(lens, load.Force, ahead, load.NoseDown, support,
            support is null ? null
                : Force.FromNewtons(load.NoseDown.NewtonMeters / (parts[support].Centre.X - parts[lens].MountingPoint.X).Meters));
    }
}

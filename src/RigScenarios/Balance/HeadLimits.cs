using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>What a rig on a head is held against.</summary>
public static class HeadLimits
{
    /// <summary>What the camera plate is called where a limit names its element.</summary>
    public const string CameraPlate = "camera plate";

    /// <summary>All limits of a rig on its head, in no order.</summary>
    /// <param name="head">The rig on its head.</param>
    /// <param name="name">The head's name in the kit.</param>
    /// <param name="isFrictionKnown">Whether the head's file gives its friction at rest.</param>
    /// <param name="cases">What can happen to the rig.</param>
    public static IEnumerable<Limit> Of(HeadBalance head, string name, bool isFrictionKnown, IReadOnlyList<HeadCase> cases)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(cases);
        var travel = head.Head.CameraPlateTravel;
        var half = (travel.Greatest - travel.Least) / 2;
        yield return new Limit(CameraPlate, LimitKind.Travel, half - head.TravelMargin, half, LimitBasis.PartsFile);
        // That it creeps is no fault of the rig, so that the friction is a figure to compare with; that it falls is one.
        yield return new Limit(name, LimitKind.TiltAtRest, head.WorstResidual, head.Head.Friction,
            new(LimitForce.Yardstick, isFrictionKnown ? "parts file" : "assumed, from memory"));
        yield return new Limit(name, LimitKind.Creep, head.WorstResidual, head.Head.CreepMoment,
            new(isFrictionKnown && head.Head.Drag is not null ? LimitForce.Rating : LimitForce.Default,
                $"{(isFrictionKnown ? "parts file" : "friction assumed, from memory")}; "
                + $"{(head.Head.Drag is null ? "drag not known, none counted" : "up to 2 °/s, our choice")}"));
        yield return new Limit(name, LimitKind.Load, Mass.FromKilograms(head.Rig.Kilograms), head.Head.RatedLoad,
            LimitBasis.PartsFile);
        foreach (var off in cases.Where(happening => happening.NeedsLock))
            yield return new Limit(name, LimitKind.TiltLock, off.Worst, head.Head.TiltLock,
                LimitBasis.PartsFile) { Situation = $"{off.Part} off" };
    }
}

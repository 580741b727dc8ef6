using RigScenarios.Balance;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>A rig held in the hands, level and still: the moments of its weight at wrist and shoulder, fore and aft.</summary>
/// <param name="Hand">x of the hands on the rig.</param>
/// <param name="Shoulder">x of the shoulder joint; behind the hands where the rig is held out in front.</param>
/// <param name="Share">The part of the rig's weight that this arm carries; 50 % with both hands alike.</param>
/// <param name="ArmMass">The arm's own mass, which the shoulder carries too; about 5 % of the body's mass (common practice, no
/// source).</param>
/// <param name="ArmCentre">x of the arm's own centre.</param>
public sealed record HandHold(Length Hand, Length Shoulder, Ratio Share, Mass ArmMass, Length ArmCentre)
{
    /// <summary>The moment at the wrist, nose-down positive.</summary>
    public Torque WristMoment(MassProperties rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Torque.FromNewtonMeters(Share.DecimalFractions * StandardGravity
            .Weight(rig.Mass).Newtons * (rig.Centre.X - Hand).Meters);
    }

    /// <summary>The moment at the shoulder as a limit.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="greatestEffort">The greatest moment that the operator's shoulder gives; null if nobody measured it.</param>
    public Limit AsLimit(MassProperties rig, Torque? greatestEffort) =>
        new("shoulder of the operator", LimitKind.Holding,
        Torque.FromNewtonMeters(Math.Abs(ShoulderMoment(rig).NewtonMeters)), greatestEffort,
        new(LimitForce.Rating, greatestEffort is null ? "not measured" : "measured, in the scenario"));

    /// <summary>The moment at the shoulder, arm included.</summary>
    public Torque ShoulderMoment(MassProperties rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Torque.FromNewtonMeters(
            (Share.DecimalFractions * StandardGravity.Weight(rig.Mass).Newtons * (rig.Centre.X - Shoulder).Meters)
            + (StandardGravity.Weight(ArmMass).Newtons * (ArmCentre - Shoulder).Meters));
    }
}

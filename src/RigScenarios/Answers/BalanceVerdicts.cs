using RigScenarios.Balance;
using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>The verdicts on a build at rest.</summary>
internal static class BalanceVerdicts
{
    public static Verdict OfBalance(BuildBalance balance)
    {
        if (balance.BalanceLimits.Any(limit => limit is { IsPassed: true, HasForce: true }) || balance.Shoulder is { PadLoad.Newtons: < 0 })
            return Verdict.Fails;
        if (balance.BalanceMissing.Count > 0)
            return Verdict.NotKnown;
        return IsClose(balance) ? Verdict.Close : Verdict.Holds;
    }

    public static Verdict OfStand(BuildBalance balance)
    {
        if (balance.StandLimits.Any(limit => limit is { IsPassed: true, HasForce: true }))
            return Verdict.Fails;
        if (balance.StandMissing.Count > 0)
            return Verdict.NotKnown;
        // What was wished for and is not there is no fault, but it is no "holds" either.
        var wished = balance.Rig.Build.OnLegs?.WantedLean is { } lean && balance.Stand is { } stand && stand.TipAngle < lean;
        return wished || balance.StandLimits.Any(limit => limit.HasForce && limit.Share < Within(balance, limit.Kind)) ? Verdict.Close : Verdict.Holds;
    }

    /// <summary>A head that creeps, or a camera plate that reaches by less than the centre of gravity is known.</summary>
    private static bool IsClose(BuildBalance balance) => balance.Present is { } head
        && (head.WhenLetGo == LetGo.Creeps || head.TravelMargin < balance.Mass.CentreUncertainty.X || head.LoadMargin < balance.Mass.MassUncertainty);

    /// <summary>How well a load is known, as a share of what is allowed.</summary>
    private static double Within(BuildBalance balance, LimitKind kind) =>
        kind == LimitKind.Gust ? StandLimits.GustWithin.DecimalFractions : balance.Mass.MassUncertainty / balance.Mass.Mass;
}

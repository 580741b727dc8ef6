using RigScenarios.Balance;
using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>The two questions that a build at rest is asked, with their verdicts.</summary>
internal static class BalanceQuestions
{
    private static readonly string[] NoMass = ["Nothing of the rig has a mass."];

    /// <summary>Does it balance: head, shoulder or hand?</summary>
    /// <param name="balance">The build at rest; null where nothing of it has a mass.</param>
    public static AnswerQuestion Balance(BuildBalance? balance) =>
        balance is null ? new(QuestionKind.Balance, Verdict.NotKnown, []) { Missing = NoMass }
        : balance.SizesMissing.Count > 0
            ? Of(QuestionKind.Balance, balance.BalanceLimits, balance.BalanceMissing, false, null) with
            {
                MissingPaths = [.. balance.SizesMissing.Select(size => size.Path)],
            }
        : Of(QuestionKind.Balance, balance.BalanceLimits, balance.BalanceMissing, PadLifts(balance), CloseBy(balance));

    /// <summary>Does it stand and hold: tipping, wind, ratings, joints?</summary>
    /// <param name="balance">The build at rest; null where nothing of it has a mass.</param>
    public static AnswerQuestion Stand(BuildBalance? balance) =>
        balance is null ? new(QuestionKind.Stand, Verdict.NotKnown, []) { Missing = NoMass }
        // What was wished for and is not there is no fault, but it is no "holds" either.
        : Of(QuestionKind.Stand, balance.StandLimits, balance.StandMissing, false,
            balance.Rig.Build.OnLegs?.WantedLean is null
                ? null : balance.StandLimits.FirstOrDefault(limit => limit is { Kind: LimitKind.TipAngle, HasForce: false,
                IsPassed: true }));

    private static AnswerQuestion Of(QuestionKind kind, IReadOnlyList<Limit> limits, IReadOnlyList<string> missing,
        bool fails, Limit? closeBy)
    {
        var question = QuestionRules.OfLimits(kind, limits, _ => true, missing);
        var verdict = Verdicts.Worst(
            [question.Verdict, fails ? Verdict.Fails : Verdict.Holds, missing.Count > 0 ? Verdict.NotKnown : Verdict.Holds,
                closeBy is null ? Verdict.Holds : Verdict.Close]);
        return question with
        {
            Verdict = verdict,
            Least = verdict == Verdict.Close && closeBy is not null ? closeBy : question.Least,
            Shortfall = verdict == Verdict.Fails ? Math.Max(0.001, question.Shortfall) : question.Shortfall,
        };
    }

    /// <summary>The centre of gravity is ahead of the hands: the rig turns over them.</summary>
    private static bool PadLifts(BuildBalance balance) => balance.Shoulder is { PadLoad.Newtons: < 0 };

    /// <summary>The limit by which it only just balances: a head that creeps, or a camera plate that reaches by less than the
    /// centre of gravity is known.</summary>
    private static Limit? CloseBy(BuildBalance balance) => balance.Present is not { } head ? null
        : head.WhenLetGo == LetGo.Creeps ? balance.BalanceLimits.First(limit => limit.Kind == LimitKind.TiltAtRest)
        : head.TravelMargin < balance.Mass.CentreUncertainty.X
            ? balance.BalanceLimits.First(limit => limit.Kind == LimitKind.Travel) : null;
}

using RigScenarios.Answers;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>How far a choice is from holding each must, so that of many that fail the nearest can be told.</summary>
internal static class RigShortfall
{
    // Behind all that can be measured: something that it rests on is not known.
    private const double NotMeasured = 1e6;

    // A must that asks for more than that nothing fails (a reserve, a verdict that is not close) is missed by less than one that
    // fails.
    private const double OnlyTooClose = 1e-6;

    /// <summary>For each must, in its order, the shortfall.</summary>
    /// <param name="musts">What must hold.</param>
    /// <param name="answer">The answer; null where the parts make no rig.</param>
    /// <param name="figures">What was found of the choice, with the musts that fail.</param>
    public static IReadOnlyList<double> Of(RigMusts musts, RigAnswer? answer, RigFigures figures) =>
        [.. Enum.GetValues<RigMust>().Select(must => figures.Holds(must) ? 0
            : answer is null ? double.PositiveInfinity : must switch
        {
            RigMust.Lasts when answer.Of(QuestionKind.Power) is { Shortfall: > 0 } power => power.Shortfall,
            RigMust.Lasts => OnlyTooClose / (1 + Math.Max(0, musts.Lasts?.Reserve is null ? figures.Reserve?.Hours ?? 0
                : figures.ReserveShare?.DecimalFractions ?? 0)),
            RigMust.Balances => Of(answer, QuestionKind.Balance),
            RigMust.Holds => Of(answer, QuestionKind.Wiring) + Of(answer, QuestionKind.Stand),
            _ => 1,
        })];

    private static double Of(RigAnswer answer, QuestionKind kind) => answer.Of(kind) switch
    {
        { Verdict: Limits.Verdict.NotKnown } => NotMeasured,
        { Shortfall: > 0 } failing => failing.Shortfall,
        _ => OnlyTooClose,
    };
}

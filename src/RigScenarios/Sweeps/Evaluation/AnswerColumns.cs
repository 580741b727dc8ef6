using RigScenarios.Answers;
using RigScenarios.Limits;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>The columns of the whole answer, of travel and of cost.</summary>
internal static class AnswerColumns
{
    /// <summary>The columns, in the order of tables.</summary>
    /// <param name="currency">The currency of the scenario's amounts; empty where it has none.</param>
    public static IReadOnlyList<ColumnReading> All(string currency) =>
    [
        ColumnReading.Words("verdict", "The verdict of the whole answer, the worst of its questions: holds, close, not known or "
            + "fails.", ColumnNeeds.Answer, outcome => outcome.Answer!.Verdict.InWords()),
        ColumnReading.YesNo("holds", "Whether the whole answer holds, by more than the stated errors; empty where the verdict is "
            + "not known.", ColumnNeeds.Answer,
            outcome => outcome.Answer!.Verdict is Verdict.NotKnown ? null : outcome.Answer.Verdict is Verdict.Holds),
        ColumnReading.YesNo("nothing_fails", "Whether no question of the answer fails: where figures are drawn at random their "
            + "errors are in the draws, and \"close\" counts as held.", ColumnNeeds.Answer,
            outcome => outcome.Answer!.Verdict is not Verdict.Fails),
        ColumnReading.Words("power_verdict", "The verdict on power: holds, close, not known or fails.", ColumnNeeds.Answer,
            outcome => VerdictOf(outcome, QuestionKind.Power)),
        ColumnReading.Number("tightest_reserve_h", "h", "The reserve of the tightest day, where each day begins with charged "
            + "batteries; else that of the last one.", ColumnNeeds.Answer,
            outcome => outcome.Answer!.NothingArrives ? null : outcome.Answer.Tightest.Reserve.Time.Hours),
        ColumnReading.Number("wiring_left_pct", "%", "What is left to the nearest limit between battery and devices, as a "
            + "share of what is allowed; below zero where it is passed.", ColumnNeeds.Answer,
            outcome => 100 * NearestLimit.Of(outcome.Answer!, QuestionKind.Wiring)?.Share),
        ColumnReading.Words("wiring_limit", "That limit between battery and devices, in words.", ColumnNeeds.Answer,
            outcome => RestColumns.Words(NearestLimit.Of(outcome.Answer!, QuestionKind.Wiring))),
        ColumnReading.Words("wiring_verdict", "The verdict on the wiring: holds, close, not known or fails.", ColumnNeeds.Answer,
            outcome => VerdictOf(outcome, QuestionKind.Wiring)),
        ColumnReading.Words("travel_verdict", "The verdict on travel: holds, close, not known or fails; empty where no journey"
            + "is planned.", ColumnNeeds.AtRest,
            outcome => outcome.Journeys.Count > 0 ? QuestionRules.Travel(outcome.Journeys).Verdict.InWords() : null),
        ColumnReading.Number("batteries_left_behind", "", "Batteries that no journey takes as they are packed; empty where no "
            + "journey is planned, or its day is not known.", ColumnNeeds.AtRest,
            outcome => outcome.Journeys.Count > 0 && outcome.Journeys.All(journey => journey.Answer is not null)
                ? QuestionRules.Travel(outcome.Journeys).Shortfall : null),
        ColumnReading.Number("cost", currency, "What the build and its days cost, bought and rented; at least that, where a "
            + "price is missing; empty where there is no price at all.", ColumnNeeds.AtRest,
            outcome => outcome.Cost?.TotalMoney is { } money ? (double)money.Amount : null),
        ColumnReading.Number("budget_left", currency, "What is left of the budget; empty where none is given.",
            ColumnNeeds.AtRest, outcome => (double?)outcome.Cost?.Left),
        ColumnReading.Words("cost_verdict", "The verdict on cost: holds, close, not known or fails; empty where the scenario "
            + "says nothing of money.", ColumnNeeds.Answer, outcome => VerdictOf(outcome, QuestionKind.Cost)),
    ];

    private static string? VerdictOf(ScenarioOutcome outcome, QuestionKind kind) =>
        outcome.Answer!.Of(kind)?.Verdict.InWords();
}

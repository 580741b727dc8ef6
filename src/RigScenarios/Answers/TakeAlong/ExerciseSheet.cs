namespace RigScenarios.Answers.TakeAlong;

/// <summary>The teacher's version: what is given, with blanks for one's own estimate, and a sheet with the answers. On the first
/// stands nothing that the answer says.</summary>
internal static class ExerciseSheet
{
    public static TakeAlongSheet Blank(RigAnswer answer) => new()
    {
        Title = answer.Scenario.Title,
        Subtitle = $"Your own estimate: {SheetWords.Build(answer)}",
        Days = SheetWords.Days(answer),
        Sections =
        [
            .. GivenSections.Of(answer), .. PlaceSections.Cables(answer),
            new("Your estimate", SheetForm.Blanks, [.. Estimates.Of(answer).Select(item => new[] { item.Question, item.Unit })])
                { IsWide = true },
            Cautions(),
        ],
        Foot = "Name:                                        Date:",
    };

    public static TakeAlongSheet Solved(RigAnswer answer) => new()
    {
        Title = answer.Scenario.Title,
        Subtitle = $"Solution: {SheetWords.Build(answer)}",
        Days = SheetWords.Days(answer),
        Verdict = answer.Verdict,
        Headline = AnswerSentences.Headline(answer),
        Sections =
        [
            new("The answers", SheetForm.Table, [.. Estimates.Of(answer).Select(item => new[] { item.Question, item.Answer })])
                { IsWide = true, Columns = ["Question", "Answer"] },
            new("Cautions", SheetForm.Sentences, [.. AnswerCautions.Of(answer).Select(caution => new[] { caution })])
                { IsWide = true },
        ],
        Foot = "Predicted, not measured. An estimate that differs is worth a talk: what did it count, and what not?",
    };

    // Cautions that rest on a verdict would tell it.
    internal static SheetSection Cautions() => new("Cautions", SheetForm.Sentences,
        [[AnswerCautions.Always], [BalanceWords.Lifting]]) { IsWide = true };
}

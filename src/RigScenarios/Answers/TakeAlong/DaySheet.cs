namespace RigScenarios.Answers.TakeAlong;

/// <summary>The sheet for the day: the verdict, swaps and charging with their clock times, places and setting, cables, who flies
/// what, checks before rolling, cautions.</summary>
internal static class DaySheet
{
    public static TakeAlongSheet Of(RigAnswer answer) => new()
    {
        Title = answer.Scenario.Title,
        Subtitle = $"To take along: {SheetWords.Build(answer)}",
        Days = SheetWords.Days(answer),
        Verdict = answer.Verdict,
        Headline = AnswerSentences.Headline(answer),
        Questions = SheetWords.Questions(answer),
        Sections =
        [
            .. PowerSections.Of(answer), .. PlaceSections.Setting(answer), .. PlaceSections.Cables(answer),
            .. PlaceSections.Places(answer), .. TravelSections.Of(answer), SheetChecks.Of(answer),
            SheetCautions.OfTheDay(answer),
        ],
        Foot = SheetWords.Foot(answer),
    };
}

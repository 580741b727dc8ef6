using RigScenarios.Builds;

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
        Questions = [.. AnswerSentences.Questions(answer)
            .Select(line => IsTold(answer, line.Words) ? line with { Words = "As above." }
            : line)],
        Sections =
        [
            .. PowerSections.Of(answer), .. PlaceSections.Setting(answer), .. PlaceSections.Cables(answer),
            .. PlaceSections.Places(answer), .. TravelSections.Of(answer), SheetChecks.Of(answer), Cautions(answer),
        ],
        Foot = Foot(answer),
    };

    private static bool IsTold(RigAnswer answer, string words) => AnswerSentences.Headline(answer)
        .Contains(words.TrimEnd('.'), StringComparison.OrdinalIgnoreCase);

    // Nothing of these is ever left out.
    private static SheetSection Cautions(RigAnswer answer) => new("Cautions", SheetForm.Sentences,
        [.. HeadCautions(answer).Concat(AnswerCautions.OfTheDay(answer)).Distinct().Select(caution => new[] { caution })])
        { IsWide = true };

    private static IEnumerable<string> HeadCautions(RigAnswer answer) =>
        answer.TheBuild.Stance == Stance.Tripod && answer.Balance?.BatteryOff is { } off
            && HeadCaseWords.Caution(off) is { } caution
                ? [caution.Replace(off.Part, SheetWords.Thing(off.Part), StringComparison.Ordinal)] : [];

    private static string Foot(RigAnswer answer) => answer.Assumed.Count == 0
        ? "Every figure that this rests on was given."
        : $"This rests on {answer.Assumed.Count} figures that nobody gave and that are assumed: rigscenarios run tells those "
            + "that matter most.";
}

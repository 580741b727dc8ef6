using RigScenarios.Limits;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>The sheet for whoever puts the rig together: its parts in the order of building with their places, the setting of the
/// head, cables, what is nearest to its limit, checks before rolling, cautions.</summary>
internal static class BuildSheet
{
    private static readonly QuestionKind[] Asked = [QuestionKind.Wiring, QuestionKind.Balance, QuestionKind.Stand];

    public static TakeAlongSheet Of(RigAnswer answer) => new()
    {
        Title = answer.Scenario.Title,
        Subtitle = $"Build sheet: {SheetWords.Build(answer)}",
        Days = SheetWords.Days(answer),
        Verdict = answer.Verdict,
        Headline = AnswerSentences.Headline(answer),
        Questions = [.. SheetWords.Questions(answer).Where(line => Asked.Contains(line.Kind))],
        Sections =
        [
            PartSections.Parts(answer), .. PlaceSections.Setting(answer), .. PartSections.OnRods(answer),
            .. PlaceSections.Cables(answer), .. Limits(answer), SheetChecks.OfBuilding(answer), SheetCautions.OfBuilding(answer),
        ],
        Foot = SheetWords.Foot(answer),
        WholeBy = "sheet --kind build --whole",
    };

    // Of all questions together the least left first: what is cut off for want of room is what holds best.
    private static IEnumerable<SheetSection> Limits(RigAnswer answer)
    {
        var details = AnswerDetails.Of(answer).Where(section => Asked.Contains(section.Kind)).ToList();
        var near = Limit.LeastLeftFirst(details.SelectMany(section => section.Limits));
        var times = new AnswerTimes(answer.Plan.Days);
        List<string> lines =
        [
            .. near.Select(limit => AnswerDetails.Words(limit, times)),
            .. details.SelectMany(section => section.Lines.Skip(section.Limits.Count)),
            .. details.Where(section => section.Folded is not null).Select(section => $"{section.Title}: {section.Folded}"),
        ];
        if (lines.Count > 0)
            yield return new("Nearest to their limits", SheetForm.Sentences, [.. lines.Select(line => new[] { line })])
            {
                GoesAs = 2, Keeps = Math.Max(1, near.Count(limit => limit.IsPassed)), Things = "limits",
            };
    }
}

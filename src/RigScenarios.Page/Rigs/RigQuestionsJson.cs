using RigScenarios.Drafts;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;

namespace RigScenarios.Page.Rigs;

/// <summary>What the form asks, and what there is to choose from.</summary>
internal static class RigQuestionsJson
{
    public static object Of(OrderedMap<Part> parts) => new
    {
        questions = RigQuestions.All.Select(question => new
        {
            key = question.Key,
            label = question.Label,
            help = question.Help,
            kinds = question.PartKinds.Select(kind => ChoiceFormat<PartKind>.Word(kind)),
            required = question.Required,
            many = question.Many,
            example = question.Example,
        }),
        parts = parts.Select(part => (part, words: PartInWords.Of(part.Value))).Select(item => new
        {
            id = item.part.Key,
            kind = ChoiceFormat<PartKind>.Word(item.part.Value.Kind),
            name = item.part.Value.Name,
            note = item.part.Value.Note ?? "",
            mass = item.words.Mass,
            draw = item.words.Draw,
            price = item.words.Price,
            detail = item.words.Detail,
        }),
        days = TypicalDays.All.Select(day => (day, draft: RigDraftFormat.WriteJson(new RigDraft().With(day)))).Select(item => new
        {
            key = item.day.Key,
            title = item.day.Title,
            sentence = item.day.Sentence,
            starts = item.draft["starts"]?.GetValue<string>(),
            ambient = item.draft["ambient"]?.GetValue<string>(),
            blocks = item.draft["blocks"],
        }),
        own = RigQuestions.Label.Select(figure => new
        {
            key = figure.Key,
            label = figure.Label,
            help = figure.Help,
            example = figure.Example,
            kinds = figure.Roles.Select(role => ChoiceFormat<RigRole>.Word(role)),
            needed = figure.Needed.Select(role => ChoiceFormat<RigRole>.Word(role)),
        }),
        draft = RigDraftFormat.WriteJson(RigDraft.Blank),
    };
}

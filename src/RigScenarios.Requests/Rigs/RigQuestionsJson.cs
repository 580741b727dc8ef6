using RigScenarios.Drafts;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;

namespace RigScenarios.Requests.Rigs;

/// <summary>What the form asks, what there is to choose from, and what a rig looks like to it.</summary>
internal static class RigQuestionsJson
{
    public static object Of(OrderedMap<Part> parts)
    {
        var blank = GivenRig.Blank(parts);
        return new
        {
            questions = RigQuestions.All.Select(question => new
            {
                key = question.Key,
                label = question.Label,
                help = question.Help,
                kinds = question.PartKinds.Select(kind => ChoiceFormat<PartKind>.Word(kind)),
                required = question.Required,
                many = question.Many,
            }),
            fields = RigFields.All.Select(field => new
            {
                key = field.Key,
                label = field.Label,
                help = field.Help,
                example = field.Example,
                unit = field.Unit,
                path = field.Path,
                choices = Choices(field.Choices),
            }),
            label = LabelQuestions.All.Select(figure => new
            {
                key = figure.Key,
                label = figure.Label,
                help = figure.Help,
                example = figure.Example,
                unit = figure.Unit,
                path = figure.Path,
                of = figure.Of,
                needed = figure.Needed,
                choices = Choices(figure.Choices),
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
            days = TypicalDays.All.Select(day => new { key = day.Key, title = day.Title, sentence = day.Sentence }),
            given = GivenJson.Write(blank.Tree),
            view = View(blank),
            build = blank.Frame.Build,
            day = blank.Frame.Day,
        };
    }

    /// <summary>A rig as the form lists it.</summary>
    public static object View(GivenRig given)
    {
        var view = RigView.Of(given);
        return new
        {
            things = view.Things.Select(thing => new
            {
                name = thing.Name,
                question = thing.Question,
                part = thing.Part,
                own = thing.Own,
                title = thing.Title,
                figures = thing.Figures,
                count = thing.Count,
            }),
            camera = view.Camera,
            battery = view.Battery,
            charger = view.Charger,
        };
    }

    private static object? Choices(IReadOnlyList<FieldChoice> choices) =>
        choices.Count == 0 ? null : choices.Select(choice => new { text = choice.Text, title = choice.Title });
}

using System.Text.Json;
using RigScenarios.Drafts;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Requests.Rigs;

/// <summary>What the form asks, what there is to choose from, and what a rig looks like to it.</summary>
internal static class RigQuestionsJson
{
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="parts">What there is to choose from.</param>
    public static void Write(Utf8JsonWriter json, OrderedMap<Part> parts)
    {
        var blank = GivenRig.Blank(parts);
        json.WriteObjects("questions", RigQuestions.All, WriteQuestion);
        json.WriteObjects("fields", RigFields.All, WriteField);
        json.WriteObjects("label", LabelQuestions.All, WriteLabel);
        json.WriteStartArray("parts");
        foreach (var (id, part) in parts)
            WritePart(json, id, part);
        json.WriteEndArray();
        json.WriteObjects("days", TypicalDays.All, (_, day) =>
        {
            json.WriteString("key", day.Key);
            json.WriteString("title", day.Title);
            json.WriteString("sentence", day.Sentence);
        });
        WriteShown(json, blank);
        json.WriteString("build", blank.Frame.Build);
        json.WriteString("day", blank.Frame.Day);
    }

    /// <summary>Writes what is given of a rig, and the rig as the form lists it.</summary>
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="given">The rig.</param>
    public static void WriteShown(Utf8JsonWriter json, GivenRig given)
    {
        json.WritePropertyName("given");
        GivenJson.Write(json, given.Tree);
        WriteView(json, given);
    }

    /// <summary>Writes a rig as the form lists it.</summary>
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="given">The rig.</param>
    public static void WriteView(Utf8JsonWriter json, GivenRig given)
    {
        var view = RigView.Of(given);
        json.WriteStartObject("view");
        json.WriteObjects("things", view.Things, static (json, thing) =>
        {
            json.WriteString("name", thing.Name);
            json.WriteString("question", thing.Question);
            json.WriteString("part", thing.Part);
            json.WriteString("own", thing.Own);
            json.WriteString("title", thing.Title);
            json.WriteString("figures", thing.Figures);
            json.WriteString("count", thing.Count);
        });
        json.WriteString("camera", view.Camera);
        json.WriteString("battery", view.Battery);
        json.WriteString("charger", view.Charger);
        json.WriteEndObject();
    }

    private static void WriteQuestion(Utf8JsonWriter json, RigQuestion question)
    {
        json.WriteString("key", question.Key);
        json.WriteString("label", question.Label);
        json.WriteString("help", question.Help);
        json.WriteStartArray("kinds");
        foreach (var kind in question.PartKinds)
            json.WriteStringValue(ChoiceFormat<PartKind>.Word(kind));
        json.WriteEndArray();
        json.WriteBoolean("required", question.Required);
        json.WriteBoolean("many", question.Many);
    }

    private static void WriteField(Utf8JsonWriter json, RigField field)
    {
        WriteAsked(json, (field.Key, field.Label, field.Help, field.Example, field.Unit, field.Path));
        WriteChoices(json, field.Choices);
    }

    private static void WriteLabel(Utf8JsonWriter json, LabelQuestion figure)
    {
        WriteAsked(json, (figure.Key, figure.Label, figure.Help, figure.Example, figure.Unit, figure.Path));
        json.WriteTexts("of", figure.Of);
        json.WriteTexts("needed", figure.Needed);
        WriteChoices(json, figure.Choices);
    }

    // What any figure that is asked for has: one of the form, or of a device's label.
    private static void WriteAsked(Utf8JsonWriter json,
        (string Key, string Label, string Help, string Example, string Unit, string Path) asked)
    {
        json.WriteString("key", asked.Key);
        json.WriteString("label", asked.Label);
        json.WriteString("help", asked.Help);
        json.WriteString("example", asked.Example);
        json.WriteString("unit", asked.Unit);
        json.WriteString("path", asked.Path);
    }

    private static void WritePart(Utf8JsonWriter json, string id, Part part)
    {
        var words = PartInWords.Of(part);
        json.WriteStartObject();
        json.WriteString("id", id);
        json.WriteString("kind", ChoiceFormat<PartKind>.Word(part.Kind));
        json.WriteString("name", part.Name);
        json.WriteString("note", part.Note ?? "");
        json.WriteString("mass", words.Mass);
        json.WriteString("draw", words.Draw);
        json.WriteString("price", words.Price);
        json.WriteString("detail", words.Detail);
        json.WriteEndObject();
    }

    private static void WriteChoices(Utf8JsonWriter json, IReadOnlyList<FieldChoice> choices)
    {
        if (choices.Count == 0)
        {
            json.WriteNull("choices");
            return;
        }
        json.WriteObjects("choices", choices, static (json, choice) =>
        {
            json.WriteString("text", choice.Text);
            json.WriteString("title", choice.Title);
        });
    }
}

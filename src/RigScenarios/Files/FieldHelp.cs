using RigScenarios.Files.Formats;
using RigScenarios.Files.Help;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>
/// What belongs at a place of a scenario or parts file, for an editor: from the same definitions as the reader and the schema.
/// It answers as well while the text is half typed and can't be read yet.
/// </summary>
/// <param name="Path">The field at the place, or the group whose lines it stands among; empty for the file as a whole.</param>
/// <param name="About">What the field or group says.</param>
/// <param name="Accepted">What is accepted, with an example.</param>
/// <param name="Fields">The fields that belong there: inside of a group those of that group, at a plain value those beside it.
/// None where names are free, such as the names of the kit.</param>
public sealed record FieldHelp(string Path, string About, string Accepted, IReadOnlyList<FieldNote> Fields)
{
    /// <summary>What belongs at a place of a text.</summary>
    /// <param name="text">The text; of one larger than 2 MB no more than that is told.</param>
    /// <param name="line">The line, from 1; beyond the text its nearest line counts.</param>
    /// <param name="column">The column, from 1: the place before the character of that column.</param>
    public static FieldHelp At(string text, int line, int column)
    {
        ArgumentNullException.ThrowIfNull(text);
        var log = new ReadLog("");
        if (TextFile.Take(text, log) is not { } taken)
            return new FieldHelp("", log.Problems[0].Problem, "", []);
        var place = CursorPlace.Find(taken, line, column);
        var root = Root(FileFormat.NamesParts(taken));
        return Describe(root, place, taken);
    }

    private static FormatOutline Root(bool isParts)
    {
        var outline = isParts ? FileFormat.PartsForm.Outline() : ScenarioFormat.Whole.Outline();
        var format = isParts ? FileFormat.Parts : FileFormat.Scenario;
        var kind = new FieldOutline(FileFormat.Key, FileFormat.KeyAbout, true, FormatOutline.Plain with { Accepted = format });
        return outline with { Fields = [kind, .. outline.Fields] };
    }

    private static FieldHelp Describe(FormatOutline root, CursorPlace place, string text)
    {
        var steps = place.Path;
        var (at, about) = (root, root.About);
        FormatOutline group = root;
        var groupSteps = 0;
        for (var step = 0; step < steps.Count; step++)
        {
            var field = at.Fields.FirstOrDefault(field => field.Key == steps[step]);
            if (field is null && at.Each is null)
                return Unknown(at, [.. steps.Take(step)], steps[step], text);
            var next = field?.Value ?? at.Each!;
            about = field?.About ?? (next.About.Length > 0 ? next.About : about);
            at = next;
            if (at.Fields.Count > 0 || at.Each is not null)
                (group, groupSteps) = (at, step + 1);
        }
        if (place.Word.Length > 0 && at.Fields.Count > 0)
            return Unknown(at, steps, place.Word, text);
        return new FieldHelp(string.Join('.', steps), about, at.Accepted, Notes(group, [.. steps.Take(groupSteps)], text));
    }

    /// <summary>Half a word, or a slip: what would belong there helps most.</summary>
    private static FieldHelp Unknown(FormatOutline group, IReadOnlyList<string> steps, string word, string text)
    {
        var told = word.Length > 60 ? word[..57] + "..." : word;
        var nearest = NearestName.To(told, group.Fields.Select(field => field.Key));
        var about = group.Fields.Count == 0 ? $"Nothing belongs inside of this value, but \"{told}\" stands here."
            : $"There is no field \"{told}\" here." + (nearest is null ? "" : $" Did you mean \"{nearest}\"?");
        return new FieldHelp(string.Join('.', steps.Append(told)), about, group.Accepted, Notes(group, steps, text));
    }

    private static List<FieldNote> Notes(FormatOutline group, IReadOnlyList<string> steps, string text)
    {
        if (group.Fields.Count == 0)
            return [];
        var present = CursorPlace.KeysIn(text, steps);
        return [.. group.Fields.Select(field => new FieldNote(field.Key, field.About, field.Value.Accepted, field.Required,
            present.Contains(field.Key)))];
    }
}

/// <summary>One field of a group.</summary>
/// <param name="Key">Its key.</param>
/// <param name="About">What it says.</param>
/// <param name="Accepted">What is accepted, with an example.</param>
/// <param name="Required">Whether a file without it is refused.</param>
/// <param name="Present">Whether the group has it already.</param>
public sealed record FieldNote(string Key, string About, string Accepted, bool Required, bool Present);

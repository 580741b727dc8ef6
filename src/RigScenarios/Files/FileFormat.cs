using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What all kinds of file share: the first line that names the format and its version.</summary>
internal static class FileFormat
{
    public const string Scenario = "scenario 1";

    public const string Parts = "parts 1";

    public const string FieldNotes = "field notes 1";

    public const string ClassTask = "class task 1";

    /// <summary>The key of that line.</summary>
    public const string Key = "rigscenarios";

    /// <summary>What that line is for.</summary>
    public const string KeyAbout = "Says what kind of file this is.";

    /// <summary>A parts file, without its first line.</summary>
    public static readonly RecordFormat<PartsContent> PartsForm = new(
        () => new PartsContent(), "A RigScenarios parts file: what can be bought or rented.",
        Fields<PartsContent>.OptionalGroup("note", PartFormat.Remark, content => content.Note,
            (content, value) => content with { Note = value }, "A remark."),
        Fields<PartsContent>.Required("parts", PartFormat.Parts, content => content.Parts,
            (content, value) => content with { Parts = value }, "Parts by their ids."));

    /// <summary>Reads a file of a format. False if it can't be used.</summary>
    public static bool TryRead<T>(string path, string format, Format<T> form, ReadLog log, [MaybeNullWhen(false)] out T value)
        where T : class
    {
        value = null;
        return TextFile.Read(path, log) is { } text && TryReadText(text, format, form, log, out value);
    }

    /// <summary>Reads the text of a file of a format. False if it can't be used.</summary>
    public static bool TryReadText<T>(string text, string format, Format<T> form, ReadLog log, [MaybeNullWhen(false)] out T value)
        where T : class
    {
        value = null;
        if (YamlTree.Read(text, log) is not { } root)
            return false;
        var first = root.Entries.FirstOrDefault(entry => entry.Key == Key);
        var named = first?.Value is TextNode { Text: var found } && found == format;
        if (!named && first?.Value is TextNode { Text: Scenario or Parts or FieldNotes or ClassTask })
        {
            // Another kind of file: each of its fields would only be one more complaint.
            log.Error(first.Value.At, Key, $"Found {first.Value.Describe()}: this is another kind of file.",
                $"\"{Key}: {format}\" here");
            return false;
        }
        if (!named)
            log.Error(first?.Value.At ?? new TextPlace(1, 1), Key, first is null
                ? "The line that says what kind of file this is is missing."
                : $"Found {first.Value.Describe()}.", $"\"{Key}: {format}\" as the first line");
        var rest = root with { Entries = [.. root.Entries.Where(entry => entry.Key != Key)] };
        return form.TryRead(rest, "", log, out value) & named & !log.HasErrors;
    }

    /// <summary>Whether a line of the text, outside of any group, says that it is a parts file.</summary>
    public static bool NamesParts(string text) => Names(text, Parts);

    /// <summary>Whether a line of the text, outside of any group, says that it is a file of that format.</summary>
    public static bool Names(string text, string format) =>
        text.Split('\n').Any(line => line.StartsWith(Key, StringComparison.Ordinal)
            && line[Key.Length..].TrimStart(' ', ':').StartsWith(format, StringComparison.Ordinal));

    /// <summary>The text of a file of a format.</summary>
    public static string Text<T>(string format, Format<T> form, T value)
        where T : class
    {
        var root = (MapNode)form.Write(value);
        return YamlTree.Write(root with { Entries = [new MapEntry(Key, TextPlace.None, new TextNode(format, TextPlace.None)),
            .. root.Entries] });
    }

    /// <summary>The JSON Schema of a format, as text that ends with a line break.</summary>
    public static string Schema<T>(string format, Format<T> form, string title)
        where T : class
    {
        var schema = form.Schema();
        var properties = (JsonObject)schema["properties"]!;
        properties[Key] = new JsonObject { ["const"] = format, ["description"] = KeyAbout };
        if (schema["required"] is JsonArray required)
            required.Add((JsonNode)Key);
        else
            schema["required"] = new JsonArray(Key);
        var whole = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title };
        foreach (var (name, node) in schema)
            whole[name] = node?.DeepClone();
        return whole.ToJsonString(new System.Text.Json.JsonSerializerOptions { WriteIndented = true,
            Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }).ReplaceLineEndings("\n") + "\n";
    }
}

/// <summary>What a parts file holds.</summary>
internal sealed record PartsContent(string? Note, OrderedMap<Part> Parts)
{
    public PartsContent()
        : this(null, OrderedMap<Part>.Empty)
    {
    }
}

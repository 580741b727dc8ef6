using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>A tree of a scenario's file as JSON: groups of texts, as a form has them.</summary>
public static class GivenJson
{
    private const int DeepestNesting = 12;

    /// <summary>The tree. Empty text and null count as left out; yes, no and numbers as the texts of a file.</summary>
    public static MapNode Read(JsonElement json) => Node(json, 0) as MapNode ?? new MapNode([], TextPlace.None);

    /// <summary>The JSON.</summary>
    public static JsonNode Write(FileNode node) => node switch
    {
        MapNode map => new JsonObject(map.Entries.Select(entry => KeyValuePair.Create(entry.Key, (JsonNode?)Write(entry.Value)))),
        ListNode list => new JsonArray([.. list.Items.Select(Write)]),
        TextNode text => JsonValue.Create(text.Text),
        _ => throw new ArgumentException($"{node} is no kind of node.", nameof(node)),
    };

    /// <summary>Writes the tree as JSON.</summary>
    public static void Write(Utf8JsonWriter json, FileNode node)
    {
        ArgumentNullException.ThrowIfNull(json);
        switch (node)
        {
            case MapNode map:
                json.WriteStartObject();
                foreach (var entry in map.Entries)
                {
                    json.WritePropertyName(entry.Key);
                    Write(json, entry.Value);
                }
                json.WriteEndObject();
                break;
            case ListNode list:
                json.WriteStartArray();
                foreach (var item in list.Items)
                    Write(json, item);
                json.WriteEndArray();
                break;
            case TextNode text:
                json.WriteStringValue(text.Text);
                break;
            default:
                throw new ArgumentException($"{node} is no kind of node.", nameof(node));
        }
    }

    private static FileNode? Node(JsonElement json, int depth) => json.ValueKind switch
    {
        // Deeper than any scenario: a plain text there is refused with its path, and nothing is walked without end.
        _ when depth > DeepestNesting => new TextNode("…", TextPlace.None),
        JsonValueKind.Object => Map(json, depth),
        JsonValueKind.Array => List(json, depth),
        JsonValueKind.String => json.GetString() is { Length: > 0 } text && text.Trim().Length > 0
            ? new TextNode(text.Trim(), TextPlace.None) : null,
        JsonValueKind.True => new TextNode("yes", TextPlace.None),
        JsonValueKind.False => new TextNode("no", TextPlace.None),
        JsonValueKind.Number => new TextNode(json.GetRawText(), TextPlace.None),
        _ => null,
    };

    // Of a name that stands twice the last value counts, at the place of the first.
    private static MapNode Map(JsonElement json, int depth)
    {
        var entries = new List<MapEntry?>();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var field in json.EnumerateObject())
        {
            var entry = Node(field.Value, depth + 1) is { } value ? new MapEntry(field.Name, TextPlace.None, value) : null;
            if (places.TryAdd(field.Name, entries.Count))
                entries.Add(entry);
            else
                entries[places[field.Name]] = entry;
        }
        entries.RemoveAll(entry => entry is null);
        return new MapNode(entries!, TextPlace.None);
    }

    private static ListNode List(JsonElement json, int depth)
    {
        var items = new List<FileNode>();
        foreach (var item in json.EnumerateArray())
            items.Add(Node(item, depth + 1) ?? new TextNode("", TextPlace.None));
        return new ListNode(items, TextPlace.None);
    }
}

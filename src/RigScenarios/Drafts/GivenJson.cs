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

    private static FileNode? Node(JsonElement json, int depth) => json.ValueKind switch
    {
        // Deeper than any scenario: a plain text there is refused with its path, and nothing is walked without end.
        _ when depth > DeepestNesting => new TextNode("…", TextPlace.None),
        JsonValueKind.Object => new MapNode(
            [
                .. json.EnumerateObject().GroupBy(field => field.Name, StringComparer.Ordinal)
                    .Select(field => (field.Key, Value: Node(field.Last().Value, depth + 1)))
                    .Where(field => field.Value is not null)
                    .Select(field => new MapEntry(field.Key, TextPlace.None, field.Value!)),
            ], TextPlace.None),
        JsonValueKind.Array =>
            new ListNode([.. json.EnumerateArray().Select(item => Node(item, depth + 1) ?? new TextNode("", TextPlace.None))],
            TextPlace.None),
        JsonValueKind.String => json.GetString() is { Length: > 0 } text && text.Trim().Length > 0
            ? new TextNode(text.Trim(), TextPlace.None) : null,
        JsonValueKind.True => new TextNode("yes", TextPlace.None),
        JsonValueKind.False => new TextNode("no", TextPlace.None),
        JsonValueKind.Number => new TextNode(json.GetRawText(), TextPlace.None),
        _ => null,
    };
}

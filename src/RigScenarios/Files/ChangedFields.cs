using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>A field that two scenarios say differently.</summary>
/// <param name="Path">Its path in the file.</param>
/// <param name="Before">What the first says; null where it has no such field. A list is told by its items.</param>
/// <param name="After">What the second says; null where it has no such field.</param>
public sealed record ChangedField(string Path, string? Before, string? After);

/// <summary>The difference of two scenarios, field by field, as their files would say it.</summary>
public static class ChangedFields
{
    /// <summary>The fields that differ, in the order of the first's file and then those that only the second has.</summary>
    /// <param name="before">One scenario.</param>
    /// <param name="after">The other.</param>
    public static IReadOnlyList<ChangedField> Between(Scenario before, Scenario after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return [.. Between(ScenarioFormat.Whole.Write(before), ScenarioFormat.Whole.Write(after), "")];
    }

    /// <summary>Whether two parts say the same.</summary>
    internal static bool Same(Parts.Part one, Parts.Part other) =>
        !Between(PartFormat.Whole.Write(one), PartFormat.Whole.Write(other), "").Any();

    private static IEnumerable<ChangedField> Between(FileNode? before, FileNode? after, string path)
    {
        if (before is MapNode || after is MapNode)
        {
            var (was, will) = (Entries(before), Entries(after));
            var fields = was.Keys.Concat(will.Keys.Where(key => !was.ContainsKey(key)));
            return fields.SelectMany(key => Between(was.GetValueOrDefault(key), will.GetValueOrDefault(key),
                path.Length == 0 ? key : $"{path}.{key}"));
        }
        var (one, other) = (Text(before), Text(after));
        return one == other ? [] : [new(path, one, other)];
    }

    private static Dictionary<string, FileNode> Entries(FileNode? node) =>
        node is MapNode map ? map.Entries.ToDictionary(entry => entry.Key, entry => entry.Value) : [];

    private static string? Text(FileNode? node) => node switch
    {
        null => null,
        TextNode text => text.Text,
        ListNode list => $"[{string.Join(", ", list.Items.Select(Text))}]",
        MapNode map => $"{{{string.Join(", ", map.Entries.Select(entry => $"{entry.Key}: {Text(entry.Value)}"))}}}",
        _ => "",
    };
}

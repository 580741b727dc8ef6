using System.Text;
using RigScenarios.Files.Formats;

namespace RigScenarios.Files.Editing;

/// <summary>Writes whole values that are new in a file.</summary>
internal static class NodeText
{
    /// <summary>A group of so few plain values stands in one line: a battery with all that can be said of it in a
    /// build.</summary>
    private const int MostInOneLine = 5;

    /// <summary>A value in one line.</summary>
    public static string InOneLine(FileNode node, bool inBrackets) => node switch
    {
        TextNode text => ScalarText.Write(text.Text, inBrackets),
        ListNode list => $"[{string.Join(", ", list.Items.Select(item => InOneLine(item, true)))}]",
        MapNode map => $"{{{string.Join(", ", map.Entries.Select(entry => $"{entry.Key}: {InOneLine(entry.Value, true)}"))}}}",
        _ => throw new ArgumentException($"{node} is no kind of node.", nameof(node)),
    };

    /// <summary>A name with its value as whole lines.</summary>
    /// <param name="key">The name; empty for an item of a list.</param>
    /// <param name="node">The value.</param>
    /// <param name="indent">The spaces before the name.</param>
    /// <param name="lineBreak">The file's line break.</param>
    /// <param name="inOneLine">Whether a group stands in one line; null to decide by what is in it.</param>
    public static string AsLines(string key, FileNode node, int indent, string lineBreak, bool? inOneLine = null)
    {
        var text = new StringBuilder();
        Append(text, key, node, indent, lineBreak, inOneLine);
        return text.ToString();
    }

    private static void Append(StringBuilder text, string key, FileNode node, int indent, string lineBreak, bool? inOneLine)
    {
        text.Append(' ', indent).Append(key.Length == 0 ? "-" : key + ":");
        if (key.Length == 0 || node is not MapNode map || (inOneLine ?? IsFlat(map)) || map.Entries.Count == 0)
        {
            text.Append(' ').Append(InOneLine(node, inBrackets: false)).Append(lineBreak);
            return;
        }
        text.Append(lineBreak);
        foreach (var entry in map.Entries)
            Append(text, entry.Key, entry.Value, indent + 2, lineBreak, null);
    }

    private static bool IsFlat(MapNode map) =>
        map.Entries.Count <= MostInOneLine && map.Entries.All(entry => entry.Value is TextNode);
}

using RigScenarios.Files.Formats;

namespace RigScenarios.Files.Editing;

/// <summary>Whether and where two trees differ, wherever they came from.</summary>
internal static class TreeDifference
{
    /// <summary>Whether two nodes say the same; the order of names counts.</summary>
    public static bool Same(FileNode one, FileNode other) => (one, other) switch
    {
        (TextNode a, TextNode b) => a.Text == b.Text,
        (ListNode a, ListNode b) => a.Items.Count == b.Items.Count
            && a.Items.Zip(b.Items).All(pair => Same(pair.First, pair.Second)),
        (MapNode a, MapNode b) => a.Entries.Count == b.Entries.Count
            && a.Entries.Zip(b.Entries).All(pair => pair.First.Key == pair.Second.Key
                && Same(pair.First.Value, pair.Second.Value)),
        _ => false,
    };

    /// <summary>The path of the smallest value that holds all that differs; empty for the whole file.</summary>
    public static string SmallestAround(FileNode one, FileNode other, string path = "")
    {
        if (one is not MapNode a || other is not MapNode b
            || !a.Entries.Select(entry => entry.Key).SequenceEqual(b.Entries.Select(entry => entry.Key)))
            return path;
        var different = a.Entries.Zip(b.Entries).Where(pair => !Same(pair.First.Value, pair.Second.Value)).Take(2).ToList();
        return different.Count == 1 ? SmallestAround(different[0].First.Value, different[0].Second.Value,
            Step(path, different[0].First.Key)) : path;
    }

    /// <summary>A path, one step longer.</summary>
    public static string Step(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";
}

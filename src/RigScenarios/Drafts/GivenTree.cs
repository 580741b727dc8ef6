using RigScenarios.Files.Editing;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>Looks into a tree of a scenario's file by paths, and changes it there.</summary>
internal static class GivenTree
{
    /// <summary>What stands at a path; null where nothing does.</summary>
    public static FileNode? Find(FileNode tree, string path)
    {
        FileNode? node = tree;
        foreach (var step in path.Split('.'))
            node = (node as MapNode)?.Entries.FirstOrDefault(entry => entry.Key == step)?.Value;
        return node;
    }

    /// <summary>The text at a path; null where there is none.</summary>
    public static string? Text(FileNode tree, string path) => (Find(tree, path) as TextNode)?.Text;

    /// <summary>The tree with a value at a path; the groups on the way are made.</summary>
    public static MapNode With(MapNode tree, string path, FileNode value)
    {
        var (step, rest) = Split(path);
        var there = tree.Entries.FirstOrDefault(entry => entry.Key == step);
        var child = rest is null ? value : With(there?.Value as MapNode ?? new MapNode([], TextPlace.None), rest, value);
        return there is null
            ? tree with { Entries = [.. tree.Entries, new MapEntry(step, TextPlace.None, child)] }
            : tree with { Entries = [.. tree.Entries.Select(entry => entry.Key == step ? entry with { Value = child } : entry)] };
    }

    /// <inheritdoc cref="With(MapNode, string, FileNode)"/>
    public static MapNode With(MapNode tree, string path, string text) => With(tree, path, new TextNode(text, TextPlace.None));

    /// <summary>The tree without what stands at a path, and without the groups that hold nothing any more.</summary>
    public static MapNode Without(MapNode tree, string path) => Without(tree, path, "");

    private static MapNode Without(MapNode tree, string path, string above)
    {
        var (step, rest) = Split(path);
        if (tree.Entries.FirstOrDefault(entry => entry.Key == step) is not { } there)
            return tree;
        var at = TreeDifference.Step(above, step);
        var child = rest is null || there.Value is not MapNode map ? null : Without(map, rest, at);
        if (rest is not null && child is null)
            return tree;
        return tree with
        {
            Entries = child is null || (child.Entries.Count == 0 && !IsNamed(at))
                ? [.. tree.Entries.Where(entry => entry.Key != step)]
                : [.. tree.Entries.Select(entry => entry.Key == step ? entry with { Value = child } : entry)],
        };
    }

    /// <summary>
    /// A tree with the change from one scenario to another in it. Where the two are the same it stays as it was written, readable
    /// or not.
    /// </summary>
    public static FileNode Changed(FileNode tree, FileNode before, FileNode after)
    {
        if (TreeDifference.Same(before, after))
            return tree;
        if (tree is not MapNode given || before is not MapNode was || after is not MapNode now)
            return after;
        var entries = new List<MapEntry>();
        foreach (var entry in given.Entries)
        {
            var (old, fresh) = (ValueOf(was, entry.Key), ValueOf(now, entry.Key));
            if (fresh is not null)
                entries.Add(entry with { Value = old is null ? fresh : Changed(entry.Value, old, fresh) });
            else if (old is null)
                entries.Add(entry);
        }
        foreach (var entry in now.Entries.Where(entry => ValueOf(given, entry.Key) is null))
        {
            var old = ValueOf(was, entry.Key);
            if (old is null)
                entries.Add(entry);
            else if (!TreeDifference.Same(old, entry.Value))
                entries.Add(entry with { Value = Changed(new MapNode([], TextPlace.None), old, entry.Value) });
        }
        return given with { Entries = entries };
    }

    private static FileNode? ValueOf(MapNode map, string key) =>
        map.Entries.FirstOrDefault(entry => entry.Key == key)?.Value;

    /// <summary>Whether a group says something by being there: a thing by its name, or the place for things.</summary>
    private static bool IsNamed(string path) => path.Split('.') switch
    {
        ["kit"] or ["builds"] or ["days"] or [.., "devices"] => true,
        ["kit" or "chargers" or "batteries" or "journeys" or "builds" or "days" or "parts", _] => true,
        ["builds", _, "devices" or "regulators" or "splitters", _] => true,
        _ => false,
    };

    private static (string Step, string? Others) Split(string path) =>
        path.IndexOf('.', StringComparison.Ordinal) is var dot and > 0 ? (path[..dot], path[(dot + 1)..]) : (path, null);
}

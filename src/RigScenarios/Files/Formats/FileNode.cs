using RigScenarios.Scenarios;
namespace RigScenarios.Files.Formats;

/// <summary>
/// One value of a file before it means anything: text, a map or a list, with its place. Files of any syntax become
/// this tree first, so that forms need to know no syntax.
/// </summary>
public abstract record FileNode(TextPlace At)
{
    /// <summary>What the node is, in plain words, for messages.</summary>
    public abstract string Describe();

    /// <summary>Text shortened for a message.</summary>
    protected static string Shorten(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "...");
}

/// <summary>A plain value: a word, a number, a quantity.</summary>
public sealed record TextNode(string Text, TextPlace At) : FileNode(At)
{
    /// <inheritdoc/>
    public override string Describe() => Text.Length == 0 ? "nothing" : $"\"{Shorten(Text)}\"";
}

/// <summary>Keys with their values, in the order of the file. Keys are unique (the reader of the syntax sees to that).</summary>
public sealed record MapNode(IReadOnlyList<MapEntry> Entries, TextPlace At) : FileNode(At)
{
    /// <inheritdoc/>
    public override string Describe() => Entries.Count == 0
        ? "an empty group"
        : Shorten($"a group with {string.Join(", ", Entries.Take(4).Select(entry => entry.Key))}");
}

/// <summary>One line of a map.</summary>
public sealed record MapEntry(string Key, TextPlace KeyAt, FileNode Value);

/// <summary>Values in a row.</summary>
public sealed record ListNode(IReadOnlyList<FileNode> Items, TextPlace At) : FileNode(At)
{
    /// <inheritdoc/>
    public override string Describe() => $"a list of {Items.Count}";
}

using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files.Editing;

/// <summary>
/// Makes the text of a changed value out of the text that it had. Each value answers for its own stretch of the text, so that
/// whatever is the same before and after is copied and never written anew.
/// </summary>
internal sealed class KeptText
{
    private readonly IReadOnlyList<Comment> comments;
    private readonly IReadOnlySet<string> anew;
    private readonly BracketLayout brackets;
    private readonly LineLayout lines;

    /// <summary>Takes a text that ends with a line break.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="root">What stands where in it.</param>
    /// <param name="anew">Paths of values that are to be written anew as a whole, where a smaller change came out wrong.</param>
    public KeptText(string text, PlacedGroup root, IReadOnlySet<string> anew)
    {
        Text = text;
        LineBreak = Lines.BreakOf(text);
        comments = Gaps.Comments(text, root);
        this.anew = anew;
        brackets = new BracketLayout(this);
        lines = new LineLayout(this);
    }

    /// <summary>The text as it was.</summary>
    public string Text { get; }

    /// <summary>Its line break.</summary>
    public string LineBreak { get; }

    /// <summary>The comments between two places.</summary>
    public IEnumerable<string> CommentsIn(int from, int to)
    {
        int low = 0, high = comments.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = comments[middle].Start < from ? (middle + 1, high) : (low, middle);
        }
        return comments.Skip(low).TakeWhile(comment => comment.Start < to).Select(comment => comment.Text);
    }

    /// <summary>Whether the value of a path is to be written anew.</summary>
    public bool IsAnew(string path) => anew.Contains(path);

    /// <summary>The whole file's text after the change.</summary>
    public string Root(PlacedGroup root, MapNode before, MapNode after)
    {
        if (root.InBrackets)
            return Text[..root.Start] + Value(root, before, after, "", false) + Text[root.End..];
        return lines.Group(root, 0, Plan(root, before, after, ""), "") + Text[lines.EndOf(root)..];
    }

    /// <summary>The text of a plain value or of a group in brackets after the change.</summary>
    /// <exception cref="CannotKeepException">It has to be written anew, or what is around it.</exception>
    public string Value(PlacedNode node, FileNode? before, FileNode? after, string path, bool inBrackets)
    {
        if (after is null || (before is not null && TreeDifference.Same(before, after)))
            return Text[node.Start..node.End];
        return (node, after) switch
        {
            (PlacedText old, TextNode text) => old.Text == text.Text
                ? Text[node.Start..node.End]
                : ScalarText.Like(old, Text[node.Start..node.End], text.Text, inBrackets, LineBreak),
            (PlacedGroup { InBrackets: true } group, _) => brackets.Group(group, Plan(group, before, after, path), path),
            _ => throw new CannotKeepException(path),
        };
    }

    /// <summary>What each entry of a group becomes.</summary>
    public static IReadOnlyList<PlannedEntry> Plan(PlacedGroup group, FileNode? before, FileNode after, string path)
    {
        if (after is MapNode afterMap && !group.IsList && before is MapNode or null)
            return EntryPlan.OfMap(group.Entries, before as MapNode ?? new MapNode([], TextPlace.None), afterMap);
        if (after is ListNode afterList && group.IsList
            && (before as ListNode ?? new ListNode([], TextPlace.None)) is var beforeList
            && beforeList.Items.Count == group.Entries.Count)
            return EntryPlan.OfList(beforeList, afterList);
        throw new CannotKeepException(path);
    }

    /// <summary>The path of an entry.</summary>
    public static string Step(string path, PlannedEntry entry) =>
        TreeDifference.Step(path, entry.Key.Length > 0 ? entry.Key : $"{entry.Index + 1}");
}

/// <summary>A value can't be changed inside of its own text; the value of the path has to be written anew.</summary>
internal sealed class CannotKeepException(string path) : Exception($"The text of \"{path}\" can't be kept.")
{
    /// <summary>The value.</summary>
    public string Path { get; } = path;
}

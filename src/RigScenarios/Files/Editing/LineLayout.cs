using System.Text;

namespace RigScenarios.Files.Editing;

/// <summary>
/// Changes a group whose entries stand in lines of their own. An entry takes with it the comments right above it, those at the
/// ends of its lines and deeper indented ones below; blank lines stay where they part the entries.
/// </summary>
internal sealed class LineLayout(KeptText file)
{
    private sealed record Piece(string Blank, string Notes, string Body);

    /// <summary>After the last line of a group over several lines, with the comments that belong to it.</summary>
    public int EndOf(PlacedGroup group) => group.Entries.Count == 0 ? group.End : EndOf(group.Entries[^1].Value, Column(group));

    /// <summary>The lines of a group after the change.</summary>
    /// <param name="group">The group as it stands.</param>
    /// <param name="start">Where its lines begin, with the comments above its first entry.</param>
    /// <param name="plan">What its entries become.</param>
    /// <param name="path">Its path.</param>
    public string Group(PlacedGroup group, int start, IReadOnlyList<PlannedEntry> plan, string path)
    {
        var column = Column(group);
        var firstInLine = start == group.Start && start != Lines.Start(file.Text, start);
        if (firstInLine && (plan.Count == 0 || plan[0].Index is not 0))
            throw new CannotKeepException(path);
        var kept = Kept(group, start, plan, path, out var top);
        var byIndex = plan.Where(entry => entry.Index is not null).Select(entry => entry.Index!.Value).Order().ToList();
        var blanks = byIndex.ConvertAll(index => kept[index].Blank);
        var parted = blanks.Count > 1 && blanks.Skip(1).All(blank => blank.Length > 0);
        var text = new StringBuilder(top);
        var next = 0;
        for (var place = 0; place < plan.Count; place++)
        {
            var entry = plan[place];
            var blank = entry.Index is not null ? blanks[next++] : "";
            text.Append(blank.Length == 0 && parted && place > 0 ? file.LineBreak : blank);
            if (entry.Index is { } index)
                text.Append(kept[index].Notes).Append(kept[index].Body);
            else
                text.Append(NodeText.AsLines(entry.Key, entry.After!, column, file.LineBreak, StyleOf(group)));
        }
        return text.ToString();
    }

    private Dictionary<int, Piece> Kept(PlacedGroup group, int start, IReadOnlyList<PlannedEntry> plan,
        string path, out string top)
    {
        var column = Column(group);
        var planned = plan.Where(entry => entry.Index is not null).ToDictionary(entry => entry.Index!.Value);
        var kept = new Dictionary<int, Piece>();
        var orphans = new StringBuilder();
        var previous = -1;
        var partNext = false;
        var position = start;
        for (var index = 0; index < group.Entries.Count; index++)
        {
            var entry = group.Entries[index];
            var line = index == 0 && start == group.Start ? start : Lines.Start(file.Text, entry.Start);
            if (line < position)
                throw new CannotKeepException(path);
            var (blank, notes) = Lead(position, line);
            position = EndOf(entry.Value, column);
            if (planned.TryGetValue(index, out var plannedEntry))
            {
                kept[index] = new Piece(partNext && blank.Length == 0 ? file.LineBreak : blank, notes,
                    Body(entry, plannedEntry, line, position, column, path));
                previous = index;
                partNext = false;
                continue;
            }
            // What was said about an entry that goes is not thrown away: it stays below the entry before.
            var above = string.IsNullOrWhiteSpace(notes) ? "" : (previous < 0 ? "" : blank) + notes;
            var left = above + AsLines(file.CommentsIn(entry.Start, position), column);
            partNext |= left.Length > 0;
            if (previous < 0)
                orphans.Append(left);
            else
                kept[previous] = kept[previous] with { Body = kept[previous].Body + left };
        }
        top = orphans.ToString();
        return kept;
    }

    /// <summary>The lines of an entry that stays.</summary>
    private string Body(PlacedEntry old, PlannedEntry entry, int line, int end, int column, string path)
    {
        var text = file.Text;
        if (entry.After is null || (entry.Key == old.Key && entry.Before is not null
            && TreeDifference.Same(entry.Before, entry.After)))
            return text[line..end];
        var step = KeptText.Step(path, entry);
        if (file.IsAnew(step))
            return AsLines(file.CommentsIn(old.Start, end), column)
                + NodeText.AsLines(entry.Key, entry.After, column, file.LineBreak);
        var key = text[line..old.KeyStart] + (entry.Key == old.Key ? text[old.KeyStart..old.KeyEnd] : entry.Key);
        if (old.Value is not PlacedGroup { InBrackets: false } group)
            return key + text[old.KeyEnd..old.Value.Start]
                + file.Value(old.Value, entry.Before, entry.After, step, inBrackets: false) + text[old.Value.End..end];
        var start = Lines.Next(text, old.MarkEnd) is var below && below <= group.Start ? below : group.Start;
        var after = text[EndOf(group)..end];
        var plan = KeptText.Plan(group, entry.Before, entry.After, step);
        if (plan.Count > 0)
            return key + text[old.KeyEnd..start] + Group(group, start, plan, step) + after;
        // Nothing is left in it: "power: {}", and below it the comments that stood there.
        var empty = group.IsList ? " []" : " {}";
        return key + text[old.KeyEnd..old.MarkEnd] + empty + text[old.MarkEnd..start]
            + AsLines(file.CommentsIn(start, EndOf(group)), Column(group)) + after;
    }

    private int Column(PlacedGroup group) => group.Start - Lines.Start(file.Text, group.Start);

    private int EndOf(PlacedNode value, int column)
    {
        var end = value is PlacedGroup { InBrackets: false } group ? EndOf(group) : Lines.Next(file.Text, value.End);
        for (var line = end; line < file.Text.Length && Lines.IsBlankOrComment(file.Text, line, out var isComment);)
        {
            var indent = Lines.Indent(file.Text, line);
            line = Lines.Next(file.Text, line);
            if (isComment && indent <= column)
                break;
            if (isComment)
                end = line;
        }
        return end;
    }

    /// <summary>Blank lines at the start, and the rest: comments, and blank lines among them.</summary>
    private (string Blank, string Notes) Lead(int from, int to)
    {
        var position = from;
        while (position < to && Lines.IsBlankOrComment(file.Text, position, out var isComment) && !isComment)
            position = Lines.Next(file.Text, position);
        return (file.Text[from..position], file.Text[position..to]);
    }

    private string AsLines(IEnumerable<string> comments, int column) =>
        string.Concat(comments.Select(comment => new string(' ', column) + comment + file.LineBreak));

    /// <summary>How groups stand in this one: all in one line, all over several, or both.</summary>
    private static bool? StyleOf(PlacedGroup group)
    {
        var groups = group.Entries.Select(entry => entry.Value).OfType<PlacedGroup>()
            .Where(value => !value.IsList && value.Entries.Count > 0).ToList();
        if (groups.Count == 0 || groups.Exists(value => value.InBrackets) && groups.Exists(value => !value.InBrackets))
            return null;
        return groups[0].InBrackets;
    }
}

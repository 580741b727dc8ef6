using System.Text;

namespace RigScenarios.Files.Editing;

/// <summary>Changes a group in braces or brackets. Entries move between the gaps; the gaps with their comments stay.</summary>
internal sealed class BracketLayout(KeptText file)
{
    public string Group(PlacedGroup group, IReadOnlyList<PlannedEntry> plan, string path)
    {
        // "[a: b]" is a group without braces of its own: it can't take a second entry.
        if (file.Text[group.Start] is not ('{' or '['))
            throw new CannotKeepException(path);
        var stays = plan.Where(entry => entry.Index is not null).Select(entry => entry.Index!.Value).ToHashSet();
        var (lead, gaps, tail) = Gaps(group, stays);
        var indices = plan.Where(entry => entry.Index is not null).Select(entry => entry.Index!.Value).ToList();
        if (!indices.SequenceEqual(indices.Order()))
            (gaps, tail) = MovedNotes(indices, gaps, tail, Pad(group));
        var text = new StringBuilder().Append(file.Text[group.Start]).Append(lead);
        var next = 0;
        for (var place = 0; place < plan.Count; place++)
        {
            var entry = plan[place];
            text.Append(entry.Index is { } index ? Kept(group, group.Entries[index], entry, path) : New(entry));
            if (place == plan.Count - 1)
                break;
            // One gap fewer than entries that stay: where a new one is last, the one before it gets a plain comma.
            text.Append(entry.Index is not null && next < gaps.Count ? gaps[next++] : ", ");
        }
        return text.Append(plan.Count == 0 ? WithoutComma(tail) : tail).Append(file.Text[group.End - 1]).ToString();
    }

    /// <summary>Gaps for entries in another order: the comment at the end of an entry's line goes with it, the rest
    /// stays.</summary>
    private (List<string> Between, string Tail) MovedNotes(List<int> order, List<string> gaps, string tail, string pad)
    {
        List<string> all = [.. gaps, tail];
        var hasLastComma = WithoutComma(tail).Length < tail.Length;
        var parts = all.ConvertAll(gap =>
        {
            var bare = WithoutComma(gap);
            var lineEnd = Lines.ContentEnd(bare, 0);
            return bare.AsSpan(0, lineEnd).Contains('#')
                ? (Note: bare[..lineEnd], Space: bare[lineEnd..]) : (Note: "", Space: bare);
        });
        var slots = order.Order().ToList();
        for (var place = 0; place < order.Count; place++)
        {
            var note = parts[slots.IndexOf(order[place])].Note;
            var space = parts[place].Space;
            if (note.Length > 0 && !(space.Length > 0 && Lines.IsBreak(space[0])))
                space = file.LineBreak + pad + space.TrimStart(' ');
            all[place] = (place < order.Count - 1 || hasLastComma ? "," : "") + note + space;
        }
        return (all[..^1], all[^1]);
    }

    private static string New(PlannedEntry entry) =>
        (entry.Key.Length > 0 ? entry.Key + ": " : "") + NodeText.InOneLine(entry.After!, inBrackets: true);

    private string Kept(PlacedGroup group, PlacedEntry old, PlannedEntry entry, string path)
    {
        var step = KeptText.Step(path, entry);
        var value = old.Value;
        var head = group.IsList ? "" : file.Text[old.Start..old.KeyStart]
            + (entry.Key == old.Key ? file.Text[old.KeyStart..old.KeyEnd] : entry.Key) + file.Text[old.KeyEnd..value.Start];
        // A name in quotes may have its value right behind the colon; one without may not.
        if (entry.Key != old.Key && value.Start == old.MarkEnd)
            head += " ";
        if (!file.IsAnew(step) || entry.After is null)
            return head + file.Value(value, entry.Before, entry.After, step, inBrackets: true);
        return file.CommentsIn(value.Start, value.End).Any()
            ? throw new CannotKeepException(path) : head + NodeText.InOneLine(entry.After, inBrackets: true);
    }

    /// <summary>What stands before the first entry that stays, between those, and after the last.</summary>
    private (string Lead, List<string> Between, string Tail) Gaps(PlacedGroup group, HashSet<int> stays)
    {
        var text = file.Text;
        var entries = group.Entries;
        var first = entries.Count == 0 ? group.End - 1 : entries[0].Start;
        var lead = text[(group.Start + 1)..first];
        if (string.IsNullOrWhiteSpace(lead) && entries.Count == 0)
            lead = "";
        var gaps = new List<string>();
        for (var index = 0; index < entries.Count; index++)
        {
            var last = index == entries.Count - 1;
            var gap = text[entries[index].Value.End..(last ? group.End - 1 : entries[index + 1].Start)];
            if (stays.Contains(index))
            {
                gaps.Add(gap);
                continue;
            }
            var rest = string.Concat(file.CommentsIn(entries[index].Start, entries[index].Value.End)
                .Select(comment => $" {comment}{file.LineBreak}{Pad(group)}"));
            if (last && gaps.Count > 0)
                gaps[^1] = Trimmed(WithoutComma(gaps[^1])) + rest + gap;
            else
            {
                rest += last ? gap : gap.Contains('#', StringComparison.Ordinal) ? WithoutComma(gap) : "";
                if (gaps.Count > 0)
                    gaps[^1] += rest;
                else
                    lead += rest;
            }
        }
        if (gaps.Count == 0)
            return (WithoutComma(lead), gaps, "");
        // All entries after the last one that stays may have gone with gaps of their own: its comma has nothing to part any more.
        var tail = gaps[^1];
        gaps.RemoveAt(gaps.Count - 1);
        return (lead, gaps, tail);
    }

    /// <summary>As deep as what stands inside of the bracket.</summary>
    private string Pad(PlacedGroup group) => new(' ', group.Start - Lines.Start(file.Text, group.Start) + 1);

    private static string Trimmed(string gap) => string.IsNullOrWhiteSpace(gap) ? "" : gap;

    /// <summary>A gap without the comma in it; commas in comments stay.</summary>
    private static string WithoutComma(string gap)
    {
        for (var position = 0; position < gap.Length; position++)
        {
            if (gap[position] == '#')
                position = Lines.ContentEnd(gap, position);
            else if (gap[position] == ',')
                return gap.Remove(position, 1);
        }
        return gap;
    }
}

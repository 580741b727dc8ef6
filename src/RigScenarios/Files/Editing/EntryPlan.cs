using RigScenarios.Files.Formats;

namespace RigScenarios.Files.Editing;

/// <summary>One entry of a group as it is to be after a change.</summary>
/// <param name="Index">Its place among the entries of the text now; null for one that is new.</param>
/// <param name="Key">Its name; empty in a list.</param>
/// <param name="Before">Its value before; null if the text says something that counts as not said.</param>
/// <param name="After">Its value afterwards; null to leave it as it stands.</param>
internal sealed record PlannedEntry(int? Index, string Key, FileNode? Before, FileNode? After);

/// <summary>
/// Decides which entries of a group stay, go, move, get another name and come. What the text says and the trees don't (a default
/// that is written out) stays where it is.
/// </summary>
internal static class EntryPlan
{
    /// <summary>Above this many pairs of names no renaming is looked for: they go and come.</summary>
    private const int MostRenamePairs = 10_000;

    public static IReadOnlyList<PlannedEntry> OfMap(IReadOnlyList<PlacedEntry> entries, MapNode before, MapNode after)
    {
        var was = before.Entries.ToDictionary(entry => entry.Key, entry => entry.Value);
        var will = after.Entries.ToDictionary(entry => entry.Key, entry => entry.Value);
        var renamed = Renamed(entries, before, after);
        string NameOf(string key) => renamed.GetValueOrDefault(key, key);
        var kept = entries.Select((entry, index) => new PlannedEntry(index, NameOf(entry.Key), was.GetValueOrDefault(entry.Key),
            will.GetValueOrDefault(NameOf(entry.Key))))
            .Where(entry => entry.After is not null || entry.Before is null).ToList();
        var names = kept.Where(entry => entry.After is not null).Select(entry => entry.Key).ToHashSet();
        var orderAfter = after.Entries.Select(entry => entry.Key).Where(names.Contains).ToList();
        var orderBefore = before.Entries.Select(entry => NameOf(entry.Key)).Where(names.Contains).ToList();
        // A group of fields may stand in any order in the text; only where the trees disagree about the order something moved.
        if (!orderBefore.SequenceEqual(orderAfter.Where(orderBefore.ToHashSet().Contains)))
            Reorder(kept, orderAfter);
        return WithNew(kept, names, after);
    }

    public static IReadOnlyList<PlannedEntry> OfList(ListNode before, ListNode after)
    {
        var common = CommonItems(before.Items, after.Items);
        var plan = new List<PlannedEntry>();
        int old = 0, young = 0;
        foreach (var (oldEnd, youngEnd) in common.Append((before.Items.Count, after.Items.Count)))
        {
            for (; old < oldEnd && young < youngEnd; old++, young++)
                plan.Add(new PlannedEntry(old, "", before.Items[old], after.Items[young]));
            for (; young < youngEnd; young++)
                plan.Add(new PlannedEntry(null, "", null, after.Items[young]));
            old = oldEnd;
            if (oldEnd < before.Items.Count)
                plan.Add(new PlannedEntry(old++, "", before.Items[oldEnd], after.Items[young++]));
        }
        return plan;
    }

    private static Dictionary<string, string> Renamed(IReadOnlyList<PlacedEntry> entries, MapNode before, MapNode after)
    {
        var had = before.Entries.Select(entry => entry.Key).Concat(entries.Select(entry => entry.Key)).ToHashSet();
        var has = after.Entries.Select(entry => entry.Key).ToHashSet();
        var gone = before.Entries.Where(entry => !has.Contains(entry.Key)).ToList();
        var come = after.Entries.Where(entry => !had.Contains(entry.Key)).ToList();
        var renamed = new Dictionary<string, string>(StringComparer.Ordinal);
        if ((long)gone.Count * come.Count > MostRenamePairs)
            return renamed;
        foreach (var old in gone)
        {
            if (come.Find(entry => TreeDifference.Same(entry.Value, old.Value)) is not { } young)
                continue;
            renamed[old.Key] = young.Key;
            come.Remove(young);
        }
        return renamed;
    }

    private static void Reorder(List<PlannedEntry> kept, List<string> order)
    {
        var byName = kept.Where(entry => entry.After is not null).ToDictionary(entry => entry.Key);
        var next = 0;
        for (var place = 0; place < kept.Count; place++)
        {
            if (kept[place].After is not null)
                kept[place] = byName[order[next++]];
        }
    }

    /// <summary>Each new entry goes behind the one that is before it in the tree; the first ones before the first that
    /// stays.</summary>
    private static List<PlannedEntry> WithNew(List<PlannedEntry> kept, HashSet<string> names, MapNode after)
    {
        var behind = new Dictionary<string, List<PlannedEntry>>(StringComparer.Ordinal);
        var previous = "";
        foreach (var entry in after.Entries)
        {
            if (names.Contains(entry.Key))
            {
                previous = entry.Key;
                continue;
            }
            if (!behind.TryGetValue(previous, out var list))
                behind[previous] = list = [];
            list.Add(new PlannedEntry(null, entry.Key, null, entry.Value));
        }
        var first = behind.GetValueOrDefault("", []);
        var plan = new List<PlannedEntry>(kept.Count + after.Entries.Count);
        foreach (var entry in kept)
        {
            if (entry.After is not null)
            {
                plan.AddRange(first);
                first = [];
            }
            plan.Add(entry);
            if (entry.After is not null)
                plan.AddRange(behind.GetValueOrDefault(entry.Key, []));
        }
        plan.AddRange(first);
        return plan;
    }

    /// <summary>The places of the longest common run of equal items, in order (dynamic programming; lists hold some hundred
    /// items).</summary>
    private static List<(int Before, int After)> CommonItems(IReadOnlyList<FileNode> before, IReadOnlyList<FileNode> after)
    {
        var longest = new int[before.Count + 1, after.Count + 1];
        for (var one = before.Count - 1; one >= 0; one--)
        {
            for (var other = after.Count - 1; other >= 0; other--)
                longest[one, other] = TreeDifference.Same(before[one], after[other])
                    ? longest[one + 1, other + 1] + 1 : Math.Max(longest[one + 1, other], longest[one, other + 1]);
        }
        var common = new List<(int, int)>();
        for (int one = 0, other = 0; one < before.Count && other < after.Count;)
        {
            if (TreeDifference.Same(before[one], after[other]))
                common.Add((one++, other++));
            else if (longest[one + 1, other] >= longest[one, other + 1])
                one++;
            else
                other++;
        }
        return common;
    }
}

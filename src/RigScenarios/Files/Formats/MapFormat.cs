using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files.Formats;

/// <summary>The form of named things, in the order of the file. Names are short words in lower case, digits and
/// hyphens.</summary>
/// <typeparam name="T">What has a name.</typeparam>
/// <param name="form">The form of each.</param>
/// <param name="oneOf">What one of them is, in words.</param>
/// <param name="most">The greatest number of them.</param>
public sealed class MapFormat<T>(Format<T> form, string oneOf, int most = 1000) : Format<OrderedMap<T>>
    where T : notnull
{
    private const int LongestName = 60;

    private const string NamePattern = "^[a-z0-9][a-z0-9-]{0,59}$";

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out OrderedMap<T> value)
    {
        value = OrderedMap<T>.Empty;
        if (node is not MapNode map)
        {
            log.Error(node.At, path, $"Found {node.Describe()} where names with their values belong.",
                $"a name for each {oneOf}, followed by its fields");
            return false;
        }
        if (map.Entries.Count > most)
        {
            log.Error(node.At, path, $"Found {map.Entries.Count:N0} of them.", $"at most {most:N0}, each a {oneOf}");
            return false;
        }
        var good = true;
        var items = new List<KeyValuePair<string, T>>(map.Entries.Count);
        foreach (var entry in map.Entries)
        {
            var itemPath = Join(path, entry.Key);
            log.Place(itemPath, entry.Value.At);
            if (!IsName(entry.Key))
            {
                log.Error(entry.KeyAt, path,
                    $"\"{(entry.Key.Length > 60 ? entry.Key[..57] + "..." : entry.Key)}\" can't be the name of a {oneOf}.",
                    "lower-case letters, digits and hyphens, at most 60, such as \"wide-lens\"");
                good = false;
            }
            good &= form.TryRead(entry.Value, itemPath, log, out var item);
            if (item is not null)
                items.Add(new(entry.Key, item));
        }
        value = new OrderedMap<T>(items);
        return good;
    }

    /// <inheritdoc/>
    public override FileNode Write(OrderedMap<T> value) =>
        new MapNode([.. value.Select(item => new MapEntry(item.Key, TextPlace.None, form.Write(item.Value)))], TextPlace.None);

    /// <inheritdoc/>
    public override JsonObject Schema() => new()
    {
        ["type"] = "object",
        ["propertyNames"] = new JsonObject { ["pattern"] = NamePattern },
        ["additionalProperties"] = form.Schema(),
        ["maxProperties"] = most,
    };

    /// <inheritdoc/>
    public override bool TrySet(
        OrderedMap<T>? owner, ReadOnlySpan<string> steps, FileNode node, string path, ReadLog log,
        [MaybeNullWhen(false)] out OrderedMap<T> changed)
    {
        changed = null;
        owner ??= OrderedMap<T>.Empty;
        // A whole entry, in the braces of the file's own syntax or as one plain value, replaces the one of its name or is added.
        if (steps.Length == 1 && (node is not TextNode || form is PlainFormat<T>) && IsName(steps[0]))
        {
            if (!form.TryRead(node, path, log, out var whole))
                return false;
            changed = owner.With(steps[0], whole);
            return true;
        }
        if (steps.IsEmpty || !owner.TryGetValue(steps[0], out var item))
        {
            log.Error(path, steps.IsEmpty ? $"This names no {oneOf}." : $"There is no {oneOf} \"{steps[0]}\".",
                owner.Count == 0 ? null : string.Join(", ", owner.Keys.Take(30)), steps.IsEmpty
                    ? null : log.Nearest(steps[0], owner.Keys));
            return false;
        }
        if (!form.TrySet(item, steps[1..], node, path, log, out var newItem))
            return false;
        changed = owner.With(steps[0], newItem);
        return true;
    }

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> NumericFields(OrderedMap<T> value, string path) =>
        value.SelectMany(item => form.NumericFields(item.Value, Join(path, item.Key)));

    internal override FormatOutline Outline() =>
        new("", [], form.Outline(), false, $"a name for each {oneOf}, followed by what belongs to it");

    /// <summary>Whether a word can be the name of a thing.</summary>
    internal static bool IsName(string word)
    {
        if (word.Length is 0 or > LongestName || word[0] == '-')
            return false;
        // Asked for each name of a file: a look at its letters is quicker than any pattern.
        foreach (var letter in word)
        {
            if (letter is not ((>= 'a' and <= 'z') or (>= '0' and <= '9') or '-'))
                return false;
        }
        return true;
    }
}

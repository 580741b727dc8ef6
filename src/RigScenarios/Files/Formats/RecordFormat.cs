using RigScenarios.Scenarios;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace RigScenarios.Files.Formats;

/// <summary>The form of a record: its fields, each with a key.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="blank">Makes a record with every field at its default.</param>
/// <param name="about">What the record is, for the schema.</param>
/// <param name="fields">The fields, in the order in which they are written.</param>
public sealed class RecordFormat<T>(Func<T> blank, string about, params Field<T>[] fields) : Format<T>
    where T : class
{
    /// <summary>What is said of a required field that is not there.</summary>
    internal const string Missing = "This field is missing.";

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out T value)
    {
        value = blank();
        log.Place(path, node.At);
        if (node is not MapNode map)
        {
            log.Error(node.At, path, $"Found {node.Describe()} where a group of fields belongs.", $"the fields {Keys()}");
            return false;
        }
        var good = true;
        foreach (var entry in map.Entries)
        {
            var fieldPath = Join(path, entry.Key);
            log.Place(fieldPath, entry.Value.At);
            if (Find(entry.Key) is { } field)
                good &= field.TryRead(ref value, entry.Value, fieldPath, log);
            else
            {
                UnknownKey(entry.Key, entry.KeyAt, fieldPath, log);
                good = false;
            }
        }
        foreach (var field in fields)
        {
            if (!field.Required || Has(map, field.Key))
                continue;
            log.Error(node.At, Join(path, field.Key), Missing, field.Accepted);
            good = false;
        }
        return good;
    }

    /// <inheritdoc/>
    public override FileNode Write(T value)
    {
        var entries = new List<MapEntry>();
        foreach (var field in fields)
        {
            if (field.Write(value) is { } node)
                entries.Add(new MapEntry(field.Key, TextPlace.None, node));
        }
        return new MapNode(entries, TextPlace.None);
    }

    /// <inheritdoc/>
    public override JsonObject Schema()
    {
        var properties = new JsonObject();
        foreach (var field in fields)
            properties[field.Key] = field.Schema();
        var schema = new JsonObject
        {
            ["type"] = "object",
            ["description"] = about,
            ["properties"] = properties,
            ["additionalProperties"] = false,
        };
        var required = new JsonArray([.. fields.Where(field => field.Required).Select(field => (JsonNode)field.Key)]);
        if (required.Count > 0)
            schema["required"] = required;
        return schema;
    }

    /// <inheritdoc/>
    public override bool TrySet(T? owner, ReadOnlySpan<string> steps, FileNode node, string path, ReadLog log,
        [MaybeNullWhen(false)] out T changed)
    {
        changed = default;
        if (steps.IsEmpty && node is not TextNode)
            return TryRead(node, path, log, out changed);
        if (steps.IsEmpty)
        {
            log.Error(path, "This names a whole group.", $"one of its fields: {Keys()}; or all of it in braces");
            return false;
        }
        if (Find(steps[0]) is not { } field)
        {
            UnknownKey(steps[0], TextPlace.None, path, log);
            return false;
        }
        changed = owner ?? blank();
        return field.TrySet(ref changed, steps[1..], node, path, log);
    }

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> NumericFields(T value, string path) =>
        fields.SelectMany(field => field.NumericFields(value, Join(path, field.Key)));

    internal override FormatOutline Outline() =>
        new(about, [.. fields.Select(field => field.Outline())], null, false, $"the fields {Keys()}");

    private Field<T>? Find(string key)
    {
        foreach (var field in fields)
        {
            if (field.Key == key)
                return field;
        }
        return null;
    }

    private static bool Has(MapNode map, string key)
    {
        foreach (var entry in map.Entries)
        {
            if (entry.Key == key)
                return true;
        }
        return false;
    }

    private string Keys() => string.Join(", ", fields.Select(field => field.Key));

    private void UnknownKey(string key, TextPlace at, string path, ReadLog log) =>
        log.Error(at, path, $"There is no field \"{key}\" here.", Keys(), log.Nearest(key, fields.Select(field => field.Key)));
}

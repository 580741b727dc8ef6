using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace RigScenarios.Files.Formats;

/// <summary>One plain value, or several in square brackets.</summary>
/// <typeparam name="T">A value.</typeparam>
/// <param name="form">The form of each.</param>
/// <param name="most">The greatest number of values.</param>
public sealed class OneOrMoreFormat<T>(PlainFormat<T> form, int most) : Format<IReadOnlyList<T>>, IAcceptedText
{
    private readonly ListFormat<T> list = new(form, most);

    /// <inheritdoc/>
    public string Accepted => $"{form.Accepted}; or several of them in square brackets, at most {most}";

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        value = null;
        if (node is ListNode { Items.Count: > 0 })
            return list.TryRead(node, path, log, out value);
        if (node is not TextNode)
        {
            log.Error(node.At, path, $"Found {node.Describe()}.", Accepted);
            return false;
        }
        if (!form.TryRead(node, path, log, out var one))
            return false;
        value = [one];
        return true;
    }

    /// <inheritdoc/>
    public override FileNode Write(IReadOnlyList<T> value) => value is [var one] ? form.Write(one) : list.Write(value);

    /// <inheritdoc/>
    public override JsonObject Schema()
    {
        var several = list.Schema();
        several["minItems"] = 1;
        return new JsonObject { ["anyOf"] = new JsonArray(form.Schema(), several) };
    }

    internal override FormatOutline Outline() => new("", [], form.Outline(), true, Accepted);
}

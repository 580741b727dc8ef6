using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files.Formats;

/// <summary>The form of a quantity: a number with its unit, in a range.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="low">The least accepted value.</param>
/// <param name="high">The greatest accepted value.</param>
/// <param name="example">An example as it stands in a file.</param>
public class QuantityFormat<T>(T low, T high, string example) : Format<T>, IAcceptedText
    where T : struct, IQuantity
{
    /// <summary>What is accepted, with an example.</summary>
    public string Accepted => $"{QuantityText.Write(low)} to {QuantityText.Write(high)}, such as \"{example}\"";

    /// <summary>The example as it stands in a file.</summary>
    protected string Example => example;

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (node is not TextNode text)
        {
            log.Error(node.At, path, $"Found {node.Describe()} where a number with a unit belongs.", Accepted);
            return false;
        }
        if (!TryParse(text.Text, out var quantity, out var problem))
        {
            log.Error(node.At, path, problem, Accepted);
            return false;
        }
        var number = (double)quantity.As(low.Unit);
        if (!(number >= (double)low.Value) || !(number <= (double)high.As(low.Unit)))
        {
            log.Error(node.At, path, $"Found \"{text.Text}\", which is outside the range.", Accepted);
            return false;
        }
        value = (T)quantity;
        return true;
    }

    /// <inheritdoc/>
    public override FileNode Write(T value) => new TextNode(QuantityText.Write(value), TextPlace.None);

    /// <inheritdoc/>
    public override JsonObject Schema() => new()
    {
        ["type"] = "string",
        ["pattern"] = @"^\s*[+−-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?\s*[^\d\s,.+-].*$",
        ["examples"] = new JsonArray(example),
    };

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> NumericFields(T value, string path) =>
        [(path, QuantityText.Write(value))];

    /// <summary>Reads the text.</summary>
    protected virtual bool TryParse(string text, [NotNullWhen(true)] out IQuantity? value,
        [NotNullWhen(false)] out string? problem) =>
        QuantityText.TryRead(text, low, example, out value, out problem);
}

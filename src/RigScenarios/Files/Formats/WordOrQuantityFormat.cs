using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using UnitsNet;

namespace RigScenarios.Files.Formats;

/// <summary>One of a few words, or a quantity of its own.</summary>
/// <typeparam name="T">What either says.</typeparam>
/// <typeparam name="TQuantity">The quantity.</typeparam>
/// <param name="words">The words, each with its value.</param>
/// <param name="wordOf">The word of a value; null where it is a quantity of its own.</param>
/// <param name="own">How the quantity stands in a file.</param>
/// <param name="from">The value of a quantity.</param>
/// <param name="to">The quantity of a value.</param>
internal sealed class WordOrQuantityFormat<T, TQuantity>(IReadOnlyList<T> words, Func<T, string?> wordOf,
    QuantityFormat<TQuantity> own, Func<TQuantity, T> from, Func<T, TQuantity> to) : Format<T>, IAcceptedText
    where T : class
    where TQuantity : struct, IQuantity
{
    /// <summary>What is accepted, with an example.</summary>
    public string Accepted => $"{string.Join(", ", Names)}, or {own.Accepted}";

    private IEnumerable<string> Names => words.Select(word => wordOf(word)!);

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out T value)
    {
        value = null;
        if (node is TextNode { Text: var text })
        {
            // Hyphens instead of spaces are how other words of these files are written.
            var word = text.Trim().Replace('-', ' ');
            value = words.FirstOrDefault(one => string.Equals(wordOf(one), word, StringComparison.OrdinalIgnoreCase));
            if (value is not null)
                return true;
            if (WrittenDigits.Plain(text).Any(char.IsAsciiDigit))
            {
                if (!own.TryRead(node, path, log, out var quantity))
                    return false;
                value = from(quantity);
                return true;
            }
        }
        log.Error(node.At, path, $"Found {node.Describe()}.", Accepted,
            node is TextNode { Text: var wrong } ? log.Nearest(wrong, Names) : null);
        return false;
    }

    /// <inheritdoc/>
    public override FileNode Write(T value) =>
        wordOf(value) is { } word ? new TextNode(word, Scenarios.TextPlace.None) : own.Write(to(value));

    /// <inheritdoc/>
    public override JsonObject Schema() => new()
    {
        ["anyOf"] = new JsonArray(
            new JsonObject { ["enum"] = new JsonArray([.. Names.Select(word => (JsonNode)word)]) }, own.Schema()),
    };

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> NumericFields(T value, string path) =>
        wordOf(value) is null ? own.NumericFields(to(value), path) : [];
}

using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>The outer size of a part: three lengths by their names, or in a row as a tape measure gives them.</summary>
internal sealed partial class SizeFormat : Format<BoxSize>, IAcceptedText
{
    private const string Pattern = @"^\s*(?<a>[0-9.]+)\s*[x×]\s*(?<b>[0-9.]+)\s*[x×]\s*(?<c>[0-9.]+)\s*(?<unit>[a-z]+)\s*$";

    private const string SchemaPattern = @"^\s*[0-9.]+\s*[x×]\s*[0-9.]+\s*[x×]\s*[0-9.]+\s*[a-z]+\s*$";

    private static readonly string[] Names = ["a", "b", "c"];

    private static readonly RecordFormat<BoxSize> Group = new(
        () => new BoxSize(Length.Zero, Length.Zero, Length.Zero), "Outer size in the rig's directions.",
        Fields<BoxSize>.Required("length", PartFormat.Lengths, size => size.Length, (size, value) => size with { Length = value },
            "Front to back, along the lens."),
        Fields<BoxSize>.Required("width", PartFormat.Lengths, size => size.Width, (size, value) => size with { Width = value },
            "Left to right."),
        Fields<BoxSize>.Required("height", PartFormat.Lengths, size => size.Height, (size, value) => size with { Height = value },
            "Bottom to top."));

    /// <inheritdoc/>
    public string Accepted => "front to back, left to right and bottom to top, such as \"96 x 122 x 91 mm\"; or the fields "
        + "length, width, height";

    /// <summary>The size in a row.</summary>
    public static string Text(BoxSize size)
    {
        static string Number(Length length) => Math.Round(length.Millimeters, 3).ToString("0.###", CultureInfo.InvariantCulture);
        return $"{Number(size.Length)} x {Number(size.Width)} x {Number(size.Height)} mm";
    }

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out BoxSize value)
    {
        if (node is not TextNode text)
            return Group.TryRead(node, path, log, out value);
        value = null;
        if (InRow().Match(WrittenDigits.Plain(text.Text)) is not { Success: true } row)
        {
            log.Error(node.At, path, $"Found {node.Describe()}, which is no size.", Accepted);
            return false;
        }
        var good = true;
        var lengths = new Length[3];
        for (var index = 0; index < 3; index++)
        {
            var length = new TextNode($"{row.Groups[Names[index]].Value} {row.Groups["unit"].Value}", node.At);
            good &= PartFormat.Lengths.TryRead(length, path, log, out lengths[index]);
        }
        value = good ? new BoxSize(lengths[0], lengths[1], lengths[2]) : null;
        return good;
    }

    /// <inheritdoc/>
    public override FileNode Write(BoxSize value) => Group.Write(value);

    /// <inheritdoc/>
    public override JsonObject Schema() => new()
    {
        ["anyOf"] = new JsonArray(Group.Schema(), new JsonObject { ["type"] = "string", ["pattern"] = SchemaPattern }),
    };

    /// <inheritdoc/>
    public override bool TrySet(BoxSize? owner, ReadOnlySpan<string> steps, FileNode node, string path, ReadLog log,
        [MaybeNullWhen(false)] out BoxSize changed) => steps.IsEmpty ? TryRead(node, path, log, out changed)
        : Group.TrySet(owner, steps, node, path, log, out changed);

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> NumericFields(BoxSize value, string path) =>
        Group.NumericFields(value, path);

    internal override FormatOutline Outline() => Group.Outline();

    [GeneratedRegex(Pattern, RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex InRow();
}

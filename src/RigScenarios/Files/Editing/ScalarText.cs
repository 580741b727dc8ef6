using System.Buffers;
using System.Globalization;
using System.Text;
using YamlDotNet.Core;

namespace RigScenarios.Files.Editing;

/// <summary>Writes one text of a file, in quotes where they are needed.</summary>
internal static class ScalarText
{
    /// <summary>About as wide as prose in the demo files; a single long word may go beyond.</summary>
    private const int FoldedWidth = 110;

    /// <summary>What ends or begins something else inside of brackets.</summary>
    private static readonly SearchValues<char> Signs = SearchValues.Create(",[]{}?");

    /// <summary>The text without quotes where that is clear to every reader, else in double quotes.</summary>
    /// <param name="text">What is to be said.</param>
    /// <param name="inBrackets">Whether it stands inside of braces or brackets.</param>
    public static string Write(string text, bool inBrackets) => IsPlain(text, inBrackets) ? text : DoubleQuoted(text);

    /// <summary>The text the way another one is written that it replaces.</summary>
    /// <param name="old">The one that is replaced.</param>
    /// <param name="written">How that one stands in the file.</param>
    /// <param name="text">What is to be said.</param>
    /// <param name="inBrackets">Whether it stands inside of braces or brackets.</param>
    /// <param name="lineBreak">The file's line break.</param>
    public static string Like(PlacedText old, string written, string text, bool inBrackets, string lineBreak)
    {
        if (old.Style is ScalarStyle.Literal or ScalarStyle.Folded)
            return OverLines(old.Style, written, text, lineBreak);
        if (old.Style is ScalarStyle.SingleQuoted && !text.Any(IsSpecial))
            return $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
        return old.Style is ScalarStyle.DoubleQuoted or ScalarStyle.SingleQuoted ? DoubleQuoted(text) : Write(text, inBrackets);
    }

    private static bool IsSpecial(char character) =>
        char.IsControl(character) || char.IsSurrogate(character)
            || character is '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF';

    private static bool IsPlain(string text, bool inBrackets)
    {
        if (text.Length == 0 || text.Any(IsSpecial) || char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1]))
            return false;
        var startsWell = char.IsLetterOrDigit(text[0]) || text[0] is '/' or '.' or '+' or '−' or '('
            || (text[0] == '-' && text.Length > 1 && char.IsLetterOrDigit(text[1]));
        return startsWell && !text.StartsWith("...", StringComparison.Ordinal) && !text.Contains(':', StringComparison.Ordinal)
            && !text.Contains('#', StringComparison.Ordinal) && !(inBrackets && text.AsSpan().ContainsAny(Signs));
    }

    private static string DoubleQuoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            quoted.Append(rune.Value switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\t' => "\\t",
                '\r' => "\\r",
                < 0x20 or (>= 0x7F and < 0xA0) => "\\x" + rune.Value.ToString("X2", CultureInfo.InvariantCulture),
                0x2028 or 0x2029 or 0xFEFF or 0xFFFE or 0xFFFF => "\\u" + rune.Value.ToString("X4", CultureInfo.InvariantCulture),
                _ => rune.ToString(),
            });
        }
        return quoted.Append('"').ToString();
    }

    /// <summary>Text in the style with | or &gt;, with the indentation and the comment of the old one.</summary>
    private static string OverLines(ScalarStyle style, string written, string text, string lineBreak)
    {
        var headEnd = Lines.ContentEnd(written, 0);
        var hash = written.IndexOf('#', StringComparison.Ordinal);
        var comment = hash >= 0 && hash < headEnd ? " " + written[hash..headEnd].TrimEnd() : "";
        var body = text.EndsWith('\n') ? text[..^1] : text;
        var lines = body.Split('\n');
        if (body.Length == 0 || body.Any(character => IsSpecial(character) && character != '\n' && !char.IsSurrogate(character))
            || char.IsWhiteSpace(body[0]) || lines[^1].Length == 0
            || Array.Exists(lines, line => line.Length > 0 && string.IsNullOrWhiteSpace(line)))
            return DoubleQuoted(text) + comment;
        var firstLine = Lines.Next(written, 0);
        while (firstLine < written.Length && Lines.IsBlankOrComment(written, firstLine, out var isComment) && !isComment)
            firstLine = Lines.Next(written, firstLine);
        var indent = new string(' ', Math.Max(Lines.Indent(written, firstLine), 1));
        var folds = style is ScalarStyle.Folded && lines.Length == 1 && !body.Contains("  ", StringComparison.Ordinal)
            && !body.EndsWith(' ');
        var content = folds ? Folded(body) : lines;
        var head = (folds ? ">" : "|") + (text.EndsWith('\n') ? "" : "-") + comment;
        return head + string.Concat(content.Select(line => line.Length == 0 ? lineBreak : lineBreak + indent + line));
    }

    private static string[] Folded(string text)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > FoldedWidth)
            {
                lines.Add(line.ToString());
                line.Clear();
            }
            if (line.Length > 0)
                line.Append(' ');
            line.Append(word);
        }
        lines.Add(line.ToString());
        return [.. lines];
    }
}

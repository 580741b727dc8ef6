using System.Buffers;
using System.Text;
using System.Text.RegularExpressions;

namespace RigScenarios.Charts.Pages;

/// <summary>Text that may stand anywhere in an HTML page, also within the quotes of an attribute.</summary>
public static partial class HtmlText
{
    private static readonly SearchValues<char> Meant = SearchValues.Create("&<>\"'");

    /// <summary>The text with the five characters that HTML gives a meaning written as references; all else stays
    /// readable.</summary>
    public static string Escape(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        // Most texts have none of them.
        if (text.AsSpan().IndexOfAny(Meant) < 0)
            return text;
        var result = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => result.Append("&amp;"),
                '<' => result.Append("&lt;"),
                '>' => result.Append("&gt;"),
                '"' => result.Append("&quot;"),
                '\'' => result.Append("&#39;"),
                _ => result.Append(c),
            };
        }

        return result.ToString();
    }

    /// <summary>The text escaped, with its numbers kept on one line with their units: "1 h 24 min" is never broken.</summary>
    public static string Prose(string text) => BeforeUnit().Replace(Escape(text), "\u00a0");

    // A space between a number and a unit of at most four letters, and between an hour and its minutes.
    [GeneratedRegex(
        @"(?<=\d) (?=(h|min|s|V|A|W|Wh|Ah|mAh|mΩ|Ω|kg|g|mm|m|N|N·m|MPa|K|°C|%)(?![\p{L}\d]))"
            + @"|(?<=\d[ \u00a0](h|min)) (?=\d+ (min|s)(?![\p{L}\d]))",
        RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex BeforeUnit();
}

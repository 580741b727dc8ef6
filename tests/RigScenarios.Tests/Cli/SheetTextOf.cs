using System.Net;
using System.Text.RegularExpressions;

namespace RigScenarios.Tests.Cli;

/// <summary>The words of a printed sheet.</summary>
internal static partial class SheetTextOf
{
    /// <summary>The page's words, a line for each element that begins one.</summary>
    public static string Page(string html)
    {
        var body = html[html.IndexOf("<main>", StringComparison.Ordinal)..].ReplaceLineEndings("");
        var lines = WebUtility.HtmlDecode(Tag().Replace(Cell().Replace(LineBegins().Replace(body, "\n"), " | "), ""))
            .Replace('\u00a0', ' ').Split('\n').Select(line => line.Trim(' ', '|')).Where(line => line.Length > 0);
        return string.Join('\n', lines) + "\n";
    }

    [GeneratedRegex("<(h1|h2|p|tr|li|footer)\\b[^>]*>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LineBegins();

    [GeneratedRegex("</t[dh]><t[dh][^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Cell();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Tag();
}

using System.Text.RegularExpressions;

namespace RigScenarios.Page.Folder;

/// <summary>
/// A page of the local server made into a page of the folder: its addresses are relative, so that the folder may lie anywhere
/// on a server; its policy stands in it; the library in the browser is put in the place of the server; and a browser that forbids
/// all that, because the page was opened as a file, shows how to open it.
/// </summary>
internal static partial class FolderPage
{
    /// <summary>The script that puts the library in the browser in the place of the server; before the page's own.</summary>
    private const string Program = "browser/program-here.js";

    private const string KeepOffline = "folder/keep-offline.js";

    private const string ThemeScript = "<script src=\"assets/shared/theme.js\"></script>\n";

    /// <summary>The pages by their names in the folder, with the file of the site that each is made of.</summary>
    public static readonly IReadOnlyDictionary<string, string> Sources = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["index.html"] = "shelf/shelf.html",
        ["rig.html"] = "rig/rig.html",
        ["notebook.html"] = "notebook/notebook.html",
        ["file.html"] = "file/file.html",
    };

    private static readonly Dictionary<string, string> Places = new(StringComparer.Ordinal)
    {
        ["/"] = "index.html",
        ["/rig"] = "rig.html",
    };

    /// <summary>The page for the folder.</summary>
    /// <param name="html">The page of the server.</param>
    /// <param name="parts">What the folder adds to each page.</param>
    /// <exception cref="InvalidOperationException">The page names an address that the folder does not have.</exception>
    public static string Of(string html, FolderParts parts)
    {
        html = ClassPart().Replace(html, "");
        html = Address().Replace(html, match => $"{match.Groups["name"].Value}=\"{Relative(match.Groups["address"].Value)}\"");
        html = html.Replace("<link rel=\"icon\" href=\"data:,\">\n", FolderParts.Icons, StringComparison.Ordinal);
        var hasCharts = PackedCharts.Element().IsMatch(html);
        html = PackedCharts.Element().Replace(html, PackedCharts.Instead);
        html = Once(html, "<meta charset=\"utf-8\">\n", "<meta charset=\"utf-8\">\n"
            + FolderPolicy.Of([FolderParts.FileCheck, .. hasCharts ? [PackedCharts.Script] : (string[])[]]));
        var own = Own().Match(html).Groups["name"].Value;
        html = Once(html, "<script type=\"module\"", $"<script type=\"module\" src=\"assets/{KeepOffline}\"></script>\n"
            + "<script type=\"module\"");
        // Before all else, for the library starts beside the page while the page reads the rest.
        html = Once(html, ThemeScript, $"{ThemeScript}<script type=\"module\" src=\"assets/{Program}\"></script>\n"
            + FolderModules.Preloads(Program, KeepOffline, own));
        html = Once(html, "<main", $"{FolderParts.Notice}<main");
        return Once(html, "</main>", $"</main>\n{parts.Foot}");
    }

    private static string Relative(string address) => address.StartsWith("/assets/", StringComparison.Ordinal) ? address[1..]
        : Places.TryGetValue(address, out var place) ? place
        : throw new InvalidOperationException($"A page links to {address}, which the folder does not have.");

    /// <summary>The page with one piece of it exchanged.</summary>
    /// <exception cref="InvalidOperationException">The page has no such piece.</exception>
    internal static string Once(string html, string what, string instead)
    {
        var at = html.IndexOf(what, StringComparison.Ordinal);
        return at >= 0 ? string.Concat(html.AsSpan(0, at), instead, html.AsSpan(at + what.Length))
            : throw new InvalidOperationException($"A page of the folder has no {what.Trim()}.");
    }

    [GeneratedRegex("<script type=\"module\" src=\"assets/(?<name>[^\"]*)\"", RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex Own();

    [GeneratedRegex("(?<name>href|src)=\"(?<address>/[^\"]*)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Address();

    // Tasks for a class are handed out by a program that other machines can ask.
    [GeneratedRegex("<section [^>]*id=\"class-part\">.*?</section>\n", RegexOptions.Singleline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ClassPart();
}

using System.Text.RegularExpressions;
using RigScenarios.Charts.Pages;
using RigScenarios.Page.Folder;

namespace RigScenarios.Page.Saved;

/// <summary>The local server's page of a notebook, made into one that stands alone: its styles and first script stand in it, and
/// in the place of the way to the shelf it says how its library stands.</summary>
internal static partial class SavedPageFrame
{
    private const string NoScripts = "<p class=\"note\">Scripts are switched off here, or this is a preview that runs none. "
        + "This page computes in your browser with scripts of its own, which are in it; nothing is sent anywhere. Open it in a "
        + "browser, and allow scripts for it.</p>";

    /// <summary>What is put into the page.</summary>
    /// <param name="Title">The notebook's title.</param>
    /// <param name="Policy">The element of its content policy.</param>
    /// <param name="Style">All of its styles.</param>
    /// <param name="Theme">The script that tells day from night.</param>
    /// <param name="Footer">Small print at its foot.</param>
    /// <param name="WithoutScripts">What stands there where no script runs, as HTML.</param>
    public sealed record Pieces(string Title, string Policy, string Style, string Theme, string Footer, string WithoutScripts);

    /// <summary>The page, without what it carries.</summary>
    /// <param name="html">The server's page of a notebook.</param>
    /// <param name="pieces">What is put into it.</param>
    /// <exception cref="InvalidOperationException">The page has no place for a piece, or still names an address.</exception>
    public static string Of(string html, Pieces pieces)
    {
        html = Linked().Replace(html, "");
        html = FolderPage.Once(html, "<meta charset=\"utf-8\">\n", $"<meta charset=\"utf-8\">\n{pieces.Policy}");
        html = FolderPage.Once(html, "<title>A notebook: RigScenarios</title>\n",
            $"<title>{HtmlText.Escape(pieces.Title)}: RigScenarios</title>\n<style>\n{pieces.Style}</style>\n"
                + $"<script>{pieces.Theme}</script>\n");
        html = FolderPage.Once(html, "<a href=\"/\">The shelf</a><span class=\"gap\"></span>",
            "<span class=\"standing no-print\" id=\"standing\" role=\"status\"></span>");
        html = FolderPage.Once(html, "<main id=\"main\" tabindex=\"-1\">\n", 
            $"<main id=\"main\" tabindex=\"-1\">\n<noscript><style>#message {{ display: none; }}</style>"
                + $"<div class=\"without-scripts\">{NoScripts}{pieces.WithoutScripts}</div></noscript>\n");
        html = FolderPage.Once(html, "</main>\n",
            $"</main>\n<footer class=\"foot\"><p>{HtmlText.Escape(pieces.Footer)}</p></footer>\n");
        return Address().Match(html) is { Success: true } left
            ? throw new InvalidOperationException($"A saved page names an address: {left.Value}") : html;
    }

    [GeneratedRegex("<(?:link rel=\"stylesheet\"|script)[^>]*\"/assets/[^>]*>(?:</script>)?\n", RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex Linked();

    [GeneratedRegex("\\b(?:href|src)=\"(?!#|data:,)[^\"]*\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Address();
}

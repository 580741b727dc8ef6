using RigScenarios.Charts.Pages;

namespace RigScenarios.Page.Folder;

/// <summary>What the folder adds to each of its pages.</summary>
/// <param name="version">The version of the program.</param>
internal sealed class FolderParts(string version)
{
    private static readonly Lazy<string> Check = new(() => SiteFiles.Text("folder/opened-from-file.js"));

    private static readonly Lazy<string> Words = new(() => SiteFiles.Text("folder/opened-from-file.html"));

    /// <summary>The script in the page that finds out that it was opened as a file. It stands in the page, because a file is
    /// not always allowed to load another.</summary>
    public static string FileCheck => Check.Value;

    /// <summary>What is said then, and where scripts are switched off.</summary>
    public static string Notice => $"{Words.Value}<script>{FileCheck}</script>\n";

    /// <summary>Icons, and what a browser installs the folder by.</summary>
    public static string Icons => """
        <link rel="icon" href="icon.svg" type="image/svg+xml">
        <link rel="apple-touch-icon" href="icon-192.png">
        <link rel="manifest" href="app.webmanifest">
        <link rel="stylesheet" href="assets/folder/folder.css">

        """;

    /// <summary>The page's foot: which version it is.</summary>
    public string Foot => $"<footer class=\"folder-foot no-print\"><p>RigScenarios {HtmlText.Escape(version)}. "
        + "<span id=\"offline-told\" role=\"status\"></span></p></footer>\n";
}

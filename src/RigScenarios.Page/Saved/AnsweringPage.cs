using System.Buffers.Text;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using RigScenarios.Charts.Pages;
using RigScenarios.Page.Folder;

namespace RigScenarios.Page.Saved;

/// <summary>
/// A notebook as one file that answers: its page with all scripts, what it was saved with, and the library with the notebook's
/// cells. Opened from a disk it needs neither a server nor a network.
/// </summary>
public static class AnsweringPage
{
    private const string SizePlace = "0000.0 MB";

    private const string BeginPage = "carried.beginPage();";

    /// <summary>What the page begins with, and what is imported by a name found while it runs.</summary>
    private static readonly string[] Roots = ["assets/saved/here.js", "assets/notebook/live.js", "assets/saved/worker.js",
        "library/boot.js"];

    private static readonly string[] Styles = ["shared/common.css", "notebook/notebook.css", "saved/saved.css"];

    /// <summary>The page. The same conversation and library give the same page, to the letter.</summary>
    /// <param name="conversation">What it shows at first.</param>
    /// <param name="browserFolder">The published browser build with the notebook's cells in it: the folder in which
    /// <c>boot.js</c> lies.</param>
    /// <param name="version">The version of the program, as its pages name it.</param>
    /// <exception cref="IOException">The browser build is not whole, or a file can't be read.</exception>
    public static string Of(SavedConversation conversation, string browserFolder, string version)
    {
        ArgumentNullException.ThrowIfNull(conversation);
        var library = new StringBuilder();
        AddData(library, "scripts", Packed(Scripts(browserFolder)));
        AddData(library, "charts", Packed(Charts));
        var (frame, end) = (Frame(conversation, version), $"{Begin}{Carried(browserFolder)}");
        // Its own size stands in it, among what it was saved with; packed, the right one takes as much room within some bytes.
        var about = frame.Length + library.Length + end.Length + SavedText(conversation, SizePlace).Length;
        return FolderPage.Once(frame, "</body>",
            $"\n{SavedText(conversation, InMegabytes(about))}{library}{end}</body>");
    }

    /// <summary>How large such a page becomes at least, in bytes, without what it was saved with.</summary>
    /// <param name="browserFolder">The published browser build with the notebook's cells in it.</param>
    /// <exception cref="IOException">The browser build is not whole, or a file can't be read.</exception>
    public static long LeastBytes(string browserFolder) => Carried(browserFolder).Length
        + (long)Base64.GetMaxEncodedToUtf8Length(Packed(Scripts(browserFolder)).Length)
        + Base64.GetMaxEncodedToUtf8Length(Packed(Charts).Length);

    /// <summary>A size in words, such as "8.1 MB".</summary>
    public static string InMegabytes(long bytes) => (bytes / 1e6).ToString("0.0 'MB'", CultureInfo.InvariantCulture);

    private static string[] Charts => [SiteFiles.OfFigures["plotly.js"](), SiteFiles.OfFigures["figure.js"]()];

    // First what shows the page, then the large rest.
    private static string Begin => $"<script>{Unpack}</script>\n<script>{BeginPage}</script>\n";

    private static string Unpack => SiteFiles.Text("saved/carried.js");

    private static string Frame(SavedConversation conversation, string version)
    {
        var notebook = conversation.Notebook;
        var theme = SiteFiles.Text("shared/theme.js");
        return SavedPageFrame.Of(SiteFiles.Text("notebook/notebook.html"), new SavedPageFrame.Pieces(
            notebook.Title, SavedPagePolicy.Of(theme, Unpack, BeginPage),
            SiteFiles.OfFigures["figure.css"]() + string.Concat(Styles.Select(SiteFiles.Text)), theme,
            $"RigScenarios {version}. Made from the notebook {notebook.FileName}. The page is complete in itself, with the "
                + "library that computes it: it works with no network, and sends nothing anywhere.",
            WithoutScripts(conversation)));
    }

    // An answer never stands without its cautions.
    private static string WithoutScripts(SavedConversation conversation) =>
        $"<h1>{HtmlText.Escape(conversation.Notebook.Title)}</h1><p>When this page was saved, it said:</p>"
            + $"<ul>{string.Concat(conversation.Answers.Select(answer => $"<li>{HtmlText.Prose(answer)}</li>"))}</ul>"
            + $"<ul>{string.Concat(conversation.Cautions.Select(caution => $"<li>{HtmlText.Prose(caution)}</li>"))}</ul>";

    private static string SavedText(SavedConversation conversation, string size)
    {
        var html = new StringBuilder();
        AddData(html, "saved", Packed(Saved(conversation, size)));
        return html.ToString();
    }

    private static object Saved(SavedConversation conversation, string size) => new
    {
        name = conversation.Notebook.Name,
        given = conversation.Given.Where(value => conversation.Notebook.Parameters.All
            .Any(parameter => parameter.Name == value.Key && parameter.Default != value.Value)).ToDictionary(),
        values = ConversationRecorder.Asked(conversation.Notebook, conversation.Given),
        own = conversation.OwnFiles,
        greeting = JsonElement.Parse(conversation.Greeting),
        messages = conversation.Messages.Select(message => JsonElement.Parse(message)),
        size,
    };

    private static string[][] Scripts(string browserFolder)
    {
        var scripts = SiteFiles.Names.Where(name => name.EndsWith(".js", StringComparison.Ordinal))
            .ToDictionary(name => $"assets/{name}", SiteFiles.Text, StringComparer.Ordinal);
        scripts["assets/shared/addresses.js"] = SiteFiles.Text("saved/addresses.js");
        var library = BrowserFiles.In(browserFolder).Where(IsScript).ToList();
        foreach (var name in library)
            scripts[$"library/{name}"] = File.ReadAllText(Path.Combine(browserFolder, name));
        // The runtime's own scripts are imported by names found while it starts.
        return [.. CarriedScripts.Of(scripts, [.. Roots, .. library.Select(name => $"library/{name}")])
            .Select(script => (string[])[script.Name, script.Text])];
    }

    private static string Carried(string browserFolder)
    {
        var data = new StringBuilder();
        foreach (var name in BrowserFiles.In(browserFolder).Where(name => !IsScript(name)))
            AddData(data, $"library/{name}", File.ReadAllBytes(Path.Combine(browserFolder, name)), " data-file");
        return data.ToString();
    }

    private static bool IsScript(string name) => name.EndsWith(".js", StringComparison.Ordinal);

    private static void AddData(StringBuilder html, string name, byte[] content, string mark = "") =>
        html.Append($"<script type=\"text/plain\" data-carried=\"{HtmlText.Escape(name)}\"{mark}>")
            .Append(Convert.ToBase64String(content)).Append("</script>\n");

    private static byte[] Packed(object content)
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
            JsonSerializer.Serialize(deflate, content);
        return packed.ToArray();
    }
}

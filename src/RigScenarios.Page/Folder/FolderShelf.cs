using System.Text;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Page.Folder;

/// <summary>The notebooks on the folder's shelf. They stand in the page itself, so that they can be read before the library has
/// come, and where it can't come.</summary>
internal static class FolderShelf
{
    /// <summary>The shelf's page with the notebooks on it; as it is where there are none.</summary>
    /// <param name="html">The page.</param>
    /// <param name="notebooks">The notebooks in their order.</param>
    /// <param name="answering">The names of those that answer in the browser.</param>
    public static string With(string html, IReadOnlyList<NotebookAsPage> notebooks, IReadOnlyList<string> answering)
    {
        if (notebooks.Count == 0)
            return html;
        html = FolderPage.Once(html, "id=\"notebooks-part\" hidden>", "id=\"notebooks-part\">");
        html = FolderPage.Once(html, "<p>Each asks one question. Move a slider in it and the answer follows.</p>",
            answering.Count == 0 ? "<p>Each asks one question, and shows its answer as it was when it was run.</p>"
                : "<p>Each asks one question. Move a slider in it and the answer follows, but where it says \u201cas it was "
                    + "run\u201d.</p>");
        var rows = string.Concat(notebooks.Select(notebook => Row(notebook, answering.Contains(notebook.Name),
            isTold: answering.Count > 0)));
        return FolderPage.Once(html, "id=\"notebook-list\"></ol>", $"id=\"notebook-list\">\n{rows}</ol>");
    }

    private static string Row(NotebookAsPage notebook, bool answers, bool isTold)
    {
        var address = answers ? $"notebook.html?notebook={Uri.EscapeDataString(notebook.Name)}" : Escaped(notebook.File);
        var row = new StringBuilder(notebook.Picture is { } picture ? "<li class=\"with-picture\"><div class=\"picture\">"
            + $"<img alt=\"\" src=\"{HtmlText.Escape(Escaped(picture))}\"></div><div>" : "<li><div>");
        row.Append($"<h3><a href=\"{HtmlText.Escape(address)}\">{HtmlText.Escape(notebook.Title)}</a></h3>");
        row.Append($"<p>{HtmlText.Escape(notebook.Sentence)}{(isTold && !answers ? " (As it was run.)" : "")}</p></div></li>\n");
        return row.ToString();
    }

    private static string Escaped(string path) => string.Join('/', path.Split('/').Select(Uri.EscapeDataString));
}

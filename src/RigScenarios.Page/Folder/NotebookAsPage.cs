using RigScenarios.Charts.Pages;

namespace RigScenarios.Page.Folder;

/// <summary>A notebook that was run, as a page of the folder.</summary>
/// <param name="Name">The name of its file without ending.</param>
/// <param name="Html">The page. It shares the scripts of its figures with the other pages.</param>
public sealed record NotebookAsPage(string Name, string Html)
{
    /// <summary>The folder's page of a run.</summary>
    /// <param name="name">The name of the notebook's file without ending.</param>
    /// <param name="page">The page, as it is kept as one file elsewhere.</param>
    public static NotebookAsPage Of(string name, ChartPage page)
    {
        ArgumentNullException.ThrowIfNull(page);
        var head = new HtmlPart("<p class=\"rs-prose\"><a href=\"../index.html\">The shelf</a></p>\n"
            + "<p class=\"rs-prose\">This is the notebook as it was run once, with its own values: its controls need a compiler, "
            + "which no browser has. On a computer with RigScenarios, <code>rigscenarios open</code> lets you move them.</p>\n");
        return new NotebookAsPage(name, (page with
        {
            FilesAt = "../assets/",
            Parts = [head, .. page.Parts],
            Footer = page.Footer.Replace(" The page is complete in itself and works with no network.",
                " It works with no network.", StringComparison.Ordinal),
        }).ToHtml());
    }
}

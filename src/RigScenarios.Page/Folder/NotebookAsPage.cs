using RigScenarios.Charts.Pages;

namespace RigScenarios.Page.Folder;

/// <summary>A notebook that was run, as a page of the folder and a place on its shelf.</summary>
public sealed record NotebookAsPage
{
    /// <summary>The name of the notebook's file without ending.</summary>
    public required string Name { get; init; }

    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>What it shows, in one sentence.</summary>
    public required string Sentence { get; init; }

    /// <summary>The page, as it is kept as one file elsewhere.</summary>
    public required ChartPage Page { get; init; }

    /// <summary>Its picture for the shelf; null for none.</summary>
    public string? PictureFile { get; init; }

    /// <summary>Why its controls move nothing in a browser, as a whole sentence.</summary>
    public string WhyItRests { get; init; } = "Its cells are compiled when they run, and no browser has the compiler.";

    /// <summary>Where the page lies in the folder.</summary>
    internal string File => $"notebooks/{Name}.html";

    /// <summary>Where its picture lies in the folder; null for none.</summary>
    internal string? Picture => PictureFile is null ? null
        : $"notebooks/{Name}{Path.GetExtension(PictureFile).ToLowerInvariant()}";

    /// <summary>The folder's page: it shares the scripts of its figures with the other pages, and leads back to the
    /// shelf.</summary>
    internal string Html()
    {
        var head = new HtmlPart("<p class=\"rs-prose\"><a href=\"../index.html\">The shelf</a></p>\n"
            + "<p class=\"rs-prose\">This is the notebook as it was run once, with its own values. "
            + $"{HtmlText.Escape(WhyItRests)} On a computer with RigScenarios, <code>rigscenarios open</code> lets you move its "
            + "controls.</p>\n");
        return (Page with
        {
            FilesAt = "../assets/",
            Parts = [head, .. Page.Parts],
            Footer = Page.Footer.Replace(" The page is complete in itself and works with no network.",
                " It works with no network.", StringComparison.Ordinal),
        }).ToHtml();
    }
}

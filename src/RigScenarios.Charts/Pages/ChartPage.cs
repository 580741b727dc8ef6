using System.Text;
using RigScenarios.Files;

namespace RigScenarios.Charts.Pages;

/// <summary>
/// One self-contained HTML page: prose, answers, tables and figures in the order given. It opens with no network, reads well on
/// a phone, and prints.
/// </summary>
public sealed record ChartPage
{
    /// <summary>Title of the page, also at its head.</summary>
    public required string Title { get; init; }

    /// <summary>The parts in their order.</summary>
    public IReadOnlyList<PagePart> Parts { get; init; } = [];

    /// <summary>Small print at the page's foot, or empty.</summary>
    public string Footer { get; init; } = "";

    /// <summary>Where the scripts and styles of figures lie as files, relative to the page and with "/" at the end; null: they
    /// stand in the page, which is then complete in itself. For many pages beside each other.</summary>
    public string? FilesAt { get; init; }

    /// <summary>plotly.js, as <see cref="ChartScript.Plotly"/> gives it, where the program does not have it in itself, as in a
    /// browser; null: the program's own.</summary>
    public string? Plotly { get; init; }

    /// <summary>Whether the title stands as the page's heading; off where the parts bring a heading of their own.</summary>
    public bool ShowsTitle { get; init; } = true;

    /// <summary>The page with one more part.</summary>
    public ChartPage With(PagePart part) => this with { Parts = [.. Parts, part] };

    /// <summary>The page with one more figure.</summary>
    public ChartPage With(Figure figure) => With(new FigurePart(figure));

    /// <summary>The page with one more drawing.</summary>
    public ChartPage With(Drawing drawing) => With(new DrawingPart(drawing));

    /// <summary>The page with one more table.</summary>
    public ChartPage With(ChartTable table) => With(new TablePart(table));

    /// <summary>The page with one more paragraph.</summary>
    public ChartPage WithProse(string text) => With(new ProsePart(text));

    /// <summary>The page with one more heading.</summary>
    public ChartPage WithHeading(string text, int level = 2) => With(new HeadingPart(text, level));

    /// <summary>The page with one more answer.</summary>
    public ChartPage WithAnswer(string text, params IReadOnlyList<string> cautions) => With(new AnswerPart(text, cautions));

    /// <summary>The whole page. The same parts give the same text, to the letter.</summary>
    public string ToHtml()
    {
        var html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        var scripts = Parts.OfType<FigurePart>().Select(part => PartHtml.ScriptOf(part.Figure));
        html.Append(FilesAt is null ? PagePolicy.Of([ChartScript.InPageWith(Plotly), .. scripts])
            : PagePolicy.WithFiles(scripts));
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append($"<title>{HtmlText.Escape(Title)}</title>\n<style>\n{ChartScript.PageStyle}</style>\n");
        html.Append($"{(FilesAt is null ? ChartScript.HtmlWith(Plotly) : ChartScript.HtmlOf(FilesAt))}</head>\n");
        html.Append("<body class=\"rs-kept\">\n<main>\n");
        if (ShowsTitle)
            html.Append($"<h1>{HtmlText.Escape(Title)}</h1>\n");
        foreach (var part in Parts.Where(part => part is not ScriptPart))
            html.Append(PartHtml.Of(part));
        html.Append("</main>\n");
        if (Footer.Length > 0)
            html.Append($"<footer>{HtmlText.Escape(Footer)}</footer>\n");
        return html.Append("</body>\n</html>\n").ToString();
    }

    /// <summary>Writes the page: first under a temporary name, then moved, so that no half-written page is ever found.</summary>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    public Task WriteAsync(string path, CancellationToken cancellation = default) =>
        Task.Run(() => TextFile.Write(path, ToHtml()), cancellation);
}

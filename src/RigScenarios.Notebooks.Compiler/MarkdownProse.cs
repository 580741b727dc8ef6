using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using RigScenarios.Files;
using RigScenarios.Notebooks.Documents;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>A notebook's text cells as HTML. Raw HTML in them stays text, and nothing in them makes the page fetch
/// anything.</summary>
internal static class MarkdownProse
{
    private static readonly MarkdownPipeline Pipeline =
        new MarkdownPipelineBuilder().UsePipeTables().UseEmphasisExtras().UseAutoIdentifiers().DisableHtml().Build();

    private static readonly string[] PlainSchemes = ["http", "https", "mailto"];

    /// <param name="markdown">The text of a cell.</param>
    /// <param name="folder">The notebook's folder: pictures lie relative to it and are put into the page.</param>
    /// <param name="addressOf">The address of another notebook's page by that notebook's path without ending.</param>
    public static string ToHtml(string markdown, string folder, Func<string, string> addressOf)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        foreach (var link in document.Descendants<LinkInline>().ToList())
        {
            if (link.IsImage)
                Embed(link, folder, addressOf);
            else
                link.Url = Target(link.Url ?? "", addressOf);
        }

        foreach (var link in document.Descendants<AutolinkInline>().Where(link => !link.IsEmail))
            link.Url = Target(link.Url, addressOf);
        return $"<div class=\"rs-prose\">{document.ToHtml(Pipeline)}</div>\n";
    }

    // Notebooks refer to each other; pages made of them do the same.
    private static string Target(string url, Func<string, string> addressOf)
    {
        if (Uri.TryCreate(url, UriKind.Absolute, out var absolute) && !url.StartsWith('/'))
            return PlainSchemes.Contains(absolute.Scheme) ? url : "#";
        var end = url.IndexOf('#') is >= 0 and var hash ? hash : url.Length;
        return url[..end].EndsWith(".ipynb", StringComparison.OrdinalIgnoreCase)
            ? addressOf(url[..(end - ".ipynb".Length)]) + url[end..] : url;
    }

    private static bool IsPicture(string path) =>
        File.Exists(path) && PlainFile.IsAt(path) && new FileInfo(path).Length <= Notebook.LargestBytes;

    private static void Embed(LinkInline image, string folder, Func<string, string> addressOf)
    {
        var type = Path.GetExtension(image.Url ?? "").ToUpperInvariant() switch
        {
            ".PNG" => "image/png",
            ".JPG" or ".JPEG" => "image/jpeg",
            ".SVG" => "image/svg+xml",
            _ => null,
        };
        var path = Path.Combine(folder, Uri.UnescapeDataString(image.Url ?? ""));
        if (type is not null && !Uri.IsWellFormedUriString(image.Url, UriKind.Absolute) && IsPicture(path))
        {
            image.Url = $"data:{type};base64,{Convert.ToBase64String(File.ReadAllBytes(path))}";
        }
        else
        {
            // A picture from elsewhere would be fetched when the page opens: it becomes a plain link.
            image.IsImage = false;
            image.Url = Target(image.Url ?? "", addressOf);
        }
    }
}

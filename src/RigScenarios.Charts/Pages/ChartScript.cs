namespace RigScenarios.Charts.Pages;

/// <summary>
/// The scripts and styles that figures need, once on a page: of plotly.js (MIT licence, which stands above it) the part that
/// draws flat charts, as its makers publish it, and the few lines of our own that draw a figure and keep it as a file. Nothing is
/// fetched: a page works with no network.
/// </summary>
/// <remarks>Plotly.NET carries the whole of plotly.js, with maps, globes and solids: nearly three times as much for every
/// page.</remarks>
public static class ChartScript
{
    private static readonly Lazy<string> PlotlyText =
        new(() => $"/*\n{Read("plotly.LICENSE").TrimEnd()}\n*/\n{Read(".min.js").TrimEnd()}\n");

    private static readonly Lazy<string> Own = new(() => $"{Read("figure.js")}{Read("keep.js")}");

    // Some notebook pages define a module loader: without the wrapper plotly.js would register there and not on the page.
    private static readonly Lazy<string> Text = new(() => Wrapped(PlotlyText.Value));

    private static readonly Lazy<string> Styles = new(() => Read("figure.css"));

    private static readonly Lazy<string> PageStyles = new(() => Read("page.css"));

    /// <summary>The script and style elements that must stand once on a page, before the first figure.</summary>
    public static string Html => $"<style>\n{Styles.Value}</style>\n<script>{InPage}</script>\n";

    /// <summary>The same as files: <see cref="Plotly"/>, <see cref="FigureScript"/> and <see cref="FigureStyle"/> under the names
    /// <c>plotly.js</c>, <c>figure.js</c> and <c>figure.css</c>.</summary>
    /// <param name="at">Where they lie, with "/" at the end.</param>
    internal static string HtmlOf(string at) => $"<link rel=\"stylesheet\" href=\"{HtmlText.Escape(at)}figure.css\">\n"
        + $"<script src=\"{HtmlText.Escape(at)}plotly.js\"></script>\n<script src=\"{HtmlText.Escape(at)}figure.js\"></script>\n";

    /// <summary>The same with a <see cref="Plotly"/> that came from elsewhere.</summary>
    internal static string HtmlWith(string? plotly) => plotly is null ? Html
        : $"<style>\n{Styles.Value}</style>\n<script>{InPageWith(plotly)}</script>\n";

    /// <summary>What stands in that script element, to the letter.</summary>
    internal static string InPage => $"\n{Text.Value}\n";

    /// <summary>The same with a <see cref="Plotly"/> that came from elsewhere; null for the program's own.</summary>
    internal static string InPageWith(string? plotly) => plotly is null ? InPage : $"\n{Wrapped(plotly)}\n";

    /// <summary>The part of plotly.js, under its licence, as a file of its own.</summary>
    public static string Plotly => PlotlyText.Value;

    /// <summary>The script that draws figures and keeps them, as a file of its own; needs <see cref="Plotly"/> before
    /// it.</summary>
    public static string FigureScript => Own.Value;

    /// <summary>The styles of figures, tables and answers, as a file of its own.</summary>
    public static string FigureStyle => Styles.Value;

    /// <summary>The styles of a page of our own, beyond those of figures, tables and answers.</summary>
    internal static string PageStyle => PageStyles.Value;

    private static string Wrapped(string plotly) =>
        $"(function(define, module, exports) {{\n{plotly}\n}}).call(window);\n{Own.Value}".Replace("</script",
            "<\\/script", StringComparison.OrdinalIgnoreCase);

    private static string Read(string ending)
    {
        var assembly = typeof(ChartScript).Assembly;
        using var stream = assembly.GetManifestResourceStream(assembly.GetManifestResourceNames()
            .Single(name => name.EndsWith(ending, StringComparison.Ordinal)))!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}

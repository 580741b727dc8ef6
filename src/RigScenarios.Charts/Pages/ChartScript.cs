using System.Reflection;
using Plotly.NET;

namespace RigScenarios.Charts.Pages;

/// <summary>
/// The scripts and styles that figures need, once on a page: plotly.js (MIT licence, its notice is kept), which Plotly.NET
/// carries with it, and the few lines of our own that draw a figure. Nothing is fetched: a page works with no network.
/// </summary>
public static class ChartScript
{
    private static readonly Lazy<string> PlotlyText = new(() =>
        Read(typeof(GenericChart).Assembly, name => name.Contains("plotly", StringComparison.Ordinal)
            && name.EndsWith(".min.js", StringComparison.Ordinal)));

    private static readonly Lazy<string> Own =
        new(() => Read(typeof(ChartScript).Assembly, name => name.EndsWith("figure.js", StringComparison.Ordinal)));

    // Some notebook pages define a module loader: without the wrapper plotly.js would register there and not on the page.
    private static readonly Lazy<string> Text = new(() =>
        $"(function(define, module, exports) {{\n{PlotlyText.Value}\n}}).call(window);\n{Own.Value}".Replace("</script",
            "<\\/script", StringComparison.OrdinalIgnoreCase));

    private static readonly Lazy<string> Styles =
        new(() => Read(typeof(ChartScript).Assembly, name => name.EndsWith("figure.css", StringComparison.Ordinal)));

    private static readonly Lazy<string> PageStyles =
        new(() => Read(typeof(ChartScript).Assembly, name => name.EndsWith("page.css", StringComparison.Ordinal)));

    /// <summary>The script and style elements that must stand once on a page, before the first figure.</summary>
    public static string Html => $"<style>\n{Styles.Value}</style>\n<script>{InPage}</script>\n";

    /// <summary>What stands in that script element, to the letter.</summary>
    internal static string InPage => $"\n{Text.Value}\n";

    /// <summary>plotly.js, as a file of its own.</summary>
    public static string Plotly => PlotlyText.Value;

    /// <summary>The script that draws figures, as a file of its own; needs <see cref="Plotly"/> before it.</summary>
    public static string FigureScript => Own.Value;

    /// <summary>The styles of figures, tables and answers, as a file of its own.</summary>
    public static string FigureStyle => Styles.Value;

    /// <summary>The styles of a page of our own, beyond those of figures, tables and answers.</summary>
    internal static string PageStyle => PageStyles.Value;

    private static string Read(Assembly assembly, Func<string, bool> isWanted)
    {
        using var stream = assembly.GetManifestResourceStream(assembly.GetManifestResourceNames().Single(isWanted))!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}

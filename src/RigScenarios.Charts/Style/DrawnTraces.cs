namespace RigScenarios.Charts.Style;

/// <summary>The kinds of traces that the charting script of pages draws: flat charts, no maps, polar plots or solids.</summary>
public static class DrawnTraces
{
    /// <summary>Their names in plotly.js; a test asks the script itself.</summary>
    public static IReadOnlySet<string> Kinds { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        "bar", "box", "contour", "heatmap", "histogram", "histogram2d", "histogram2dcontour", "image", "pie", "scatter",
        "scatterternary", "violin",
    };
}

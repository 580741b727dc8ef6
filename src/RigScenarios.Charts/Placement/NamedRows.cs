using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Placement;

/// <summary>Rows of a chart with a name each at the left, from top to bottom: their numbers on the vertical axis are 0, 1,
/// 2.</summary>
/// <param name="Left">Width that the names take, in pixels.</param>
/// <param name="Height">Height of all rows, in pixels.</param>
/// <param name="Axis">The vertical axis in plotly.js's members.</param>
internal sealed record NamedRows(double Left, double Height, Dictionary<string, object?> Axis)
{
    /// <summary>Width to the right of the rows, in pixels.</summary>
    public const double Right = 16;

    /// <param name="names">One for each row. They take at most a third of the width, in as many lines as they then need.</param>
    /// <param name="width">Width of the whole chart, in pixels.</param>
    /// <param name="least">Least height of a row, in pixels.</param>
    public static NamedRows Make(IReadOnlyList<string> names, double width, double least)
    {
        var characters = Math.Max(8, (int)(width / 3 / ChartStyle.TextWidth("n")));
        var wrapped = names.Select(name => PlotlyText.Wrap(name, characters)).ToList();
        var lines = wrapped.Max(name => name.Split("<br>").Length);
        return new NamedRows(wrapped.Max(name => ChartStyle.TextWidth(name)) + 14,
            names.Count * Math.Max(least, lines * ChartStyle.TextHeight + 6), new()
        {
            ["range"] = new[] { names.Count - 0.5, -0.5 },
            ["tickmode"] = "array",
            ["tickvals"] = Enumerable.Range(0, names.Count).ToArray(),
            ["ticktext"] = wrapped,
            ["showgrid"] = false,
            ["zeroline"] = false,
            ["fixedrange"] = true,
            ["ticks"] = "outside",
            ["ticklen"] = 6,
            ["tickcolor"] = "#ffffff",
        });
    }
}

using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Lines;

/// <summary>What stands across all panels of a line chart: shaded blocks and marked places, with their names in rows above the
/// plot.</summary>
internal static class LineChartHead
{
    /// <summary>The names as annotations, from left to right, and how many rows they take.</summary>
    public static (IReadOnlyList<object> Annotations, int Rows) Names(LineChart chart, AxisRange xRange, double plotWidth)
    {
        var names = chart.Blocks.Where(block => block.Name.Length > 0)
            .Select(block => (block.Name, Middle: xRange.Fraction((block.From + block.To) / 2) * plotWidth, IsMark: false))
            .Concat(chart.Marks.Select(mark => (mark.Name, Middle: xRange.Fraction(mark.X) * plotWidth, IsMark: true)))
            .OrderBy(name => name.Middle).ToList();
        var places = NameRows.Place([.. names.Select(name => (name.Name, name.Middle))], plotWidth);
        var annotations = names.Zip(places, (name, place) => (object)new
        {
            text = PlotlyText.Escape(name.Name), showarrow = false, xref = "paper", yref = "paper",
            xanchor = "left", yanchor = "bottom",
            x = place.Left / plotWidth, y = 1, yshift = place.Row * (ChartStyle.TextHeight - 1),
            font = new { size = ChartStyle.FontSize - 1, color = name.IsMark ? ChartStyle.Ink : ChartStyle.LimitInk },
        }).ToList();
        return (annotations, places.Select(place => place.Row + 1).DefaultIfEmpty(0).Max());
    }

    /// <summary>The shaded blocks and, over them, the lines of the marks: these leave out what lies between two panels, for the
    /// title of the lower one stands there.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="panels">Lower and upper end of each panel, as parts of the whole height.</param>
    public static IReadOnlyList<object> Shapes(LineChart chart, IReadOnlyList<(double Lower, double Upper)> panels) =>
    [
        .. chart.Blocks.Select((block, i) => new
        {
            type = "rect", layer = "below", xref = "x", yref = "paper", x0 = block.From, x1 = block.To, y0 = 0, y1 = 1,
            fillcolor = block.IsEmphasised ? ChartStyle.EmphasisFill : ChartStyle.BlockFills[i % 2],
            line = new { color = "#c9c9c9", width = 0.5 },
        }),
        .. chart.Marks.SelectMany(mark => panels.Select(panel => new
        {
            type = "line", layer = "below", xref = "x", yref = "paper", x0 = Rounding.ForChart(mark.X),
            x1 = Rounding.ForChart(mark.X), y0 = panel.Lower, y1 = panel.Upper,
            line = new { color = ChartStyle.Ink, width = 1.5, dash = "2px,3px" },
        })),
    ];
}

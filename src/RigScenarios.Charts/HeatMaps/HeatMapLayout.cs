using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.HeatMaps;

/// <summary>Where a heat map's parts stand at one width.</summary>
internal sealed record HeatMapLayout(IReadOnlyDictionary<string, object?> Members, int Height, bool CellsHaveText)
{
    private const double LeftMargin = 56;
    private const double RightMargin = 16;
    private const double PlotHeight = 320;
    private const double Top = 98;
    private const double Bottom = 50;
    private const double LegendRow = 28;

    public static HeatMapLayout Make(HeatMapChart chart, double width)
    {
        var plotWidth = width - LeftMargin - RightMargin;
        var hasLegend = chart.Threshold is not null && HeatMapText.Crosses(chart);
        var bottom = Bottom + (hasLegend ? LegendRow : 0);
        var x = AxisMembers(chart.X, chart.Columns, plotWidth, isHorizontal: true);
        var y = AxisMembers(chart.Y, chart.Rows, PlotHeight, isHorizontal: false);
        var height = (int)(Top + PlotHeight + bottom);
        var members = new Dictionary<string, object?>
        {
            ["xaxis"] = x,
            ["yaxis"] = y,
            ["margin"] = new { l = LeftMargin, r = RightMargin, t = Top, b = bottom },
            ["height"] = height,
            ["showlegend"] = hasLegend,
            ["legend"] = new { orientation = "h", x = 0, xanchor = "left", y = -(Bottom + 2) / PlotHeight, yanchor = "top" },
            ["annotations"] = new[] { AxisTitle(chart.Y, yShift: 9), AxisTitle(chart.Value, yShift: Top - 22) },
        };
        var longest = HeatMapText.CellTexts(chart).SelectMany(row => row).MaxBy(text => text.Length) ?? "";
        var fits = ChartStyle.TextWidth(longest, ChartStyle.FontSize - 1) + 6 < plotWidth / chart.Columns.Count
            && ChartStyle.TextHeight < PlotHeight / chart.Rows.Count;
        return new HeatMapLayout(members, height, fits);
    }

    /// <summary>The scale of the colours, along the top, where it takes no width from the map.</summary>
    public static object ColourBar { get; } = new
    {
        orientation = "h", x = 0, xanchor = "left", y = 1, yanchor = "top", yref = "container", ypad = 22, xpad = 0, len = 1,
        thickness = 12, outlinewidth = 0,
        ticks = "outside", ticklen = 3,
    };

    private static object AxisTitle(ChartAxis axis, double yShift) => new
    {
        text = $"<b>{PlotlyText.Escape(axis.Label)}</b>", showarrow = false, xref = "paper", yref = "paper", x = 0, y = 1,
        xanchor = "left", yanchor = "bottom", xshift = -LeftMargin + 4, yshift = yShift,
    };

    private static Dictionary<string, object?> AxisMembers(ChartAxis axis, IReadOnlyList<double> values, double pixels,
        bool isHorizontal)
    {
        // The outermost cells reach half a step beyond their values.
        var (first, last) = ((values[1] - values[0]) / 2, (values[^1] - values[^2]) / 2);
        var range = new AxisRange(values[0] - first, values[^1] + last, IsLogarithmic: false);
        var members = AxisLayout.Members(axis, range, pixels, isHorizontal);
        members["showgrid"] = false;
        // Where there is room, the numbers of the axis are the values that were computed and none between them.
        if (values.Count * (isHorizontal ? 44 : 18) <= pixels && axis.Scale != AxisScale.Clock)
        {
            members["tickmode"] = "array";
            members["tickvals"] = values.Select(Rounding.ForChart).ToArray();
            members["ticktext"] = values.Select(value => Rounding.Text(value)).ToArray();
        }

        return members;
    }
}

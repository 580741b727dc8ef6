using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.HeatMaps;

/// <summary>One value over two others as lines of equal value, for a grid too fine for numbers in its cells. Between the values
/// that were computed the lines are interpolated, straight from one to the next.</summary>
public static class ContourChart
{
    private const double LeftMargin = 56;
    private const double RightMargin = 16;
    private const double PlotHeight = 320;
    private const double Top = 30;
    private const double Bottom = 50;
    private const double LegendRow = 28;

    // So pale at its dark end that black words stand out from it by more than 7 to 1.
    private static readonly object[] Pale = [new object[] { 0, "#ffffff" }, new object[] { 1, "#9ecae9" }];

    /// <summary>The figure.</summary>
    /// <param name="map">The values, as for a map of cells; what blank cells mean and the threshold are told as there.</param>
    /// <exception cref="InvalidOperationException">The cells do not match the columns and rows, or there are fewer than two of
    /// either.</exception>
    public static Figure Of(HeatMapChart map)
    {
        ArgumentNullException.ThrowIfNull(map);
        map.Check();
        var crosses = HeatMapText.Crosses(map);
        List<PlotlyTrace> traces = [Lines(map)];
        if (crosses)
            traces.Add(HeatMapChart.Contour(map, map.Threshold!, "#000000", 3.5, isNamed: true));
        return new Figure
        {
            Slug = map.Slug,
            Title = map.Title,
            Caption = $"The lines: {map.Value.Label}. {HeatMapText.Caption(map)}".TrimEnd(),
            Cautions = map.Cautions,
            AlternativeText = map.AlternativeText ?? HeatMapText.Describe(map).Replace("Heat map", "Lines of equal value",
                StringComparison.Ordinal),
            Specification = new PlotlySpecification(traces).With(Members(map, ChartStyle.Width, crosses))
                .WithPoints(map.Points(traces.Count)).WithNarrow(Members(map, ChartStyle.NarrowWidth, crosses)).ToJson(),
            Data = HeatMapText.Table(map),
            Height = Height(crosses),
        };
    }

    private static int Height(bool hasLegend) => (int)(Top + PlotHeight + Bottom + (hasLegend ? LegendRow : 0));

    private static Dictionary<string, object?> Members(HeatMapChart map, double width, bool hasLegend) => new()
    {
        ["xaxis"] = Axis(map.X, map.Columns, width - LeftMargin - RightMargin, isHorizontal: true),
        ["yaxis"] = Axis(map.Y, map.Rows, PlotHeight, isHorizontal: false),
        ["margin"] = new { l = LeftMargin, r = RightMargin, t = Top, b = Bottom + (hasLegend ? LegendRow : 0) },
        ["height"] = Height(hasLegend),
        ["showlegend"] = hasLegend,
        ["legend"] = new { orientation = "h", x = 0, xanchor = "left", y = -(Bottom + 2) / PlotHeight, yanchor = "top" },
        ["annotations"] = new[]
        {
            new
            {
                text = $"<b>{PlotlyText.Escape(map.Y.Label)}</b>", showarrow = false, xref = "paper", yref = "paper", x = 0,
                    y = 1,
                xanchor = "left", yanchor = "bottom", xshift = -LeftMargin + 4, yshift = 9,
            },
        },
    };

    private static Dictionary<string, object?> Axis(ChartAxis axis, IReadOnlyList<double> values, double pixels,
        bool isHorizontal) =>
        AxisLayout.Members(axis, AxisRange.For(axis, values, pad: false), pixels, isHorizontal);

    private static PlotlyTrace Lines(HeatMapChart map)
    {
        var finite = map.Cells.SelectMany(row => row).Where(double.IsFinite).ToList();
        var (low, high) = finite.Count == 0 ? (0, 1) : (finite.Min(), finite.Max());
        var step = high > low ? AxisRange.NiceStep((high - low) / 9) : 1;
        var unit = map.Value.Unit.Length == 0 ? "" : " " + PlotlyText.Escape(map.Value.Unit);
        return new PlotlyTrace("contour",
        [
            .. HeatMapChart.Grid(map), ("zmin", low), ("zmax", high), ("autocontour", false), ("showscale", false),
            ("colorscale", Pale), ("hoverongaps", false), ("showlegend", false),
            ("contours", new
            {
                start = Rounding.Significant(Math.Floor(low / step) * step, 9), end = Rounding.Significant(high, 9), size = step,
                coloring = "fill", showlabels = true,
                labelfont = new { size = ChartStyle.FontSize, color = ChartStyle.Ink, family = ChartStyle.FontFamily },
            }),
            ("line", new { color = ChartStyle.LimitInk, width = 1 }),
            ("hovertemplate", $"{PlotlyText.Escape(map.X.Label)}: %{{x}}<br>{PlotlyText.Escape(map.Y.Label)}: "
                + $"%{{y}}<br>%{{z}}{unit}<extra></extra>"),
        ]);
    }
}

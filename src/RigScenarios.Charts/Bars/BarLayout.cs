using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Bars;

/// <summary>Where a bar chart's parts stand at one width.</summary>
internal sealed record BarLayout(IReadOnlyDictionary<string, object?> Members, int Height)
{
    private const double BarRow = 38;
    private const double Bottom = 50;

    public static BarLayout Make(BarChart chart, double width)
    {
        var rows = NamedRows.Make([.. chart.Bars.Select(bar => bar.Name)], width, BarRow);
        var plotWidth = width - rows.Left - NamedRows.Right;
        var notes = chart.Bars.Select(chart.NoteOf).ToList();
        var range = Range(chart, notes, plotWidth);
        var limits = chart.Limits.OrderBy(limit => limit.Value).ToList();
        var places = NameRows.Place([.. limits.Select(limit => (limit.Name, range.Fraction(limit.Value) * plotWidth))],
            plotWidth);
        var top = 8 + places.Select(place => place.Row + 1).DefaultIfEmpty(0).Max() * (ChartStyle.TextHeight - 1);
        var x = AxisLayout.Members(chart.Value, range, plotWidth, isHorizontal: true);
        x["zeroline"] = true;
        x["zerolinecolor"] = ChartStyle.LimitInk;
        var annotations = new List<object>();
        for (var i = 0; i < chart.Bars.Count; i++)
        {
            var end = Math.Max(chart.Bars[i].From, chart.Bars[i].To);
            annotations.Add(Text(PlotlyText.Escape(notes[i]), "x", Rounding.ForChart(end), "y", i, 5, 0, "middle",
                ChartStyle.FontSize, ChartStyle.Ink));
        }

        for (var i = 0; i < limits.Count; i++)
        {
            annotations.Add(Text(PlotlyText.Escape(limits[i].Name), "paper", places[i].Left / plotWidth, "paper", 1, 0,
                places[i].Row * (ChartStyle.TextHeight - 1), "bottom", ChartStyle.FontSize - 1, ChartStyle.LimitInk));
        }

        var height = (int)(top + rows.Height + Bottom);
        return new BarLayout(new Dictionary<string, object?>
        {
            ["xaxis"] = x,
            ["yaxis"] = rows.Axis,
            ["margin"] = new { l = rows.Left, r = NamedRows.Right, t = top, b = Bottom },
            ["height"] = height,
            ["annotations"] = annotations,
            ["shapes"] = limits.Select(limit => new
            {
                type = "line", xref = "x", yref = "paper", x0 = limit.Value, x1 = limit.Value, y0 = 0, y1 = 1,
                line = new { color = ChartStyle.LimitInk, width = 1.5, dash = "4px,3px" },
            }).ToArray(),
        }, height);
    }

    // The range is widened until the longest note at the end of the farthest bar is inside.
    private static AxisRange Range(BarChart chart, List<string> notes, double plotWidth)
    {
        var values = chart.Bars.SelectMany(bar => new[] { bar.From, bar.To }).Concat(chart.Limits.Select(limit => limit.Value));
        var range = AxisRange.For(chart.Value, values, pad: true);
        if (chart.Value.To is not null)
            return range;
        var needed = range.To;
        for (var i = 0; i < notes.Count; i++)
        {
            var share = Math.Min(0.7, (ChartStyle.TextWidth(notes[i]) + 10) / plotWidth);
            var end = Math.Max(chart.Bars[i].From, chart.Bars[i].To);
            needed = Math.Max(needed, range.From + (end - range.From) / (1 - share));
        }

        return range with { To = Rounding.Significant(needed, 4) };
    }

    private static object Text(string text, string xRef, double x, string yRef, double y, double xShift, double yShift,
        string yAnchor, int size, string colour) => new
    {
        text, showarrow = false, xref = xRef, yref = yRef, x, y, xanchor = "left", yanchor = yAnchor,
        bgcolor = "rgba(255,255,255,0.8)", borderpad = 1, xshift = xShift, yshift = yShift,
        font = new { size, color = colour },
    };
}

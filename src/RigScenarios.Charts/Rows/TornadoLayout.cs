using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Rows;

/// <summary>Where the parts of a tornado chart stand at one width.</summary>
internal sealed record TornadoLayout(IReadOnlyDictionary<string, object?> Members, int Height)
{
    private const double Row = 42;
    private const double Bottom = 50;
    private const double Top = 8 + ChartStyle.TextHeight;
    private const double NoteGap = 5;

    public static TornadoLayout Make(TornadoChart chart, double width)
    {
        var bars = chart.Sorted;
        var rows = NamedRows.Make([.. bars.Select(bar => bar.Name)], width, Row);
        var plotWidth = width - rows.Left - NamedRows.Right;
        var range = Range(chart, bars, plotWidth);
        var x = AxisLayout.Members(chart.Value, range, plotWidth, isHorizontal: true);
        var name = NameRows.Place([(chart.MiddleName, range.Fraction(chart.Middle) * plotWidth)], plotWidth)[0];
        List<object> texts =
        [
            new
            {
                text = PlotlyText.Escape(chart.MiddleName), showarrow = false, xref = "paper", yref = "paper",
                x = name.Left / plotWidth, y = 1, xanchor = "left", yanchor = "bottom",
                font = new { size = ChartStyle.FontSize - 1, color = ChartStyle.LimitInk },
            },
        ];
        foreach (var (row, bar) in bars.Index())
        {
            texts.Add(Note(chart, bar, row, isHigh: false));
            texts.Add(Note(chart, bar, row, isHigh: true));
        }

        var height = (int)(Top + rows.Height + Bottom);
        return new TornadoLayout(new Dictionary<string, object?>
        {
            ["xaxis"] = x,
            ["yaxis"] = rows.Axis,
            ["barmode"] = "overlay",
            ["margin"] = new { l = rows.Left, r = NamedRows.Right, t = Top, b = Bottom },
            ["height"] = height,
            ["annotations"] = texts,
            ["shapes"] = new[]
            {
                new
                {
                    type = "line", xref = "x", yref = "paper", x0 = Rounding.ForChart(chart.Middle),
                    x1 = Rounding.ForChart(chart.Middle), y0 = 0, y1 = 1, line = new { color = ChartStyle.LimitInk, width = 1.5 },
                },
            },
        }, height);
    }

    private static string Text(TornadoChart chart, double value) =>
        double.IsFinite(value) ? chart.Words(value) : "not known";

    // At the far side of its end; of two that end alike, the low one stands left.
    private static bool StandsLeft(TornadoChart chart, TornadoRow bar, bool isHigh)
    {
        var (end, other) = isHigh ? (bar.AtHigh, bar.AtLow) : (bar.AtLow, bar.AtHigh);
        if (chart.IsOneSided(bar))
            return end < chart.Middle;
        if (!double.IsFinite(end))
            return double.IsFinite(other) ? other > chart.Middle : !isHigh;
        return end < chart.Middle || (end == chart.Middle && (other > chart.Middle || (other == chart.Middle && !isHigh)));
    }

    private static object Note(TornadoChart chart, TornadoRow bar, int row, bool isHigh)
    {
        var end = isHigh ? bar.AtHigh : bar.AtLow;
        var isLeft = StandsLeft(chart, bar, isHigh);
        return new
        {
            text = PlotlyText.Escape(Text(chart, end)), showarrow = false, xref = "x", yref = "y",
            x = Rounding.ForChart(double.IsFinite(end) ? end : chart.Middle), y = row + chart.Offset(bar, isHigh),
            xanchor = isLeft ? "right" : "left", yanchor = "middle", xshift = isLeft ? -NoteGap : NoteGap,
            font = new { size = ChartStyle.FontSize, color = ChartStyle.Ink },
        };
    }

    // Widened until the words at both ends of every bar are inside.
    private static AxisRange Range(TornadoChart chart, IReadOnlyList<TornadoRow> bars, double plotWidth)
    {
        var ends = bars.SelectMany(bar => new[] { (bar, IsHigh: false), (bar, IsHigh: true) })
            .Select(side => (At: side.IsHigh ? side.bar.AtHigh : side.bar.AtLow,
                IsLeft: StandsLeft(chart, side.bar, side.IsHigh)))
            .Select(end => (At: double.IsFinite(end.At) ? end.At : chart.Middle, end.IsLeft,
                Share: Math.Min(0.4, (ChartStyle.TextWidth(Text(chart, end.At)) + 2 * NoteGap) / plotWidth))).ToList();
        var (low, high) = (Math.Min(chart.Middle, ends.Min(end => end.At)), Math.Max(chart.Middle, ends.Max(end => end.At)));
        if (high - low < 1e-9 * Math.Max(1, Math.Abs(high)))
            (low, high) = (low - 0.5, high + 0.5);
        // Each side's need depends on the whole length: a few rounds settle it.
        var (from, to) = (low, high);
        for (var round = 0; round < 30; round++)
        {
            var length = to - from;
            from = ends.Where(end => end.IsLeft).Select(end => end.At - end.Share * length).Append(low).Min();
            to = ends.Where(end => !end.IsLeft).Select(end => end.At + end.Share * length).Append(high).Max();
        }

        return new AxisRange(Rounding.Significant(from, 9), Rounding.Significant(to, 9), IsLogarithmic: false);
    }
}

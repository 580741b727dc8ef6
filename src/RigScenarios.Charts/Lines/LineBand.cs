using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Lines;

/// <summary>The band around a line as plotly.js takes it: a pale fill and its two edges in a dash, so that it is seen without
/// colour too; for single points a bar at each.</summary>
internal static class LineBand
{
    private const double FillOpacity = 0.18;

    /// <summary>The filled area; a gap in the line or in the band is a gap in it.</summary>
    public static (string, object?)[] Fill(ChartLine line, SeriesStyle style)
    {
        var (x, y) = (new List<double>(), new List<double>());
        foreach (var piece in Pieces(line))
        {
            if (x.Count > 0)
            {
                x.Add(double.NaN);
                y.Add(double.NaN);
            }

            var upper = Outline(line, line.Upper!, piece);
            var lower = Outline(line, line.Lower!, piece);
            lower.Reverse();
            x.AddRange(upper.Concat(lower).Select(point => point.X));
            y.AddRange(upper.Concat(lower).Select(point => point.Y));
        }

        return
        [
            ("name", line.BandName is { } name ? PlotlyText.Escape(name) : null),
            ("mode", "lines"), ("x", LineChartTraces.Numbers(x)), ("y", LineChartTraces.Numbers(y)),
            ("line", new { width = 0 }), ("fill", "toself"), ("fillcolor", style.Fill(FillOpacity)), ("hoverinfo", "skip"),
        ];
    }

    /// <summary>An edge. For single points nothing is drawn, the bars say it; the numbers are there for the file of all
    /// points.</summary>
    public static (string, object?)[] Edge(ChartLine line, IReadOnlyList<double> values, SeriesStyle style) =>
    [
        ("mode", "lines"),
        ("visible", line.Kind == LineKind.Points ? false : null),
        ("x", LineChartTraces.Numbers(line.X)),
        ("y", LineChartTraces.Numbers(values)),
        ("line", new { color = style.Colour, width = 1, dash = "2px,2px",
            shape = line.Kind == LineKind.Steps ? "hv" : "linear" }),
        ("hoverinfo", "skip"),
    ];

    /// <summary>The bars of single points as a member of their trace; null for a line, and for points without.</summary>
    public static object? Bars(ChartLine line, SeriesStyle style) =>
        line is not { Kind: LineKind.Points, Lower: { } lower, Upper: { } upper } ? null : new
        {
            type = "data", symmetric = false, color = style.Colour, thickness = 1.5, width = 5,
            array = line.Y.Zip(upper, Length).ToArray(), arrayminus = line.Y.Zip(lower, (y, low) => Length(low, y)).ToArray(),
        };

    private static double Length(double from, double to) =>
        double.IsFinite(to - from) ? Rounding.ForChart(Math.Max(0, to - from)) : 0;

    /// <summary>From which point to which, the last one included, the band goes on without a gap.</summary>
    private static IEnumerable<(int From, int To)> Pieces(ChartLine line)
    {
        var from = -1;
        for (var i = 0; i <= line.X.Count; i++)
        {
            var isThere = i < line.X.Count && double.IsFinite(line.X[i] + line.Lower![i] + line.Upper![i]);
            if (isThere && from < 0)
                from = i;
            if (!isThere && from >= 0)
            {
                yield return (from, i - 1);
                from = -1;
            }
        }
    }

    private static List<(double X, double Y)> Outline(ChartLine line, IReadOnlyList<double> values, (int From, int To) piece)
    {
        var points = new List<(double X, double Y)>();
        for (var i = piece.From; i <= piece.To; i++)
        {
            if (line.Kind == LineKind.Steps && i > piece.From)
                points.Add((line.X[i], values[i - 1]));
            points.Add((line.X[i], values[i]));
        }

        return points;
    }
}

using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Lines;

/// <summary>The lines, bands, limits and end marks of a line chart as plotly.js's traces.</summary>
internal static class LineChartTraces
{
    public static IEnumerable<PlotlyTrace> Make(LineChart chart, LineChartLayout layout)
    {
        foreach (var part in Parts(chart, new PlacesOnce(chart.X)))
        {
            yield return new PlotlyTrace("scatter",
            [
                .. part.Members(),
                ("xaxis", "x"), ("yaxis", LineChartLayout.AxisName("y", part.Panel)),
                ("showlegend", part.LegendName is not null && layout.IsInLegend(part.Panel, part.LegendName)),
            ]);
        }
    }

    /// <summary>For each trace, in order, whether it is in the legend of another layout.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, object?>> LegendChanges(LineChart chart, LineChartLayout layout) =>
    [
        .. Parts(chart, new PlacesOnce(chart.X)).Select(part => new Dictionary<string, object?>
        {
            ["showlegend"] = part.LegendName is not null && layout.IsInLegend(part.Panel, part.LegendName),
        }),
    ];

    /// <summary>What the numbers are. A mark at a line's end is the line's last point once more.</summary>
    public static ChartPoints Points(LineChart chart)
    {
        var values = chart.Panels.Select(panel => panel.Y.ColumnTitle).Distinct().ToList();
        int Column(int panel) => values.IndexOf(chart.Panels[panel].Y.ColumnTitle);
        return new(chart.X.ColumnTitle, values, [.. Parts(chart, new PlacesOnce(chart.X)).Select(part => part.Series is { } name
            ? new PointSeries(name, Column(part.Panel)) { Names = NamesIn(chart.Panels[part.Panel], name) } : null)]);

        static IReadOnlyList<string>? NamesIn(ChartPanel panel, string series) =>
            panel.Lines.FirstOrDefault(line => line.Name == series) is { PointNames: { } names }
                ? [.. names.Select(name => $"{series}: {name}")] : null;
    }

    // Who asks only for names makes no members.
    private static IEnumerable<(int Panel, string? LegendName, string? Series, Func<(string, object?)[]> Members)> Parts(
        LineChart chart, PlacesOnce places)
    {
        for (var i = 0; i < chart.Panels.Count; i++)
        {
            var panel = chart.Panels[i];
            foreach (var limit in panel.Limits)
                yield return (i, limit.Name, limit.Name, () => Limit(chart, limit));
            for (var number = 0; number < panel.Lines.Count; number++)
            {
                var line = panel.Lines[number];
                var style = SeriesStyle.Number(line.Look ?? number);
                if (line is { Lower: { } lower, Upper: { } upper })
                {
                    if (line.Kind != LineKind.Points)
                        yield return (i, line.BandName, null, () => LineBand.Fill(line, style));
                    yield return (i, null, $"{line.Name}, lowest", () => LineBand.Edge(line, lower, style));
                    yield return (i, null, $"{line.Name}, highest", () => LineBand.Edge(line, upper, style));
                }

                if (line.Kind != LineKind.BandAlone)
                    yield return (i, line.Name, line.Name, () => Curve(chart, panel, line, style, places));
                if (line.EndCause is not null)
                    yield return (i, null, null, () => EndMark(chart, panel, line));
            }
        }
    }

    private static (string, object?)[] Curve(LineChart chart, ChartPanel panel, ChartLine line, SeriesStyle style,
        PlacesOnce places) =>
    [
        ("name", LineChartLayout.EndText(chart, line, ": ")),
        ("mode", line.Kind switch { LineKind.Points => "markers", LineKind.CurveWithPoints => "lines+markers", _ => "lines" }),
        ("x", places.Of(line.X).Numbers),
        ("y", Numbers(line.Y)),
        ("line", new { color = style.Colour, dash = style.Dash, width = 2.5,
            shape = line.Kind == LineKind.Steps ? "hv" : "linear" }),
        ("marker", new { color = style.Colour, symbol = style.Symbol, size = 8 }),
        ("error_y", LineBand.Bars(line, style)),
        ("text", places.Of(line.X).Texts),
        ("hovertext", ClockTexts(panel.Y, line.Y)),
        ("customdata", line.PointNames?.Select(PlotlyText.Escape).ToArray()),
        // Whole marks at the plot's edge, unless the author's own range cuts the line off there.
        ("cliponaxis", line.Kind is LineKind.Curve or LineKind.Steps
            || (chart.X.From ?? chart.X.To ?? panel.Y.From ?? panel.Y.To) is not null),
        ("hovertemplate", (line.PointNames is null ? "" : "%{customdata}<br>") + Hover(chart, panel)
            + $"<extra>{PlotlyText.Escape(line.Name)}</extra>"),
    ];

    private static (string, object?)[] Limit(LineChart chart, LimitLine limit)
    {
        var xs = chart.XValues.ToList();
        return
        [
            ("name", PlotlyText.Escape(limit.Name)),
            ("mode", "lines"),
            ("x", Numbers([chart.X.From ?? xs.Min(), chart.X.To ?? xs.Max()])),
            ("y", Numbers([limit.Value, limit.Value])),
            ("line", new { color = ChartStyle.LimitInk, dash = "4px,3px", width = 1.3 }),
            ("hoverinfo", "skip"),
        ];
    }

    private static (string, object?)[] EndMark(LineChart chart, ChartPanel panel, ChartLine line)
    {
        var end = LineEnd.Of(line, line.Y, line.Name, "", "");
        return
        [
            ("mode", "markers"),
            ("x", Numbers([end.X])),
            ("y", Numbers([end.Y])),
            ("marker", new { color = ChartStyle.Ink, symbol = "x-thin", size = 10,
                line = new { color = ChartStyle.Ink, width = 2.5 } }),
            ("cliponaxis", false),
            ("text", ClockTexts(chart.X, [end.X])),
            ("hovertext", ClockTexts(panel.Y, [end.Y])),
            ("hovertemplate", Hover(chart, panel) + $"<extra>{PlotlyText.Escape(line.Name)}: "
                + $"{PlotlyText.Escape(line.EndCause ?? "")}</extra>"),
        ];
    }

    private static string Hover(LineChart chart, ChartPanel panel) =>
        $"{(chart.X.Scale == AxisScale.Clock ? "%{text}" : "%{x}")}{Unit(chart.X)}<br>"
            + $"{(panel.Y.Scale == AxisScale.Clock ? "%{hovertext}" : "%{y}")}{Unit(panel.Y)}";

    private static string[]? ClockTexts(ChartAxis axis, IReadOnlyList<double> hours)
    {
        if (axis.Scale != AxisScale.Clock)
            return null;
        var texts = new string[hours.Count];
        for (var i = 0; i < texts.Length; i++)
            texts[i] = double.IsFinite(hours[i]) ? AxisLayout.ClockText(hours[i]) : "";
        return texts;
    }

    private static string Unit(ChartAxis axis) => axis.Unit.Length == 0 ? "" : " " + PlotlyText.Escape(axis.Unit);

    public static double?[] Numbers(IReadOnlyList<double> values)
    {
        var numbers = new double?[values.Count];
        for (var i = 0; i < numbers.Length; i++)
            numbers[i] = double.IsFinite(values[i]) ? Rounding.ForChart(values[i]) : null;
        return numbers;
    }

    /// <summary>Places on the horizontal axis as traces take them. The lines of several panels often share theirs.</summary>
    private sealed class PlacesOnce(ChartAxis axis)
    {
        private readonly List<(IReadOnlyList<double> Places, double?[] Numbers, string[]? Texts)> known = [];

        public (IReadOnlyList<double> Places, double?[] Numbers, string[]? Texts) Of(IReadOnlyList<double> places)
        {
            foreach (var one in known)
            {
                if (ReferenceEquals(one.Places, places))
                    return one;
            }

            known.Add((places, Numbers(places), ClockTexts(axis, places)));
            return known[^1];
        }
    }
}

using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Lines;

/// <summary>Where everything in a line chart stands at one width: panels, block names, labels, and what goes into the
/// legend.</summary>
internal sealed class LineChartLayout
{
    private const double LeftMargin = 56;
    private const double WidestRightMargin = 210;
    private const double PanelGap = 40;
    private const double TitleRow = 30;
    private const double AxisBottom = 50;

    private readonly LineChart chart;
    private readonly bool isNarrow;
    private readonly List<object> annotations = [];
    private readonly HashSet<(int Panel, string Name)> labelled = [];
    private readonly Dictionary<string, object?> members = [];

    private LineChartLayout(LineChart chart, bool isNarrow)
    {
        this.chart = chart;
        this.isNarrow = isNarrow;
    }

    /// <summary>The layout in plotly.js's members.</summary>
    public IReadOnlyDictionary<string, object?> Members => members;

    /// <summary>Height of the whole chart in pixels.</summary>
    public int Height { get; private set; }

    /// <summary>Whether a line or limit could not be labelled where it is, so that the legend must name it.</summary>
    public bool IsInLegend(int panel, string name) => !labelled.Contains((panel, name));

    public static LineChartLayout Make(LineChart chart, double width, bool isNarrow)
    {
        var layout = new LineChartLayout(chart, isNarrow);
        layout.Arrange(width);
        return layout;
    }

    /// <summary>The words at a line's end: its name and, on a line of their own, why it ends there.</summary>
    public static string EndText(LineChart chart, ChartLine line, string separator)
    {
        var isOnlyOne = chart.Panels.Sum(panel => panel.Lines.Count) == 1;
        var name = PlotlyText.Escape(line.Name);
        return (line.EndCause, isOnlyOne) switch
        {
            (null, _) => name,
            ({ } cause, true) => PlotlyText.Escape(cause),
            ({ } cause, false) => $"{name}{separator}{PlotlyText.Escape(cause)}",
        };
    }

    private void Arrange(double width)
    {
        var xRange = AxisRange.For(chart.X, chart.Panels.SelectMany(p => p.Lines).SelectMany(l => l.X)
            .Concat(chart.Blocks.SelectMany(b => new[] { b.From, b.To })), pad: false);
        var right = RightMargin(xRange);
        var plotWidth = width - LeftMargin - right;
        var panelHeight = chart.Panels.Count == 1 ? 310.0 : 170;
        var total = chart.Panels.Count * panelHeight + (chart.Panels.Count - 1) * PanelGap;
        var top = TitleRow + AddBlocks(xRange, plotWidth) * (ChartStyle.TextHeight - 1);
        for (var i = 0; i < chart.Panels.Count; i++)
            AddPanel(i, xRange, plotWidth, panelHeight, total, right, top);
        var legend = LegendHeight(plotWidth + right);
        var x = AxisLayout.Members(chart.X, xRange, plotWidth, isHorizontal: true);
        x["anchor"] = AxisName("y", chart.Panels.Count - 1);
        members["xaxis"] = x;
        members["margin"] = new { l = LeftMargin, r = right, t = top, b = AxisBottom + legend };
        members["annotations"] = annotations;
        members["showlegend"] = legend > 0;
        members["legend"] = new { orientation = "h", x = 0, xanchor = "left", y = -(AxisBottom + 2) / total, yanchor = "top",
            traceorder = "normal" };
        Height = (int)(top + total + AxisBottom + legend);
        members["height"] = Height;
    }

    public static string AxisName(string letter, int panel) => panel == 0 ? letter : $"{letter}{panel + 1}";

    // Lines that reach the right edge are named in the margin; it is as wide as the widest name, within reason.
    private double RightMargin(AxisRange xRange)
    {
        var widest = isNarrow ? 0 : chart.Panels.SelectMany(p => p.Lines)
            .Where(line => IsNamedAtEnd(line) && EndsAtEdge(line, xRange))
            .Select(line => ChartStyle.TextWidth(EndText(chart, line, "<br>")))
            .Where(text => text < WidestRightMargin - 16)
            .DefaultIfEmpty(0)
            .Max();
        return widest == 0 ? 16 : widest + 16;
    }

    // A single line needs no name: the title says what it is. Why it ends is said all the same.
    private bool IsNamedAtEnd(ChartLine line) => line.EndCause is not null || chart.Panels.Sum(panel => panel.Lines.Count) > 1;

    private static bool EndsAtEdge(ChartLine line, AxisRange xRange) => xRange.Fraction(line.X[^1]) > 0.97;

    private int AddBlocks(AxisRange xRange, double plotWidth)
    {
        var middles = chart.Blocks
            .Select(block => (block.Name, xRange.Fraction((block.From + block.To) / 2) * plotWidth)).ToList();
        var places = NameRows.Place(middles, plotWidth);
        for (var i = 0; i < places.Count; i++)
        {
            annotations.Add(new
            {
                text = PlotlyText.Escape(chart.Blocks[i].Name), showarrow = false, xref = "paper", yref = "paper",
                xanchor = "left", yanchor = "bottom",
                x = places[i].Left / plotWidth, y = 1, yshift = places[i].Row * (ChartStyle.TextHeight - 1),
                font = new { size = ChartStyle.FontSize - 1, color = ChartStyle.LimitInk },
            });
        }

        members["shapes"] = chart.Blocks.Select((block, i) => new
        {
            type = "rect", layer = "below", xref = "x", yref = "paper", x0 = block.From, x1 = block.To, y0 = 0, y1 = 1,
            fillcolor = ChartStyle.BlockFills[i % 2], line = new { color = "#c9c9c9", width = 0.5 },
        }).ToList<object>();
        return places.Select(place => place.Row + 1).DefaultIfEmpty(0).Max();
    }

    private void AddPanel(int index, AxisRange xRange, double plotWidth, double panelHeight, double total,
        double right, double top)
    {
        var panel = chart.Panels[index];
        var values = panel.Lines.SelectMany(l => l.Y.Concat(l.Lower ?? []).Concat(l.Upper ?? []))
            .Concat(panel.Limits.Select(l => l.Value));
        var area = new PlotArea(plotWidth, panelHeight, xRange, AxisRange.For(panel.Y, values, pad: true));
        var upper = 1 - index * (panelHeight + PanelGap) / total;
        var y = AxisLayout.Members(panel.Y, area.Y, panelHeight, isHorizontal: false);
        y["domain"] = new[] { Math.Max(0, Math.Round(upper - panelHeight / total, 6)), Math.Round(upper, 6) };
        members[index == 0 ? "yaxis" : $"yaxis{index + 1}"] = y;
        annotations.Add(new
        {
            text = $"<b>{PlotlyText.Escape(panel.Y.Label)}</b>", showarrow = false, xref = "paper", yref = "paper",
            xanchor = "left", yanchor = "bottom",
            x = 0, y = upper, xshift = -LeftMargin + 4, yshift = index == 0 ? top - TitleRow + 9 : 9,
        });
        AddLabels(index, panel, area, right);
    }

    private void AddLabels(int index, ChartPanel panel, PlotArea area, double right)
    {
        var drawn = panel.Lines.Select(line => Pixels(line, area)).ToList<IReadOnlyList<(double, double)>>();
        drawn.AddRange(panel.Limits.Select(limit => (IReadOnlyList<(double, double)>)[(0, area.Pixel(area.X.From, limit.Value).Y),
            (area.Width, area.Pixel(area.X.From, limit.Value).Y)]));
        var placement = new LabelPlacement(area, right, drawn);
        foreach (var line in panel.Lines.Where(line => line.EndCause is not null))
        {
            var (x, y) = EndPixel(line, area);
            placement.Reserve(new Box(x - 6, y - 6, x + 6, y + 6));
        }

        LabelEnds(index, panel, area, placement);
        foreach (var limit in panel.Limits)
        {
            var text = PlotlyText.Escape(limit.Name);
            if (placement.AlongLine(text, area.Pixel(area.X.From, limit.Value).Y) is { } place)
                AddLabel(index, area, place, text, ChartStyle.LimitInk, limit.Name);
        }
    }

    private void LabelEnds(int index, ChartPanel panel, PlotArea area, LabelPlacement placement)
    {
        foreach (var line in panel.Lines.Where(line => !IsNamedAtEnd(line)))
            labelled.Add((index, line.Name));
        var named = panel.Lines.Select((line, number) => (Line: line, Style: SeriesStyle.Number(line.Look ?? number),
            Text: EndText(chart, line, "<br>")))
            .Where(l => IsNamedAtEnd(l.Line)).ToList();

        // On a phone there is no margin to write in: the legend below has the names.
        if (isNarrow)
            return;
        var atEdge = named.Where(l => EndsAtEdge(l.Line, area.X) && ChartStyle.TextWidth(l.Text) < WidestRightMargin - 16)
            .ToList();
        if (placement.InMargin([.. atEdge.Select(l => (l.Text, EndPixel(l.Line, area).Y))]) is { } places)
        {
            for (var i = 0; i < places.Count; i++)
                AddLabel(index, area, places[i], atEdge[i].Text, atEdge[i].Style.TextColour, atEdge[i].Line.Name);
        }

        foreach (var (line, style, text) in named.Where(l => !EndsAtEdge(l.Line, area.X)))
        {
            if (placement.BesideEnd(text, EndPixel(line, area)) is { } place)
                AddLabel(index, area, place, text, style.TextColour, line.Name);
        }
    }

    private void AddLabel(int panel, PlotArea area, PlacedLabel place, string text, string colour, string name)
    {
        labelled.Add((panel, name));
        // Positions in data, not in fractions of the page: on a wider screen a label stays with its line's end. In the margin
        // it is the plot's edge that it must stay with.
        var inMargin = place.Box.Left >= area.Width;
        annotations.Add(new Dictionary<string, object>
        {
            ["text"] = text, ["showarrow"] = false, ["align"] = place.SetRight ? "right" : "left",
            ["xref"] = inMargin ? "paper" : "x", ["yref"] = AxisName("y", panel),
            ["x"] = inMargin ? 1 : Rounding.Significant(area.XAt(place.SetRight ? place.Box.Right : place.Box.Left), 7),
            ["xshift"] = inMargin ? place.Box.Left - area.Width : 0,
            ["y"] = Rounding.Significant(area.YAt((place.Box.Top + place.Box.Bottom) / 2), 7),
            ["xanchor"] = place.SetRight ? "right" : "left", ["yanchor"] = "middle",
            ["font"] = new { color = colour, size = ChartStyle.FontSize },
        });
    }

    // plotly.js sets a horizontal legend in columns as wide as its widest entry.
    private double LegendHeight(double width)
    {
        var entries = new List<string>();
        for (var i = 0; i < chart.Panels.Count; i++)
        {
            entries.AddRange(chart.Panels[i].Lines.Where(l => IsInLegend(i, l.Name)).Select(l => EndText(chart, l, ": ")));
            entries.AddRange(chart.Panels[i].Limits.Where(l => IsInLegend(i, l.Name)).Select(l => PlotlyText.Escape(l.Name)));
        }

        if (entries.Count == 0)
            return 0;
        var columns = Math.Max(1, (int)(width / (entries.Max(text => ChartStyle.TextWidth(text)) + 50)));
        return Math.Ceiling(entries.Count / (double)columns) * 20 + 12;
    }

    private static (double X, double Y) EndPixel(ChartLine line, PlotArea area) => area.Pixel(line.X[^1], line.Y[^1]);

    private static List<(double X, double Y)> Pixels(ChartLine line, PlotArea area)
    {
        var points = new List<(double X, double Y)>();
        for (var i = 0; i < line.X.Count; i++)
        {
            if (line.Kind == LineKind.Steps && i > 0)
                points.Add(area.Pixel(line.X[i], line.Y[i - 1]));
            points.Add(area.Pixel(line.X[i], line.Y[i]));
        }

        return points;
    }
}

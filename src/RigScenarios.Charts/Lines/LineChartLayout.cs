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
    private readonly HashSet<(int Panel, string Name)> inLegend = [];
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

    /// <summary>Whether a line, band or limit could not be labelled where it is, so that the legend must name it.</summary>
    public bool IsInLegend(int panel, string name) => inLegend.Contains((panel, name));

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
        var xRange = AxisRange.For(chart.X, chart.XValues, pad: false);
        var right = RightMargin(xRange);
        var plotWidth = width - LeftMargin - right;
        var panelHeight = chart.Panels.Count == 1 ? 310.0 : 170;
        var total = chart.Panels.Count * panelHeight + (chart.Panels.Count - 1) * PanelGap;
        var (names, rows) = LineChartHead.Names(chart, xRange, plotWidth);
        annotations.AddRange(names);
        members["shapes"] = LineChartHead.Shapes(chart,
            [.. Enumerable.Range(0, chart.Panels.Count).Select(i => Domain(i, panelHeight, total))]);
        var top = TitleRow + rows * (ChartStyle.TextHeight - 1);
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

    /// <summary>Lower and upper end of a panel, as parts of the height of all.</summary>
    private static (double Lower, double Upper) Domain(int index, double panelHeight, double total)
    {
        var upper = 1 - index * (panelHeight + PanelGap) / total;
        return (Math.Max(0, Math.Round(upper - panelHeight / total, 6)), Math.Round(upper, 6));
    }

    public static string AxisName(string letter, int panel) => panel == 0 ? letter : $"{letter}{panel + 1}";

    // Lines that reach the right edge are named in the margin; it is as wide as the widest name, within reason.
    private double RightMargin(AxisRange xRange)
    {
        var widest = isNarrow ? 0 : chart.Panels.SelectMany(LineEnds)
            .Where(end => end.IsAtEdge(xRange))
            .Select(end => ChartStyle.TextWidth(end.Text))
            .Where(text => text < WidestRightMargin - 16)
            .DefaultIfEmpty(0)
            .Max();
        return widest == 0 ? 16 : widest + 16;
    }

    // A single line needs no name: the title says what it is. Nor does one that is alone in its panel beside the name of its
    // band. Why a line ends is said all the same.
    private bool IsNamed(ChartPanel panel, ChartLine line) => line.Kind != LineKind.BandAlone && (line.EndCause is not null
        || line.IsNamedInLegend
        || (chart.Panels.Sum(one => one.Lines.Count) > 1 && !(panel.Lines.Count == 1 && line.BandName is not null)));

    /// <summary>What can be named where it ends: lines, and bands at their upper edge.</summary>
    private IEnumerable<LineEnd> LineEnds(ChartPanel panel)
    {
        for (var number = 0; number < panel.Lines.Count; number++)
        {
            var line = panel.Lines[number];
            var colour = SeriesStyle.Number(line.Look ?? number).TextColour;
            if (IsNamed(panel, line) && !line.IsNamedInLegend)
                yield return LineEnd.Of(line, line.Y, line.Name, EndText(chart, line, "<br>"), colour);
            if (line is { BandName: { } band, Upper: { } upper, Kind: not LineKind.Points, IsNamedInLegend: false })
                yield return LineEnd.Of(line, upper, band, PlotlyText.Escape(band), colour);
        }
    }

    private void AddPanel(int index, AxisRange xRange, double plotWidth, double panelHeight, double total,
        double right, double top)
    {
        var panel = chart.Panels[index];
        var values = panel.Lines.SelectMany(l => l.Y.Concat(l.Lower ?? []).Concat(l.Upper ?? []))
            .Concat(panel.Limits.Select(l => l.Value));
        var area = new PlotArea(plotWidth, panelHeight, xRange, AxisRange.For(panel.Y, values, pad: true));
        var (lower, upper) = Domain(index, panelHeight, total);
        var y = AxisLayout.Members(panel.Y, area.Y, panelHeight, isHorizontal: false);
        y["domain"] = new[] { lower, upper };
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
        var drawn = panel.Lines.SelectMany(line => LinePixels.Of(line, area)).ToList();
        drawn.AddRange(panel.Limits.Select(limit => (IReadOnlyList<(double, double)>)[(0, area.Pixel(area.X.From, limit.Value).Y),
            (area.Width, area.Pixel(area.X.From, limit.Value).Y)]));
        var placement = new LabelPlacement(area, right, drawn);
        foreach (var line in panel.Lines.Where(line => line.EndCause is not null))
        {
            var (x, y) = LineEnd.Of(line, line.Y, line.Name, "", "").Pixel(area);
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
        foreach (var line in panel.Lines.Where(line => !IsNamed(panel, line)))
            labelled.Add((index, line.Name));

        // On a phone there is no margin to write in: the legend below has the names.
        if (isNarrow)
            return;
        var ends = LineEnds(panel).ToList();
        var atEdge = ends.Where(end => end.IsAtEdge(area.X) && ChartStyle.TextWidth(end.Text) < WidestRightMargin - 16).ToList();
        if (placement.InMargin([.. atEdge.Select(end => (end.Text, end.Pixel(area).Y))]) is { } places)
        {
            for (var i = 0; i < places.Count; i++)
                AddLabel(index, area, places[i], atEdge[i].Text, atEdge[i].Colour, atEdge[i].Name);
        }

        foreach (var end in ends.Where(end => !end.IsAtEdge(area.X)))
        {
            if (placement.BesideEnd(end.Text, end.Pixel(area)) is { } place)
                AddLabel(index, area, place, end.Text, end.Colour, end.Name);
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
        // What is in several panels and looks the same in all is named once.
        var entries = Enumerable.Range(0, chart.Panels.Count).SelectMany(LegendEntries)
            .Where(entry => !labelled.Contains((entry.Panel, entry.Name)))
            .DistinctBy(entry => (entry.Text, entry.Look)).ToList();
        inLegend.UnionWith(entries.Select(entry => (entry.Panel, entry.Name)));
        if (entries.Count == 0)
            return 0;
        var columns = Math.Max(1, (int)(width / (entries.Max(entry => ChartStyle.TextWidth(entry.Text)) + 50)));
        return Math.Ceiling(entries.Count / (double)columns) * 20 + 12;
    }

    private IEnumerable<(int Panel, string Name, string Text, int? Look)> LegendEntries(int panel)
    {
        var lines = chart.Panels[panel].Lines;
        for (var number = 0; number < lines.Count; number++)
        {
            var look = lines[number].Look ?? number;
            if (lines[number] is { BandName: { } band, Kind: not LineKind.Points })
                yield return (panel, band, PlotlyText.Escape(band), look);
            if (lines[number].Kind != LineKind.BandAlone)
                yield return (panel, lines[number].Name, EndText(chart, lines[number], ": "), look);
        }

        foreach (var limit in chart.Panels[panel].Limits)
            yield return (panel, limit.Name, PlotlyText.Escape(limit.Name), null);
    }
}

using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.ParallelAxes;

/// <summary>Where the parts of a picture of many scenarios stand at one width: its axes are strips with their numbers, the lines
/// lie between them.</summary>
internal sealed record ParallelAxesLayout(IReadOnlyDictionary<string, object?> Members, int Height)
{
    // Rows of cells that a strip takes.
    private const int Strip = 6;
    private const int Pitch = ParallelAxesChart.Rows + Strip;
    private const double RowHeight = 3.4;
    private const double Apart = 18;
    private const double Top = 78;
    private const double Bottom = 12;
    private const double TitleRow = 24;

    /// <summary>The cells of each group; strips are empty.</summary>
    public static IEnumerable<PlotlyTrace> Traces(ParallelLines lines)
    {
        var most = Math.Max(1, Math.Ceiling(Math.Log10(Math.Max(1, lines.Most)) * 100) / 100);
        for (var group = 0; group < lines.Groups.Count; group++)
        {
            var rows = Rows(lines.Cells[group]);
            yield return new PlotlyTrace("heatmap",
            [
                ("xaxis", Name("x", group)), ("yaxis", Name("y", group)),
                ("x0", 0.5 / ParallelAxesChart.Steps), ("dx", 1.0 / ParallelAxesChart.Steps), ("y0", 0), ("dy", 1),
                ("z", rows.Select(row => row?.Select(Level).ToArray() ?? new double?[ParallelAxesChart.Steps]).ToArray()),
                ("customdata", rows.Select(row => row?.Select(Shown).ToArray() ?? []).ToArray()),
                ("zmin", 0), ("zmax", most), ("colorscale", Darker), ("hoverongaps", false),
                ("hovertemplate", "%{customdata} lines<extra></extra>"),
                ("showscale", group == 0),
                ("colorbar", ColourBar(most)),
            ]);
        }
    }

    public static ParallelAxesLayout Make(ParallelAxesChart chart, ParallelLines lines, double width, bool isNarrow)
    {
        var rows = NamedRows.Make([.. chart.Axes.Select(axis => axis.Axis.Label)], width, Pitch * RowHeight);
        var panels = lines.Groups.Count;
        var (across, down) = isNarrow ? (1, panels) : (panels, 1);
        var plotWidth = width - rows.Left - NamedRows.Right;
        var panelWidth = (plotWidth - (across - 1) * Apart) / across;
        var panelHeight = RowCount(chart) * RowHeight;
        var titles = panels > 1 ? TitleRow : 0;
        var plotHeight = down * panelHeight + (down - 1) * titles;
        var members = new Dictionary<string, object?>
        {
            ["margin"] = new { l = rows.Left, r = NamedRows.Right, t = Top + titles, b = Bottom },
            ["height"] = (int)(Top + titles + plotHeight + Bottom),
        };
        List<object> texts = [Title("scenarios whose lines pass there", -rows.Left + 4, Top + titles - 18)];
        List<object> shapes = [];
        for (var panel = 0; panel < panels; panel++)
        {
            var (column, row) = isNarrow ? (0, panel) : (panel, 0);
            var left = column * (panelWidth + Apart) / plotWidth;
            var upper = 1 - row * (panelHeight + titles) / plotHeight;
            members[Name("xaxis", panel)] = new { domain = Span(left, left + panelWidth / plotWidth), range = new[] { 0, 1 },
                visible = false, fixedrange = true, anchor = Name("y", panel) };
            members[Name("yaxis", panel)] = Vertical(chart, rows, panel, column == 0, Span(upper - panelHeight / plotHeight,
                upper));
            if (panels > 1)
                texts.Add(GroupTitle(lines.Groups[panel], panel, left, upper));
            foreach (var (axis, number) in chart.Axes.Select((axis, number) => (axis, number)))
            {
                shapes.Add(Line(panel, number));
                texts.AddRange(Numbers(axis, lines.Ranges[number], panel, number, panelWidth));
            }
        }

        members["annotations"] = texts;
        members["shapes"] = shapes;
        return new ParallelAxesLayout(members, (int)(Top + titles + plotHeight + Bottom));
    }

    // One blue, from pale to dark: its lightness falls evenly, in print as on the screen.
    private static readonly object[] Darker = [new object[] { 0, "#cfe2f1" }, new object[] { 0.5, "#4a94c4" },
        new object[] { 1, "#00253f" }];

    private static object ColourBar(double most) => new
    {
        orientation = "h", x = 0, xanchor = "left", y = 1, yanchor = "top", yref = "container", ypad = 24, xpad = 0, len = 1,
        thickness = 12, outlinewidth = 0, ticks = "outside", ticklen = 3,
        tickvals = Enumerable.Range(0, (int)most + 1).ToArray(),
        ticktext = Enumerable.Range(0, (int)most + 1).Select(power => Rounding.Text(Math.Pow(10, power))).ToArray(),
    };

    private static int RowCount(ParallelAxesChart chart) => chart.Axes.Count * Pitch - ParallelAxesChart.Rows;

    private static string Name(string axis, int panel) => panel == 0 ? axis : $"{axis}{panel + 1}";

    private static double[] Span(double from, double to) => [Math.Max(0, Math.Round(from, 6)), Math.Min(1, Math.Round(to, 6))];

    private static List<double[]?> Rows(IReadOnlyList<double[][]> gaps)
    {
        List<double[]?> rows = [.. new double[]?[Strip]];
        foreach (var gap in gaps)
        {
            rows.AddRange(gap);
            rows.AddRange(new double[]?[Strip]);
        }

        return rows;
    }

    // The palest blue is a line or a part of one; each step of ten goes as far on the scale as the one before.
    private static double? Level(double lines) => lines <= 0 ? null : Math.Round(Math.Max(0, Math.Log10(lines)), 2);

    private static double? Shown(double lines) => lines <= 0 ? null : Rounding.Significant(lines, 3);

    // The middle of a strip, in rows.
    private static double Middle(int axis) => axis * Pitch + (Strip - 1) / 2.0;

    private static Dictionary<string, object?> Vertical(ParallelAxesChart chart, NamedRows rows, int panel, bool hasNames,
        double[] domain) => new(rows.Axis)
    {
        ["range"] = new[] { RowCount(chart) - 0.5, -0.5 },
        ["tickvals"] = Enumerable.Range(0, chart.Axes.Count).Select(Middle).ToArray(),
        ["domain"] = domain,
        ["showticklabels"] = hasNames,
        ["anchor"] = Name("x", panel),
    };

    private static object Line(int panel, int axis) => new
    {
        type = "line", xref = $"{Name("x", panel)} domain", yref = Name("y", panel), x0 = 0, x1 = 1,
        y0 = axis * Pitch - 0.5 + (axis == 0 ? Strip : 0), y1 = axis * Pitch - 0.5 + (axis == 0 ? Strip : 0),
        line = new { color = ChartStyle.LimitInk, width = 1.5 },
    };

    private static IEnumerable<object> Numbers(ParallelAxis axis, (double Low, double High) range, int panel, int number,
        double width)
    {
        if (axis.Names is { } names)
        {
            // Their numbers where the names themselves would lie over each other; the caption has both.
            var fit = names.Max(name => ChartStyle.TextWidth(name, ChartStyle.FontSize - 1)) + 6 < width / names.Count;
            var numbersFit = names.Count * (ChartStyle.TextWidth($"{names.Count}") + 4) < width;
            return !fit && !numbersFit ? [] : names.Select((name, i) =>
                Number(fit ? name : $"{i + 1}", (i + 0.5) / names.Count, "center", panel, number));
        }

        var (low, high) = range;
        List<object> texts = [Number(Text(low), 0, "left", panel, number), Number(Text(high), 1, "right", panel, number)];
        if (new[] { low, (low + high) / 2, high }.Sum(value => ChartStyle.TextWidth(Text(value))) + 24 < width)
            texts.Add(Number(Text((low + high) / 2), 0.5, "center", panel, number));
        return texts;

        string Text(double value) => AxisLayout.Text(axis.Axis with { Unit = "" }, value, 3);
    }

    private static object Number(string text, double x, string anchor, int panel, int axis) => new
    {
        text = PlotlyText.Escape(text), showarrow = false, xref = Name("x", panel), yref = Name("y", panel), x, y = Middle(axis),
        xanchor = anchor, yanchor = "middle", borderpad = 0, font = new { size = ChartStyle.FontSize - 1,
            color = ChartStyle.Ink },
    };

    private static object Title(string text, double xShift, double yShift) => new
    {
        text = $"<b>{PlotlyText.Escape(text)}</b>", showarrow = false, xref = "paper", yref = "paper", x = 0, y = 1,
            xanchor = "left",
        yanchor = "bottom", xshift = xShift, yshift = yShift,
    };

    private static object GroupTitle(ParallelLines.Drawn group, int panel, double left, double upper) => new
    {
        text = PlotlyText.Escape($"{group.Name}: {group.Lines.Length}"), showarrow = false, xref = "paper", yref = "paper",
        x = Math.Round(left, 6), y = Math.Round(upper, 6), xanchor = "left", yanchor = "bottom", yshift = 4,
        font = new { color = SeriesStyle.Number(panel).TextColour },
    };
}

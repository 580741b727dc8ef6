using System.Globalization;
using RigScenarios.Balance;
using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Balance;

/// <summary>Where the parts of an envelope's chart stand at one width, and what goes into its legend.</summary>
internal sealed class EnvelopeLayout
{
    private const double LeftMargin = 56;
    private const double RightMargin = 18;
    private const double Top = 34;
    private const double Bottom = 52;
    private const double PlotHeight = 360;
    private static readonly double[] AlongRun = [0.5, 0.35, 0.65, 0.2, 0.8, 0.05, 0.95];
    private readonly HashSet<string> labelled = [];
    private readonly List<object> annotations = [];

    public IReadOnlyDictionary<string, object?> Members { get; private set; } = new Dictionary<string, object?>();

    public int Height { get; private set; }

    public static EnvelopeLayout Make(EnvelopePicture picture, double width, bool isNarrow)
    {
        var layout = new EnvelopeLayout();
        layout.Arrange(picture, width, isNarrow);
        return layout;
    }

    public static IEnumerable<PlotlyTrace> Traces(EnvelopePicture picture, EnvelopeLayout layout)
    {
        foreach (var edge in picture.Edges)
        {
            // A null between two stretches lifts the pen.
            var points = edge.Runs.SelectMany(run => run.Select(point => ((double, double)?)point).Append(null))
                .SkipLast(1).ToList();
            yield return new PlotlyTrace("scatter",
            [
                ("name", EdgeName(edge)), ("mode", "lines"), ("showlegend", !layout.labelled.Contains(EdgeName(edge))),
                ("x", points.Select(point => point is { } p ? Rounding.ForChart(p.Item1) : (double?)null).ToArray()),
                ("y", points.Select(point => point is { } p ? Rounding.ForChart(p.Item2) : (double?)null).ToArray()),
                ("line", new { color = Style(edge).Colour, dash = Style(edge).Dash, width = 3 }),
                ("hovertemplate", $"%{{x}} {PlotlyText.Escape(picture.X.Unit)}<br>%{{y}} "
                    + $"{PlotlyText.Escape(picture.Y.Unit)}<extra>{EdgeName(edge)}</extra>"),
            ]);
        }
        foreach (var mark in picture.Marks)
        {
            yield return new PlotlyTrace("scatter",
            [
                ("name", MarkName(mark)), ("mode", "markers"), ("showlegend", !layout.labelled.Contains(MarkName(mark))),
                ("x", new[] { Rounding.ForChart(mark.X) }), ("y", new[] { Rounding.ForChart(mark.Y) }), ("cliponaxis", false),
                ("marker", new
                {
                    color = mark.Broken.Count == 0 ? ChartStyle.Ink : "#ffffff", symbol = mark.IsPresent ? "circle" : "square",
                    size = mark.IsPresent ? 12 : 10,
                    line = new { color = ChartStyle.Ink, width = 2.5 },
                }),
                ("hovertemplate", $"%{{x}} {PlotlyText.Escape(picture.X.Unit)}<br>%{{y}} "
                    + $"{PlotlyText.Escape(picture.Y.Unit)}<extra>{MarkName(mark)}</extra>"),
            ]);
        }
    }

    /// <summary>What the numbers are: the edges, then the marks.</summary>
    public static ChartPoints Points(EnvelopePicture picture) => new(picture.X.ColumnTitle, [picture.Y.ColumnTitle],
        [.. picture.Edges.Select(edge => new PointSeries(EdgeName(edge), 0)),
            .. picture.Marks.Select(mark => new PointSeries(mark.Name, 0))]);

    /// <summary>Something to draw even where there is nothing to show: the axes alone say that the region is empty.</summary>
    public static PlotlyTrace Nothing() =>
        new PlotlyTrace("scatter", [("x", Array.Empty<double>()), ("y", Array.Empty<double>()), ("showlegend", false)]);

    /// <summary>For each trace, in order, whether it is in the legend of another layout.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, object?>> LegendChanges(EnvelopePicture picture,
        EnvelopeLayout layout) =>
        [.. Entries(picture)
            .Select(name => new Dictionary<string, object?> { ["showlegend"] = !layout.labelled.Contains(name) })];

    private static IEnumerable<string> Entries(EnvelopePicture picture) =>
        picture.Edges.Select(EdgeName).Concat(picture.Marks.Select(MarkName));

    private static SeriesStyle Style(DrawnEdge edge) => SeriesStyle.Number(edge.IsCreep ? 4 : (int)edge.Limit);

    private static string EdgeName(DrawnEdge edge) => edge.Limit switch
    {
        BalanceEdge.Tilt => edge.IsCreep ? "falls beyond this" : "creeps beyond this",
        BalanceEdge.Load => "rated load",
        _ => edge.Limit.InWords(),
    };

    private static string MarkName(DrawnMark mark) =>
        PlotlyText.Escape(mark.Broken.Count == 0 ? mark.Name : $"{mark.Name} (outside)");

    private void Arrange(EnvelopePicture picture, double width, bool isNarrow)
    {
        var plotWidth = width - LeftMargin - RightMargin;
        var area = new PlotArea(plotWidth, PlotHeight, picture.XRange, picture.YRange);
        var lines = picture.Edges.SelectMany(edge => edge.Runs)
            .Select(run => (IReadOnlyList<(double, double)>)[.. run.Select(point => area.Pixel(point.X, point.Y))]).ToList();
        var placement = new LabelPlacement(area, 0, lines);
        foreach (var mark in picture.Marks)
            placement.Reserve(RigSigns.Around(area.Pixel(mark.X, mark.Y), 8));
        foreach (var mark in picture.Marks)
            Label(area, placement, MarkName(mark), ChartStyle.Ink, area.Pixel(mark.X, mark.Y));
        if (!isNarrow)
        {
            foreach (var edge in picture.Edges)
            {
                // The longest stretch first; along it several places, from its middle on.
                foreach (var at in edge.Runs.OrderByDescending(run => run.Count).SelectMany(Anchors)
                    .Select(point => area.Pixel(point.X, point.Y)))
                {
                    if (Label(area, placement, EdgeName(edge), Style(edge).TextColour, at))
                        break;
                }
            }
        }
        var legend = LegendHeight(picture, width);
        var x = AxisLayout.Members(picture.X, picture.XRange, plotWidth, isHorizontal: true);
        var title = PlotlyText.Wrap(picture.X.Label, (int)(plotWidth / ChartStyle.TextWidth("n")));
        var bottom = Bottom + ((title.Split("<br>").Length - 1) * (ChartStyle.TextHeight + 10));
        x["title"] = new { text = title, standoff = 10, font = new { size = ChartStyle.FontSize } };
        annotations.Add(new
        {
            text = $"<b>{PlotlyText.Wrap(picture.Y.Label, (int)(width / ChartStyle.TextWidth("n")))}</b>", showarrow = false,
            align = "left", xref = "paper", yref = "paper", xanchor = "left", yanchor = "bottom",
            x = 0, y = 1, xshift = -LeftMargin + 4, yshift = 9,
        });
        Height = (int)(Top + PlotHeight + bottom + legend);
        Members = new Dictionary<string, object?>
        {
            ["xaxis"] = x,
            ["yaxis"] = AxisLayout.Members(picture.Y, picture.YRange, PlotHeight, isHorizontal: false),
            ["margin"] = new { l = LeftMargin, r = RightMargin, t = Top, b = bottom + legend },
            ["height"] = Height,
            ["annotations"] = annotations,
            ["showlegend"] = legend > 0,
            ["legend"] = new { orientation = "h", x = 0, xanchor = "left", y = -(bottom + 2) / PlotHeight, yanchor = "top",
                traceorder = "normal" },
            ["shapes"] = picture.Outlines.Count == 0 ? Array.Empty<object>() : [Region(picture)],
        };
    }

    private bool Label(PlotArea area, LabelPlacement placement, string text, string colour, (double X, double Y) at)
    {
        if (placement.BesideEnd(text, at) is not { } place)
            return false;
        labelled.Add(text);
        annotations.Add(new Dictionary<string, object>
        {
            ["text"] = text, ["showarrow"] = false, ["align"] = place.SetRight ? "right" : "left", ["xref"] = "x", ["yref"] = "y",
            ["x"] = Rounding.Significant(area.XAt(place.SetRight ? place.Box.Right : place.Box.Left), 7),
            ["y"] = Rounding.Significant(area.YAt((place.Box.Top + place.Box.Bottom) / 2), 7),
            ["xanchor"] = place.SetRight ? "right" : "left", ["yanchor"] = "middle",
            ["font"] = new { color = colour, size = ChartStyle.FontSize },
        });
        return true;
    }

    private static IEnumerable<(double X, double Y)> Anchors(IReadOnlyList<(double X, double Y)> run) =>
        AlongRun.Select(share => run[(int)(share * (run.Count - 1))]);

    // All outlines in one path: where one lies in another, it is a hole.
    private static object Region(EnvelopePicture picture) => new
    {
        type = "path", layer = "below", xref = "x", yref = "y", fillcolor = SeriesStyle.Number(6).Fill(0.28),
        fillrule = "evenodd", line = new { width = 0.8, color = "#7f7f7f" },
        path = string.Concat(picture.Outlines.Select(outline => $"M{string.Join('L', outline.Select(Point))}Z")),
    };

    private static string Point((double X, double Y) point) =>
        string.Create(CultureInfo.InvariantCulture, $"{Rounding.ForChart(point.X)},{Rounding.ForChart(point.Y)}");

    // plotly.js sets a horizontal legend in columns as wide as its widest entry.
    private double LegendHeight(EnvelopePicture picture, double width)
    {
        var entries = Entries(picture).Where(name => !labelled.Contains(name)).ToList();
        if (entries.Count == 0)
            return 0;
        var columns = Math.Max(1, (int)((width - LeftMargin) / (entries.Max(text => ChartStyle.TextWidth(text)) + 50)));
        return (Math.Ceiling(entries.Count / (double)columns) * 20) + 12;
    }
}

using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Rows;

/// <summary>Where the spread of a result comes from: for each uncertain figure its share alone and with all others, each with the
/// interval that holds it.</summary>
public sealed record SharesOfSpreadChart
{
    private const double RowHeight = 44;
    private const double Bottom = 78;
    private const double Top = 10;
    private const double Apart = 0.17;
    private const string Alone = "alone";
    private const string WithOthers = "together with the others";

    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public required string Slug { get; init; }

    /// <summary>What the chart answers.</summary>
    public required string Title { get; init; }

    /// <summary>What to see, what was assumed, and what the intervals are.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>What the spread is of ("the end of the day").</summary>
    public required string Of { get; init; }

    /// <summary>The figures from top to bottom, at least one, each with a name of its own; shares in per cent.</summary>
    public required IReadOnlyList<ShareOfSpread> Shares { get; init; }

    private static ChartAxis Axis { get; } = new("share of the spread", "%");

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">There is no figure, two have the same name, or none of them is
    /// known.</exception>
    public Figure ToFigure()
    {
        if (!Shares.Any(share => double.IsFinite(share.Alone.Value) || double.IsFinite(share.WithOthers.Value)))
            throw new InvalidOperationException($"The chart \"{Title}\" needs at least one share that is known.");
        if (Shares.GroupBy(share => share.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new InvalidOperationException($"Two shares are named \"{twice.Key}\"; each needs a name of its own.");
        var (wide, height) = Members(ChartStyle.Width);
        var (narrow, _) = Members(ChartStyle.NarrowWidth);
        return new Figure
        {
            Slug = Slug,
            Title = Title,
            Caption = $"Of the spread of {Of}. {Caption}".TrimEnd(),
            Cautions = Cautions,
            AlternativeText = Describe(),
            Specification = new PlotlySpecification([Points(isAlone: true), Points(isAlone: false)]).With(wide)
                .WithPoints(Rows()).WithNarrow(narrow).ToJson(),
            Data = ChartTable.Of("", $"{Alone} (%)", "from", "to", $"{WithOthers} (%)", "from", "to")
                .WithRows(Shares.Select(share => new object?[] { share.Name, share.Alone.Value, share.Alone.Low, share.Alone.High,
                    share.WithOthers.Value, share.WithOthers.Low, share.WithOthers.High })),
            Height = height,
        };
    }

    private (Dictionary<string, object?> Members, int Height) Members(double width)
    {
        var rows = NamedRows.Make([.. Shares.Select(share => share.Name)], width, RowHeight);
        var plotWidth = width - rows.Left - NamedRows.Right;
        var ends = Shares.SelectMany(share => new[] { share.Alone, share.WithOthers })
            .SelectMany(share => new[] { share.Value, share.Low, share.High }).Where(double.IsFinite).ToList();
        // Estimates and their intervals may lie a little below zero or above all: they are drawn as they are.
        var range = new AxisRange(Math.Min(-2, ends.Min() - 2), Math.Max(60, ends.Max() + 3), IsLogarithmic: false);
        var x = AxisLayout.Members(Axis, range, plotWidth, isHorizontal: true);
        x["zeroline"] = true;
        x["zerolinecolor"] = ChartStyle.LimitInk;
        var height = (int)(Top + rows.Height + Bottom);
        return (new()
        {
            ["xaxis"] = x,
            ["yaxis"] = rows.Axis,
            ["margin"] = new { l = rows.Left, r = NamedRows.Right, t = Top, b = Bottom },
            ["height"] = height,
            ["showlegend"] = true,
            // From the left edge of the whole chart: on a phone the names leave too little beside them.
            ["legend"] = new { orientation = "h", x = -rows.Left / plotWidth, xanchor = "left", y = -(Bottom - 26) / rows.Height,
                yanchor = "top", traceorder = "normal" },
            // Every second row is shaded, so that both points of a row are read as one.
            ["shapes"] = Enumerable.Range(0, Shares.Count).Where(row => row % 2 == 0).Select(row => new
            {
                type = "rect", layer = "below", xref = "paper", yref = "y", x0 = 0, x1 = 1, y0 = row - 0.5, y1 = row + 0.5,
                line = new { width = 0 }, fillcolor = ChartStyle.BlockFills[0],
            }).ToArray(),
        }, height);
    }

    private PlotlyTrace Points(bool isAlone)
    {
        var style = SeriesStyle.Number(isAlone ? 0 : 1);
        var rows = Shares.Index().Select(row => (row.Index, row.Item.Name, Share: isAlone ? row.Item.Alone : row.Item.WithOthers))
            .Where(row => double.IsFinite(row.Share.Value)).ToList();
        return new PlotlyTrace("scatter",
        [
            ("name", isAlone ? Alone : WithOthers), ("mode", "markers"), ("showlegend", true),
            ("x", rows.Select(row => Rounding.ForChart(row.Share.Value)).ToArray()),
            ("y", rows.Select(row => row.Index + (isAlone ? -Apart : Apart)).ToArray()),
            ("error_x", new
            {
                type = "data", symmetric = false, color = style.Colour, thickness = 2, width = 5,
                array = rows.Select(row => Length(row.Share.Value, row.Share.High)).ToArray(),
                arrayminus = rows.Select(row => Length(row.Share.Low, row.Share.Value)).ToArray(),
            }),
            ("marker", new { color = style.Colour, symbol = isAlone ? style.Symbol : $"{style.Symbol}-open", size = 10,
                line = new { color = style.Colour, width = 2.5 } }),
            ("text", rows.Select(row => PlotlyText.Escape($"{row.Name}, {(isAlone ? Alone : WithOthers)}: {Words(row.Share)}"))
                .ToArray()),
            ("hovertemplate", "%{text}<extra></extra>"),
        ]);
    }

    private static double Length(double from, double to) =>
        double.IsFinite(to - from) ? Rounding.ForChart(Math.Max(0, to - from)) : 0;

    private static string Words(EstimatedShare share) => !double.IsFinite(share.Value) ? "not known"
        : double.IsFinite(share.High - share.Low)
            ? $"{Rounding.Text(share.Value, 3)} % ({Rounding.Text(share.Low, 3)} to {Rounding.Text(share.High, 3)})"
            : $"{Rounding.Text(share.Value, 3)} %";

    private ChartPoints Rows() => PointRows.Of(["name", "which", Axis.Label, "lowest (%)", "highest (%)"],
        Shares.SelectMany(share => new[] { Row(share.Name, Alone, share.Alone), Row(share.Name, WithOthers, share.WithOthers) }));

    private static IReadOnlyList<object?> Row(string name, string which, EstimatedShare share) =>
        [name, which, PointRows.Number(share.Value), PointRows.Number(share.Low), PointRows.Number(share.High)];

    private string Describe() => $"Shares of the spread of {Of}, each with its interval. "
        + string.Join("; ", Shares.Select(share => $"{share.Name}: {Alone} {Words(share.Alone)}, {WithOthers} "
            + Words(share.WithOthers))) + ".";
}

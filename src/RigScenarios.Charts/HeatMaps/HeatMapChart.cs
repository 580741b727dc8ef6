using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.HeatMaps;

/// <summary>A value that a heat map's cells are held against; where the map passes it, a line is drawn.</summary>
/// <param name="Name">What it is ("the whole day: 10 h").</param>
/// <param name="Value">In the unit of the cells.</param>
public sealed record HeatMapThreshold(string Name, double Value);

/// <summary>One value over two others, as coloured cells with their numbers in them where they fit.</summary>
public sealed record HeatMapChart
{
    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public required string Slug { get; init; }

    /// <summary>What the chart answers.</summary>
    public required string Title { get; init; }

    /// <summary>What to see and what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The chart in words; null makes a plain description.</summary>
    public string? AlternativeText { get; init; }

    /// <summary>The horizontal axis.</summary>
    public required ChartAxis X { get; init; }

    /// <summary>The vertical axis.</summary>
    public required ChartAxis Y { get; init; }

    /// <summary>What the cells show; its range, where given, is the range of the colours.</summary>
    public required ChartAxis Value { get; init; }

    /// <summary>Horizontal values, rising, in the unit of the axis; at least two.</summary>
    public required IReadOnlyList<double> Columns { get; init; }

    /// <summary>Vertical values, rising, in the unit of the axis; at least two.</summary>
    public required IReadOnlyList<double> Rows { get; init; }

    /// <summary>A list for each row of <see cref="Rows"/>, with a value for each column; not-a-number leaves the cell
    /// blank.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> Cells { get; init; }

    /// <summary>What a blank cell means ("the camera does not start"), or null where there is none.</summary>
    public string? BlankMeans { get; init; }

    /// <summary>The value at which a line is drawn through the map, or null.</summary>
    public HeatMapThreshold? Threshold { get; init; }

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">The cells do not match the columns and rows, or there are fewer than two of
    /// either.</exception>
    public Figure ToFigure()
    {
        Check();
        var wide = HeatMapLayout.Make(this, ChartStyle.Width);
        var narrow = HeatMapLayout.Make(this, ChartStyle.NarrowWidth);
        var traces = HeatMapTraces(wide);
        return new Figure
        {
            Slug = Slug,
            Title = Title,
            Caption = HeatMapText.Caption(this),
            Cautions = Cautions,
            AlternativeText = AlternativeText ?? HeatMapText.Describe(this),
            Specification = new PlotlySpecification(traces).With(wide.Members).WithPoints(Points(traces.Count))
                .WithNarrow(narrow.Members, NarrowTraces(traces.Count, narrow)).ToJson(),
            Data = HeatMapText.Table(this),
            Height = wide.Height,
        };
    }

    /// <summary>Refuses what is no map.</summary>
    internal void Check()
    {
        if (Columns.Count < 2 || Rows.Count < 2)
            throw new InvalidOperationException($"The heat map \"{Title}\" needs at least two columns and two rows.");
        if (Cells.Count != Rows.Count || Cells.Any(row => row.Count != Columns.Count))
            throw new InvalidOperationException(
                $"The heat map \"{Title}\" needs {Rows.Count} rows of {Columns.Count} cells each.");
    }

    // The cells alone: the line of the threshold and the numbers on the cells say the same once more.
    internal ChartPoints Points(int traces) => new(X.ColumnTitle, [Y.ColumnTitle, Value.ColumnTitle],
        [new PointSeries("", 0), .. Enumerable.Repeat<PointSeries?>(null, traces - 1)]);

    // The cells' numbers are the last trace.
    private static List<Dictionary<string, object?>> NarrowTraces(int count, HeatMapLayout narrow) =>
        [.. Enumerable.Range(0, count)
            .Select(i => i < count - 1 ? [] : new Dictionary<string, object?> { ["visible"] = narrow.CellsHaveText })];

    private List<PlotlyTrace> HeatMapTraces(HeatMapLayout layout)
    {
        var range = AxisRange.For(Value, Cells.SelectMany(row => row), pad: false);
        var unit = Value.Unit.Length == 0 ? "" : " " + PlotlyText.Escape(Value.Unit);
        var traces = new List<PlotlyTrace>
        {
            new PlotlyTrace("heatmap",
            [
                .. Grid(this), ("zmin", range.From), ("zmax", range.To), ("colorscale", "Cividis"),
                ("xgap", 1), ("ygap", 1),
                ("hoverongaps", false),
                ("hovertemplate", $"{PlotlyText.Escape(X.Label)}: %{{x}}<br>{PlotlyText.Escape(Y.Label)}: "
                    + $"%{{y}}<br>%{{z}}{unit}<extra></extra>"),
                ("colorbar", HeatMapLayout.ColourBar),
            ]),
        };
        if (Threshold is { } threshold && HeatMapText.Crosses(this))
        {
            // White below black: the line shows on the dark and on the bright end of the scale.
            traces.Add(Contour(this, threshold, "#ffffff", 5, isNamed: false));
            traces.Add(Contour(this, threshold, "#000000", 2, isNamed: true));
        }

        traces.Add(CellTexts(range, layout));
        return traces;
    }

    // A trace of its own, so that the numbers stand over the threshold's line and not under it.
    private PlotlyTrace CellTexts(AxisRange range, HeatMapLayout layout)
    {
        var texts = HeatMapText.CellTexts(this);
        var cells = Rows.SelectMany((y, row) =>
            Columns.Select((x, column) => (X: x, Y: y, Value: Cells[row][column], Text: texts[row][column])))
            .Where(cell => double.IsFinite(cell.Value)).ToList();
        return new PlotlyTrace("scatter",
        [
            ("mode", "text"), ("showlegend", false), ("hoverinfo", "skip"), ("visible", layout.CellsHaveText),
            ("x", cells.Select(cell => Rounding.ForChart(cell.X)).ToArray()),
            ("y", cells.Select(cell => Rounding.ForChart(cell.Y)).ToArray()),
            ("text", cells.Select(cell => cell.Text).ToArray()),
            ("textfont", new
            {
                size = ChartStyle.FontSize - 1,
                // The scale's lightness rises evenly: from a little below its middle on, black text has more contrast than white.
                color = cells.Select(cell => range.Fraction(cell.Value) < 0.45 ? "#ffffff" : "#000000").ToArray(),
            }),
        ]);
    }

    /// <summary>The values as members of a trace; blank cells are null.</summary>
    internal static (string, object?)[] Grid(HeatMapChart map) =>
    [
        ("x", map.Columns.Select(Rounding.ForChart).ToArray()), ("y", map.Rows.Select(Rounding.ForChart).ToArray()),
        ("z", map.Cells.Select(row => row.Select(v => double.IsFinite(v) ? Rounding.ForChart(v) : (double?)null).ToArray())
            .ToArray()),
    ];

    /// <summary>The line of a threshold.</summary>
    internal static PlotlyTrace Contour(
        HeatMapChart map, HeatMapThreshold threshold, string colour, double width, bool isNamed) =>
        new("contour",
        [
            .. Grid(map), ("autocontour", false), ("showscale", false), ("hoverinfo", "skip"),
            ("contours", new { start = threshold.Value, end = threshold.Value, size = 1, coloring = "none" }),
            ("line", new { color = colour, width, dash = isNamed ? "8px,3px" : "solid" }),
            ("name", PlotlyText.Escape(threshold.Name)), ("showlegend", isNamed),
        ]);
}

using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Rows;

/// <summary>What each uncertain figure alone does to a result: a bar for each, from the result with the figure low to the one
/// with it high, the longest on top.</summary>
public sealed record TornadoChart
{
    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public required string Slug { get; init; }

    /// <summary>What the chart answers.</summary>
    public required string Title { get; init; }

    /// <summary>What to see and what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The axis of the result.</summary>
    public required ChartAxis Value { get; init; }

    /// <summary>The result with every figure as it is given.</summary>
    public required double Middle { get; init; }

    /// <summary>What that result is called, above the plot ("as given: 17:02").</summary>
    public required string MiddleName { get; init; }

    /// <summary>The figures, at least one, each with a name of its own.</summary>
    public required IReadOnlyList<TornadoRow> Bars { get; init; }

    /// <summary>The bars as they stand, the longest on top.</summary>
    internal IReadOnlyList<TornadoRow> Sorted => [.. Bars.OrderByDescending(bar => bar.Reach)];

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">There is no bar, two have the same name, or the middle is no
    /// number.</exception>
    public Figure ToFigure()
    {
        if (Bars.Count == 0 || !double.IsFinite(Middle))
            throw new InvalidOperationException($"The chart \"{Title}\" needs a middle and at least one bar.");
        if (Bars.GroupBy(bar => bar.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new InvalidOperationException($"Two bars are named \"{twice.Key}\"; each needs a name of its own.");
        var wide = TornadoLayout.Make(this, ChartStyle.Width);
        var narrow = TornadoLayout.Make(this, ChartStyle.NarrowWidth);
        return new Figure
        {
            Slug = Slug,
            Title = Title,
            Caption = $"{Caption} Plain: the figure at its low value; hatched: at its high value.".TrimStart(),
            Cautions = Cautions,
            AlternativeText = Describe(),
            Specification = new PlotlySpecification([Side(isHigh: false), Side(isHigh: true)]).With(wide.Members)
                .WithPoints(Points()).WithNarrow(narrow.Members).ToJson(),
            Data = ChartTable.Of("", $"low, {Value.Label}", $"high, {Value.Label}", $"reach ({Reach.Unit})")
                .WithRows(Sorted.Select(bar => new object?[] { bar.Name, Cell(bar.AtLow), Cell(bar.AtHigh), bar.Reach })),
            Height = wide.Height,
        };
    }

    /// <summary>A value as it is read: lengths of time in hours and minutes.</summary>
    internal string Words(double value) => Value.QuantityUnit is DurationUnit unit && double.IsFinite(value)
        ? TradeUnits.Text(Duration.From(value, unit)) : AxisLayout.Text(Value, value, 3);

    /// <summary>Whether both ends lie on one side of the middle, so that one bar would cover the other.</summary>
    internal bool IsOneSided(TornadoRow bar) => (bar.AtLow - Middle) * (bar.AtHigh - Middle) > 0;

    /// <summary>Where in its row, 0 being its middle, an end of a bar is drawn.</summary>
    internal double Offset(TornadoRow bar, bool isHigh) => !IsOneSided(bar) ? 0 : isHigh ? 0.2 : -0.2;

    private PlotlyTrace Side(bool isHigh)
    {
        var rows = Sorted.Index().Where(row => double.IsFinite(End(row.Item))).ToList();
        var colour = SeriesStyle.Number(isHigh ? 1 : 0).Colour;
        return new PlotlyTrace("bar",
        [
            ("orientation", "h"), ("name", isHigh ? "at its high value" : "at its low value"),
            ("y", rows.Select(row => row.Index + Offset(row.Item, isHigh)).ToArray()),
            ("base", rows.Select(row => Rounding.ForChart(Math.Min(Middle, End(row.Item)))).ToArray()),
            ("x", rows.Select(row => Rounding.ForChart(Math.Abs(End(row.Item) - Middle))).ToArray()),
            ("width", rows.Select(row => IsOneSided(row.Item) ? 0.36 : 0.62).ToArray()),
            ("marker", new
            {
                color = colour,
                pattern = new { shape = isHigh ? "/" : "", fgcolor = "#ffffff", fillmode = "overlay", solidity = 0.18, size = 8 },
            }),
            ("text", rows.Select(row => PlotlyText.Escape($"{row.Item.Name}, {(isHigh ? "high" : "low")}: "
                + Words(End(row.Item)))).ToArray()),
            ("textposition", "none"), ("hovertemplate", "%{text}<extra></extra>"),
        ]);

        double End(TornadoRow bar) => isHigh ? bar.AtHigh : bar.AtLow;
    }

    private ChartPoints Points() => PointRows.Of(["name", $"low, {Value.ColumnTitle}", $"high, {Value.ColumnTitle}"],
        [.. Sorted.Select(bar => (IReadOnlyList<object?>)[bar.Name, PointRows.Number(bar.AtLow), PointRows.Number(bar.AtHigh)]),
            (IReadOnlyList<object?>)[MiddleName, PointRows.Number(Middle), PointRows.Number(Middle)]]);

    // A difference of clock times is hours.
    private ChartAxis Reach => Value.Scale == AxisScale.Clock ? new ChartAxis("reach", "h") : Value;

    private object? Cell(double value) => Value.Scale == AxisScale.Clock ? AxisLayout.Text(Value, value) : value;

    private string Describe() => $"Bars of {Value.Label}, {MiddleName}, the longest first. "
        + string.Join("; ", Sorted.Select(bar => $"{bar.Name}: {Words(bar.AtLow)} at its low value, "
            + $"{Words(bar.AtHigh)} at its high value")) + ".";
}

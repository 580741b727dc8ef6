using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Fits;

/// <summary>Measurements over what was predicted for them: on the line both are the same, above it more was measured.</summary>
public static class PredictedAgainstMeasured
{
    // Solid blue, as what is measured is elsewhere; the straight line is black.
    private const int IdentityLook = 3;
    private static readonly int[] GroupLooks = [0, 1, 2, 4];

    /// <summary>The figure. Both axes have the same range, so that the straight line goes from corner to corner.</summary>
    /// <param name="slug">Short name of the figure.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="quantity">What is compared ("runtime", "h"); its range is not looked at.</param>
    /// <param name="points">At least one.</param>
    /// <param name="caption">What to see and what was assumed.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    /// <exception cref="ArgumentException">There is no point, or one whose values are no numbers.</exception>
    public static Figure Of(string slug, string title, ChartAxis quantity, IReadOnlyCollection<ComparedPoint> points,
        string caption = "", IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count == 0)
            throw new ArgumentException("There is nothing to compare: give one measurement or more.", nameof(points));
        if (points.FirstOrDefault(point => !double.IsFinite(point.Predicted + point.Measured)) is { } broken)
            throw new ArgumentException($"\"{broken.Name}\" has no number to compare: {broken.Predicted} predicted, "
                + $"{broken.Measured} measured.", nameof(points));
        var (from, to) = Range(quantity, points);
        var lines = new List<ChartLine>
        {
            new("as predicted", [from, to], [from, to]) { Look = IdentityLook, IsNamedInLegend = true },
        };
        lines.AddRange(points.GroupBy(point => (point.Group, point.As)).Select(group => Series(group.Key, [.. group], points)));
        return new LineChart
        {
            Slug = slug,
            Title = title,
            Caption = caption,
            Cautions = cautions ?? [],
            AlternativeText = Describe(quantity, points),
            X = quantity with { Title = $"{quantity.Title}, predicted", From = from, To = to },
            Panels = [new ChartPanel(quantity with { Title = $"{quantity.Title}, measured", From = from, To = to }, lines)],
        }.ToFigure();
    }

    private static ChartLine Series((string Group, ComparedAs As) kind, List<ComparedPoint> of,
        IReadOnlyCollection<ComparedPoint> all)
    {
        var groups = all.Select(point => point.Group).Distinct().ToList();
        var looks = all.Select(point => (point.Group, point.As)).Distinct().ToList();
        var name = kind.As switch
        {
            ComparedAs.AtLeast => "still running: at least this",
            ComparedAs.LeftOut => "left out of the fit",
            _ => "measured",
        };
        var hasBars = of.Exists(point => point is { Least: not null, Greatest: not null });
        return new ChartLine(groups.Count == 1 && kind.Group.Length == 0 ? name
            : kind.As == ComparedAs.Measured ? kind.Group : $"{kind.Group}, {name}",
            [.. of.Select(point => point.Predicted)], [.. of.Select(point => point.Measured)])
        {
            Kind = LineKind.Points,
            Look = GroupLooks[looks.IndexOf((kind.Group, kind.As)) % GroupLooks.Length],
            IsNamedInLegend = true,
            PointNames = [.. of.Select(point => point.Name)],
            Lower = hasBars ? [.. of.Select(point => point.Least ?? point.Measured)] : null,
            Upper = hasBars ? [.. of.Select(point => point.Greatest ?? point.Measured)] : null,
        };
    }

    private static (double From, double To) Range(ChartAxis quantity, IReadOnlyCollection<ComparedPoint> points)
    {
        var values = points.SelectMany(point => new[] { point.Predicted, point.Measured, point.Least ?? point.Measured,
            point.Greatest ?? point.Measured });
        var range = AxisRange.For(quantity with { From = null, To = null, Scale = AxisScale.Linear }, values, pad: true);
        return (range.From, range.To);
    }

    private static string Describe(ChartAxis quantity, IReadOnlyCollection<ComparedPoint> points) =>
        $"Points of {quantity.Title}, measured over predicted ({quantity.Unit}), and the line on which both are the same. "
        + $"{string.Join("; ", points.Select(point => $"{point.Name}: {Rounding.Text(point.Predicted, 3)} predicted, "
            + $"{Rounding.Text(point.Measured, 3)} measured{point.As switch
            {
                ComparedAs.AtLeast => " and still running",
                ComparedAs.LeftOut => ", left out",
                _ => "",
            }}"))}.";
}

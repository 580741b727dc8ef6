using RigScenarios.Charts.Lines;

namespace RigScenarios.Charts.Search;

/// <summary>A front: what each of its entries gives for what it costs. The first axis lies below, for each further one stands a
/// panel; picks have a name and a look of their own, which is the same in all panels.</summary>
public static class FrontChart
{
    private const double Edge = 0.08;
    private const string Others = "others that nobody would swap for another";

    /// <summary>The figure.</summary>
    /// <param name="slug">Short name of the figure.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="axes">What is compared, two or more; the first is what one pays.</param>
    /// <param name="points">The front, at least one entry of which two figures are known.</param>
    /// <param name="isComplete">Whether it is the whole front; else the caption says that there may be more.</param>
    /// <exception cref="ArgumentException">There are fewer than two axes, an entry has not a figure for each, or no entry has
    /// two that are known.</exception>
    public static Figure Of(string slug, string title, IReadOnlyList<ChartAxis> axes, IReadOnlyList<FrontPoint> points,
        bool isComplete = true)
    {
        ArgumentNullException.ThrowIfNull(axes);
        ArgumentNullException.ThrowIfNull(points);
        if (axes.Count < 2)
            throw new ArgumentException("A front is drawn over two figures or more.", nameof(axes));
        if (points.FirstOrDefault(point => point.Values.Count != axes.Count) is { } wrong)
            throw new ArgumentException($"\"{wrong.Name}\" has {wrong.Values.Count} figures for {axes.Count} axes.",
                nameof(points));
        List<ChartPanel> panels = [.. Enumerable.Range(1, axes.Count - 1).Select(axis => Panel(axes, axis, points))
            .OfType<ChartPanel>()];
        if (panels.Count == 0)
            throw new ArgumentException("There is nothing to draw: no entry has two figures that are known.", nameof(points));
        var unknown = points.Count(point => point.Values.Any(double.IsNaN));
        return new LineChart
        {
            Slug = slug,
            Title = title,
            Caption = Caption(points.Count, unknown, isComplete),
            AlternativeText = Describe(axes, points),
            X = Padded(axes[0], points, 0),
            Panels = panels,
        }.ToFigure();
    }

    private static ChartPanel? Panel(IReadOnlyList<ChartAxis> axes, int axis, IReadOnlyList<FrontPoint> points)
    {
        var known = points.Where(point => double.IsFinite(point.Values[0] + point.Values[axis])).ToList();
        var picks = points.Where(point => point.IsPick).ToList();
        ChartLine Line(string name, IReadOnlyList<FrontPoint> of, int look) => new(name,
            [.. of.Select(point => point.Values[0])], [.. of.Select(point => point.Values[axis])])
        {
            Kind = LineKind.Points, Look = look, IsNamedInLegend = true, PointNames = [.. of.Select(point => point.Name)],
        };
        List<ChartLine> lines = [.. known.Where(point => point.IsPick).Select(point =>
            Line(point.Name, [point], picks.IndexOf(point)))];
        if (known.Where(point => !point.IsPick).ToList() is { Count: > 0 } others)
            lines.Add(Line(picks.Count == 0 ? "the front" : Others, others, picks.Count));
        return lines.Count == 0 ? null : new ChartPanel(Padded(axes[axis], points, axis), lines);
    }

    private static string Caption(int count, int unknown, bool isComplete)
    {
        List<string> words = [count > 1 ? "None is better than another in every wish." : isComplete
            ? "It stands alone: nothing else that can be chosen is better in any wish." : "One was found."];
        if (!isComplete)
            words.Add("The search was ended before all was decided: there may be more, and better ones.");
        if (unknown > 0)
            words.Add($"Of {unknown} of {count} a figure is not known; what is not known is not drawn.");
        return string.Join(" ", words);
    }

    private static string Describe(IReadOnlyList<ChartAxis> axes, IReadOnlyList<FrontPoint> points) =>
        $"Points of {string.Join(" and ", axes.Skip(1).Select(axis => axis.Label))} over {axes[0].Label}. "
        + string.Join("; ", points.Select(point => $"{point.Name}: {string.Join(", ", axes.Zip(point.Values, Figure))}")) + ".";

    private static string Figure(ChartAxis axis, double value) =>
        double.IsNaN(value) ? $"{axis.Title} not known" : $"{axis.Title} {Rounding.Text(value)} {axis.Unit}".TrimEnd();

    // No point stands at the edge, where half of it would be cut off.
    private static ChartAxis Padded(ChartAxis axis, IReadOnlyList<FrontPoint> points, int number)
    {
        var values = points.Select(point => point.Values[number]).Where(double.IsFinite).ToList();
        var reach = values.Max() - values.Min() is var range and > 0 ? range : Math.Max(1, Math.Abs(values[0]));
        return axis with { From = values.Min() - (Edge * reach), To = values.Max() + (Edge * reach) };
    }
}

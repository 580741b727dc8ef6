using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Distributions;

/// <summary>Of ten such days, how many still run at each time: a curve that falls with every day that ends.</summary>
public sealed record LastingDays
{
    // More points draw no finer curve, and each takes its time.
    private const int MostPoints = 400;
    private const double Days = 10;

    // So many of the days, at either end, need not be seen.
    private const double Few = 0.0025;

    // How far the axis goes on at both ends, as a part of its length.
    private const double Air = 0.04;

    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public required string Slug { get; init; }

    /// <summary>What the chart answers.</summary>
    public required string Title { get; init; }

    /// <summary>What to see and what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The axis of the ends.</summary>
    public required ChartAxis Time { get; init; }

    /// <summary>When each of the days ended, in any order, in the unit of the axis; positive infinity for one that still ran when
    /// its run was given up. At least two, at least one of them finite.</summary>
    public required IReadOnlyList<double> Ends { get; init; }

    /// <summary>What is marked: when the day is planned to end, and what so many of the days reach ("8 of 10 last beyond
    /// 17:30").</summary>
    public IReadOnlyList<ChartMark> Marks { get; init; } = [];

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">There are fewer than two days, none of them has an end, or one has no
    /// number.</exception>
    public Figure ToFigure()
    {
        var ends = Ends.Order().ToList();
        var finite = ends.Count(double.IsFinite);
        if (ends.Count < 2 || finite == 0 || ends.Any(end => double.IsNaN(end) || double.IsNegativeInfinity(end)))
            throw new InvalidOperationException(
                $"The chart \"{Title}\" needs the ends of two days or more, each of them a time, and one that was reached.");
        var (x, y) = Curve(ends, finite);
        return new LineChart
        {
            Slug = Slug,
            Title = Title,
            Caption = Spoken(ends, finite, Seen(ends, x)),
            Cautions = Cautions,
            AlternativeText = Describe(ends),
            X = Seen(ends, x),
            Panels = [new ChartPanel(new ChartAxis("days still running, of 10") { From = 0, To = Days },
                [new ChartLine("days still running", x, y) { Kind = LineKind.Steps }])],
            Marks = [.. Marks.OrderBy(mark => mark.X)],
        }.ToFigure();
    }

    private (List<double> X, List<double> Y) Curve(List<double> ends, int finite)
    {
        // The curve begins before the first end and goes on behind the last one, so that neither lies on the plot's edge.
        var all = ends.Where(double.IsFinite).Concat(Marks.Select(mark => mark.X)).ToList();
        var air = all.Max() > all.Min() ? Air * (all.Max() - all.Min()) : 1;
        List<double> x = [all.Min() - air, ends[0]], y = [Days, Days];
        var step = Math.Max(1, finite / MostPoints);
        for (var ended = step; ended < finite; ended += step)
            Add(ended);
        Add(finite);
        x.Add(all.Max() + air);
        y.Add(y[^1]);
        return (x, y);

        void Add(int ended)
        {
            x.Add(ends[ended - 1]);
            y.Add(Days * (ends.Count - ended) / ends.Count);
        }
    }

    // One day in a thousand that ran for hours longer would press all others together.
    private ChartAxis Seen(List<double> ends, List<double> x)
    {
        var marks = Marks.Select(mark => mark.X).ToList();
        var low = ends[(int)(Few * ends.Count)];
        var high = ends.FindLast(double.IsFinite);
        if (ends[^(1 + (int)(Few * ends.Count))] is var last && double.IsFinite(last))
            high = last;
        (low, high) = (marks.Append(low).Min(), marks.Append(high).Max());
        var air = Air * (high - low);
        return Time with { From = Math.Max(x[0], low - air), To = Math.Min(x[^1], high + air) };
    }

    private string Spoken(List<double> ends, int finite, ChartAxis seen)
    {
        List<string> words = Caption.Length > 0 ? [Caption] : [];
        words.Add($"Of {ends.Count} days.");
        if (finite < ends.Count)
            words.Add($"{ends.Count - finite} of them still ran when their run was given up: the curve ends above zero.");
        var outside = ends.Count(end => double.IsFinite(end) && (end < seen.From || end > seen.To));
        if (outside > 0)
            words.Add($"{outside} of them ended outside of the picture, the first at {AxisLayout.Text(Time, ends[0], 3)}, the "
                + $"last at {AxisLayout.Text(Time, ends.FindLast(double.IsFinite), 3)}.");
        return string.Join(' ', words);
    }

    private string Describe(List<double> ends) =>
        $"Curve of the days that still run, of 10, over {Time.Label}. The first of {ends.Count} ends at "
        + $"{AxisLayout.Text(Time, ends[0])}, the last one that ended at {AxisLayout.Text(Time, ends.FindLast(double.IsFinite))}."
        + string.Concat(Marks.Select(mark => $" Mark at {AxisLayout.Text(Time, mark.X)}: {mark.Name}."));
}

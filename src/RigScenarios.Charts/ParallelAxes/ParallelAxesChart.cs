using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.ParallelAxes;

/// <summary>
/// Very many scenarios at once: an axis below the other for each of their figures, and a line for each scenario from its value on
/// one to its value on the next. Drawn is how many lines pass where, so that a hundred thousand take no more room or time than a
/// hundred, and all of them count.
/// </summary>
public sealed record ParallelAxesChart
{
    /// <summary>Steps into which each axis is divided.</summary>
    internal const int Steps = 96;

    /// <summary>Rows of cells between two axes.</summary>
    internal const int Rows = 20;

    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public required string Slug { get; init; }

    /// <summary>What the chart answers.</summary>
    public required string Title { get; init; }

    /// <summary>What to see and what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The axes from top to bottom, at least two, all with as many values. What was asked for stands best at the
    /// bottom.</summary>
    public required IReadOnlyList<ParallelAxis> Axes { get; init; }

    /// <summary>Two groups that are drawn beside each other over the same axes, such as the days that last and those that do not;
    /// empty draws all in one.</summary>
    public IReadOnlyList<ParallelGroup> Groups { get; init; } = [];

    /// <summary>How many scenarios there are.</summary>
    internal int Count => Axes[0].Values.Count;

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">There are fewer than two axes, no scenario, other than none or two groups, an
    /// axis has another number of values than the first, or a value that has no name.</exception>
    public Figure ToFigure()
    {
        Check();
        var lines = new ParallelLines(this);
        var wide = ParallelAxesLayout.Make(this, lines, ChartStyle.Width, isNarrow: false);
        var narrow = ParallelAxesLayout.Make(this, lines, ChartStyle.NarrowWidth, isNarrow: true);
        return new Figure
        {
            Slug = Slug,
            Title = Title,
            Caption = ParallelAxesText.Caption(this, lines),
            Cautions = Cautions,
            AlternativeText = ParallelAxesText.Describe(this, lines),
            Specification = new PlotlySpecification(ParallelAxesLayout.Traces(lines)).With(wide.Members)
                .WithPoints(ParallelAxesText.Points(this, lines)).WithNarrow(narrow.Members).ToJson(),
            Data = ParallelAxesText.Table(this, lines),
            Height = wide.Height,
        };
    }

    private void Check()
    {
        if (Axes.Count < 2 || Axes[0].Values.Count == 0)
            throw new InvalidOperationException($"The chart \"{Title}\" needs two axes or more, and at least one scenario.");
        if (Axes.FirstOrDefault(axis => axis.Values.Count != Count) is { } other)
            throw new InvalidOperationException(
                $"The axis \"{other.Axis.Title}\" has {other.Values.Count} values; the first one has {Count}.");
        if (Groups.Count is not (0 or 2))
            throw new InvalidOperationException($"The chart \"{Title}\" takes two groups or none; it has {Groups.Count}.");
        foreach (var axis in Axes)
        {
            if (axis.Names is not { } names)
                continue;
            var wrong = axis.Values.FirstOrDefault(value => double.IsFinite(value)
                && (value < 0 || value >= names.Count || value != Math.Floor(value)), double.NaN);
            if (double.IsFinite(wrong))
                throw new InvalidOperationException($"The axis \"{axis.Axis.Title}\" has no name with the number {wrong}.");
        }
    }
}

using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Bars;

/// <summary>A horizontal bar.</summary>
/// <param name="Name">What it stands for, at its left.</param>
/// <param name="To">Where it ends, in the unit of the chart's axis.</param>
/// <param name="From">Where it begins; zero for a plain bar, a low value for a span.</param>
public sealed record ChartBar(string Name, double To, double From = 0)
{
    /// <summary>Words at the bar's end; null writes its value.</summary>
    public string? Note { get; init; }

    /// <summary>Whether the bar is the one to look at; it is drawn in another colour and hatched.</summary>
    public bool IsEmphasised { get; init; }
}

/// <summary>Values of a few things side by side, or spans between a low and a high value, with limits across.</summary>
public sealed record BarChart
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

    /// <summary>The axis of the values.</summary>
    public required ChartAxis Value { get; init; }

    /// <summary>The bars from top to bottom, at least one, each with a name of its own.</summary>
    public required IReadOnlyList<ChartBar> Bars { get; init; }

    /// <summary>Limits across all bars, named above the plot.</summary>
    public IReadOnlyList<BarLimit> Limits { get; init; } = [];

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">There is no bar, two bars have the same name, or a bar has no
    /// number.</exception>
    public Figure ToFigure()
    {
        if (Bars.Count == 0)
            throw new InvalidOperationException($"The chart \"{Title}\" needs at least one bar.");
        if (Bars.FirstOrDefault(bar => !double.IsFinite(bar.From) || !double.IsFinite(bar.To)) is { } broken)
            throw new InvalidOperationException(
                $"The bar \"{broken.Name}\" runs from {broken.From} to {broken.To}; both must be numbers.");
        if (Bars.GroupBy(bar => bar.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new InvalidOperationException($"Two bars are named \"{twice.Key}\"; each needs a name of its own.");
        var wide = BarLayout.Make(this, ChartStyle.Width);
        var narrow = BarLayout.Make(this, ChartStyle.NarrowWidth);
        return new Figure
        {
            Slug = Slug,
            Title = Title,
            Caption = Caption,
            Cautions = Cautions,
            AlternativeText = AlternativeText ?? Describe(),
            Specification = new PlotlySpecification([Trace()]).With(wide.Members).WithPoints(Points)
                .WithNarrow(narrow.Members).ToJson(),
            Data = Table(),
            Height = wide.Height,
        };
    }

    /// <summary>The words at a bar's end.</summary>
    internal string NoteOf(ChartBar bar) => bar.Note ?? (bar.From == 0
        ? $"{Rounding.Text(bar.To, 3)} {Value.Unit}".TrimEnd()
        : $"{Rounding.Text(bar.From, 3)} to {Rounding.Text(bar.To, 3)} {Value.Unit}".TrimEnd());

    private ChartPoints Points => new($"from, {Value.Label}", [$"to, {Value.Label}"],
        [new PointSeries("", 0) { Names = [.. Bars.Select(bar => bar.Name)] }]);

    private PlotlyTrace Trace()
    {
        var (plain, emphasised) = (SeriesStyle.Number(0).Colour, SeriesStyle.Number(1).Colour);
        return new PlotlyTrace("bar",
        [
            ("orientation", "h"),
            ("y", Bars.Select((_, i) => i).ToArray()),
            ("base", Bars.Select(bar => Rounding.ForChart(Math.Min(bar.From, bar.To))).ToArray()),
            ("x", Bars.Select(bar => Rounding.ForChart(Math.Abs(bar.To - bar.From))).ToArray()),
            ("width", 0.62),
            ("marker", new
            {
                color = Bars.Select(bar => bar.IsEmphasised ? emphasised : plain).ToArray(),
                pattern = new { shape = Bars.Select(bar => bar.IsEmphasised ? "/" : "").ToArray(), fgcolor = "#ffffff",
                    fillmode = "overlay", solidity = 0.18, size = 8 },
            }),
            ("text", Bars.Select(bar => PlotlyText.Escape($"{bar.Name}: {NoteOf(bar)}")).ToArray()),
            ("textposition", "none"),
            ("hovertemplate", "%{text}<extra></extra>"),
        ]);
    }

    private string Describe() =>
        $"Bar chart of {Value.Label}. {string.Join("; ", Bars.Select(bar => $"{bar.Name}: {NoteOf(bar)}"))}."
        + string.Concat(Limits.Select(limit => $" Limit: {limit.Name}."));

    private ChartTable Table() => Bars.All(bar => bar.From == 0)
        ? ChartTable.Of("", Value.Label).WithRows(Bars.Select(bar => new object?[] { bar.Name, bar.To }))
        : ChartTable.Of("", $"from, {Value.Label}", $"to, {Value.Label}")
            .WithRows(Bars.Select(bar => new object?[] { bar.Name, bar.From, bar.To }));
}

/// <summary>A value that bars are held against.</summary>
/// <param name="Name">What it is ("rated load 5 kg").</param>
/// <param name="Value">In the unit of the chart's axis.</param>
public sealed record BarLimit(string Name, double Value);

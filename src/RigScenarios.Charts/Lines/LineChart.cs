using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Lines;

/// <summary>
/// Lines over one horizontal axis, in one panel or in several above each other, with shaded and named time blocks, limits, and
/// marks that say why a line ends. Names stand at the lines' ends where there is room, otherwise in a legend.
/// </summary>
public sealed record LineChart
{
    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public required string Slug { get; init; }

    /// <summary>What the chart answers.</summary>
    public required string Title { get; init; }

    /// <summary>What to see and what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The chart in words; null makes a plain description from its lines.</summary>
    public string? AlternativeText { get; init; }

    /// <summary>The horizontal axis of all panels.</summary>
    public required ChartAxis X { get; init; }

    /// <summary>The panels from top to bottom, at least one.</summary>
    public required IReadOnlyList<ChartPanel> Panels { get; init; }

    /// <summary>Stretches of the horizontal axis with a name, from left to right.</summary>
    public IReadOnlyList<ChartBlock> Blocks { get; init; } = [];

    /// <summary>Places on the horizontal axis with a name.</summary>
    public IReadOnlyList<ChartMark> Marks { get; init; } = [];

    /// <summary>All that its horizontal axis must reach.</summary>
    internal IEnumerable<double> XValues => Panels.SelectMany(panel => panel.Lines).SelectMany(line => line.X)
        .Concat(Blocks.SelectMany(block => new[] { block.From, block.To })).Concat(Marks.Select(mark => mark.X))
        .Where(double.IsFinite);

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">There is no panel, a panel has no line, or a band or the names of
    /// points differ in number from the line's points.</exception>
    public Figure ToFigure()
    {
        Check();
        var wide = LineChartLayout.Make(this, ChartStyle.Width, isNarrow: false);
        var narrow = LineChartLayout.Make(this, ChartStyle.NarrowWidth, isNarrow: true);
        var specification = new PlotlySpecification(LineChartTraces.Make(this, wide))
            .With(wide.Members)
            .WithPoints(LineChartTraces.Points(this))
            .WithNarrow(narrow.Members, LineChartTraces.LegendChanges(this, narrow));
        return new Figure
        {
            Slug = Slug,
            Title = Title,
            Caption = Caption,
            Cautions = Cautions,
            AlternativeText = AlternativeText ?? LineChartText.Describe(this),
            Specification = specification.ToJson(),
            Data = LineChartText.Table(this),
            Height = wide.Height,
        };
    }

    private void Check()
    {
        if (Panels.Count == 0 || Panels.Any(panel => panel.Lines.Count == 0))
            throw new InvalidOperationException(
                $"The chart \"{Title}\" needs at least one panel, and each panel at least one line.");
        foreach (var line in Panels.SelectMany(panel => panel.Lines))
        {
            if ((line.Lower ?? line.Y).Count != line.Y.Count || (line.Upper ?? line.Y).Count != line.Y.Count)
                throw new InvalidOperationException(
                    $"The band of the line \"{line.Name}\" needs one value for each of its {line.Y.Count} points.");
            if (line.Kind == LineKind.BandAlone && (line.Lower is null || line.Upper is null || line.BandName is null))
                throw new InvalidOperationException($"The band \"{line.Name}\" needs both edges and the name of its band.");
            if (line.PointNames is { } names && names.Count != line.Y.Count)
                throw new InvalidOperationException(
                    $"The line \"{line.Name}\" has {names.Count} names for its {line.Y.Count} points.");
        }
    }
}

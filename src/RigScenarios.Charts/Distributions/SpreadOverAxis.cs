using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Distributions;

/// <summary>How far a result spreads along an axis: the middle of many runs at each place, and bands that hold a part of
/// them.</summary>
public sealed record SpreadOverAxis
{
    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public required string Slug { get; init; }

    /// <summary>What the chart answers.</summary>
    public required string Title { get; init; }

    /// <summary>What to see and what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>What the runs are spread along.</summary>
    public required ChartAxis X { get; init; }

    /// <summary>The result.</summary>
    public required ChartAxis Y { get; init; }

    /// <summary>The places, rising.</summary>
    public required IReadOnlyList<double> Places { get; init; }

    /// <summary>At each place the value that half of the runs lie above.</summary>
    public required IReadOnlyList<double> Middle { get; init; }

    /// <summary>The bands, at least one, the widest first.</summary>
    public required IReadOnlyList<SpreadBand> Bands { get; init; }

    /// <summary>What the result is held against.</summary>
    public IReadOnlyList<LimitLine> Limits { get; init; } = [];

    /// <summary>The finished figure.</summary>
    /// <exception cref="InvalidOperationException">There is no band, or middle and bands have not a value for each
    /// place.</exception>
    /// <exception cref="ArgumentException">There is no place.</exception>
    public Figure ToFigure()
    {
        if (Bands.Count == 0)
            throw new InvalidOperationException($"The chart \"{Title}\" needs at least one band.");
        var middle = new ChartLine("middle", Places, Middle)
        {
            Lower = Bands[0].Lower, Upper = Bands[0].Upper, BandName = Bands[0].Name, Look = 0,
        };
        return new LineChart
        {
            Slug = Slug,
            Title = Title,
            Caption = Caption,
            Cautions = Cautions,
            AlternativeText = Describe(),
            X = X,
            Panels =
            [
                new ChartPanel(Y, [middle, .. Bands.Skip(1).Select(band => new ChartLine(band.Name, Places, Middle)
                {
                    Kind = LineKind.BandAlone, Lower = band.Lower, Upper = band.Upper, BandName = band.Name, Look = 0,
                })])
                {
                    Limits = Limits,
                },
            ],
        }.ToFigure();
    }

    private string Describe() =>
        $"{Y.Label} over {X.Label}: the middle of the runs, and bands that hold a part of them. "
        + string.Join("; ", new[] { 0, Places.Count - 1 }.Distinct().Select(At)) + "."
        + string.Concat(Limits.Select(limit => $" Limit: {limit.Name}."));

    private string At(int place) => $"At {Value(X, Places[place])} the middle is {Value(Y, Middle[place])}, "
        + string.Join(", ", Bands.Select(band =>
            $"{band.Name} between {Value(Y, band.Lower[place])} and {Value(Y, band.Upper[place])}"));

    private static string Value(ChartAxis axis, double value) => AxisLayout.Text(axis, value);
}

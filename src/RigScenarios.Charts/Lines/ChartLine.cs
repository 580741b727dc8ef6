using UnitsNet;

namespace RigScenarios.Charts.Lines;

/// <summary>How a line is drawn.</summary>
public enum LineKind
{
    /// <summary>Straight from point to point.</summary>
    Curve,

    /// <summary>Each value holds until the next point.</summary>
    Steps,

    /// <summary>Single points, as for measurements.</summary>
    Points,

    /// <summary>A curve with a mark at each point that was computed or measured.</summary>
    CurveWithPoints,

    /// <summary>Only the line's band, as a further one around a line that is drawn already; it needs both edges and
    /// <see cref="ChartLine.BandName"/>.</summary>
    BandAlone,
}

/// <summary>One line of a chart. Its values are plain numbers in the units of the chart's axes.</summary>
public sealed record ChartLine
{
    /// <summary>A line from values in the axes' units.</summary>
    /// <param name="name">What the line is, as it stands at its end or in the legend.</param>
    /// <param name="x">Horizontal values; not-a-number breaks the line.</param>
    /// <param name="y">Vertical values, one for each horizontal one; not-a-number breaks the line.</param>
    /// <exception cref="ArgumentException">The two lists differ in length, or are empty.</exception>
    public ChartLine(string name, IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        if (x.Count != y.Count || x.Count == 0)
            throw new ArgumentException(
                $"The line \"{name}\" has {x.Count} horizontal and {y.Count} vertical values; it needs as many of both, at "
                    + "least one.", nameof(y));
        Name = name;
        X = x;
        Y = y;
    }

    /// <summary>What the line is.</summary>
    public string Name { get; }

    /// <summary>Horizontal values in the unit of the horizontal axis.</summary>
    public IReadOnlyList<double> X { get; }

    /// <summary>Vertical values in the unit of the panel's axis.</summary>
    public IReadOnlyList<double> Y { get; }

    /// <summary>How the line is drawn.</summary>
    public LineKind Kind { get; init; }

    /// <summary>Why the line ends where it ends ("voltage cut-off"): a cross marks the end and the words stand beside
    /// it.</summary>
    public string? EndCause { get; init; }

    /// <summary>Lower edge of a band around the line, one value a point, or null. Not-a-number leaves a gap in the band. Single
    /// points have a bar each instead of a band.</summary>
    public IReadOnlyList<double>? Lower { get; init; }

    /// <summary>Upper edge of a band around the line, one value a point, or null.</summary>
    public IReadOnlyList<double>? Upper { get; init; }

    /// <summary>What the band is ("between published fits"), as it stands at its end or in the legend; null leaves that to the
    /// caption.</summary>
    public string? BandName { get; init; }

    /// <summary>What each point stands for ("the evening on the pier"), one name a point, or null. It is read at the point and
    /// in the file of all points.</summary>
    public IReadOnlyList<string>? PointNames { get; init; }

    /// <summary>Whether the name stands in the legend in any case: for what has no end to stand beside, such as single points or
    /// a closed curve.</summary>
    public bool IsNamedInLegend { get; init; }

    /// <summary>
    /// Number of the line's look, from 0; null takes its place in the panel. Set it where one thing shows in several panels or
    /// figures, so that it looks the same in all.
    /// </summary>
    public int? Look { get; init; }

    /// <summary>A line from quantities, converted to the units of two axes made with <see cref="ChartAxis.Of"/>.</summary>
    public static ChartLine Of<TX, TY>(string name, ChartAxis x, ChartAxis y, IEnumerable<(TX X, TY Y)> points)
        where TX : IQuantity
        where TY : IQuantity
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var list = points.ToList();
        return new ChartLine(name, [.. list.Select(p => x.Value(p.X))], [.. list.Select(p => y.Value(p.Y))]);
    }
}

/// <summary>A horizontal line that results are held against: a cut-off voltage, a rated current.</summary>
/// <param name="Name">What the limit is ("plate cut-off 12.0 V").</param>
/// <param name="Value">Its value in the unit of the panel's axis.</param>
public sealed record LimitLine(string Name, double Value);

/// <summary>A stretch of the horizontal axis with a name, shaded behind all panels: a block of the shooting day.</summary>
/// <param name="Name">Name as it stands above the plot; empty where the caption says what is shaded.</param>
/// <param name="From">Begin, in the unit of the horizontal axis.</param>
/// <param name="To">End, in the unit of the horizontal axis.</param>
public sealed record ChartBlock(string Name, double From, double To)
{
    /// <summary>Whether it is shaded in any case and darker than its neighbours; otherwise every second block is.</summary>
    public bool IsEmphasised { get; init; }
}

/// <summary>A place on the horizontal axis with a name above the plot: a dashed line through all panels.</summary>
/// <param name="Name">What is there ("June 2029: 80 % left").</param>
/// <param name="X">Where, in the unit of the horizontal axis.</param>
public sealed record ChartMark(string Name, double X);

/// <summary>One of the plots that stand above each other in a line chart, with a vertical axis of its own.</summary>
/// <param name="Y">The vertical axis; its title stands above the panel.</param>
/// <param name="Lines">The lines, at least one.</param>
public sealed record ChartPanel(ChartAxis Y, IReadOnlyList<ChartLine> Lines)
{
    /// <summary>Limits that the lines are held against.</summary>
    public IReadOnlyList<LimitLine> Limits { get; init; } = [];
}

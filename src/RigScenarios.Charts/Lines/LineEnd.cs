using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Lines;

/// <summary>Where a line, or the edge of its band, ends, and what is to stand there.</summary>
/// <param name="Name">By which the legend knows it.</param>
/// <param name="Text">The words, escaped.</param>
/// <param name="Colour">Of the words.</param>
/// <param name="X">Horizontal value of the end.</param>
/// <param name="Y">Vertical value of the end.</param>
internal sealed record LineEnd(string Name, string Text, string Colour, double X, double Y)
{
    /// <summary>The last place at which both values are numbers.</summary>
    public static LineEnd Of(ChartLine line, IReadOnlyList<double> values, string name, string text, string colour)
    {
        var last = line.X.Count - 1;
        while (last > 0 && !double.IsFinite(line.X[last] + values[last]))
            last--;
        return new LineEnd(name, text, colour, line.X[last], values[last]);
    }

    /// <summary>Whether it ends so near the plot's right edge that its words stand in the margin.</summary>
    public bool IsAtEdge(AxisRange x) => x.Fraction(X) > 0.97;

    public (double X, double Y) Pixel(PlotArea area) => area.Pixel(X, Y);
}

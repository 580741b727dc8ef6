using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Lines;

/// <summary>What is drawn of a line, in pixels, so that no words are put over it: the line, and the edges of its band or the bars
/// of its points.</summary>
internal static class LinePixels
{
    public static IEnumerable<IReadOnlyList<(double X, double Y)>> Of(ChartLine line, PlotArea area)
    {
        yield return Curve(line, line.Y, area);
        if (line is not { Lower: { } lower, Upper: { } upper })
            yield break;
        if (line.Kind == LineKind.Points)
        {
            for (var i = 0; i < line.X.Count; i++)
                yield return [area.Pixel(line.X[i], lower[i]), area.Pixel(line.X[i], upper[i])];
            yield break;
        }

        yield return Curve(line, lower, area);
        yield return Curve(line, upper, area);
    }

    private static List<(double X, double Y)> Curve(ChartLine line, IReadOnlyList<double> values, PlotArea area)
    {
        var points = new List<(double X, double Y)>();
        for (var i = 0; i < line.X.Count; i++)
        {
            if (line.Kind == LineKind.Steps && i > 0)
                points.Add(area.Pixel(line.X[i], values[i - 1]));
            points.Add(area.Pixel(line.X[i], values[i]));
        }

        return points;
    }
}

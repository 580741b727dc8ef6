using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Placement;

/// <summary>A name in one of the rows above a plot: where its text begins, in pixels, and in which row from below.</summary>
internal sealed record NamePlace(double Left, int Row);

/// <summary>Sets names above a plot in as many rows as they need: each as near as can be to what it names, none over
/// another.</summary>
internal static class NameRows
{
    private const double Gap = 10;

    /// <param name="names">Each with the middle of what it names, in pixels, from left to right.</param>
    /// <param name="width">Width of the plot in pixels; no name leaves it unless it is wider by itself.</param>
    public static IReadOnlyList<NamePlace> Place(IReadOnlyList<(string Name, double Middle)> names, double width)
    {
        var rowEnds = new List<double>();
        var places = new List<NamePlace>();
        foreach (var (name, middle) in names)
        {
            var text = ChartStyle.TextWidth(name, ChartStyle.FontSize - 1);
            var left = Math.Max(0, Math.Min(middle - text / 2, width - text));
            var row = rowEnds.FindIndex(end => end + Gap <= left);
            if (row < 0)
            {
                row = rowEnds.Count;
                rowEnds.Add(0);
            }

            rowEnds[row] = left + text;
            places.Add(new NamePlace(left, row));
        }

        return places;
    }
}

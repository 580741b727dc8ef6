using System.Text;
using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Lines;

/// <summary>A line chart in words and as a table.</summary>
internal static class LineChartText
{
    // More rows than this nobody reads beside a chart; those who want every point take the scenario's own results.
    private const int MostRowsALine = 25;

    /// <summary>Each line with its first and last value and why it ends.</summary>
    public static string Describe(LineChart chart)
    {
        var text = new StringBuilder($"Line chart of {string.Join(", ", chart.Panels.Select(p => p.Y.Label))} over "
            + $"{chart.X.Label}.");
        foreach (var panel in chart.Panels)
        {
            foreach (var line in panel.Lines)
            {
                text.Append($" {line.Name}: from {AxisLayout.Text(panel.Y, line.Y[0])} at {AxisLayout.Text(chart.X,
                    line.X[0])} to "
                    + $"{AxisLayout.Text(panel.Y, line.Y[^1])} at {AxisLayout.Text(chart.X, line.X[^1])}");
                if (line is { Lower: { } lower, Upper: { } upper, Kind: not LineKind.Points })
                    text.Append($", between {AxisLayout.Text(panel.Y, lower[^1])} and {AxisLayout.Text(panel.Y, upper[^1])}");
                text.Append(line.EndCause is null ? "." : $", where it ends: {line.EndCause}.");
            }

            foreach (var limit in panel.Limits)
                text.Append($" Limit: {limit.Name}.");
        }

        foreach (var mark in chart.Marks)
            text.Append($" Mark at {AxisLayout.Text(chart.X, mark.X)}: {mark.Name}.");

        return text.ToString();
    }

    /// <summary>The points of all lines; of a line with very many, evenly spread ones with the first and the last.</summary>
    public static ChartTable Table(LineChart chart)
    {
        var hasBands = chart.Panels.Any(panel => panel.Lines.Any(line => line is { Lower: not null, Upper: not null }));
        string[] edges = hasBands ? ["lowest", "highest"] : [];
        var table = ChartTable.Of(["line", chart.X.Label, "value", .. edges, "of"]).WithRows(
            from panel in chart.Panels
            from line in panel.Lines
            from i in Rows(line.X.Count)
            let name = line.PointNames is { } names ? $"{line.Name}: {names[i]}" : line.Name
            let band = hasBands ? new[] { Number(panel.Y, line.Lower?[i]), Number(panel.Y, line.Upper?[i]) } : []
            select (object?[])[name, Number(chart.X, line.X[i]), Number(panel.Y, line.Y[i]), .. band, panel.Y.Label]);
        var isThinned = chart.Panels.Any(panel => panel.Lines.Any(line => line.X.Count > MostRowsALine));
        return isThinned ? table with { Caption = $"At most {MostRowsALine} points of each line, evenly picked." } : table;
    }

    private static IEnumerable<int> Rows(int count) => count <= MostRowsALine
        ? Enumerable.Range(0, count)
        : Enumerable.Range(0, MostRowsALine).Select(i => (int)Math.Round(i * (count - 1) / (MostRowsALine - 1.0)));

    private static object? Number(ChartAxis axis, double? value) =>
        axis.Scale == AxisScale.Clock && value is { } hour && double.IsFinite(hour) ? AxisLayout.ClockText(hour) : value;
}

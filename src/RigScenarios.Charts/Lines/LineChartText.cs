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
                text.Append($" {line.Name}: from {Value(panel.Y, line.Y[0])} at {Value(chart.X, line.X[0])} to "
                    + $"{Value(panel.Y, line.Y[^1])} at {Value(chart.X, line.X[^1])}");
                text.Append(line.EndCause is null ? "." : $", where it ends: {line.EndCause}.");
            }

            foreach (var limit in panel.Limits)
                text.Append($" Limit: {limit.Name}.");
        }

        return text.ToString();
    }

    /// <summary>The points of all lines; of a line with very many, evenly spread ones with the first and the last.</summary>
    public static ChartTable Table(LineChart chart)
    {
        var table = ChartTable.Of("line", chart.X.Label, "value", "of").WithRows(
            from panel in chart.Panels
            from line in panel.Lines
            from i in Rows(line.X.Count)
            select new object?[] { line.Name, Number(chart.X, line.X[i]), line.Y[i], panel.Y.Label });
        var isThinned = chart.Panels.Any(panel => panel.Lines.Any(line => line.X.Count > MostRowsALine));
        return isThinned ? table with { Caption = $"At most {MostRowsALine} points of each line, evenly picked." } : table;
    }

    private static IEnumerable<int> Rows(int count) => count <= MostRowsALine
        ? Enumerable.Range(0, count)
        : Enumerable.Range(0, MostRowsALine).Select(i => (int)Math.Round(i * (count - 1) / (MostRowsALine - 1.0)));

    private static object Number(ChartAxis axis, double value) =>
        axis.Scale == AxisScale.Clock ? AxisLayout.ClockText(value) : value;

    private static string Value(ChartAxis axis, double value) => axis.Scale == AxisScale.Clock
        ? AxisLayout.ClockText(value)
        : $"{Rounding.Text(value)} {axis.Unit}".TrimEnd();
}

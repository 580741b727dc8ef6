using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.ParallelAxes;

/// <summary>A picture of many scenarios in words and as numbers.</summary>
internal static class ParallelAxesText
{
    public static string Caption(ParallelAxesChart chart)
    {
        List<string> words = chart.Caption.Length > 0 ? [chart.Caption] : [];
        words.Add($"A line for each of {chart.Count} scenarios; the colour counts how many pass there, none left out.");
        var unknown = Enumerable.Range(0, chart.Count)
            .Count(line => chart.Axes.Any(axis => !double.IsFinite(axis.Values[line])));
        if (unknown > 0)
            words.Add($"Of {unknown} of them a value is not known: their lines break off there.");
        foreach (var axis in chart.Axes.Where(axis => axis.Names is not null))
            words.Add($"{axis.Axis.Title}: {string.Join(", ", axis.Names!.Select((name, i) => $"{i + 1} {name}"))}.");
        return string.Join(' ', words);
    }

    public static string Describe(ParallelAxesChart chart, ParallelLines lines)
    {
        var groups = lines.Groups.Count == 1 ? "" : " Drawn apart: "
            + string.Join("; ", lines.Groups.Select(group => $"{group.Name}: {group.Lines.Count}")) + ".";
        return $"{chart.Count} scenarios as lines over {string.Join(", ", chart.Axes.Select(axis => axis.Axis.Label))}.{groups} "
            + string.Join("; ", chart.Axes.Where(axis => axis.Names is null).Select(axis => $"{axis.Axis.Title} from "
                + $"{AxisLayout.Text(axis.Axis, axis.Range().Low)} to {AxisLayout.Text(axis.Axis, axis.Range().High)}")) + ".";
    }

    /// <summary>Of each axis and group the least, the greatest and the values in between that part its scenarios.</summary>
    public static ChartTable Table(ParallelAxesChart chart, ParallelLines lines) =>
        ChartTable.Of("", "scenarios", "how many", "lowest", "1 of 10 below", "middle", "1 of 10 above", "highest").WithRows(
            from axis in chart.Axes
            where axis.Names is null
            from drawn in lines.Groups
            let sorted = drawn.Lines.Select(line => axis.Values[line]).Where(double.IsFinite).Order().ToList()
            where sorted.Count > 0
            select (object?[])[axis.Axis.Label, drawn.Name.Length > 0 ? drawn.Name : "all", sorted.Count,
                .. new[] { 0, 0.1, 0.5, 0.9, 1 }.Select(part => Cell(axis.Axis,
                    sorted[(int)Math.Round(part * (sorted.Count - 1))]))]);

    /// <summary>How many scenarios lie on each step of each axis: what the picture is made of, without the room
    /// between.</summary>
    public static ChartPoints Points(ParallelAxesChart chart, ParallelLines lines) =>
        PointRows.Of(["axis", "from", "to", "scenarios", "how many"],
            from numbered in chart.Axes.Index()
            from drawn in lines.Groups
            let range = numbered.Item.Range()
            let step = (range.High - range.Low) / ParallelAxesChart.Steps
            from counted in lines.CountsOn(numbered.Index, drawn).Index()
            where counted.Item > 0
            select (IReadOnlyList<object?>)[numbered.Item.Axis.ColumnTitle,
                PointRows.Number(range.Low + counted.Index * step), PointRows.Number(range.Low + (counted.Index + 1) * step),
                drawn.Name.Length > 0 ? drawn.Name : "all", counted.Item]);

    private static object Cell(ChartAxis axis, double value) =>
        axis.Scale == AxisScale.Clock ? AxisLayout.Text(axis, value) : value;
}

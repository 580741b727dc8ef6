using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.ParallelAxes;

/// <summary>A picture of many scenarios in words and as numbers.</summary>
internal static class ParallelAxesText
{
    // A caption with more names than these nobody reads.
    private const int MostNames = 12;

    public static string Caption(ParallelAxesChart chart, ParallelLines lines)
    {
        List<string> words = chart.Caption.Length > 0 ? [chart.Caption] : [];
        words.Add($"A line for each of {chart.Count} scenarios; the colour counts how many pass there, none left out.");
        var unknown = lines.Unknown;
        if (unknown > 0)
            words.Add($"Of {unknown} of them a value is not known: their lines break off there.");
        foreach (var axis in chart.Axes.Where(axis => axis.Names is not null))
        {
            var (names, more) = (axis.Names!.Take(MostNames), axis.Names!.Count - MostNames);
            words.Add($"{axis.Axis.Title}: {string.Join(", ", names.Select((name, i) => $"{i + 1} {name}"))}"
                + (more > 0 ? $" and {more} more." : "."));
        }
        return string.Join(' ', words);
    }

    public static string Describe(ParallelAxesChart chart, ParallelLines lines)
    {
        var groups = lines.Groups.Count == 1 ? "" : " Drawn apart: "
            + string.Join("; ", lines.Groups.Select(group => $"{group.Name}: {group.Lines.Length}")) + ".";
        return $"{chart.Count} scenarios as lines over {string.Join(", ", chart.Axes.Select(axis => axis.Axis.Label))}.{groups} "
            + string.Join("; ", chart.Axes.Index().Where(axis => axis.Item.Names is null).Select(axis =>
                $"{axis.Item.Axis.Title} from {AxisLayout.Text(axis.Item.Axis, lines.Ranges[axis.Index].Low)} to "
                + AxisLayout.Text(axis.Item.Axis, lines.Ranges[axis.Index].High))) + ".";
    }

    /// <summary>Of each axis and group the least, the greatest and the values in between that part its scenarios.</summary>
    public static ChartTable Table(ParallelAxesChart chart, ParallelLines lines) =>
        ChartTable.Of("", "scenarios", "how many", "lowest", "1 of 10 below", "middle", "1 of 10 above", "highest").WithRows(
            from numbered in chart.Axes.Index()
            where numbered.Item.Names is null
            from drawn in lines.Groups
            let axis = numbered.Item
            let sorted = lines.Sorted(numbered.Index, drawn)
            where sorted.Length > 0
            select (object?[])[axis.Axis.Label, drawn.Name.Length > 0 ? drawn.Name : "all", sorted.Length,
                .. new[] { 0, 0.1, 0.5, 0.9, 1 }.Select(part => Cell(axis.Axis,
                    sorted[(int)Math.Round(part * (sorted.Length - 1))]))]);

    /// <summary>How many scenarios lie on each step of each axis: what the picture is made of, without the room between. Each
    /// axis has its own columns, for each has its own unit: the middle of the step, or its name, and the number of each
    /// group.</summary>
    public static ChartPoints Points(ParallelAxesChart chart, ParallelLines lines)
    {
        List<string> titles = [];
        List<Func<int, object?>> columns = [];
        foreach (var (number, axis) in chart.Axes.Index())
        {
            var (steps, range) = (axis.Names?.Count ?? ParallelAxesChart.Steps, lines.Ranges[number]);
            titles.Add(axis.Axis.ColumnTitle);
            columns.Add(step => step >= steps ? null : axis.Names is { } names ? names[step]
                : PointRows.Number(range.Low + (step + 0.5) * (range.High - range.Low) / steps));
            foreach (var drawn in lines.Groups)
            {
                var counts = lines.CountsOn(number, drawn, steps);
                titles.Add($"{(drawn.Name.Length > 0 ? drawn.Name : "scenarios")}, on {axis.Axis.Title}");
                columns.Add(step => step >= steps ? null : counts[step]);
            }
        }

        var rows = Math.Max(ParallelAxesChart.Steps, chart.Axes.Max(axis => axis.Names?.Count ?? 0));
        return PointRows.Of(titles, Enumerable.Range(0, rows).Select(step => (IReadOnlyList<object?>)
            [.. columns.Select(column => column(step))]));
    }

    private static object Cell(ChartAxis axis, double value) =>
        axis.Scale == AxisScale.Clock ? AxisLayout.Text(axis, value) : value;
}

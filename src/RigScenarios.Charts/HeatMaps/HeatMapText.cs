using System.Globalization;

namespace RigScenarios.Charts.HeatMaps;

/// <summary>A heat map in words and as a table.</summary>
internal static class HeatMapText
{
    /// <summary>Whether the map has values on both sides of its threshold.</summary>
    public static bool Crosses(HeatMapChart chart)
    {
        var cells = Finite(chart);
        return chart.Threshold is { } threshold && cells.Exists(v => v < threshold.Value)
            && cells.Exists(v => v >= threshold.Value);
    }

    /// <summary>The caption, with what a reader could not see otherwise: what blank cells are, and a threshold that is nowhere
    /// crossed.</summary>
    public static string Caption(HeatMapChart chart)
    {
        var sentences = new List<string>();
        if (chart.Caption.Length > 0)
            sentences.Add(chart.Caption);
        if (chart.BlankMeans is { } blank && Finite(chart).Count < chart.Rows.Count * chart.Columns.Count)
            sentences.Add($"Blank: {blank}.");
        if (chart.Threshold is { } threshold && Finite(chart).Count > 0 && !Crosses(chart))
            sentences.Add($"All values shown lie {(Finite(chart)[0] < threshold.Value ? "below" : "at or above")} "
                + $"\"{threshold.Name}\".");
        return string.Join(' ', sentences);
    }

    public static string Describe(HeatMapChart chart)
    {
        var cells = Finite(chart);
        var range = cells.Count == 0 ? "no values"
            : $"from {Rounding.Text(cells.Min())} to {Rounding.Text(cells.Max())} {chart.Value.Unit}".TrimEnd();
        return $"Heat map of {chart.Value.Title} over {chart.X.Label} and {chart.Y.Label}: {range}.";
    }

    public static ChartTable Table(HeatMapChart chart)
    {
        var titles = chart.Columns.Select(column => $"{Rounding.Text(column)} {chart.X.Unit}".TrimEnd());
        return (ChartTable.Of([chart.Y.Label, .. titles]) with { Caption = $"{chart.Value.Label}; columns: {chart.X.Label}" })
            .WithRows(chart.Rows.Select((row, i) => (object?[])[row, .. chart.Cells[i].Cast<object>()]));
    }

    /// <summary>The texts in the cells, row by row: all with the same decimals, three digits for the largest; blank cells
    /// empty.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> CellTexts(HeatMapChart chart)
    {
        var largest = Finite(chart).Select(Math.Abs).DefaultIfEmpty(1).Max();
        var decimals = largest == 0 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(largest)), 0, 6);
        return [.. chart.Cells.Select(row => row.Select(value => CellText(value, decimals)).ToList())];
    }

    private static string CellText(double value, int decimals)
    {
        if (!double.IsFinite(value))
            return "";
        var text = Math.Abs(value).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return value < 0 ? Rounding.Minus + text : text;
    }

    private static List<double> Finite(HeatMapChart chart) => [.. chart.Cells.SelectMany(row => row).Where(double.IsFinite)];
}

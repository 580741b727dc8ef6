using System.Globalization;
using RigScenarios.Answers.Years;
using RigScenarios.Cells.Aging;
using RigScenarios.Charts.Bars;

namespace RigScenarios.Charts.Aging;

/// <summary>Ways to keep a battery side by side: how many years until 80 % of its capacity is left.</summary>
public static class StoragePlaces
{
    /// <summary>The figure; the way of now is emphasised.</summary>
    /// <param name="years">The years ahead.</param>
    /// <param name="title">What the chart answers.</param>
    public static Figure Of(YearsResult years, string title)
    {
        ArgumentNullException.ThrowIfNull(years);
        return new BarChart
        {
            Slug = "storage-places",
            Title = title,
            Caption = "Each bar is computed, used as now; hatched: the way of now.",
            Cautions = [YearsSentences.Fridge],
            Value = new ChartAxis("time until 80 % is left", "years") { FromZero = true },
            Bars = [.. years.Storage.Select(way => Bar(way, years.From))],
        }.ToFigure();
    }

    private static ChartBar Bar(StorageCase way, DateOnly from)
    {
        var furthest = LifeResult.Furthest.Days / DaysOfYear;
        var time = way.Eighty is { } date ? (date.DayNumber - from.DayNumber) / DaysOfYear : furthest;
        return new ChartBar(YearsSentences.Way(way), time)
        {
            Note = way.Eighty is null ? $"more than {furthest.ToString("0", CultureInfo.InvariantCulture)} years"
                : $"{Rounding.Text(time, 2)} years",
            IsEmphasised = way.IsAsNow,
        };
    }

    private const double DaysOfYear = 365.25;
}

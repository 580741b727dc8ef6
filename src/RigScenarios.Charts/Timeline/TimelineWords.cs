using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Charts.Timeline;

/// <summary>A timeline in words and numbers.</summary>
internal static class TimelineWords
{
    public static string DayTitle(DayPlan plan, int number) =>
        plan.Days[number - 1].Title is { } title ? $"Day {number}: {title}" : $"Day {number}";

    /// <summary>Whether a day completes, and where it first breaks.</summary>
    public static string Outcome(SimulationResult result, int number)
    {
        var first = result.DownTimes.FirstOrDefault(down => down.Day == number && !down.IsPlanned);
        return first is null ? "lasts" : $"stops at {AnswerTimes.Clock(first.Start)}";
    }

    /// <summary>Whole percent, without the sign.</summary>
    public static string Number(Ratio share) => Rounding.Text(Math.Round(share.Percent), 3);

    public static string Caption(SimulationResult result)
    {
        var night = result.Days.Count > 1 ? " Nights are pressed together." : "";
        return $"In a battery's row the line is its charge, from empty at the foot to full at the top; numbers are percent of "
            + $"what it holds today.{night}";
    }

    public static string Alternative(DayPlan plan, SimulationResult result)
    {
        var days = result.Days.Select(day =>
            $"{DayTitle(plan, day.Number)}, {AnswerTimes.Clock(day.Start)} to "
            + $"{AnswerTimes.Clock(day.End)}: {Outcome(result, day.Number)}, "
            + $"{result.Swaps.Count(swap => swap.Day == day.Number)} swaps; at its end "
                + $"{string.Join(", ", day.ChargeAtEnd.Select(item => $"{item.Key} {Number(item.Value)} %"))}.");
        return $"Timeline of {result.Batteries.Count} batteries over {result.Days.Count} days. {string.Join(" ", days)}";
    }

    public static ChartTable Table(DayPlan plan, SimulationResult result)
    {
        var times = new AnswerTimes(plan.Days);
        var rows = result.Batteries.SelectMany(battery => battery.Value.Spans.Select(span => new object?[]
        {
            $"{battery.Key}, {plan.Batteries[battery.Key].Part.Name}", span.Place.InWords(), times.At(span.Start),
            times.At(span.End),
            Math.Round(span.ChargeAtStart.Percent, 1), Math.Round(span.ChargeAtEnd.Percent, 1),
            Math.Round(span.TemperatureAtStart.DegreesCelsius, 1), Math.Round(span.TemperatureAtEnd.DegreesCelsius, 1),
        }));
        return ChartTable.Of("battery", "where", "from", "to", "charge from (%)", "to (%)", "its temperature from (°C)",
            "to (°C)").WithRows(rows);
    }
}

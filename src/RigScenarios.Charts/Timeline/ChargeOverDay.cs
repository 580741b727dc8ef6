using RigScenarios.Charts.Lines;
using RigScenarios.Days;
using RigScenarios.Simulation;
using UnitsNet.Units;

namespace RigScenarios.Charts.Timeline;

/// <summary>The charge of each battery over the days.</summary>
public static class ChargeOverDay
{
    /// <summary>A line for each battery; the days are shaded.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="result">How it went; of this plan.</param>
    /// <param name="title">What the chart answers.</param>
    public static Figure Of(DayPlan plan, SimulationResult result, string title = "How full is each battery?")
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(result);
        var axis = ChartAxis.Of("charge", RatioUnit.Percent) with { From = 0, To = 100 };
        var limits = new List<LimitLine>();
        if (plan.Swaps.Reserve is { } reserve)
            limits.Add(new LimitLine($"swap wanted at {TradeUnits.Text(reserve)}", axis.Value(reserve)));
        limits.Add(new LimitLine($"least charge to go on {TradeUnits.Text(plan.Swaps.LeastCharge)}",
            axis.Value(plan.Swaps.LeastCharge)));
        return new LineChart
        {
            Slug = "charge-over-the-days",
            Title = title,
            Caption = "Percent of what each battery holds at its age, not of what it held new.",
            Cautions = TimelineCautions.Of(plan, result),
            AlternativeText = $"Line chart of the charge (%) of {result.Batteries.Count} batteries "
                + $"over {result.Days.Count} days. "
                + string.Join(" ", result.Days.Select(Begin)),
            X = ChartAxis.ClockTime(),
            Blocks = [.. result.Days.Select(day => new ChartBlock($"day {day.Number}", day.Start.Hours, day.End.Hours))],
            Panels =
            [
                new ChartPanel(axis, [.. result.Batteries.Select((battery, i) => new ChartLine(
                    battery.Key, [.. battery.Value.Charges.Select(point => point.Time.Hours)],
                    [.. battery.Value.Charges.Select(point => axis.Value(point.Charge))]) { Look = i })]) { Limits = limits },
            ],
        }.ToFigure();
    }

    private static string Begin(DayOutcome day)
    {
        var charges = day.ChargeAtStart.Select(item => $"{item.Key} {TimelineWords.Number(item.Value)} %");
        return $"Day {day.Number} starts with {string.Join(", ", charges)}.";
    }
}

using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Charts.Lines;
using UnitsNet.Units;

namespace RigScenarios.Charts.Days;

/// <summary>A day on one battery: voltage, charge and power through its blocks, and where and why it ends.</summary>
public static class DayChart
{
    /// <summary>The day's figure: three panels above each other over one time axis.</summary>
    /// <param name="result">A day's result with its series.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="starts">When the first block begins, for clock times; null counts hours from the start of the day.</param>
    /// <exception cref="ArgumentException">The result has no series, because it was run for its end only.</exception>
    public static Figure Of(DayResult result, string title, TimeOnly? starts = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Series.Count == 0)
            throw new ArgumentException("The result has no series to draw: run the day with DayRunOptions whose SeriesPoints is greater than 0.", nameof(result));
        var first = starts?.ToTimeSpan().TotalHours ?? 0;
        var hours = result.Series.Select(point => first + point.Time.Hours).ToList();
        var chart = new LineChart
        {
            Slug = "day",
            Title = title,
            Caption = $"{DayInWords.Of(result, starts)} The numbers along the top are the blocks of the day: {BlockKey(result)}.",
            Cautions = DayCautions.Of(result),
            AlternativeText = $"Line chart of battery voltage (V), charge left (%) and power drawn (W) over the day. {DayInWords.Of(result, starts)} "
                + $"The voltage goes from {TradeUnits.Text(result.Series[0].Voltage)} to {TradeUnits.Text(result.Series[^1].Voltage)}, the charge from "
                + $"{DayInWords.Percent(result.Series[0].StateOfCharge)} to {DayInWords.Percent(result.Series[^1].StateOfCharge)}.",
            X = starts is null ? new ChartAxis("time from the start of the day", "h") : ChartAxis.ClockTime(),
            Panels = [Voltage(result, hours), Charge(result, hours), Power(result, hours, starts)],
            Blocks = [.. result.Blocks.Select((block, i) => new ChartBlock(Number(i), first + block.Start.Hours, first + block.End.Hours))],
        };
        return chart.ToFigure();
    }

    private static ChartPanel Voltage(DayResult result, List<double> hours)
    {
        var axis = ChartAxis.Of("battery voltage", ElectricPotentialUnit.Volt);
        var last = result.Series[^1].Voltage;
        // At this end the last voltage is the pack's cut-off itself, given or assumed; no other result tells it.
        var isCutOff = !result.ReachesEnd && result.PackEndCause == EndCause.VoltageCutoff;
        return new ChartPanel(axis, [new ChartLine("battery", hours, [.. result.Series.Select(point => axis.Value(point.Voltage))]) { EndCause = result.ReachesEnd ? "end of the day" : result.EndCause }])
        {
            Limits = isCutOff ? [new LimitLine($"cut-off {TradeUnits.Text(last)}", axis.Value(last))] : [],
        };
    }

    private static ChartPanel Charge(DayResult result, List<double> hours)
    {
        var axis = ChartAxis.Of("charge left", RatioUnit.Percent) with { From = 0, To = 100 };
        return new ChartPanel(axis, [new ChartLine("charge", hours, [.. result.Series.Select(point => axis.Value(point.StateOfCharge))])
        {
            EndCause = $"{DayInWords.Percent(result.ChargeLeft)} left",
        }]);
    }

    private static ChartPanel Power(DayResult result, List<double> hours, TimeOnly? starts)
    {
        var axis = ChartAxis.Of("power drawn from the battery", PowerUnit.Watt) with { FromZero = true };
        return new ChartPanel(axis, [new ChartLine("power", hours, [.. result.Series.Select(point => axis.Value(point.Power))])
        {
            EndCause = result.ReachesEnd ? null : $"stops {DayInWords.Moment(result.Runtime, starts)}",
        }]);
    }

    // Names of a dozen blocks do not fit side by side above the plot; their numbers do, and the caption has the names.
    private static string BlockKey(DayResult result) =>
        string.Join(", ", result.Blocks.Select((block, i) => $"({Number(i)})\u00a0{block.Title}"));

    private static string Number(int index) => Rounding.Text(index + 1, 6);
}

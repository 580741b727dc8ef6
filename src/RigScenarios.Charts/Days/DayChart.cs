using RigScenarios.Answers;
using RigScenarios.Charts.Lines;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Days;

/// <summary>The days of an answer: voltage, charge and power of the battery on the rig, and where and why it stops.</summary>
public static class DayChart
{
    /// <summary>The figure: three panels above each other over one time axis.</summary>
    /// <param name="answer">An answer with its series.</param>
    /// <param name="title">What the chart answers.</param>
    /// <exception cref="ArgumentException">The answer has no series, because it was made for its end only.</exception>
    public static Figure Of(RigAnswer answer, string title)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var series = answer.Simulation.Series;
        if (series.Count == 0)
            throw new ArgumentException(
                "The answer has no series to draw: make it with AnswerOptions whose SeriesPoints is greater than 0.",
                nameof(answer));
        var (time, words) = (new TimeOfDays(answer), AnswerSentences.Questions(answer)[0].Words);
        var points = Points(answer, time);
        return new LineChart
        {
            Slug = "day",
            Title = title,
            Caption = $"{words} {time.Key}".TrimEnd(),
            Cautions = DayCautions.Of(answer),
            AlternativeText = $"Line chart of battery voltage (V), charge left (%) and power drawn (W) over "
                + $"{(answer.Plan.Days.Count == 1 ? "the day" : $"{answer.Plan.Days.Count} days")}. {words} "
                + $"The voltage goes from {TradeUnits.Text(series[0].Voltage)} to {TradeUnits.Text(series[^1].Voltage)}, the "
                    + "charge from "
                + $"{Percent(series[0].StateOfCharge)} to {Percent(series[^1].StateOfCharge)}.",
            X = time.Axis,
            Panels = [Voltage(answer, points), Charge(answer, points), Power(answer, points)],
            Blocks = time.Blocks,
        }.ToFigure();
    }

    private static ChartPanel Voltage(RigAnswer answer, DrawnPoints points)
    {
        var axis = ChartAxis.Of("battery voltage", ElectricPotentialUnit.Volt);
        var end = answer.Simulation.Completes ? "wrap" : StopAtEnd(answer) is { } stop
            ? AnswerSentences.Because(answer, stop.Reason) : null;
        var cutOff = answer.Simulation.FirstStop?.Reason.Kind == StopKind.VoltageCutoff
            ? answer.Simulation.Limits.FirstOrDefault(limit => limit is { Kind: LimitKind.CutOff,
                Allowed: not null })?.Allowed as ElectricPotential? : null;
        return new ChartPanel(axis, [Line("battery", points, point => axis.Value(point.Voltage)) with { EndCause = end }])
        {
            Limits = cutOff is { } volts ? [new LimitLine($"cut-off {TradeUnits.Text(volts)}", axis.Value(volts))] : [],
        };
    }

    private static ChartPanel Charge(RigAnswer answer, DrawnPoints points)
    {
        var axis = ChartAxis.Of("charge left", RatioUnit.Percent) with { From = 0, To = 100 };
        return new ChartPanel(axis, [Line("charge", points, point => axis.Value(point.StateOfCharge)) with
        {
            EndCause = $"{Percent(answer.Simulation.Series[^1].StateOfCharge)} left",
        }]);
    }

    private static ChartPanel Power(RigAnswer answer, DrawnPoints points)
    {
        var axis = ChartAxis.Of("power drawn from the battery", PowerUnit.Watt) with { FromZero = true };
        return new ChartPanel(axis, [Line("power", points, point => axis.Value(point.Power)) with
        {
            EndCause = StopAtEnd(answer) is { } stop ? $"stops {new AnswerTimes(answer.Plan.Days).When(stop.At)}" : null,
        }]);
    }

    private static ChartLine Line(string name, DrawnPoints drawn, Func<SeriesPoint, double> value)
    {
        var values = new double[drawn.Points.Count];
        for (var i = 0; i < values.Length; i++)
            values[i] = drawn.Points[i] is { } point ? value(point) : double.NaN;
        return new ChartLine(name, drawn.Hours, values);
    }

    // Nights and swaps break the line: between two batteries nothing was drawn.
    private static DrawnPoints Points(RigAnswer answer, TimeOfDays time)
    {
        var (series, stretches) = (answer.Simulation.Series, answer.Simulation.Stretches);
        List<double> hours = [];
        List<SeriesPoint?> points = [];
        for (var i = 0; i < series.Count; i++)
        {
            var point = series[i];
            if (i > 0 && (point.Battery != series[i - 1].Battery
                || stretches[point.Stretch].Day != stretches[series[i - 1].Stretch].Day))
            {
                hours.Add(time.Hour(series[i - 1].Time));
                points.Add(null);
            }
            hours.Add(time.Hour(point.Time));
            points.Add(point);
        }
        return new(hours, points);
    }

    /// <summary>The stop with which the series ends; null where it goes on to the last wrap, and where the rig ran again after a
    /// stop.</summary>
    private static DeviceStop? StopAtEnd(RigAnswer answer)
    {
        var last = answer.Simulation.Series[^1].Time;
        return answer.Simulation.Devices.Values.Where(device => device is { Essential: true, FirstStop: not null })
            .Select(device => device.FirstStop!).Where(stop => Math.Abs((last - stop.At).Minutes) < 1)
                .MinBy(stop => stop.At.Seconds);
    }

    private static string Percent(Ratio share) => $"{Rounding.Text(Math.Round(share.Percent), 3)} %";

    /// <summary>The points that all panels draw; null where the lines break.</summary>
    private sealed record DrawnPoints(IReadOnlyList<double> Hours, IReadOnlyList<SeriesPoint?> Points);
}

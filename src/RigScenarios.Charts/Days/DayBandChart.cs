using RigScenarios.Answers;
using RigScenarios.Charts.Lines;
using RigScenarios.Simulation;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Days;

/// <summary>The days of an answer with what is not known of the battery: voltage and charge, between the same days with a weaker
/// and with a stronger battery.</summary>
public static class DayBandChart
{
    /// <summary>The figure: voltage above, charge left below, and a mark wherever one of the three stops.</summary>
    /// <param name="answer">The answer, with its series.</param>
    /// <param name="weaker">The same days with the battery at its weakest, with their series.</param>
    /// <param name="stronger">The same days with the battery at its strongest, with their series.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="band">What the band is ("95 % of what your notes allow").</param>
    /// <exception cref="ArgumentException">One of them has no series, because it was made for its end only.</exception>
    public static Figure Of(RigAnswer answer, RigAnswer weaker, RigAnswer stronger, string title, string band)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(weaker);
        ArgumentNullException.ThrowIfNull(stronger);
        RigAnswer[] all = [weaker, answer, stronger];
        if (all.Any(one => one.Simulation.Series.Count == 0))
            throw new ArgumentException("An answer has no series to draw: make all three with AnswerOptions whose SeriesPoints "
                + "is greater than 0.", nameof(answer));
        var time = new TimeOfDays(answer);
        var voltage = ChartAxis.Of("battery voltage", ElectricPotentialUnit.Volt);
        var charge = ChartAxis.Of("charge left", RatioUnit.Percent) with { From = 0, To = 100 };
        return new LineChart
        {
            Slug = "day-band",
            Title = title,
            Caption = $"{AnswerSentences.Questions(answer)[0].Words} The pale band: {band}; where its edge goes on level, the "
                + $"rig has stopped in that case. {time.Key}".TrimEnd(),
            Cautions = DayCautions.Of([.. all.Select(one => one.Simulation)]),
            X = time.Axis,
            Panels =
            [
                new ChartPanel(voltage,
                    [Line("voltage", all, time, point => voltage.Value(point.Voltage)) with { BandName = band }]),
                new ChartPanel(charge,
                    [Line("charge", all, time, point => charge.Value(point.StateOfCharge)) with { BandName = band, Look = 0 }]),
            ],
            Blocks = time.Blocks,
            Marks = [.. Stops(all, time)],
        }.ToFigure();
    }

    private static IEnumerable<ChartMark> Stops(RigAnswer[] all, TimeOfDays time)
    {
        string[] names = ["earliest stop", "expected stop", "latest stop"];
        for (var i = 0; i < all.Length; i++)
        {
            if (all[i].Simulation.FirstStop is { } stop)
                yield return new ChartMark($"{names[i]}: {new AnswerTimes(all[i].Plan.Days).At(stop.At)}", time.Hour(stop.At));
        }
    }

    /// <summary>The line of the middle one, and beyond its end the band alone.</summary>
    private static ChartLine Line(string name, RigAnswer[] all, TimeOfDays time, Func<SeriesPoint, double> value)
    {
        var (weak, middle, strong) = (all[0].Simulation.Series, all[1].Simulation.Series, all[2].Simulation.Series);
        List<double> hours = [], values = [], lower = [], upper = [];
        void Add(Duration at, double here, params double[] others)
        {
            hours.Add(time.Hour(at));
            values.Add(here);
            // Which of the two is the lower one may change on the way: after a stop a battery recovers.
            lower.Add(others.Min());
            upper.Add(others.Max());
        }

        for (var i = 0; i < middle.Count; i++)
        {
            var (at, here) = (middle[i].Time, value(middle[i]));
            var isAfter = i > 0 && IsSame(middle[i - 1].Time, at);
            if (i > 0 && all[1].Simulation.Stretches[middle[i].Stretch].Day
                != all[1].Simulation.Stretches[middle[i - 1].Stretch].Day)
                Add(middle[i - 1].Time, double.NaN, double.NaN);
            Add(at, here, here, At(weak, at, isAfter, value), At(strong, at, isAfter, value));
        }

        var (end, last) = (middle[^1].Time, value(middle[^1]));
        foreach (var point in strong.Where(point => point.Time > end))
            Add(point.Time, double.NaN, last, At(weak, point.Time, true, value), value(point));
        return new ChartLine(name, hours, values) { Lower = lower, Upper = upper };
    }

    private static bool IsSame(Duration one, Duration other) => Math.Abs((one - other).Seconds) < 1e-6;

    /// <summary>A value at a time: on the side before or after a change; at its end where it has ended.</summary>
    private static double At(IReadOnlyList<SeriesPoint> series, Duration time, bool isAfter, Func<SeriesPoint, double> value)
    {
        var (low, high) = (-1, series.Count);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            var seconds = (series[middle].Time - time).Seconds;
            // After a change: the first point beyond it; before it: the first one at it.
            if (isAfter ? seconds > 1e-6 : seconds > -1e-6)
                high = middle;
            else
                low = middle;
        }

        if (low < 0)
            return value(series[0]);
        if (high == series.Count)
            return value(series[^1]);
        var (from, to) = (series[low], series[high]);
        var part = (time - from.Time) / (to.Time - from.Time);
        return value(from) + Math.Clamp(part, 0, 1) * (value(to) - value(from));
    }
}

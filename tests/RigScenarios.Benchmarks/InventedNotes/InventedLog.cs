using System.Globalization;
using System.Text;
using RigScenarios.Simulation;

namespace RigScenarios.Benchmarks.InventedNotes;

/// <summary>A log as a cheap logger on the battery's cable writes it: a row every two seconds, a sensor that reads a little too
/// much, noise, and the mishaps of a day.</summary>
internal static class InventedLog
{
    private const double Interval = 2;
    private const double Gain = 1.006;
    private const double VoltNoise = 0.008;
    private const double AmpereNoise = 0.02;

    // The model's own error lives for minutes: what the cells of another battery would do otherwise.
    private const double ModelError = 0.03;
    private const double ModelErrorSeconds = 450;

    private const int GapFrom = 2520;
    private const int GapTo = 2760;
    private const int ClockRestartsAt = 6900;

    /// <summary>The text of the log.</summary>
    /// <param name="course">The course of the run.</param>
    /// <param name="random">The source of chance.</param>
    public static string Text(SimulationResult course, Random random)
    {
        var points = course.Series;
        var (start, end) = (points[0].Time.Seconds, course.FirstStop!.At.Seconds);
        var text = new StringBuilder("t (s),U (V),I (A)\n");
        var (at, error, zero) = (0, 0.0, 0.0);
        var keeps = Math.Exp(-Interval / ModelErrorSeconds);
        for (var row = 0; start + (row * Interval) < end; row++)
        {
            var time = row * Interval;
            while (at + 1 < points.Count && points[at + 1].Time.Seconds <= start + time)
                at++;
            error = (keeps * error) + (Math.Sqrt(1 - (keeps * keeps)) * ModelError * Normal(random));
            var (volts, amperes) = Between(points, at, start + time);
            volts += error + (VoltNoise * Normal(random));
            amperes = (Gain * amperes) + (AmpereNoise * Normal(random));
            if (time is > GapFrom and < GapTo)
                continue;
            if (time == ClockRestartsAt)
                zero = time;
            var cell = row % 2111 == 2110 ? "" : volts.ToString("0.00", CultureInfo.InvariantCulture);
            var line = string.Create(CultureInfo.InvariantCulture, $"{time - zero:0},{cell},{amperes:0.00}\n");
            text.Append(line);
            if (row % 3001 == 3000)
                text.Append(line);
        }
        return text.ToString();
    }

    private static (double Volts, double Amperes) Between(IReadOnlyList<SeriesPoint> points, int at, double seconds)
    {
        var (from, to) = (points[at], points[Math.Min(at + 1, points.Count - 1)]);
        var length = to.Time.Seconds - from.Time.Seconds;
        var part = length > 0 ? (seconds - from.Time.Seconds) / length : 0;
        return (from.Voltage.Volts + (part * (to.Voltage.Volts - from.Voltage.Volts)),
            from.Current.Amperes + (part * (to.Current.Amperes - from.Current.Amperes)));
    }

    /// <summary>A normal number of mean 0 and deviation 1 (G. E. P. Box, M. E. Muller 1958; from memory).</summary>
    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}

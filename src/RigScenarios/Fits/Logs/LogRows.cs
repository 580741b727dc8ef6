using MathNet.Numerics.Statistics;

namespace RigScenarios.Fits.Logs;

/// <summary>
/// What a power log measured of one battery without a charge in between: rows of time, voltage and current, put in order.
/// Time is counted from the first row and rises; a current out of the battery is positive.
/// </summary>
/// <remarks>Plain doubles: a log has a million rows, and these are the input of a numeric kernel.</remarks>
public sealed class LogRows
{
    /// <summary>An interval is a gap if it is longer than this many usual ones.</summary>
    private const double GapIntervals = 10;

    /// <summary>No interval shorter than this is a gap, s.</summary>
    private const double ShortestGapSeconds = 60;

    private readonly double[] seconds;
    private readonly double[] volts;
    private readonly double[] amperes;

    private LogRows(double[] seconds, double[] volts, double[] amperes, bool samples, double startsAtSeconds)
    {
        (this.seconds, this.volts, this.amperes) = (seconds, volts, amperes);
        Samples = samples;
        StartsAtSeconds = startsAtSeconds;
        MedianSeconds = MedianOfPositive(seconds);
        for (var row = 1; row < seconds.Length; row++)
            Gaps += IsGap(seconds[row] - seconds[row - 1]) ? 1 : 0;
    }

    /// <summary>Number of rows; 2 or more.</summary>
    public int Count => seconds.Length;

    /// <summary>Time of each row from the first one, s; rises.</summary>
    public ReadOnlySpan<double> Seconds => seconds;

    /// <summary>Voltage at the battery's terminals, V.</summary>
    public ReadOnlySpan<double> Volts => volts;

    /// <summary>Current out of the battery, A; below 0 where it is charged.</summary>
    public ReadOnlySpan<double> Amperes => amperes;

    /// <summary>Whether a row is what was measured at its moment; otherwise it is the mean until the next row.</summary>
    public bool Samples { get; }

    /// <summary>When this log begins, counted from the first row of its file, s; above 0 only after a charge.</summary>
    public double StartsAtSeconds { get; }

    /// <summary>From the first to the last row, s; above 0.</summary>
    public double LengthSeconds => seconds[^1];

    /// <summary>Median interval between rows, s.</summary>
    public double MedianSeconds { get; }

    /// <summary>Number of gaps: intervals longer than ten medians and than a minute.</summary>
    public int Gaps { get; }

    /// <summary>Rows that are in order already, such as those of a simulated log.</summary>
    /// <param name="seconds">Rising times, s; two or more.</param>
    /// <param name="volts">As many voltages, V.</param>
    /// <param name="amperes">As many currents out of the battery, A.</param>
    /// <param name="samples">Whether a row is what was measured at its moment; otherwise the mean until the next one.</param>
    /// <exception cref="ArgumentException">The lengths differ, a value is not finite, or the times don't rise.</exception>
    public static LogRows Of(
        ReadOnlySpan<double> seconds, ReadOnlySpan<double> volts, ReadOnlySpan<double> amperes, bool samples = false)
    {
        if (seconds.Length < 2 || volts.Length != seconds.Length || amperes.Length != seconds.Length)
        {
            throw new ArgumentException("A log needs two rows or more, each with a time, a voltage and a current; found "
                + $"{seconds.Length}, {volts.Length} and {amperes.Length}.", nameof(seconds));
        }
        for (var row = 0; row < seconds.Length; row++)
        {
            if (!double.IsFinite(seconds[row]) || !double.IsFinite(volts[row]) || !double.IsFinite(amperes[row]))
                throw new ArgumentException($"Row {row + 1} of the log has a value that is no finite number.", nameof(seconds));
            if (row > 0 && !(seconds[row] > seconds[row - 1]))
                throw new ArgumentException($"The times must rise; row {row + 1} of the log is not later than the one before.",
                    nameof(seconds));
        }
        return FromOrdered(seconds, volts, amperes, samples, 0);
    }

    /// <summary>Rows known to be in order; time is counted anew from the first one.</summary>
    internal static LogRows FromOrdered(ReadOnlySpan<double> seconds, ReadOnlySpan<double> volts,
        ReadOnlySpan<double> amperes, bool samples, double startsAtSeconds)
    {
        var fromFirst = seconds.ToArray();
        if (fromFirst[0] != 0)
        {
            for (var row = fromFirst.Length - 1; row >= 0; row--)
                fromFirst[row] -= fromFirst[0];
        }
        return new(fromFirst, volts.ToArray(), amperes.ToArray(), samples, startsAtSeconds);
    }

    /// <summary>Whether an interval between two rows is a gap.</summary>
    internal bool IsGap(double intervalSeconds) =>
        intervalSeconds > Math.Max(GapIntervals * MedianSeconds, ShortestGapSeconds);

    /// <summary>Median of the intervals that are longer than nothing, s; 0 if there is none.</summary>
    internal static double MedianOfPositive(ReadOnlySpan<double> seconds)
    {
        var intervals = new double[Math.Max(seconds.Length - 1, 0)];
        var count = 0;
        for (var row = 1; row < seconds.Length; row++)
        {
            if (seconds[row] - seconds[row - 1] is > 0 and var interval)
                intervals[count++] = interval;
        }
        return count == 0 ? 0 : ArrayStatistics.MedianInplace(count == intervals.Length ? intervals : intervals[..count]);
    }
}

using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits.Logs;

/// <summary>
/// A log in bins of equal width, which drive the model, and in blocks, which are compared with it. The number of blocks depends
/// on how far the battery is emptied, not on how often somebody measured: a million rows of one discharge are no more certain
/// than a hundred.
/// </summary>
/// <remarks>
/// The model's error of the voltage lives as long as the charge changes little. The mean of a process with correlation time Tc
/// over a long time T has the variance 2·Tc·σ²/T, so that blocks of 2·Tc count as independent: G. E. P. Box, G. M. Jenkins,
/// G. C. Reinsel, Time Series Analysis (3rd ed. 1994), ch. 2, from memory. Equations: docs/power-logs.md.
/// </remarks>
public sealed class LogBins
{
    /// <summary>More bins than this are no log of one discharge: three months of the narrowest ones.</summary>
    private const double MostBins = 3e6;

    /// <summary>The part of the label's capacity over which the model's error stays about the same.</summary>
    private const double CorrelationCharge = 0.03;

    private const double ShortestCorrelationSeconds = 60;
    private const double WidestBinSeconds = 10;
    private const double BinsPerCorrelation = 20;

    /// <summary>Times are sums of decimal parts: what differs by less than this of a bin is the same.</summary>
    private const double SameTime = 1e-9;

    private readonly double[] amperes;
    private readonly double[] volts;
    private readonly bool[] usable;

    private LogBins(LogRows rows, double correlationSeconds)
    {
        MedianSeconds = rows.MedianSeconds;
        CorrelationSeconds = correlationSeconds;
        WidthSeconds = Math.Max(rows.MedianSeconds, Math.Min(WidestBinSeconds, correlationSeconds / BinsPerCorrelation));
        var count = Math.Floor((rows.LengthSeconds / WidthSeconds) + SameTime);
        if (count > MostBins)
        {
            throw new ArgumentException($"The log spans {rows.LengthSeconds / 86400:N0} days, which is no log of one discharge. "
                + "Leave out the rows with a wrong time.", nameof(rows));
        }
        amperes = new double[(int)count];
        volts = new double[(int)count];
        usable = new bool[(int)count];
        Fill(rows);
        Blocks = FindBlocks();
    }

    /// <summary>Number of bins.</summary>
    public int Count => amperes.Length;

    /// <summary>Width of every bin, s. Bin number n (from 0) begins n widths after the first row.</summary>
    public double WidthSeconds { get; }

    /// <summary>Mean current of each bin, A; positive on discharge.</summary>
    public ReadOnlySpan<double> Amperes => amperes;

    /// <summary>Mean voltage of each bin, V.</summary>
    public ReadOnlySpan<double> Volts => volts;

    /// <summary>Whether a bin is compared with the model: it touches no gap.</summary>
    public ReadOnlySpan<bool> Usable => usable;

    /// <summary>How long an error of the model's voltage lives, s.</summary>
    public double CorrelationSeconds { get; }

    /// <summary>Median interval between the rows, s.</summary>
    public double MedianSeconds { get; }

    /// <summary>The stretches that are compared, in order.</summary>
    public IReadOnlyList<LogBlock> Blocks { get; }

    /// <summary>Puts a log into bins.</summary>
    /// <param name="rows">The log.</param>
    /// <param name="labelCapacity">Capacity of the new battery by its label; above 0.</param>
    /// <exception cref="ArgumentException">The log is too long, or no current flows in it.</exception>
    public static LogBins Of(LogRows rows, ElectricCharge labelCapacity)
    {
        ArgumentNullException.ThrowIfNull(rows);
        Require.Positive(labelCapacity.AmpereHours, "Ah", nameof(labelCapacity));
        var mean = MeanSize(rows);
        if (mean == 0)
            throw new ArgumentException("No current flows in the log, so that it says nothing of the battery.", nameof(rows));
        return new(rows,
            Math.Max(ShortestCorrelationSeconds, CorrelationCharge * labelCapacity.AmpereHours * 3600 / mean));
    }

    /// <summary>Mean size of the current outside the gaps, A.</summary>
    private static double MeanSize(LogRows rows)
    {
        double charge = 0, time = 0;
        for (var row = 1; row < rows.Count; row++)
        {
            var interval = rows.Seconds[row] - rows.Seconds[row - 1];
            if (rows.IsGap(interval))
                continue;
            var before = Math.Abs(rows.Amperes[row - 1]);
            charge += interval * (rows.Samples ? (before + Math.Abs(rows.Amperes[row])) / 2 : before);
            time += interval;
        }
        return time > 0 ? charge / time : 0;
    }

    private void Fill(LogRows rows)
    {
        Array.Fill(usable, true);
        for (var row = 1; row < rows.Count; row++)
        {
            var (from, to) = (rows.Seconds[row - 1], rows.Seconds[row]);
            var gap = rows.IsGap(to - from);
            var (i0, i1) = (rows.Amperes[row - 1], rows.Amperes[row]);
            var (v0, v1) = (rows.Volts[row - 1], rows.Volts[row]);
            if (gap)
                (i0, v0) = ((i0 + i1) / 2, (v0 + v1) / 2);
            var linear = rows.Samples && !gap;
            for (var bin = (int)(from / WidthSeconds); bin < Count && bin * WidthSeconds < to; bin++)
            {
                var low = Math.Max(from, bin * WidthSeconds);
                var high = Math.Min(to, (bin + 1) * WidthSeconds);
                var share = (high - low) / WidthSeconds;
                var along = linear ? (((low + high) / 2) - from) / (to - from) : 0;
                amperes[bin] += share * (i0 + (along * (i1 - i0)));
                volts[bin] += share * (v0 + (along * (v1 - v0)));
                if (gap && share > SameTime)
                    usable[bin] = false;
            }
        }
    }

    private List<LogBlock> FindBlocks()
    {
        var blocks = new List<LogBlock>();
        for (var first = 0; first < Count;)
        {
            var number = BlockOf(first);
            var (end, count, sum) = (first, 0, 0.0);
            for (; end < Count && BlockOf(end) == number; end++)
            {
                if (usable[end])
                    (count, sum) = (count + 1, sum + volts[end]);
            }
            if (count * WidthSeconds >= CorrelationSeconds * (1 - SameTime))
                blocks.Add(new(first, end, count, sum / count));
            first = end;
        }
        return blocks;
    }

    private long BlockOf(int bin) => (long)((bin * WidthSeconds / (2 * CorrelationSeconds)) + SameTime);
}

namespace RigScenarios.Fits.Logs;

/// <summary>Rows as they come from a file, in arrays that grow: time, voltage and current in the file's units at first.</summary>
internal sealed class RawRows
{
    private double[] seconds = new double[4096];
    private double[] volts = new double[4096];
    private double[] amperes = new double[4096];

    public int Count { get; private set; }

    public Span<double> Seconds => seconds.AsSpan(0, Count);

    public Span<double> Volts => volts.AsSpan(0, Count);

    public Span<double> Amperes => amperes.AsSpan(0, Count);

    public void Add(double time, double volt, double ampere)
    {
        if (Count == seconds.Length)
        {
            Array.Resize(ref seconds, 2 * Count);
            Array.Resize(ref volts, 2 * Count);
            Array.Resize(ref amperes, 2 * Count);
        }
        (seconds[Count], volts[Count], amperes[Count]) = (time, volt, ampere);
        Count++;
    }

    /// <summary>Multiplies each column.</summary>
    public void Scale(double time, double volt, double ampere)
    {
        for (var row = 0; row < Count; row++)
        {
            seconds[row] *= time;
            volts[row] *= volt;
            amperes[row] *= ampere;
        }
    }

    /// <summary>
    /// A time that falls back is a new clock: that row comes one usual interval after the one before, and all later ones with
    /// it.
    /// </summary>
    /// <returns>How often that happened.</returns>
    public int MendClock()
    {
        var usual = LogRows.MedianOfPositive(Seconds);
        var resets = 0;
        var later = 0.0;
        for (var row = 1; row < Count; row++)
        {
            var time = seconds[row] + later;
            if (time < seconds[row - 1])
            {
                resets++;
                later += seconds[row - 1] + usual - time;
                time = seconds[row - 1] + usual;
            }
            seconds[row] = time;
        }
        return resets;
    }

    /// <summary>Rows of one time become their mean.</summary>
    /// <returns>How many rows went into others.</returns>
    public int MergeSameTimes()
    {
        var kept = 0;
        for (var row = 0; row < Count;)
        {
            var (time, volt, ampere, end) = (seconds[row], 0.0, 0.0, row);
            for (; end < Count && seconds[end] == time; end++)
                (volt, ampere) = (volt + volts[end], ampere + amperes[end]);
            (seconds[kept], volts[kept], amperes[kept]) = (time, volt / (end - row), ampere / (end - row));
            kept++;
            row = end;
        }
        var merged = Count - kept;
        Count = kept;
        return merged;
    }

    /// <summary>If charge seems to flow in while the voltage falls, the current is meant the other way.</summary>
    /// <returns>Whether it was turned.</returns>
    public bool MendSign()
    {
        var charge = 0.0;
        for (var row = 1; row < Count; row++)
            charge += amperes[row - 1] * (seconds[row] - seconds[row - 1]);
        if (!(charge < 0 && volts[Count - 1] < volts[0]))
            return false;
        for (var row = 0; row < Count; row++)
            amperes[row] = -amperes[row];
        return true;
    }
}

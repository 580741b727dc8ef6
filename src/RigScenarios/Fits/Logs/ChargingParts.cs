namespace RigScenarios.Fits.Logs;

/// <summary>Ends a log where charging begins, and begins another one where it ends.</summary>
internal static class ChargingParts
{
    /// <summary>A current into the battery for longer than this is a charge; less comes from motors that slow down, s.</summary>
    private const double LongestBackflowSeconds = 60;

    /// <summary>The logs between the charges, each of two rows or more.</summary>
    /// <param name="rows">Rows in order, time from the first one.</param>
    /// <param name="samples">Whether a row is what was measured at its moment.</param>
    /// <param name="charging">How many rows are left out.</param>
    public static List<LogRows> Of(RawRows rows, bool samples, out int charging)
    {
        var parts = new List<LogRows>();
        charging = 0;
        var start = 0;
        for (var row = 0; row < rows.Count;)
        {
            if (!(rows.Amperes[row] < 0))
            {
                row++;
                continue;
            }
            var end = row;
            while (end < rows.Count && rows.Amperes[end] < 0)
                end++;
            var until = rows.Seconds[Math.Min(end, rows.Count - 1)];
            if (until - rows.Seconds[row] > LongestBackflowSeconds)
            {
                Add(parts, rows, start, row, samples);
                charging += end - row;
                start = end;
            }
            row = end;
        }
        Add(parts, rows, start, rows.Count, samples);
        return parts;
    }

    private static void Add(List<LogRows> parts, RawRows rows, int start, int end, bool samples)
    {
        if (end - start < 2)
            return;
        var part = start..end;
        parts.Add(LogRows.FromOrdered(rows.Seconds[part], rows.Volts[part], rows.Amperes[part], samples, rows.Seconds[start]));
    }
}

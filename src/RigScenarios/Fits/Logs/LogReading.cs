using UnitsNet;

namespace RigScenarios.Fits.Logs;

/// <summary>A power log as it was read from a file.</summary>
/// <param name="File">The file, as it was named.</param>
/// <param name="Parts">What was measured, in order: one log, or several where the battery was charged in between.</param>
/// <param name="Counts">What was done while reading.</param>
/// <param name="Columns">How time, voltage and current were read, in this order.</param>
/// <param name="Separator">What stands between two columns.</param>
/// <param name="DecimalMark">The decimal mark.</param>
/// <param name="Median">The usual interval between two rows of the whole file.</param>
public sealed record LogReading(
    string File, IReadOnlyList<LogRows> Parts, LogCounts Counts, IReadOnlyList<ReadColumn> Columns, char Separator,
    char DecimalMark, Duration Median)
{
    /// <summary>The log, up to the first charge.</summary>
    public LogRows Rows => Parts[0];
}

using System.Text;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Fits.Logs;

/// <summary>
/// Reads power logs: text with columns of time, voltage and current, as meters and loggers write them. A million rows take less
/// than a second or so. Rows with nothing or no number in them, clocks that begin again, rows of the same time, gaps, and a
/// current counted the other way are mended, and everything that was done is counted.
/// </summary>
public static class PowerLogFile
{
    /// <summary>The most rows of a log: more than half a year of seconds.</summary>
    public const int MostRows = 20_000_000;

    /// <summary>No battery that is carried has more, V; larger numbers without a unit are taken as mV.</summary>
    private const double LargestVolts = 200;

    /// <summary>No battery that is carried gives more on average, A; larger numbers without a unit are taken as mA.</summary>
    private const double LargestAmperes = 100;

    /// <summary>No discharge takes longer, s; longer times without a unit are taken as ms.</summary>
    private const double LongestSeconds = 10 * 86400;

    private const double Thousandth = 1e-3;

    /// <summary>Reads a log.</summary>
    /// <param name="path">The file.</param>
    /// <param name="columns">How it is laid out; guessed if null.</param>
    /// <param name="cancellation">Ends the reading early.</param>
    /// <exception cref="ScenarioProblemsException">It can't be used; carries what is wrong.</exception>
    public static LogReading Read(string path, LogColumns? columns = null, CancellationToken cancellation = default)
    {
        var (reading, problems) = TryRead(path, columns, cancellation);
        return reading ?? throw new ScenarioProblemsException(problems);
    }

    /// <summary>Reads a log; null, with what is wrong, if it can't be used.</summary>
    /// <param name="path">The file.</param>
    /// <param name="columns">How it is laid out; guessed if null.</param>
    /// <param name="cancellation">Ends the reading early.</param>
    public static (LogReading? Reading, IReadOnlyList<Diagnostic> Problems) TryRead(
        string path, LogColumns? columns = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(path);
        var log = new ReadLog(path);
        using var stream = TextFile.Open(path, log);
        if (stream is null)
            return (null, log.Problems);
        try
        {
            using var reader = new StreamReader(stream, Encoding.UTF8, detectEncodingFromByteOrderMarks: true, 1 << 16);
            return TryRead(reader, log, columns ?? LogColumns.Guessed, cancellation);
        }
        catch (IOException exception)
        {
            log.Error(TextPlace.None, "", TextFile.CantBeRead(exception));
            return (null, log.Problems);
        }
    }

    /// <summary>Reads a log from text; null, with what is wrong, if it can't be used.</summary>
    /// <param name="text">The text, read to its end.</param>
    /// <param name="name">The name of the file, for messages.</param>
    /// <param name="columns">How it is laid out; guessed if null.</param>
    /// <param name="cancellation">Ends the reading early.</param>
    public static (LogReading? Reading, IReadOnlyList<Diagnostic> Problems) TryRead(
        TextReader text, string name, LogColumns? columns = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        return TryRead(text, new ReadLog(name), columns ?? LogColumns.Guessed, cancellation);
    }

    private static (LogReading? Reading, IReadOnlyList<Diagnostic> Problems) TryRead(
        TextReader text, ReadLog log, LogColumns columns, CancellationToken cancellation)
    {
        var head = LogHead.Read(text);
        if (head.IsEmpty || head.IsBinary || head.Lines.Count == 0)
        {
            log.Error(TextPlace.None, "", head.IsEmpty ? "Nothing stands in the file." : "This is no text with rows of numbers.",
                LogLayout.Example);
            return (null, log.Problems);
        }
        if (LogLayout.Find(head, columns, log) is not { } layout)
            return (null, log.Problems);
        var reader = new RowReader(layout, cancellation);
        if (!reader.Read(head.From(layout.FirstRow), MostRows))
        {
            log.Error(TextPlace.None, "", $"The log has more than {MostRows:N0} rows, the most that is read.",
                "one discharge, or the mean of every second");
            return (null, log.Problems);
        }
        return (Mend(reader, layout, columns.Samples, log), log.Problems);
    }

    private static LogReading? Mend(RowReader reader, LogLayout layout, bool samples, ReadLog log)
    {
        var rows = reader.Rows;
        var columns = rows.Count < 2 ? layout.Columns : Units(layout.Columns, reader);
        rows.Scale(columns[0].Factor, columns[1].Factor, columns[2].Factor);
        var resets = rows.MendClock();
        var duplicates = rows.MergeSameTimes();
        if (rows.Count < 2)
        {
            Tell(reader, duplicates, log);
            return null;
        }
        var flipped = rows.MendSign();
        var parts = ChargingParts.Of(rows, samples, out var charging);
        if (parts.Count == 0)
        {
            log.Error(TextPlace.None, "current", "The battery is only charged in this log.",
                "a log of a discharge; with the current out of the battery above 0, or a factor below 0 for its column");
            return null;
        }
        var counts = new LogCounts(reader.Found, reader.Dropped, resets, duplicates, flipped, parts.Sum(part => part.Gaps),
            charging, reader.FirstDropped);
        return new(log.File, parts, counts, columns, layout.Separator, layout.DecimalMark,
            Duration.FromSeconds(LogRows.MedianOfPositive(rows.Seconds)));
    }

    private static void Tell(RowReader reader, int duplicates, ReadLog log)
    {
        if (duplicates > 0)
        {
            log.Error(TextPlace.None, "time", "All rows have the same time.", "rows with times that rise");
            return;
        }
        var at = reader.FirstDropped is { } cell ? new TextPlace((int)Math.Min(cell.Line, int.MaxValue), 1) : TextPlace.None;
        log.Error(at, reader.FirstDropped?.Column ?? "",
            reader.FirstDropped is { Found.Length: > 0 } wrong
                ? $"\"{wrong.Found}\" is no number, and fewer than two rows have all "
            + "three numbers." : "Fewer than two rows have a time, a voltage and a current.", LogLayout.Example);
    }

    /// <summary>Where no unit is told, numbers far beyond any battery's are thousandths.</summary>
    private static IReadOnlyList<ReadColumn> Units(IReadOnlyList<ReadColumn> columns, RowReader reader)
    {
        var rows = reader.Rows;
        return
        [
            reader.Clock ? columns[0] with { Factor = 1, UnitFrom = UnitFrom.Clock }
                : Unit(columns[0], Math.Abs(rows.Seconds[^1] - rows.Seconds[0]), LongestSeconds),
            Unit(columns[1], Math.Abs(rows.Volts[rows.Count / 2]), LargestVolts),
            Unit(columns[2], Math.Abs(rows.Amperes[rows.Count / 2]), LargestAmperes),
        ];
    }

    private static ReadColumn Unit(ReadColumn column, double size, double largest) =>
        column.UnitFrom == UnitFrom.Usual && size > largest
            ? column with { Factor = Thousandth, UnitFrom = UnitFrom.Size } : column;
}

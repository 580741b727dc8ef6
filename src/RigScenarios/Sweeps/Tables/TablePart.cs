using System.Runtime.CompilerServices;

namespace RigScenarios.Sweeps.Tables;

/// <summary>A table of a sweep that was written before, to be gathered with others: a part of the sweep, or all of it. It is open
/// only while it is read, so that thousands of parts are no more trouble than two.</summary>
public sealed class TablePart
{
    private readonly Func<Stream> open;
    private readonly string? digest;

    private TablePart(string name, TableHead head, Func<Stream> open, string? digest) =>
        (Name, Head, this.open, this.digest) = (name, head, open, digest);

    /// <summary>What messages call it.</summary>
    public string Name { get; }

    /// <summary>What it rests on, and which part it is.</summary>
    public TableHead Head { get; }

    /// <summary>A file of comma-separated values; null where the text beside it doesn't say what it is.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="open">Opens the table.</param>
    /// <param name="about">The text of <see cref="CsvTable.AboutFile"/>.</param>
    public static TablePart? OfCsv(string name, Func<Stream> open, string about)
    {
        ArgumentNullException.ThrowIfNull(open);
        ArgumentNullException.ThrowIfNull(about);
        return CsvTable.ReadAbout(about) is var (head, digest) ? new(name, head, open, digest) : null;
    }

    /// <summary>A Parquet file; null where it is none of a sweep, or not whole.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="open">Opens the table, to be read at any place.</param>
    /// <param name="cancellation">Stops it.</param>
    public static async Task<TablePart?> OfParquetAsync(string name, Func<Stream> open, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(open);
        await using var stream = open();
        return await ParquetTable.ReadHeadAsync(stream, cancellation) is { } head ? new(name, head, open, null) : null;
    }

    /// <summary>Reads all of it and compares it with what it should be.</summary>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>Why it is not what it should be, in a sentence; null where it is.</returns>
    public async Task<string?> FaultAsync(CancellationToken cancellation = default)
    {
        try
        {
            await foreach (var rows in RowsAsync(cancellation))
                continue;
            return null;
        }
        catch (FormatException exception)
        {
            return exception.Message;
        }
    }

    /// <summary>Its rows, checked while they are read: as many as it should have, in their order, as they were written.</summary>
    /// <exception cref="FormatException">It is not what it should be.</exception>
    internal async IAsyncEnumerable<TableRows> RowsAsync([EnumeratorCancellation] CancellationToken cancellation)
    {
        var next = Head.First;
        var columns = Head.Identity.Columns;
        await using var stream = open();
        await foreach (var rows in digest is null ? ParquetTable.ReadAsync(stream, Head, cancellation)
            : CsvTable.Read(stream, columns, digest, cancellation).ToAsyncEnumerable())
        {
            foreach (var number in rows.Numbers)
            {
                if (number != next++)
                    throw new FormatException($"The row of scenario {next - 1} is missing or stands elsewhere.");
            }
            yield return rows;
        }
        if (next != Head.First + Head.Count)
            throw new FormatException($"It has {next - Head.First} rows instead of {Head.Count}.");
    }
}

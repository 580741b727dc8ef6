using System.Text.Json;
using Parquet;
using Parquet.Schema;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Tables;

/// <summary>
/// A table as a Parquet file (Apache Parquet, "File Format"): columns of numbers, words, yes and no, with nothing where nothing
/// is known. Each column of numbers carries its unit and its meaning; the file carries what it rests on.
/// </summary>
public static class ParquetTable
{
    private const int RowsInGroup = 100_000;
    // The library's own choice, the smallest size, takes fifty times as long for files smaller by a thirtieth.
    private const System.IO.Compression.CompressionLevel Level = System.IO.Compression.CompressionLevel.Optimal;
    private const string Rests = "rests_on";
    private const string Digest = "rows_sha256";

    /// <summary>Writes the table.</summary>
    /// <param name="table">Its rows, all of them.</param>
    /// <param name="to">Where to.</param>
    /// <param name="cancellation">Stops it.</param>
    public static Task WriteAsync(UnfinishedTable table, Stream to, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(table);
        var columns = table.Head.Identity.Columns;
        return WriteAsync(table.Head, table.Blocks().Select(block => CsvTable.Rows(block.Span, columns)).ToAsyncEnumerable(), to,
            cancellation);
    }

    /// <summary>Writes rows, which may come in pieces of any length.</summary>
    internal static async Task WriteAsync(TableHead head, IAsyncEnumerable<TableRows> rows, Stream to,
        CancellationToken cancellation)
    {
        var columns = head.Identity.Columns;
        var fields = Fields(columns);
        await using var writer = await ParquetWriter.CreateAsync(new ParquetSchema(fields), to,
            new ParquetOptions { CompressionMethod = CompressionMethod.Zstd, CompressionLevel = Level },
            cancellationToken: cancellation);
        using var digest = new RowsDigest(head);
        var group = new TableRows(columns);
        await foreach (var some in rows.WithCancellation(cancellation))
        {
            for (var from = 0; from < some.Count;)
            {
                cancellation.ThrowIfCancellationRequested();
                var count = Math.Min(some.Count - from, RowsInGroup - group.Count);
                group.Add(some, from, count);
                from += count;
                if (group.Count < RowsInGroup)
                    continue;
                await WriteGroupAsync(writer, fields, group, cancellation);
                digest.Add(group);
                group.Clear();
            }
        }
        if (group.Count > 0)
        {
            await WriteGroupAsync(writer, fields, group, cancellation);
            digest.Add(group);
        }
        writer.CustomMetadata = About(head, digest.Text());
    }

    /// <summary>What a file rests on; null where it is no table of a sweep.</summary>
    /// <param name="from">The file, to be read at any place.</param>
    /// <param name="cancellation">Stops it.</param>
    internal static async Task<TableHead?> ReadHeadAsync(Stream from, CancellationToken cancellation)
    {
        await using var reader = await OpenAsync(from, cancellation);
        return reader is not null && reader.CustomMetadata.TryGetValue(Rests, out var json)
            && TableHead.FromJson(json) is { } head && HasColumns(reader, head) ? head : null;
    }

    /// <summary>The rows of a file, one group after the other; at their end its digest is compared.</summary>
    /// <exception cref="FormatException">It is no such file, or not as it was written.</exception>
    internal static async IAsyncEnumerable<TableRows> ReadAsync(Stream from, TableHead head,
        [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancellation)
    {
        await using var reader = await OpenAsync(from, cancellation) ?? throw new FormatException("It is no whole Parquet file.");
        using var digest = new RowsDigest(head);
        for (var index = 0; index < reader.RowGroupCount; index++)
        {
            var rows = await ReadGroupAsync(reader, index, head.Identity.Columns, cancellation);
            digest.Add(rows);
            yield return rows;
        }
        if (!reader.CustomMetadata.TryGetValue(Digest, out var written) || written != digest.Text())
            throw new FormatException("It is not as it was written: its digest is another one.");
    }

    private static async Task<TableRows> ReadGroupAsync(ParquetReader reader, int index, IReadOnlyList<SweepColumn> columns,
        CancellationToken cancellation)
    {
        try
        {
            var fields = reader.Schema.GetDataFields();
            using var group = reader.OpenRowGroupReader(index);
            var rows = new TableRows(columns);
            var numbers = new long[group.RowCount];
            await group.ReadAsync<long>(fields[0], numbers.AsMemory(), null, cancellation);
            foreach (var number in numbers)
                rows.AddNumber(number);
            for (var column = 0; column < rows.Values.Count; column++)
                await ReadAsync(group, fields[column + 1], rows.Values[column], cancellation);
            return rows;
        }
        catch (Exception exception) when (exception is not OperationCanceledException)
        {
            // The reader has no exception of its own for bytes that are none of such a file.
            throw new FormatException($"It is not as it was written: {exception.Message}", exception);
        }
    }

    private static async Task ReadAsync(ParquetRowGroupReader group, DataField field, TableValues into,
        CancellationToken cancellation)
    {
        var count = (int)group.RowCount;
        if (into.Kind == ColumnKind.Number)
        {
            var numbers = new double?[count];
            await group.ReadAsync<double>(field, numbers.AsMemory(), null, cancellation);
            foreach (var number in numbers)
                into.Add(SweepCell.Of(number));
        }
        else if (into.Kind == ColumnKind.YesNo)
        {
            var yesNos = new bool?[count];
            await group.ReadAsync<bool>(field, yesNos.AsMemory(), null, cancellation);
            foreach (var yes in yesNos)
                into.Add(SweepCell.Of(yes));
        }
        else
        {
            var texts = new string?[count];
            await group.ReadAsync(field, texts.AsMemory()!, null, cancellation);
            foreach (var text in texts)
                into.Add(SweepCell.Of(text));
        }
    }

    private static async Task<ParquetReader?> OpenAsync(Stream from, CancellationToken cancellation)
    {
        try
        {
            from.Position = 0;
            return await ParquetReader.CreateAsync(from, leaveStreamOpen: true, cancellationToken: cancellation);
        }
        catch (Exception exception) when (exception is not OperationCanceledException)
        {
            // The reader has no exception of its own for what is no such file, or only the beginning of one.
            return null;
        }
    }

    private static bool HasColumns(ParquetReader reader, TableHead head)
    {
        try
        {
            return reader.Schema.GetDataFields().Select(field => field.Name)
                .SequenceEqual(head.Identity.Columns.Select(column => column.Name));
        }
        catch (InvalidOperationException)
        {
            // The columns are of kinds that no such file has.
            return false;
        }
    }

    private static DataField[] Fields(IReadOnlyList<SweepColumn> columns) =>
    [
        new DataField<long>(columns[0].Name),
        .. columns.Skip(1).Select(column => column.Kind switch
        {
            ColumnKind.Number => new DataField<double?>(column.Name),
            ColumnKind.YesNo => new DataField<bool?>(column.Name),
            _ => (DataField)new DataField<string>(column.Name, nullable: true),
        }),
    ];

    private static Dictionary<string, string> About(TableHead head, string digest) => new()
    {
        [Digest] = digest,
        [Rests] = head.ToJson(),
        ["columns"] = JsonSerializer.Serialize(head.Identity.Columns.Select(column => new
        {
            name = column.Name, unit = column.Unit, meaning = column.Meaning,
        })),
        ["scenario"] = head.Identity.Scenario,
        ["scenario_sha256"] = head.Identity.ScenarioDigest,
        ["command"] = head.Identity.Command,
        ["seed"] = head.Identity.Seed?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "none",
        ["version"] = head.Identity.Version,
        ["part"] = head.Part.ToString(),
    };

    private static async Task WriteGroupAsync(ParquetWriter writer, DataField[] fields, TableRows rows,
        CancellationToken cancellation)
    {
        using var group = writer.CreateRowGroup();
        await group.WriteAsync<long>(fields[0], rows.Numbers.ToArray(), null, Meaning(rows.Columns[0]), cancellation);
        for (var column = 0; column < rows.Values.Count; column++)
        {
            var (field, values, meaning) = (fields[column + 1], rows.Values[column], Meaning(rows.Columns[column + 1]));
            if (values.Kind == ColumnKind.Number)
                await group.WriteAsync<double>(field, values.NumberCells, null, meaning, cancellation);
            else if (values.Kind == ColumnKind.YesNo)
                await group.WriteAsync<bool>(field, values.YesNoCells, null, meaning, cancellation);
            else
                await group.WriteAsync(field, values.TextCells!);
        }
        group.CompleteValidate();
    }

    private static Dictionary<string, string> Meaning(SweepColumn column) =>
        new() { ["unit"] = column.Unit, ["meaning"] = column.Meaning };
}

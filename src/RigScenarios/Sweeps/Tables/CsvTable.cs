using System.Buffers;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Tables;

/// <summary>
/// A table as comma-separated values, and beside it a file that says what it is: columns with units, what it rests on, its
/// digest. That one follows an open standard (J. Tennison and G. Kellogg, eds., "Metadata Vocabulary for Tabular Data", W3C
/// Recommendation, 2015), which also says how it is called.
/// </summary>
public static class CsvTable
{
    private const int Piece = 1 << 20;

    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The name of the file that says what a table is.</summary>
    /// <param name="table">The name of the table.</param>
    public static string AboutFile(string table) => table + "-metadata.json";

    /// <summary>Writes the table.</summary>
    /// <param name="table">Its rows, all of them.</param>
    /// <param name="to">Where to.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The digest of what was written (SHA-256, hexadecimal).</returns>
    public static string Write(UnfinishedTable table, Stream to, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(to);
        using var output = new CsvOutput(to, table.Head.Identity.Columns);
        foreach (var block in table.Blocks())
        {
            cancellation.ThrowIfCancellationRequested();
            output.Add(block.Span);
        }
        return output.Digest();
    }

    /// <summary>Writes rows.</summary>
    internal static async Task<string> WriteAsync(IReadOnlyList<SweepColumn> columns, IAsyncEnumerable<TableRows> rows, Stream to)
    {
        using var output = new CsvOutput(to, columns);
        await foreach (var some in rows)
        {
            var bytes = new ArrayBufferWriter<byte>(Math.Max(1, some.Count * 64));
            CsvRows.Write(some, bytes);
            output.Add(bytes.WrittenSpan);
        }
        return output.Digest();
    }

    /// <summary>The text of the file that says what a table is.</summary>
    /// <param name="head">What it rests on.</param>
    /// <param name="name">The name of the table's file, without its folder.</param>
    /// <param name="digest">The digest of the table.</param>
    public static string About(TableHead head, string name, string digest)
    {
        ArgumentNullException.ThrowIfNull(head);
        var about = new JsonObject
        {
            ["@context"] = "http://www.w3.org/ns/csvw",
            ["url"] = name,
            ["dialect"] = new JsonObject { ["encoding"] = "utf-8", ["header"] = true, ["delimiter"] = "," },
            ["tableSchema"] = new JsonObject
            {
                ["columns"] = new JsonArray([.. head.Identity.Columns.Select((column, index) => Column(column, index == 0))]),
                ["rowTitles"] = new JsonArray(head.Identity.Columns[0].Name),
            },
            ["notes"] = new JsonArray(new JsonObject
            {
                ["sha256"] = digest, ["rows"] = head.Count, ["rests_on"] = JsonNode.Parse(head.ToJson()),
            }),
        };
        return about.ToJsonString(Indented).ReplaceLineEndings("\n") + "\n";
    }

    /// <summary>What <see cref="About"/> says; null where the text is something else.</summary>
    internal static (TableHead Head, string Digest)? ReadAbout(string text)
    {
        try
        {
            return JsonNode.Parse(text)?["notes"]?[0] is { } note && (string?)note["sha256"] is { } digest
                && note["rests_on"]?.ToJsonString() is { } json && TableHead.FromJson(json) is { } head ? (head, digest) : null;
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The rows of a table; at their end its digest is compared.</summary>
    /// <exception cref="FormatException">It is no such table, or not the one that was written.</exception>
    internal static IEnumerable<TableRows> Read(Stream from, IReadOnlyList<SweepColumn> columns, string digest,
        CancellationToken cancellation)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var heading = CsvRows.Heading(columns);
        var first = new byte[heading.Length];
        if (from.ReadAtLeast(first, first.Length, false) < first.Length || !first.AsSpan().SequenceEqual(heading))
            throw new FormatException("Its first line is not that of the table that was written.");
        hash.AppendData(first);
        var bytes = new byte[Piece];
        var held = 0;
        while (from.Read(bytes.AsSpan(held)) is var read and > 0)
        {
            cancellation.ThrowIfCancellationRequested();
            hash.AppendData(bytes.AsSpan(held, read));
            held += read;
            var whole = CsvRows.WholeRows(bytes.AsSpan(0, held));
            if (whole > 0)
                yield return AsWritten(bytes.AsSpan(0, whole), columns);
            bytes.AsSpan(whole, held - whole).CopyTo(bytes);
            held -= whole;
            if (held == bytes.Length)
                Array.Resize(ref bytes, bytes.Length * 2);
        }
        if (held > 0 || Convert.ToHexStringLower(hash.GetHashAndReset()) != digest)
            throw new FormatException("It is not as it was written: its digest is another one.");
    }

    /// <summary>Rows of bytes that are whole rows.</summary>
    internal static TableRows Rows(ReadOnlySpan<byte> bytes, IReadOnlyList<SweepColumn> columns)
    {
        var rows = new TableRows(columns);
        CsvRows.Read(bytes, rows);
        return rows;
    }

    private static TableRows AsWritten(ReadOnlySpan<byte> bytes, IReadOnlyList<SweepColumn> columns)
    {
        try
        {
            return Rows(bytes, columns);
        }
        catch (Exception exception) when (exception is FormatException or OverflowException or ArgumentException)
        {
            throw new FormatException($"It is not as it was written: {exception.Message}", exception);
        }
    }

    private static JsonObject Column(SweepColumn column, bool isNumber)
    {
        var about = new JsonObject
        {
            ["titles"] = column.Name,
            ["dc:description"] = column.Meaning,
            ["datatype"] = isNumber ? "integer" : column.Kind switch
            {
                ColumnKind.Number => "number",
                ColumnKind.YesNo => new JsonObject { ["base"] = "boolean", ["format"] = "yes|no" },
                _ => "string",
            },
        };
        if (column.Unit.Length > 0)
            about["schema:unitText"] = column.Unit;
        return about;
    }

    /// <summary>Heading and rows on their way into a file, with the digest of all of it.</summary>
    private sealed class CsvOutput : IDisposable
    {
        private readonly Stream to;
        private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

        public CsvOutput(Stream to, IReadOnlyList<SweepColumn> columns)
        {
            this.to = to;
            Add(CsvRows.Heading(columns));
        }

        public void Add(ReadOnlySpan<byte> bytes)
        {
            hash.AppendData(bytes);
            to.Write(bytes);
        }

        public string Digest() => Convert.ToHexStringLower(hash.GetHashAndReset());

        public void Dispose() => hash.Dispose();
    }
}

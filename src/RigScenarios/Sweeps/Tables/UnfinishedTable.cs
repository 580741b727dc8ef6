using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace RigScenarios.Sweeps.Tables;

/// <summary>
/// The rows of a sweep that is not through yet, kept so that it can go on after whatever ended it: a line that says what it rests
/// on, then blocks of whole rows, each behind a line with its first number, its rows, its bytes and its digest (SHA-256). What a
/// killed run left half written is known by that, and cut off.
/// </summary>
public sealed class UnfinishedTable : IDisposable
{
    private const string Mark = "rigscenarios: unfinished sweep 1 ";
    private const int LongestLine = 64 * 1024 * 1024;

    private readonly Func<Stream> make;
    private readonly List<(long At, int Bytes)> blocks = [];
    private Stream? stream;

    /// <summary>One without rows. Nothing is written before there is a block.</summary>
    /// <param name="head">What the table rests on.</param>
    /// <param name="make">Makes the empty stream, to be read and written at any place; it is closed with this.</param>
    public UnfinishedTable(TableHead head, Func<Stream> make)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(make);
        (Head, this.make) = (head, make);
    }

    /// <summary>What the table rests on.</summary>
    public TableHead Head { get; }

    /// <summary>How many rows are kept: those of the first scenarios of its part.</summary>
    public long Done { get; private set; }

    /// <summary>Whether all rows of its part are kept.</summary>
    public bool IsWhole => Done == Head.Count;

    /// <summary>What a stream keeps; null where it is no such file, or its first line isn't whole: then nothing is kept in it,
    /// and the stream stays as it is.</summary>
    /// <param name="stream">The stream, to be read and written at any place; it is closed with what is returned.</param>
    /// <param name="cancellation">Stops it.</param>
    public static UnfinishedTable? Read(Stream stream, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        stream.Position = 0;
        if (Line(stream, LongestLine) is not { } line || !line.StartsWith(Mark, StringComparison.Ordinal)
            || TableHead.FromJson(line[Mark.Length..]) is not { } head)
            return null;
        var table = new UnfinishedTable(head, () => stream) { stream = stream };
        table.ReadBlocks(cancellation);
        return table;
    }

    /// <summary>Whether a stream begins as such a file does, however little of it there is.</summary>
    /// <param name="stream">The stream.</param>
    public static bool IsOne(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        stream.Position = 0;
        var bytes = new byte[Mark.Length];
        return Mark.StartsWith(Encoding.UTF8.GetString(bytes, 0, stream.ReadAtLeast(bytes, bytes.Length, false)),
            StringComparison.Ordinal);
    }

    /// <summary>Adds the next rows, and makes sure that they stay.</summary>
    /// <param name="rows">The rows, in the order of their numbers.</param>
    internal void Add(TableRows rows)
    {
        if (rows.Count == 0)
            return;
        if (rows.Numbers[0] != Head.First + Done || rows.Numbers[^1] != Head.First + Done + rows.Count - 1)
            throw new InvalidOperationException($"The rows {rows.Numbers[0]} to {rows.Numbers[^1]} don't follow the "
                + $"{Done} that are kept.");
        var bytes = new ArrayBufferWriter<byte>(rows.Count * 64);
        CsvRows.Write(rows, bytes);
        // What never fills a block, and is whole with this one, need not go to a file of its own.
        stream ??= Done + rows.Count == Head.Count ? new MemoryStream() : make();
        if (stream.Length == 0)
            stream.Write(Encoding.UTF8.GetBytes($"{Mark}{Head.ToJson()}\n"));
        stream.Position = stream.Length;
        stream.Write(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture,
            $"block {rows.Numbers[0]} {rows.Count} {bytes.WrittenCount} {Digest(bytes.WrittenSpan)}\n")));
        var at = stream.Position;
        stream.Write(bytes.WrittenSpan);
        if (stream is FileStream file)
            file.Flush(flushToDisk: true);
        blocks.Add((at, bytes.WrittenCount));
        Done += rows.Count;
    }

    /// <summary>The blocks of rows, as they will stand in a file of comma-separated values.</summary>
    internal IEnumerable<ReadOnlyMemory<byte>> Blocks()
    {
        foreach (var (at, length) in blocks)
        {
            var bytes = new byte[length];
            stream!.Position = at;
            stream.ReadExactly(bytes);
            yield return bytes;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => stream?.Dispose();

    private void ReadBlocks(CancellationToken cancellation)
    {
        var good = stream!.Position;
        while (Line(stream, 200)?.Split(' ') is ["block", var first, var rows, var bytes, var digest]
            && Number(first) == Head.First + Done && Number(rows) is { } count and > 0
            && Number(bytes) is { } length and <= int.MaxValue
            && length <= stream.Length - stream.Position && Done + count <= Head.Count)
        {
            cancellation.ThrowIfCancellationRequested();
            var at = stream.Position;
            var block = new byte[length];
            stream.ReadExactly(block);
            if (Digest(block) != digest)
                break;
            blocks.Add((at, (int)length));
            Done += count;
            good = stream.Position;
        }
        stream.SetLength(good);
    }

    private static long? Number(string text) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Digest(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>The text up to the end of the line; null where there is none.</summary>
    private static string? Line(Stream stream, int longest)
    {
        var start = stream.Position;
        var bytes = new List<byte>();
        var piece = new byte[4096];
        while (bytes.Count < longest && stream.Read(piece) is var read and > 0)
        {
            if (piece.AsSpan(0, read).IndexOf((byte)'\n') is var end and >= 0)
            {
                bytes.AddRange(piece.AsSpan(0, end));
                stream.Position = start + bytes.Count + 1;
                return Encoding.UTF8.GetString([.. bytes]);
            }
            bytes.AddRange(piece.AsSpan(0, read));
        }
        return null;
    }
}

using System.Formats.Tar;
using ZstdSharp;

namespace RigScenarios.Benchmarks.InBrowser;

/// <summary>What each file of the packed library takes of it. What a file has in common with one before it counts for that
/// one.</summary>
internal static class PackedShares
{
    /// <summary>The files in their order.</summary>
    /// <param name="path">A tar archive in Zstandard.</param>
    public static IReadOnlyList<(string Name, long Bytes)> Of(string path)
    {
        var (archive, marks) = Unpacked(path);
        using var tar = new TarReader(archive);
        var shares = new List<(string, long)>();
        var at = 0.0;
        while (tar.GetNextEntry() is { } entry)
        {
            entry.DataStream?.CopyTo(Stream.Null);
            var packed = PackedAt(marks, archive.Position);
            shares.Add((entry.Name, (long)Math.Round(packed - at)));
            at = packed;
        }
        return shares;
    }

    // A block is packed as one: what it takes is spread over what it holds.
    private static double PackedAt(List<(long Archive, long Packed)> marks, long place)
    {
        var next = Math.Max(1, marks.FindIndex(mark => mark.Archive >= place));
        var (from, to) = (marks[next - 1], marks[next]);
        return from.Packed + ((to.Packed - from.Packed) * (double)(place - from.Archive) / (to.Archive - from.Archive));
    }

    private static (MemoryStream Archive, List<(long Archive, long Packed)> Marks) Unpacked(string path)
    {
        using var from = File.OpenRead(path);
        using var zstd = new DecompressionStream(from, bufferSize: 64);
        var (archive, marks) = (new MemoryStream(), new List<(long, long)> { (0, 0) });
        var piece = new byte[4096];
        var read = 0L;
        for (var count = zstd.Read(piece); count > 0; count = zstd.Read(piece))
        {
            if (from.Position > read && archive.Position > 0)
                marks.Add((archive.Position, read));
            read = from.Position;
            archive.Write(piece, 0, count);
        }
        marks.Add((archive.Position, read));
        archive.Position = 0;
        return (archive, marks);
    }
}

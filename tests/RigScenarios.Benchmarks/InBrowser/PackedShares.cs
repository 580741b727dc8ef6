using System.Formats.Tar;
using SharpCompress.Compressors.LZMA;

namespace RigScenarios.Benchmarks.InBrowser;

/// <summary>What each file of the packed library takes of it: the bytes that were read while it was unpacked. What a file has in
/// common with one before it counts for that one.</summary>
internal static class PackedShares
{
    private const int Properties = 5, Header = 13;

    /// <summary>The files in their order.</summary>
    /// <param name="path">A tar archive in .lzma.</param>
    public static IReadOnlyList<(string Name, long Bytes)> Of(string path)
    {
        var packed = File.ReadAllBytes(path);
        using var from = new MemoryStream(packed, Header, packed.Length - Header);
        using var lzma = LzmaStream.Create(packed[..Properties], from, from.Length, BitConverter.ToInt64(packed, Properties),
            leaveOpen: false);
        using var tar = new TarReader(lzma);
        var shares = new List<(string, long)>();
        var at = 0L;
        while (tar.GetNextEntry(copyData: true) is { } entry)
        {
            shares.Add((entry.Name, from.Position - at));
            at = from.Position;
        }
        return shares;
    }
}

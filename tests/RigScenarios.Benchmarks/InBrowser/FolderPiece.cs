using System.IO.Compression;

namespace RigScenarios.Benchmarks.InBrowser;

/// <summary>A file of the folder for browsers, or one within its packed library.</summary>
/// <param name="Name">Its path in the folder; within the form's library its plain name.</param>
/// <param name="Plain">What a server sends that compresses nothing, in bytes.</param>
/// <param name="Compressed">What a server sends that compresses what isn't yet (gzip, its smallest), in bytes.</param>
internal sealed record FolderPiece(string Name, long Plain, long Compressed)
{
    private const string Library = "library.bin";

    private static readonly string[] Packed = [".png", ".bin", ".woff2"];

    /// <summary>All of a folder; of its library what lies within, and what its end takes.</summary>
    public static IReadOnlyList<FolderPiece> Of(string folder)
    {
        var pieces = new List<FolderPiece>();
        foreach (var path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var name = Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');
            var size = new FileInfo(path).Length;
            if (!name.EndsWith(Library, StringComparison.Ordinal))
            {
                pieces.Add(new FolderPiece(name, size, Packed.Contains(Path.GetExtension(name)) ? size : Smallest(path)));
                continue;
            }
            // Names within the second library are those of the first: the folder tells them apart.
            var folderOf = name.StartsWith("library", StringComparison.Ordinal) ? "" : name[..(name.LastIndexOf('/') + 1)];
            var within = PackedShares.Of(path);
            pieces.AddRange(within.Select(share => new FolderPiece(folderOf + share.Name, share.Bytes, share.Bytes)));
            var rest = size - within.Sum(share => share.Bytes);
            pieces.Add(new FolderPiece(name, rest, rest));
        }
        return pieces;
    }

    private static long Smallest(string path)
    {
        using var to = new MemoryStream();
        using (var from = File.OpenRead(path))
        using (var zip = new GZipStream(to, CompressionLevel.SmallestSize, leaveOpen: true))
            from.CopyTo(zip);
        return to.Length;
    }
}

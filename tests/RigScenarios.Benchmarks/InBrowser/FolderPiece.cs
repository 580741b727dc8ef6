using System.IO.Compression;

namespace RigScenarios.Benchmarks.InBrowser;

/// <summary>A file of the folder for browsers, or one within its archive.</summary>
/// <param name="Name">Its path in the folder; within the form's archive its plain name.</param>
/// <param name="Plain">What a server sends that compresses nothing, in bytes.</param>
/// <param name="Compressed">What a server sends that compresses what isn't yet (gzip, its smallest), in bytes.</param>
internal sealed record FolderPiece(string Name, long Plain, long Compressed)
{
    private static readonly string[] Packed = [".png", ".zip", ".woff2"];

    /// <summary>All of a folder; of its archive what lies within, and what the archive itself takes.</summary>
    public static IReadOnlyList<FolderPiece> Of(string folder)
    {
        var pieces = new List<FolderPiece>();
        foreach (var path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var name = Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');
            var size = new FileInfo(path).Length;
            if (!name.EndsWith("library.zip", StringComparison.Ordinal))
            {
                pieces.Add(new FolderPiece(name, size, Packed.Contains(Path.GetExtension(name)) ? size : Smallest(path)));
                continue;
            }
            // Names within the second archive are those of the first: the folder tells them apart.
            var folderOf = name.StartsWith("library", StringComparison.Ordinal) ? "" : name[..(name.LastIndexOf('/') + 1)];
            using var archive = ZipFile.OpenRead(path);
            pieces.AddRange(archive.Entries.Select(entry =>
                new FolderPiece(folderOf + entry.FullName, entry.CompressedLength, entry.CompressedLength)));
            var list = size - archive.Entries.Sum(entry => entry.CompressedLength);
            pieces.Add(new FolderPiece(name, list, list));
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

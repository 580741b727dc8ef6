using System.Formats.Tar;
using ZstdSharp;
using ZstdSharp.Unsafe;

namespace RigScenarios.Browser.Packing;

/// <summary>
/// The one file that a browser loads the library from: a tar archive (POSIX.1-1988, "ustar") in Zstandard (RFC 8878), so
/// that its parts are compressed as one. <c>zstd -d</c> and <c>tar</c> read it, too.
/// </summary>
public static class PackedLibrary
{
    // What the browser translates while the rest is unpacked, and then what all else is loaded by.
    private static readonly string[] First = ["dotnet.native.wasm", "System.Private.CoreLib.wasm"];

    // The strongest level; and how far back matches reach, as a power of two: over 4 MB. A browser's unpacker moves so many bytes
    // at every block, and over all of the archive nothing would be won but a hundredth.
    private const int Level = 22, Reach = 22;

    /// <summary>Packs the files of a folder, without those in folders of its own.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="file">The file to write; one that is there is replaced once all is packed.</param>
    /// <exception cref="IOException">A file can't be read or written.</exception>
    public static void Write(string folder, string file)
    {
        var archive = Archive(folder);
        var unfinished = file + ".new";
        using (var compressor = new Compressor(Level))
        {
            compressor.SetParameter(ZSTD_cParameter.ZSTD_c_windowLog, Reach);
            compressor.SetParameter(ZSTD_cParameter.ZSTD_c_checksumFlag, 1);
            File.WriteAllBytes(unfinished, compressor.Wrap(archive));
        }
        File.Move(unfinished, file, overwrite: true);
    }

    // The same bytes for the same files, whenever it is made.
    private static byte[] Archive(string folder)
    {
        using var all = new MemoryStream();
        using (var tar = new TarWriter(all, TarEntryFormat.Ustar, leaveOpen: true))
        {
            foreach (var path in Directory.EnumerateFiles(folder).OrderBy(Place).ThenBy(Path.GetFileName, StringComparer.Ordinal))
            {
                using var from = File.OpenRead(path);
                tar.WriteEntry(new UstarTarEntry(TarEntryType.RegularFile, Path.GetFileName(path))
                {
                    DataStream = from,
                    ModificationTime = DateTimeOffset.UnixEpoch,
                });
            }
        }
        return all.ToArray();
    }

    private static int Place(string path) =>
        Array.IndexOf(First, Path.GetFileName(path)) is >= 0 and var place ? place : First.Length;
}

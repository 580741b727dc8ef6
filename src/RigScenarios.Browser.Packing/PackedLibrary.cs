using System.Buffers.Binary;
using System.Formats.Tar;
using SharpCompress.Compressors.LZMA;

namespace RigScenarios.Browser.Packing;

/// <summary>
/// The one file that a browser loads the library from: a tar archive (POSIX.1-1988, "ustar") in .lzma (I. Pavlov, "LZMA
/// specification", 2015), so that its parts are compressed as one. <c>xz --format=lzma -d</c> and <c>tar</c> read it, too.
/// </summary>
public static class PackedLibrary
{
    // What the browser translates while the rest is unpacked, and then what all else is loaded by.
    private static readonly string[] First = ["dotnet.native.wasm", "System.Private.CoreLib.wasm"];

    private const int LongestMatch = 273;

    /// <summary>Packs the files of a folder, without those in folders of its own.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="file">The file to write; one that is there is replaced once all is packed.</param>
    /// <exception cref="IOException">A file can't be read or written.</exception>
    public static void Write(string folder, string file)
    {
        var archive = Archive(folder);
        var unfinished = file + ".new";
        using (var to = File.Create(unfinished))
            Compress(archive, to);
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

    private static void Compress(byte[] archive, Stream to)
    {
        // Matches reach back over the whole archive.
        var reach = 1 << 16;
        while (reach < archive.Length)
            reach <<= 1;
        using var packed = new MemoryStream();
        byte[] properties;
        using (var lzma = LzmaStream.Create(new LzmaEncoderProperties(eos: false, reach, LongestMatch), isLzma2: false, packed))
        {
            properties = lzma.Properties;
            lzma.Write(archive);
        }
        Span<byte> size = stackalloc byte[sizeof(long)];
        BinaryPrimitives.WriteInt64LittleEndian(size, archive.Length);
        to.Write(properties);
        to.Write(size);
        packed.WriteTo(to);
    }
}

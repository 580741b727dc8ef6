using System.Formats.Tar;
using RigScenarios.Browser.Packing;
using ZstdSharp;

namespace RigScenarios.Page.Tests.Folder;

/// <summary>The one file of the published library, as it is written. That the browser's scripts read such files is held by
/// tests/Scripts/packed.test.js with files of another program, and by every test that starts the library in a browser.</summary>
public sealed class PackedLibraryTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rigscenarios-packed-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void It_holds_the_files_first_what_the_browser_translates()
    {
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal)
        {
            ["dotnet.native.wasm"] = Some(70_000, 1),
            ["System.Private.CoreLib.wasm"] = Some(3000, 2),
            ["A.wasm"] = [],
            ["b.wasm"] = Some(512, 3),
        };
        Assert.Equal(files, Read(Write("library", files)));
        Assert.Equal(files.Keys, Read(Write("library", files)).Keys);
    }

    [Fact]
    public void The_same_files_give_the_same_bytes_whenever_they_were_written()
    {
        var files = new Dictionary<string, byte[]> { ["a.wasm"] = Some(9000, 1), ["b.wasm"] = Some(20, 2) };
        var first = Write("one", files);
        var second = Write("two", files, written: new DateTime(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc));
        Assert.Equal(File.ReadAllBytes(first), File.ReadAllBytes(second));
    }

    [Fact]
    public void What_is_there_twice_takes_its_place_once()
    {
        var one = Some(50_000, 1);
        var both = new FileInfo(Write("both", new Dictionary<string, byte[]> { ["a.wasm"] = one, ["b.wasm"] = one })).Length;
        Assert.InRange(both, one.Length, one.Length * 1.05);
    }

    [Fact]
    public void A_file_that_cannot_be_packed_leaves_what_was_there()
    {
        var packed = Write("library", new Dictionary<string, byte[]> { ["a.wasm"] = Some(100, 1) });
        var before = File.ReadAllBytes(packed);
        Assert.Throws<DirectoryNotFoundException>(() => PackedLibrary.Write(Path.Combine(folder, "none"), packed));
        Assert.Equal(before, File.ReadAllBytes(packed));
        Assert.Single(Directory.GetFiles(folder));
    }

    private string Write(string name, IReadOnlyDictionary<string, byte[]> files, DateTime? written = null)
    {
        var from = Directory.CreateDirectory(Path.Combine(folder, name)).FullName;
        foreach (var (file, bytes) in files)
        {
            File.WriteAllBytes(Path.Combine(from, file), bytes);
            if (written is { } time)
                File.SetLastWriteTimeUtc(Path.Combine(from, file), time);
        }
        var packed = Path.Combine(folder, name + ".bin");
        PackedLibrary.Write(from, packed);
        return packed;
    }

    private static Dictionary<string, byte[]> Read(string packed)
    {
        using var decompressor = new Decompressor();
        using var tar = new TarReader(new MemoryStream(decompressor.Unwrap(File.ReadAllBytes(packed)).ToArray()));
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        while (tar.GetNextEntry(copyData: true) is { } entry)
        {
            using var content = new MemoryStream();
            entry.DataStream?.CopyTo(content);
            files.Add(entry.Name, content.ToArray());
        }
        return files;
    }

    private static byte[] Some(int count, int seed)
    {
        var bytes = new byte[count];
        new Random(seed).NextBytes(bytes);
        return bytes;
    }
}

using RigScenarios.Page.Folder;

namespace RigScenarios.Page.Tests.Folder;

/// <summary>A folder is written as a whole, and nothing of somebody else's is lost.</summary>
public sealed class WholeFolderTests : IDisposable
{
    private readonly string around = Directory.CreateTempSubdirectory("rigscenarios-folder-").FullName;

    public void Dispose() => Directory.Delete(around, recursive: true);

    [Theory]
    [InlineData("site")]
    [InlineData("a b")]
    [InlineData("Außen #1 100% 'x' & \"y\"")]
    [InlineData("deep/er/still")]
    [InlineData("-- site")]
    [InlineData("絵コンテ 🎬")]
    public void Any_name_that_the_system_has_will_do(string name)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() && name.Contains('"', StringComparison.Ordinal),
            "this system has no such names");
        var folder = Path.Combine(around, name);
        Assert.Null(WholeFolder.Problem(folder));
        WholeFolder.Write(folder, Files("1"), TestContext.Current.CancellationToken);
        Assert.Equal("1", File.ReadAllText(Path.Combine(folder, "inner", "text.txt")));
        Assert.Equal(1, Count());
    }

    [Fact]
    public void An_earlier_one_is_replaced_as_a_whole()
    {
        var folder = Path.Combine(around, "site");
        WholeFolder.Write(folder, new Dictionary<string, byte[]>(Files("1")) { ["old.txt"] = "old"u8.ToArray() }.Listed(),
            TestContext.Current.CancellationToken);
        WholeFolder.Write(folder, Files("2"), TestContext.Current.CancellationToken);
        Assert.Equal("2", File.ReadAllText(Path.Combine(folder, "inner", "text.txt")));
        Assert.False(File.Exists(Path.Combine(folder, "old.txt")));
        Assert.Equal(1, Count());
    }

    [Theory]
    [InlineData("mine.txt")]
    [InlineData("inner/mine.txt")]
    [InlineData(".hidden")]
    public void A_folder_to_which_something_was_added_stays(string added)
    {
        var folder = Path.Combine(around, "site");
        WholeFolder.Write(folder, Files("1"), TestContext.Current.CancellationToken);
        File.WriteAllText(Path.Combine(folder, added), "mine");
        Assert.Contains(added, WholeFolder.Problem(folder), StringComparison.Ordinal);
        Assert.Throws<IOException>(() => WholeFolder.Write(folder, Files("2"), TestContext.Current.CancellationToken));
        Assert.Equal("1", File.ReadAllText(Path.Combine(folder, "inner", "text.txt")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, added)));
    }

    [Theory]
    [InlineData("holiday.txt", "mine")]
    [InlineData("rigscenarios-files.json", "{\"program\": \"another\"}")]
    [InlineData("rigscenarios-files.json", "{ no JSON")]
    public void A_folder_of_somebody_else_stays(string name, string text)
    {
        var folder = Directory.CreateDirectory(Path.Combine(around, "site")).FullName;
        File.WriteAllText(Path.Combine(folder, name), text);
        Assert.Contains(name, WholeFolder.Problem(folder), StringComparison.Ordinal);
        Assert.Throws<IOException>(() => WholeFolder.Write(folder, Files("2"), TestContext.Current.CancellationToken));
        Assert.Equal(text, File.ReadAllText(Path.Combine(folder, name)));
    }

    [Fact]
    public void An_empty_folder_is_taken_and_a_link_stays_one()
    {
        var folder = Directory.CreateDirectory(Path.Combine(around, "real")).FullName;
        var link = Path.Combine(around, "link");
        Directory.CreateSymbolicLink(link, folder);
        Assert.Null(WholeFolder.Problem(link));
        WholeFolder.Write(link, Files("1"), TestContext.Current.CancellationToken);
        Assert.NotNull(new DirectoryInfo(link).LinkTarget);
        Assert.Equal("1", File.ReadAllText(Path.Combine(folder, "inner", "text.txt")));
        Assert.Equal(2, Count());
    }

    [Fact]
    public void What_is_no_place_for_a_folder_is_told()
    {
        var file = Path.Combine(around, "file");
        File.WriteAllText(file, "mine");
        Assert.Contains("a file and no folder", WholeFolder.Problem(file), StringComparison.Ordinal);
        Assert.Contains("a file and no folder", WholeFolder.Problem(Path.Combine(file, "below")), StringComparison.Ordinal);
        Assert.Contains("root", WholeFolder.Problem(Path.GetPathRoot(around)!), StringComparison.Ordinal);
        Assert.Contains("No folder", WholeFolder.Problem(" "), StringComparison.Ordinal);
        Assert.Contains("can't be", WholeFolder.Problem("a\0b"), StringComparison.Ordinal);
        Assert.Contains("that you are in", WholeFolder.Problem(Environment.CurrentDirectory), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(file));
    }

    [Fact]
    public void Whoever_stops_it_finds_what_was_there_before()
    {
        var folder = Path.Combine(around, "site");
        WholeFolder.Write(folder, Files("1"), TestContext.Current.CancellationToken);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => WholeFolder.Write(folder, Files("2"), stop.Token));
        Assert.Equal("1", File.ReadAllText(Path.Combine(folder, "inner", "text.txt")));
        Assert.Equal(1, Count());
    }

    [Fact]
    public void A_file_that_cannot_be_written_leaves_nothing_behind()
    {
        var folder = Path.Combine(around, "site");
        WholeFolder.Write(folder, Files("1"), TestContext.Current.CancellationToken);
        // A file where a folder is needed: the writing breaks off in its middle.
        var broken = new Dictionary<string, byte[]>(Files("2")) { ["inner/text.txt/below"] = [1] };
        Assert.ThrowsAny<IOException>(() => WholeFolder.Write(folder, broken, TestContext.Current.CancellationToken));
        Assert.Equal("1", File.ReadAllText(Path.Combine(folder, "inner", "text.txt")));
        Assert.Equal(1, Count());
    }

    private static Dictionary<string, byte[]> Files(string text) => new Dictionary<string, byte[]>(StringComparer.Ordinal)
    {
        ["index.html"] = System.Text.Encoding.UTF8.GetBytes(text),
        ["inner/text.txt"] = System.Text.Encoding.UTF8.GetBytes(text),
    }.Listed();

    private int Count() => Directory.EnumerateFileSystemEntries(around).Count();
}

internal static class ListedFiles
{
    /// <summary>The files with the list of them.</summary>
    public static Dictionary<string, byte[]> Listed(this Dictionary<string, byte[]> files)
    {
        files[FolderList.Name] = FolderList.Of("0", "0", files);
        return files;
    }
}

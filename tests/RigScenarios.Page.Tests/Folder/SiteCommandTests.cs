using System.Diagnostics;

namespace RigScenarios.Page.Tests.Folder;

/// <summary><c>rigscenarios site</c>, as a program of its own, with a stand-in for the browser build.</summary>
public sealed class SiteCommandTests : CommandWithStandIn
{
    [Fact]
    public async Task It_writes_the_folder_and_says_how_to_open_it()
    {
        var (code, told, wrong) = await RunAsync("site", "--out", "my site", "--no-notebooks", "--browser-files", Browser);
        Assert.True(code == 0, wrong);
        Assert.Contains("python3 -m http.server 8000 --bind 127.0.0.1 --directory \"my site\"", told, StringComparison.Ordinal);
        Assert.Contains("READ-ME.txt", told, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Around, "my site", "rig.html")));
        Assert.Single(Directory.EnumerateFileSystemEntries(Around));
        Assert.Equal(0, (await RunAsync("site", "--out", "my site", "--no-notebooks", "--browser-files", Browser)).Code);
        Assert.Single(Directory.EnumerateFileSystemEntries(Around));
    }

    [Theory]
    [InlineData("full", "mine.txt")]
    [InlineData("full/mine.txt", "a file and no folder")]
    [InlineData(".", "that you are in")]
    public async Task A_place_that_is_taken_is_refused_before_any_work(string place, string why)
    {
        Directory.CreateDirectory(Path.Combine(Around, "full"));
        File.WriteAllText(Path.Combine(Around, "full", "mine.txt"), "mine");
        var (code, _, wrong) = await RunAsync("site", "--out", place, "--browser-files", Browser);
        Assert.Equal(2, code);
        Assert.Contains("--out", wrong, StringComparison.Ordinal);
        Assert.Contains(why, wrong, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", wrong, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Around, "full", "mine.txt")));
    }

    [Fact]
    public async Task A_build_that_is_not_there_or_not_whole_is_told()
    {
        var (code, _, wrong) = await RunAsync("site", "--out", "site", "--no-notebooks", "--browser-files", "none");
        Assert.Equal(2, code);
        Assert.Contains("--browser-files: there is no folder none", wrong, StringComparison.Ordinal);
        File.Delete(Path.Combine(Browser, "boot.js"));
        (code, _, wrong) = await RunAsync("site", "--out", "site", "--no-notebooks", "--browser-files", Browser);
        Assert.Equal(1, code);
        Assert.Contains("boot.js is missing", wrong, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(Around));
    }

    [Fact]
    public async Task Where_nothing_may_be_written_it_says_so()
    {
        // A folder in which nobody may make another, whoever runs the tests.
        Assert.SkipUnless(Directory.Exists("/proc/self"), "this system has no folder of its processes");
        var (code, _, wrong) = await RunAsync("site", "--out", "/proc/site", "--no-notebooks", "--browser-files", Browser);
        Assert.Equal((2, "error: /proc/site: nothing can be written there."), (code, wrong.Trim()));
    }

    [Fact]
    public async Task Who_stops_it_finds_nothing_half_written()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this system has no signals");
        using var program = Start("site", "--out", "site", "--browser-files", Browser);
        var line = await program.StandardError.ReadLineAsync(TestContext.Current.CancellationToken);
        Assert.StartsWith("Running notebook 1 of ", line, StringComparison.Ordinal);
        using (var signal = Process.Start("kill", ["-INT", $"{program.Id}"]))
            await signal.WaitForExitAsync(TestContext.Current.CancellationToken);
        await program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(130, program.ExitCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(Around));
    }
}

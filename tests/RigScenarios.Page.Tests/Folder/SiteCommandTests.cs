using System.Diagnostics;

namespace RigScenarios.Page.Tests.Folder;

/// <summary><c>rigscenarios site</c>, as a program of its own, with a stand-in for the browser build.</summary>
public sealed class SiteCommandTests : IDisposable
{
    private readonly string around = Directory.CreateTempSubdirectory("rigscenarios-site-").FullName;
    private readonly string browser = StandInBuild.Make();

    public void Dispose()
    {
        Directory.Delete(around, recursive: true);
        Directory.Delete(browser, recursive: true);
    }

    [Fact]
    public async Task It_writes_the_folder_and_says_how_to_open_it()
    {
        var (code, told, wrong) = await RunAsync("site", "--out", "my site", "--no-notebooks", "--browser-files", browser);
        Assert.True(code == 0, wrong);
        Assert.Contains("python3 -m http.server 8000 --bind 127.0.0.1 --directory \"my site\"", told, StringComparison.Ordinal);
        Assert.Contains("READ-ME.txt", told, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(around, "my site", "rig.html")));
        Assert.Single(Directory.EnumerateFileSystemEntries(around));
        Assert.Equal(0, (await RunAsync("site", "--out", "my site", "--no-notebooks", "--browser-files", browser)).Code);
        Assert.Single(Directory.EnumerateFileSystemEntries(around));
    }

    [Theory]
    [InlineData("full", "mine.txt")]
    [InlineData("full/mine.txt", "a file and no folder")]
    [InlineData(".", "that you are in")]
    public async Task A_place_that_is_taken_is_refused_before_any_work(string place, string why)
    {
        Directory.CreateDirectory(Path.Combine(around, "full"));
        File.WriteAllText(Path.Combine(around, "full", "mine.txt"), "mine");
        var (code, _, wrong) = await RunAsync("site", "--out", place, "--browser-files", browser);
        Assert.Equal(2, code);
        Assert.Contains("--out", wrong, StringComparison.Ordinal);
        Assert.Contains(why, wrong, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", wrong, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(around, "full", "mine.txt")));
    }

    [Fact]
    public async Task A_build_that_is_not_there_or_not_whole_is_told()
    {
        var (code, _, wrong) = await RunAsync("site", "--out", "site", "--no-notebooks", "--browser-files", "none");
        Assert.Equal(2, code);
        Assert.Contains("--browser-files: there is no folder none", wrong, StringComparison.Ordinal);
        File.Delete(Path.Combine(browser, "boot.js"));
        (code, _, wrong) = await RunAsync("site", "--out", "site", "--no-notebooks", "--browser-files", browser);
        Assert.Equal(1, code);
        Assert.Contains("boot.js is missing", wrong, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(around));
    }

    [Fact]
    public async Task Where_nothing_may_be_written_it_says_so()
    {
        // A folder in which nobody may make another, whoever runs the tests.
        Assert.SkipUnless(Directory.Exists("/proc/self"), "this system has no folder of its processes");
        var (code, _, wrong) = await RunAsync("site", "--out", "/proc/site", "--no-notebooks", "--browser-files", browser);
        Assert.Equal((2, "error: /proc/site: nothing can be written there."), (code, wrong.Trim()));
    }

    [Fact]
    public async Task Who_stops_it_finds_nothing_half_written()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this system has no signals");
        using var program = Start("site", "--out", "site", "--browser-files", browser);
        var line = await program.StandardError.ReadLineAsync(TestContext.Current.CancellationToken);
        Assert.StartsWith("Running notebook 1 of ", line, StringComparison.Ordinal);
        using (var signal = Process.Start("kill", ["-INT", $"{program.Id}"]))
            await signal.WaitForExitAsync(TestContext.Current.CancellationToken);
        await program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(130, program.ExitCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(around));
    }

    private async Task<(int Code, string Told, string Wrong)> RunAsync(params string[] words)
    {
        using var program = Start(words);
        var (told, wrong) = (program.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken),
            program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (program.ExitCode, await told, await wrong);
    }

    private Process Start(params string[] words) => Process.Start(new ProcessStartInfo("dotnet",
        [Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), .. words])
    {
        WorkingDirectory = around,
        UseShellExecute = false,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;
}

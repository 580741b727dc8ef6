using System.Diagnostics;

namespace RigScenarios.Tests.Cli;

/// <summary>The exit codes of docs/command-line.md.</summary>
[Collection(nameof(ConsoleRun))]
public class ExitCodeTests
{
    private const string Page = "command-line.md";

    private static readonly string Rig = Repository.Data("scenarios", "winter-harbour.yaml");

    [Fact]
    public async Task A_no_is_an_answer()
    {
        foreach (var command in (string[][])[["run", Rig, "--quick"], ["day", Rig], ["balance", Rig]])
        {
            var (code, output, error) = await ConsoleRun.RunAsync(command);
            Assert.Equal((0, ""), (code, error));
            Assert.Contains("fails", output, StringComparison.Ordinal);
        }
        // What a script asks for instead.
        var (_, json, _) = await ConsoleRun.RunAsync("run", Rig, "--quick", "--json");
        Assert.Contains("\"verdict\": \"fails\"", json, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run", "nothing.yaml")]
    [InlineData("run")]
    [InlineData("runs")]
    [InlineData("check", "nothing.yaml")]
    [InlineData("open", "--folder", "nothing", "--no-browser")]
    [InlineData("open", "nothing.yaml", "--no-browser")]
    [InlineData("open", "nothing.ipynb", "--no-browser")]
    [InlineData("notebook", "nothing.ipynb", "--out", "x.html")]
    [InlineData("new", "x.yaml")]
    [InlineData("open", "--folder", "/dev/null", "--no-browser")]
    [InlineData("open", "--folder", "", "--no-browser")]
    [InlineData("open", "/dev/null", "--no-browser")]
    public async Task What_cant_be_used_ends_with_2(params string[] words)
    {
        var (code, _, _) = await ConsoleRun.RunAsync(words);
        Assert.Equal(2, code);
    }

    [Fact]
    public async Task A_place_where_nobody_may_write_ends_with_2()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("file", "x");
        var (code, _, error) = await ConsoleRun.RunAsync("sweep", Rig, "--build", "shoulder", "--over",
            "days.day-one.ambient=0 °C..1 °C:2", "--out", Path.Combine(file, "t.csv"));
        Assert.Equal(2, code);
        Assert.Contains("is a file and no folder", error, StringComparison.Ordinal);
        if (!Directory.Exists("/proc/self"))
            return;
        (code, _, error) = await ConsoleRun.RunAsync("sweep", Rig, "--build", "shoulder", "--over",
            "days.day-one.ambient=0 °C..1 °C:2", "--out", "/proc/t.csv");
        Assert.Equal((2, "error: /proc/t.csv: nothing can be written into that folder."), (code, error.Trim()));
    }

    [Theory(Timeout = 180_000)]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    public async Task A_signal_ends_a_run_with_128_and_its_number(string signal, int code)
    {
        using var folder = new TemporaryFolder();
        var table = Path.Combine(folder.Path, "table.csv");
        using var run = Start("sweep", Rig, "--build", "tripod", "--over", "days.day-one.ambient=-20 °C..20 °C:200", "--over",
            "days.day-two.ambient=-20 °C..20 °C:200", "--out", table);
        await Task.Delay(3000, TestContext.Current.CancellationToken);
        Signals.Send(signal, run);
        var error = await run.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await run.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(run.ExitCode == code, $"{signal}: {run.ExitCode} {error}");
        Assert.False(File.Exists(table));
    }

    [Theory(Timeout = 180_000)]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    public async Task A_signal_ends_the_pages_as_any_other_command(string signal, int code)
    {
        using var folder = new TemporaryFolder();
        using var run = Start("open", "--no-browser", "--port", "0", "--folder", folder.Path);
        // Its first words stand there once it listens.
        await run.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        Signals.Send(signal, run);
        await run.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await run.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(code, run.ExitCode);
    }

    [Fact]
    public void The_page_names_each_code()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", Page));
        foreach (var code in (int[])[0, 1, 2, 130, 143])
            Assert.Contains($"| {code} |", page, StringComparison.Ordinal);
        Assert.Contains(Page, File.ReadAllText(Path.Combine(Repository.Root, "README.md")), StringComparison.Ordinal);
    }

    private static Process Start(params string[] words)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this system has no signals");
        var program = typeof(RigScenarios.Cli.CommandLine).Assembly.Location;
        return Process.Start(new ProcessStartInfo("dotnet", [program, .. words])
        {
            UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
    }
}

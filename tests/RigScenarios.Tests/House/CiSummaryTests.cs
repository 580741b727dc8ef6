using System.Diagnostics;

namespace RigScenarios.Tests.House;

/// <summary>The last line of continuous integration, on what a test run might have printed.</summary>
public sealed class CiSummaryTests
{
    private const string NoBrowser = "Chromium is not installed";

    private const string TwoSkips = """
        skipped RigScenarios.Some.Tests.A_page_is_drawn(width: 500)
          Chromium is not installed
          from /somewhere/RigScenarios.Some.Tests.dll (net10.0|x64)
        skipped RigScenarios.Some.Tests.A_row(text: "a (b)") (0ms)
          this machine is on no network
          from /somewhere/RigScenarios.Some.Tests.dll (net10.0|x64)

        """;

    [Theory]
    [InlineData(12, 0, 0, 0, "12 passed, 0 failed", 0)]
    [InlineData(11, 1, 0, 2, "11 passed, 1 failed", 1)]
    [InlineData(0, 0, 0, 0, "0 passed, 1 failed", 1)]
    [InlineData(12, 0, 0, 3, "12 passed, 1 failed", 1)]
    [InlineData(9, 0, 3, 0, "9 passed, 3 failed", 1)]
    public async Task It_says_how_many_passed_and_failed(int passed, int failed, int skipped, int status, string last, int code)
    {
        var (found, lines) = await SummaryAsync("", passed, failed, skipped, status);
        Assert.Equal((last, code), (lines[^1], found));
    }

    [Fact]
    public async Task A_skip_for_what_is_missing_is_listed_by_name()
    {
        var (code, lines) = await SummaryAsync(TwoSkips, 9, 0, 2, 0, NoBrowser, "this machine is on no network");
        Assert.Equal(0, code);
        Assert.Equal([$"skipped: RigScenarios.Some.Tests.A_page_is_drawn(width: 500): {NoBrowser}",
            "skipped: RigScenarios.Some.Tests.A_row(text: \"a (b)\"): this machine is on no network",
            "9 passed, 0 failed, 2 skipped"], lines);
    }

    [Fact]
    public async Task A_skip_for_what_is_there_counts_as_failed_and_is_named()
    {
        var (code, lines) = await SummaryAsync(TwoSkips, 9, 0, 2, 0, "this machine is on no network");
        Assert.Equal(1, code);
        Assert.Contains($"skipped without need, counted as failed: RigScenarios.Some.Tests.A_page_is_drawn(width: 500): "
            + $"{NoBrowser}",
            lines);
        Assert.Equal("9 passed, 1 failed, 1 skipped", lines[^1]);
    }

    [Fact]
    public async Task On_another_system_any_reason_may_hold()
    {
        var (code, lines) = await SummaryAsync(TwoSkips, 9, 0, 2, 0, "*");
        Assert.Equal((0, "9 passed, 0 failed, 2 skipped"), (code, lines[^1]));
    }

    [Fact]
    public async Task A_run_without_a_summary_fails()
    {
        var (code, lines) = await RunAsync("The runner fell over.\n", 134);
        Assert.Equal((1, "0 passed, 1 failed"), (code, lines[^1]));
    }

    private static Task<(int Code, IReadOnlyList<string> Lines)> SummaryAsync(string before, int passed, int failed, int skipped,
        int status, params string[] excused) => RunAsync(
        $"Running tests from here\n{before}\nTest run summary: whatever\n  total: {passed + failed + skipped}\n"
            + $"  failed: {failed}\n  succeeded: {passed}\n  skipped: {skipped}\n  duration: 33s 604ms\n", status, excused);

    private static async Task<(int Code, IReadOnlyList<string> Lines)> RunAsync(string printed, int status,
        params string[] excused)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this system has no bash");
        using var folder = new TemporaryFolder();
        var start = new ProcessStartInfo("bash", [Path.Combine(Repository.Root, ".ci", "summary"),
            folder.Write("output.txt", printed), $"{status}", .. excused]) { RedirectStandardOutput = true,
            UseShellExecute = false };
        using var bash = Process.Start(start)!;
        var told = await bash.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await bash.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (bash.ExitCode, told.TrimEnd('\n').Split('\n'));
    }
}

using System.Diagnostics;

namespace RigScenarios.Tests.Cli;

/// <summary>Ctrl-C, sent to the program as a user's terminal sends it. Bounds on time are far above the second that is meant, for
/// machines with much else to do: StoppedWorkTests counts steps instead.</summary>
public sealed class CtrlCTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    /// <summary>300 blocks of takes of a second: the search for what would make it work alone would take minutes.</summary>
    [Fact]
    public async Task A_run_over_300_blocks_of_short_takes_stops_in_the_search_with_130()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signals to send.");
        using var folder = new TemporaryFolder();
        using var program = Start("run", await LongAsync(folder, "night-dolly"), "--build", "heavy-lead");
        // The verdict stands there before the search begins.
        var first = await program.StandardOutput.ReadLineAsync(Cancellation);
        Assert.Contains("Night on the dolly", first, StringComparison.Ordinal);
        await StopAsync(program);
    }

    /// <summary>Among thousands of choices, each of which takes seconds, or the many mixes of ten rigs: nothing is told before
    /// all is found.</summary>
    [Theory]
    [InlineData("search")]
    [InlineData("compare")]
    public async Task A_search_and_a_comparison_stop_with_130_and_write_nothing(string command)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signals to send.");
        using var folder = new TemporaryFolder();
        var table = Path.Combine(folder.Path, "table.csv");
        const string other = "kit.brick.part=brick-150wh; kit.monitor.part=monitor-recorder-7in; kit.head.part=head-light; "
            + "kit.camera.part=compact-body-c; kit.transmitter.part=transmitter-long-range";
        string[] rest = command == "search" ? ["--limit", "3600"]
            : [.. Enumerable.Range(1, 10).SelectMany(number => new[] { "--with", $"other-{number}: {other}" })];
        using var program = Start([command, await LongAsync(folder, "river-ferry"), "--csv", table, .. rest]);
        // What a start, and reading the file, take is less.
        while (program.TotalProcessorTime < TimeSpan.FromSeconds(3))
        {
            Assert.False(program.HasExited, "It came to its end before it could be stopped.");
            await Task.Delay(50, Cancellation);
        }
        Assert.Equal("", await StopAsync(program));
        Assert.Equal(["long.yaml"], Directory.EnumerateFiles(folder.Path).Select(Path.GetFileName));
    }

    /// <summary>A demo with one day of 300 blocks of short takes in place of its own.</summary>
    private static async Task<string> LongAsync(TemporaryFolder folder, string demo)
    {
        var text = await File.ReadAllTextAsync(Repository.Data("scenarios", $"{demo}.yaml"), Cancellation);
        var blocks = string.Concat(Enumerable.Range(0, 300).Select(i =>
            $"      b{i}: {{length: 4 min, others: record, cycle: {{take: 4 s, reset: 4 s}}}}\n"));
        int At(string key) => text.IndexOf($"\n{key}:", StringComparison.Ordinal);
        var (before, after) = (At("days"), At("costs"));
        return folder.Write("long.yaml", text[..before].Replace("../parts", Repository.Data("parts"), StringComparison.Ordinal)
            + $"\ndays:\n  night:\n    title: A night of short takes\n    starts: \"00:00\"\n    blocks:\n{blocks}"
            + (after < 0 ? "" : text[after..]));
    }

    private static Process Start(params string[] arguments) => Process.Start(new ProcessStartInfo("dotnet",
        [Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), .. arguments])
    {
        UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true,
    })!;

    /// <summary>Stops it; gives what it had still to say.</summary>
    private static async Task<string> StopAsync(Process program)
    {
        var clock = Stopwatch.StartNew();
        // Where Ctrl-C is ignored the program is ended otherwise.
        Signals.Send(Signals.IsInterruptIgnored ? "TERM" : "INT", program);
        var text = await program.StandardOutput.ReadToEndAsync(Cancellation);
        var error = await program.StandardError.ReadToEndAsync(Cancellation);
        await program.WaitForExitAsync(Cancellation);
        Assert.Equal(Signals.IsInterruptIgnored ? 143 : 130, program.ExitCode);
        Assert.StartsWith("Stopped.", error, StringComparison.Ordinal);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 20);
        return text;
    }
}

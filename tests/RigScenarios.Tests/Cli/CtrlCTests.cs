using System.Diagnostics;

namespace RigScenarios.Tests.Cli;

/// <summary>Ctrl-C, sent to the program as a user's terminal sends it.</summary>
public sealed class CtrlCTests
{
    /// <summary>300 blocks of takes of a second: the search alone would take minutes. The bound is far above the second that is
    /// meant, for machines with much else to do: StoppedWorkTests counts steps instead.</summary>
    [Fact]
    public async Task A_run_over_300_blocks_of_short_takes_stops_in_the_search_with_130()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signals to send.");
        using var folder = new TemporaryFolder();
        var text = await File.ReadAllTextAsync(Repository.Data("scenarios", "night-dolly.yaml"),
            TestContext.Current.CancellationToken);
        var blocks = string.Concat(Enumerable.Range(0, 300).Select(i =>
            $"      b{i}: {{length: 4 min, others: record, cycle: {{take: 4 s, reset: 4 s}}}}\n"));
        var file = folder.Write("long.yaml", text[..text.IndexOf("\ndays:", StringComparison.Ordinal)]
            .Replace("../parts", Repository.Data("parts"), StringComparison.Ordinal)
            + $"\ndays:\n  night:\n    title: A night of short takes\n    starts: \"00:00\"\n    blocks:\n{blocks}");
        using var program = Process.Start(new ProcessStartInfo("dotnet",
            [Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), "run", file, "--build", "heavy-lead"])
        {
            UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true,
        })!;

        // The verdict stands there before the search begins.
        var first = await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        Assert.Contains("Night on the dolly", first, StringComparison.Ordinal);
        var clock = Stopwatch.StartNew();
        // Where Ctrl-C is ignored the program is ended otherwise.
        Signals.Send(Signals.IsInterruptIgnored ? "TERM" : "INT", program);
        await program.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = await program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(Signals.IsInterruptIgnored ? 143 : 130, program.ExitCode);
        Assert.StartsWith("Stopped.", error, StringComparison.Ordinal);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 20);
    }
}

using System.Diagnostics;

namespace RigScenarios.Tests.Cli;

/// <summary>The program as a process of its own, as a terminal or a scheduler starts it.</summary>
internal static class SweepProgram
{
    private static readonly string Rig = Repository.Data("scenarios", "winter-harbour.yaml");

    /// <summary>The words of a sweep whose whole answers take a while, so that it can be stopped in the middle.</summary>
    public static string[] Words(int samples, string table, params string[] more) =>
    [
        "sweep", Rig, "--build", "tripod", "--over", "days.day-one.ambient=-20 °C | 0 °C | 10 °C", "--uncertain",
        "parts.brick-190wh.battery.energy=190 Wh +- 8 Wh", "--samples", $"{samples}", "--seed", "11", "--columns",
        "lasts,runtime_h,stopped_by,verdict", "--out", table, .. more,
    ];

    /// <summary>The words of a sweep that goes through very many discharges at a time.</summary>
    public static string[] QuickWords(int samples, string table, params string[] more) =>
    [
        "sweep", Repository.Data("scenarios", "teaching-kit.yaml"), "--build", "full-rig", "--over",
        "parts.brick-98wh.battery.energy=80 Wh | 98 Wh | 120 Wh", "--uncertain", "conditions.ambient=5 °C +- 6 °C", "--samples",
        $"{samples}", "--seed", "11", "--out", table, .. more,
    ];

    /// <summary>Starts it.</summary>
    /// <param name="words">The command line.</param>
    /// <param name="cores">How many cores it is given; all if left out.</param>
    public static Process Start(IEnumerable<string> words, int? cores = null)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this system has no signals");
        var start = new ProcessStartInfo("dotnet", [typeof(RigScenarios.Cli.CommandLine).Assembly.Location, .. words])
        {
            UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        if (cores is { } count)
            start.Environment["DOTNET_PROCESSOR_COUNT"] = $"{count}";
        return Process.Start(start)!;
    }

    /// <summary>Waits until it has ended, and gives its exit code with all that it said. One that hangs is ended and fails the
    /// test.</summary>
    public static async Task<(int Code, string Said)> EndAsync(Process program)
    {
        var output = program.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        try
        {
            await program.WaitForExitAsync(TestContext.Current.CancellationToken)
                .WaitAsync(TimeSpan.FromMinutes(10), TestContext.Current.CancellationToken);
        }
        finally
        {
            if (!program.HasExited)
                program.Kill(entireProcessTree: true);
        }
        return (program.ExitCode, await output + await error);
    }

    /// <summary>Runs it to its end.</summary>
    public static async Task<(int Code, string Said)> RunAsync(IEnumerable<string> words, int? cores = null)
    {
        using var program = Start(words, cores);
        return await EndAsync(program);
    }
}

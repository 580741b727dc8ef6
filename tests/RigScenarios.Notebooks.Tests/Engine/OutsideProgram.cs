using System.Diagnostics;

namespace RigScenarios.Notebooks.Tests.Engine;

/// <summary>Programs beyond the SDK that some tests need.</summary>
internal static class OutsideProgram
{
    /// <summary>The first of the programs that is on the path; null if none is.</summary>
    public static string? Find(params string[] names) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(folder => names.Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists);

    public static async Task<(int Code, string Output)> RunAsync(string program, string folder, IEnumerable<string> arguments, CancellationToken cancellation)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.Environment["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1";
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(cancellation);
        var error = process.StandardError.ReadToEndAsync(cancellation);
        await process.WaitForExitAsync(cancellation);
        return (process.ExitCode, await output + await error);
    }
}

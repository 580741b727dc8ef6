using System.Diagnostics;

namespace RigScenarios.Notebooks.Tests.Places;

/// <summary>A program that a test needs from the machine, if it is there.</summary>
internal static class OtherProgram
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(4);

    /// <summary>The first of the names that is found on the path, or null.</summary>
    public static string? Find(params string[] names) =>
        (from name in names
         from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
         from ending in OperatingSystem.IsWindows() ? new[] { ".exe", ".cmd" } : [""]
         let path = Path.Combine(folder, name + ending)
         where File.Exists(path)
         select path).FirstOrDefault();

    /// <summary>Runs it to its end; one that takes too long is ended.</summary>
    public static async Task<(int ExitCode, string Output, string Errors)> RunAsync(
        string program, IEnumerable<string> arguments, string folder, CancellationToken cancellation,
        params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        using var process = Process.Start(start)!;
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(Longest);
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(limit.Token);
            var errors = process.StandardError.ReadToEndAsync(limit.Token);
            await process.WaitForExitAsync(limit.Token);
            return (process.ExitCode, await output, await errors);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw;
        }
    }
}

using System.Diagnostics;

namespace RigScenarios.Page.Tests.Folder;

/// <summary>The command line as a program of its own, in a new folder, with a stand-in for the browser build.</summary>
public abstract class CommandWithStandIn : IDisposable
{
    /// <summary>The folder in which it runs; nothing is in it at first.</summary>
    protected string Around { get; } = Directory.CreateTempSubdirectory("rigscenarios-command-").FullName;

    /// <summary>The stand-in.</summary>
    protected string Browser { get; } = StandInBuild.Make();

    public void Dispose()
    {
        Directory.Delete(Around, recursive: true);
        Directory.Delete(Browser, recursive: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Runs it to its end.</summary>
    protected async Task<(int Code, string Told, string Wrong)> RunAsync(params string[] words)
    {
        using var program = Start(words);
        var (told, wrong) = (program.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken),
            program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (program.ExitCode, await told, await wrong);
    }

    /// <summary>Starts it.</summary>
    protected Process Start(params string[] words) => Process.Start(new ProcessStartInfo("dotnet",
        [Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), .. words])
    {
        WorkingDirectory = Around,
        UseShellExecute = false,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;
}

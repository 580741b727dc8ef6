using System.Diagnostics;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Scripts;

/// <summary>
/// Node.js with the packages of tests/Scripts, which check the page's scripts. Neither is needed for anything else: what needs
/// them
/// is skipped by name where they are missing.
/// </summary>
internal static class NodeProgram
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    /// <summary>The folder with the package list, the settings and the unit tests.</summary>
    public static string Folder { get; } = Path.Combine(Checkout.Root, "tests", "Scripts");

    /// <summary>Runs a program of a package in the folder.</summary>
    /// <param name="package">The package's name.</param>
    /// <param name="program">The script in it that starts the program.</param>
    /// <param name="arguments">What is said to it.</param>
    public static Task<(int Code, string Told)> RunPackageAsync(string package, string program, params string[] arguments)
    {
        var script = Path.Combine(Folder, "node_modules", package, program);
        _ = Found();
        Assert.SkipUnless(File.Exists(script), "the packages of tests/Scripts are not installed (npm ci)");
        return RunAsync([script, .. arguments]);
    }

    /// <summary>Runs Node.js in the folder.</summary>
    /// <param name="arguments">What is said to it.</param>
    public static async Task<(int Code, string Told)> RunAsync(params string[] arguments)
    {
        var start = new ProcessStartInfo(Found(), arguments)
        {
            WorkingDirectory = Folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
        };
        // Set where a node runs another's tests; it would change what is printed.
        start.Environment.Remove("NODE_TEST_CONTEXT");
        start.Environment["NO_COLOR"] = "1";
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(Patience);
        using var node = Process.Start(start)!;
        try
        {
            var told = node.StandardOutput.ReadToEndAsync(patience.Token);
            var complained = node.StandardError.ReadToEndAsync(patience.Token);
            await node.WaitForExitAsync(patience.Token);
            return (node.ExitCode, await told + await complained);
        }
        finally
        {
            if (!node.HasExited)
                node.Kill(entireProcessTree: true);
        }
    }

    private static string Found()
    {
        var name = OperatingSystem.IsWindows() ? "node.exe" : "node";
        var program = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Select(folder => Path.Combine(folder, name)).FirstOrDefault(File.Exists);
        Assert.SkipWhen(program is null, "Node.js is not installed");
        return program!;
    }
}

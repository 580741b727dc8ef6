using System.Diagnostics;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Folders;

/// <summary>What is published once for all tests of a run: it takes half a minute and more.</summary>
internal sealed class Published(Func<Task<string>> publish)
{
    private readonly Lazy<Task<string>> folder = new(publish);

    /// <summary>The reference cases with the library, for a browser.</summary>
    public static Published ReferenceCases { get; } = new(async () =>
    {
        await RunAsync("publish", "-c", "Release", "--disable-build-servers", "-v", "quiet",
            Path.Combine(Checkout.Root, "tests", "RigScenarios.InBrowser"));
        return Path.Combine(Checkout.Root, "artifacts", "publish", "RigScenarios.InBrowser", "release", "wwwroot");
    });

    /// <summary>The pages' folder, made by the command that people use; its notebooks are tested elsewhere. Who works on these
    /// tests may name one that was made before (RIGSCENARIOS_SITE), and saves the minutes that it takes.</summary>
    public static Published Site { get; } = new(async () =>
    {
        if (Environment.GetEnvironmentVariable("RIGSCENARIOS_SITE") is { Length: > 0 } made)
            return made;
        var site = Path.Combine(Checkout.Root, "artifacts", "site-of-tests");
        await RunAsync(Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), "site", "--out", site, "--no-notebooks");
        return site;
    });

    /// <summary>The library with the cells of all notebooks that answer in a browser; of a folder that was made before, the one
    /// in it.</summary>
    public static Published ForNotebooks { get; } = new(async () =>
    {
        if (Environment.GetEnvironmentVariable("RIGSCENARIOS_SITE") is { Length: > 0 } made
            && Path.Combine(made, "notebook-library") is var ready && Directory.Exists(ready))
            return ready;
        var cells = Path.Combine(Checkout.Root, "artifacts", "cells");
        if (Directory.Exists(cells))
            Directory.Delete(cells, recursive: true);
        foreach (var notebook in Answering)
            CellsAheadWriter.Write(notebook, cells, TestContext.Current.CancellationToken);
        await RunAsync("publish", "-c", "Release", "--disable-build-servers", "-v", "quiet", $"-p:NotebookCells={cells}",
            Path.Combine(Checkout.Root, "src", "RigScenarios.Browser"));
        return Path.Combine(Checkout.Root, "artifacts", "publish", "RigScenarios.Browser", "release_notebooks", "wwwroot");
    });

    /// <summary>The notebooks that need no program, in their order.</summary>
    public static IEnumerable<Notebook> Answering =>
        Directory.EnumerateFiles(Path.Combine(Checkout.Root, "notebooks"), "*.ipynb").Order(StringComparer.Ordinal)
            .Select(NotebookFile.Load).Where(notebook => notebook.NeedsProgram is null);

    /// <summary>The folder with what was published; a test without it is skipped.</summary>
    public Task<string> FolderAsync() => folder.Value;

    /// <summary>Runs the SDK, or a program by it.</summary>
    public static async Task RunAsync(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", arguments)
        {
            WorkingDirectory = Checkout.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        // What the SDK that runs these tests has told this process is not meant for another one.
        foreach (var name in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase))
            .ToList())
            start.Environment.Remove(name);
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var told = await process.StandardOutput.ReadToEndAsync() + await error;
        await process.WaitForExitAsync();
        Assert.SkipWhen(process.ExitCode != 0 && IsPackMissing(told), "the runtime for browsers cannot be restored");
        Assert.True(process.ExitCode == 0, told);
    }

    // A package, or a version of it, that no source has.
    private static bool IsPackMissing(string told) =>
        (told.Contains("NU1101", StringComparison.Ordinal) || told.Contains("NU1102", StringComparison.Ordinal)
            || told.Contains("NU1301", StringComparison.Ordinal))
        && (told.Contains("browser-wasm", StringComparison.OrdinalIgnoreCase)
            || told.Contains("WebAssembly", StringComparison.OrdinalIgnoreCase));
}

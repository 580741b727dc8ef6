using System.Diagnostics;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;

namespace RigScenarios.Cli.Commands;

/// <summary>The library as it was published for browsers: beside the program where it was installed, made from the sources where
/// it is a checkout.</summary>
internal static class BrowserBuild
{
    private const string Project = "src/RigScenarios.Browser/RigScenarios.Browser.csproj";

    /// <summary>The folder in which the script that starts it lies.</summary>
    /// <param name="given">The folder that was named; null for none.</param>
    /// <param name="told">Gets a line of what takes long.</param>
    /// <param name="cancellation">Stops the build, too.</param>
    /// <exception cref="DirectoryNotFoundException">The named folder is not there.</exception>
    /// <exception cref="IOException">There is none, and it can't be made; it says why.</exception>
    public static async Task<string> FindAsync(string? given, TextWriter told, CancellationToken cancellation)
    {
        if (given is not null)
        {
            return Directory.Exists(given) ? Path.GetFullPath(given)
                : throw new DirectoryNotFoundException($"--browser-files: there is no folder {given}.");
        }
        if (Packed("browser") is { } packed)
            return packed;
        return SourceTree() is { } sources ? await PublishAsync(sources, "release", [], told, cancellation)
            : throw new IOException("The browser build is not beside the program, and the program does not run from its "
                + "sources. Install the packed tool, or run it from a checkout.");
    }

    /// <summary>The same with the cells of notebooks in it.</summary>
    /// <param name="given">The folder that was named; null for none.</param>
    /// <param name="notebooks">The notebooks that are to answer in the browser.</param>
    /// <param name="told">Gets a line of what takes long.</param>
    /// <param name="cancellation">Stops the build, too.</param>
    /// <returns>The folder; null where it is not to be had: then the notebooks come as pages with their results.</returns>
    /// <exception cref="DirectoryNotFoundException">The named folder is not there.</exception>
    /// <exception cref="IOException">It can't be made; it says why.</exception>
    public static async Task<string?> FindForNotebooksAsync(string? given, IReadOnlyList<Notebook> notebooks, TextWriter told,
        CancellationToken cancellation)
    {
        if (given is not null)
        {
            return Directory.Exists(given) ? Path.GetFullPath(given)
                : throw new DirectoryNotFoundException($"--notebook-files: there is no folder {given}.");
        }
        if (PackedForNotebooks is { } packed)
            return packed;
        if (SourceTree() is not { } sources)
            return null;
        var cells = Path.Combine(sources, "artifacts", "cells");
        if (Directory.Exists(cells))
            Directory.Delete(cells, recursive: true);
        await told.WriteLineAsync($"Compiling the cells of {notebooks.Count} notebooks.");
        foreach (var notebook in notebooks)
            CellsAheadWriter.Write(notebook, cells, cancellation);
        return await PublishAsync(sources, "release_notebooks", [$"-p:NotebookCells={cells}"], told, cancellation);
    }

    /// <summary>The one with the cells of notebooks that lies beside the program; null where none does.</summary>
    public static string? PackedForNotebooks => Packed("browser-notebooks");

    // The packed tool has programs for several kinds of machines, and the browser's files once, beside that for all kinds.
    private static string? Packed(string name) => ((string[])[Path.Combine(AppContext.BaseDirectory, name),
        Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "any", name))])
        .FirstOrDefault(folder => File.Exists(Path.Combine(folder, "library.bin")));

    private static string? SourceTree()
    {
        for (var folder = AppContext.BaseDirectory; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, Project)))
                return folder;
        }
        return null;
    }

    private static async Task<string> PublishAsync(string sources, string folder, string[] more, TextWriter told,
        CancellationToken cancellation)
    {
        await told.WriteLineAsync("Building the library for browsers from the sources; the first time takes a few minutes.");
        var start = new ProcessStartInfo(DotnetProgram())
        {
            WorkingDirectory = sources,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            UseShellExecute = false,
        };
        foreach (var word in (string[])["publish", Project, "-c", "Release", "--nologo", "-v", "quiet", .. more])
            start.ArgumentList.Add(word);
        // What an SDK that runs this program has told it is not meant for another one.
        foreach (var name in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase))
            .ToList())
            start.Environment.Remove(name);
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        // A build server that stays behind would keep this command's output open.
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        using var publish = Process.Start(start) ?? throw new IOException("The .NET SDK can't be started.");
        var said = Task.WhenAll(publish.StandardOutput.ReadToEndAsync(CancellationToken.None),
            publish.StandardError.ReadToEndAsync(CancellationToken.None));
        publish.StandardInput.Close();
        try
        {
            await publish.WaitForExitAsync(cancellation);
        }
        catch (OperationCanceledException)
        {
            publish.Kill(entireProcessTree: true);
            throw;
        }
        return publish.ExitCode == 0 ? Path.Combine(sources, "artifacts", "publish", "RigScenarios.Browser", folder, "wwwroot")
            : throw new IOException($"The library could not be built for browsers:\n{string.Concat(await said).Trim()}");
    }

    private static string DotnetProgram() => Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") is { Length: > 0 } host
        ? host : "dotnet";
}

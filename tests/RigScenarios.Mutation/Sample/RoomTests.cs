using System.Diagnostics;

namespace RigScenarios.Mutation.Sample;

/// <summary>The tests and checks of a room, in copies of their built projects, so that the library beside them can be
/// changed.</summary>
internal sealed class RoomTests : IDisposable
{
    private readonly DirectoryInfo copies = Directory.CreateTempSubdirectory("rigscenarios-mutation-");
    private readonly List<(string Folder, string Program)> projects = [];
    private readonly string root;
    private readonly string room;

    /// <summary>Copies the two projects.</summary>
    /// <param name="root">The folder of the repository.</param>
    /// <param name="room">The room.</param>
    public RoomTests(string root, string room)
    {
        (this.root, this.room) = (root, room);
        foreach (var name in (string[])["RigScenarios.Tests", "RigScenarios.Checks"])
        {
            var from = Built(root, name);
            var to = Path.Combine(copies.FullName, name);
            foreach (var path in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
            {
                var copy = Path.Combine(to, Path.GetRelativePath(from, path));
                Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
                File.Copy(path, copy);
            }
            projects.Add((to, Path.Combine(to, name + ".dll")));
        }
    }

    /// <summary>Where a project's release build lies.</summary>
    public static string Built(string root, string name) => Path.Combine(root, "artifacts", "bin", name, "release");

    /// <summary>Where the library lies beside each of the projects.</summary>
    public IEnumerable<string> Libraries => projects.Select(project => Path.Combine(project.Folder, "RigScenarios.dll"));

    /// <summary>Runs them against the library that lies there, until one fails or the time is over.</summary>
    /// <param name="limit">The time that each project may take.</param>
    /// <returns>The test that failed; "the time was over"; null where all passed.</returns>
    public string? FirstFailure(TimeSpan limit) => projects.Select(project => Run(project.Program, limit)).FirstOrDefault(
        failure => failure is not null);

    public void Dispose() => copies.Delete(recursive: true);

    private string? Run(string program, TimeSpan limit)
    {
        var start = new ProcessStartInfo("dotnet", [program, "-noColor", "-stopOnFail", "-namespace", $"*.{room}*"])
        {
            RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
            WorkingDirectory = root,
        };
        // The same drawn cases for each change.
        start.Environment["CI"] = "true";
        using var run = Process.Start(start)!;
        var errors = run.StandardError.ReadToEndAsync();
        var output = run.StandardOutput.ReadToEndAsync();
        if (!run.WaitForExit(limit))
        {
            run.Kill(entireProcessTree: true);
            return "the time was over";
        }
        if (run.ExitCode == 0)
            return null;
        var lines = output.Result.Split('\n').Concat(errors.Result.Split('\n'));
        return lines.FirstOrDefault(line => line.Contains("[FAIL]", StringComparison.Ordinal))?.Trim()
            ?? $"ended with {run.ExitCode}";
    }
}

using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Fits.Notes;

/// <summary>Writes a scenario with fitted values: only the fields of the battery change in its text, comments stay.</summary>
public static class FittedText
{
    /// <summary>Writes the file.</summary>
    /// <param name="noted">The notes, with the scenario as its file says it.</param>
    /// <param name="fitted">The scenario with the fitted values.</param>
    /// <param name="path">Where to.</param>
    /// <exception cref="ScenarioProblemsException">The scenario's file can't be read any more, or can't be changed without losing
    /// a comment.</exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static void Write(NotedBattery noted, Scenario fitted, string path)
    {
        ArgumentNullException.ThrowIfNull(noted);
        ArgumentNullException.ThrowIfNull(fitted);
        var (text, problems) = TextFile.TryRead(noted.ScenarioFile);
        if (text is null)
            throw new ScenarioProblemsException(problems);
        TextFile.Write(path, ScenarioFile.Edited(text, noted.Scenario, Moved(fitted, noted.ScenarioFile, path)));
    }

    // Parts files are named from the folder of the scenario.
    private static Scenario Moved(Scenario scenario, string from, string to)
    {
        var (before, after) = (FolderOf(from), FolderOf(to));
        return before == after ? scenario : scenario with
        {
            PartsFrom = [.. scenario.PartsFrom.Select(name => Path.IsPathRooted(name) ? name
                : Path.GetRelativePath(after, Path.Combine(before, name)).Replace('\\', '/'))],
        };
    }

    private static string FolderOf(string path) => RealPath.Of(Path.GetDirectoryName(Path.GetFullPath(path))!);
}

using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>A scenario written to another folder than the one that it was read from.</summary>
public static class MovedFile
{
    /// <summary>The scenario with the paths of its parts files as they are seen from its new place.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="from">The file that it was read from.</param>
    /// <param name="to">The file that it is to be written to.</param>
    public static Scenario Of(Scenario scenario, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentException.ThrowIfNullOrWhiteSpace(from);
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        var (was, will) = (FolderOf(from), FolderOf(to));
        if (was == will)
            return scenario;
        return scenario with
        {
            PartsFrom = [.. scenario.PartsFrom.Select(entry => Path.IsPathRooted(entry) ? entry
                : Path.GetRelativePath(will, Path.GetFullPath(Path.Combine(was, entry))).Replace('\\', '/'))],
        };
    }

    private static string FolderOf(string file) => Path.GetDirectoryName(Path.GetFullPath(file))!;
}

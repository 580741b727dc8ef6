using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>The parts to choose from while a rig is described.</summary>
public static class RigLibrary
{
    /// <summary>Reads parts files and folders of them.</summary>
    /// <param name="paths">Files, or folders whose .yaml files are read.</param>
    /// <exception cref="ScenarioProblemsException">A file can't be used, or an id stands twice; carries the problems of all
    /// files.</exception>
    public static OrderedMap<Part> Read(params IEnumerable<string> paths) => Read(null, paths);

    /// <summary>The same, where some files may be known.</summary>
    /// <param name="known">Parts files that need not be read again; null reads all of them.</param>
    /// <param name="paths">Files, or folders whose .yaml files are read.</param>
    /// <exception cref="ScenarioProblemsException">A file can't be used, or an id stands twice; carries the problems of all
    /// files.</exception>
    public static OrderedMap<Part> Read(KnownParts? known, IEnumerable<string> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        var log = new ReadLog("");
        var problems = new List<Diagnostic>();
        var parts = PartsFile.ReadAll([.. paths], "", log, problems, known);
        problems.AddRange(log.Problems);
        return problems.Exists(problem => problem.Severity == Severity.Error)
            ? throw new ScenarioProblemsException(problems) : parts;
    }
}

using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>Scenario files: reading with every problem at once, writing, and their schema.</summary>
public static class ScenarioFile
{
    /// <summary>The JSON Schema (2020-12) of scenario files.</summary>
    public static string JsonSchema => FileFormat.Schema(FileFormat.Scenario, ScenarioFormat.Whole, "RigScenarios scenario file");

    /// <summary>Reads a scenario with its parts files.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="ScenarioProblemsException">It can't be used; carries the problems of all files.</exception>
    public static Scenario Read(string path)
    {
        var (scenario, problems) = TryRead(path);
        return scenario ?? throw new ScenarioProblemsException(problems);
    }

    /// <summary>Reads a scenario with its parts files; null if it can't be used. Warnings come with a usable one.</summary>
    /// <param name="path">The file.</param>
    public static (Scenario? Scenario, IReadOnlyList<Diagnostic> Problems) TryRead(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var log = new ReadLog(path);
        FileFormat.TryRead(path, FileFormat.Scenario, ScenarioFormat.Whole, log, out var scenario);
        return Checked(scenario, path, log);
    }

    /// <summary>Reads a scenario from text that may not be saved yet, with its parts files; null if it can't be used.</summary>
    /// <param name="text">The text of a scenario file, at most 2 MB.</param>
    /// <param name="path">The file that the text is meant for: it stands in messages, and parts files are looked for from its
    /// folder. It need not exist.</param>
    /// <param name="known">Parts files that need not be read again; null reads all of them.</param>
    public static (Scenario? Scenario, IReadOnlyList<Diagnostic> Problems) TryReadText(string text, string path,
        KnownParts? known = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var log = new ReadLog(path);
        Scenario? scenario = null;
        if (TextFile.Take(text, log) is { } taken)
            FileFormat.TryReadText(taken, FileFormat.Scenario, ScenarioFormat.Whole, log, out scenario);
        return Checked(scenario, path, log, known);
    }

    /// <summary>
    /// The parts files and folders that a scenario's text names, without looking for them: to know what reading it would reach.
    /// None if the text can't be read.
    /// </summary>
    /// <param name="text">The text of a scenario file.</param>
    public static IReadOnlyList<string> PartsFrom(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var log = new ReadLog("");
        Scenario? scenario = null;
        if (TextFile.Take(text, log) is { } taken)
            FileFormat.TryReadText(taken, FileFormat.Scenario, ScenarioFormat.Whole, log, out scenario);
        return scenario?.PartsFrom ?? [];
    }

    private static (Scenario? Scenario, IReadOnlyList<Diagnostic> Problems) Checked(Scenario? scenario, string path, ReadLog log,
        KnownParts? known = null)
    {
        var partsProblems = new List<Diagnostic>();
        if (scenario is not null)
        {
            var folder = Path.GetDirectoryName(path) ?? "";
            scenario = scenario with { Library = PartsFile.ReadAll(scenario.PartsFrom, folder, log, partsProblems, known) };
            PartCheck.Run(scenario.Parts, "parts", log);
            ScenarioCheck.Run(scenario, log);
        }
        IReadOnlyList<Diagnostic> problems = [.. log.Problems, .. partsProblems];
        return (problems.Any(problem => problem.Severity == Severity.Error) ? null : scenario, problems);
    }

    /// <summary>The scenario as the text of a file. Parts of the library are not written; the files they came from are
    /// named.</summary>
    public static string Text(Scenario scenario) => FileFormat.Text(FileFormat.Scenario, ScenarioFormat.Whole, scenario);

    /// <summary>
    /// The text of a scenario file with only what differs between two scenarios changed in it: comments, blank lines, order,
    /// quotes
    /// and the spelling of every field that is the same in both stay as they are. No comment is ever lost: those of a block that
    /// is taken out stay where it stood.
    /// </summary>
    /// <param name="text">The file's text.</param>
    /// <param name="before">The scenario that the text says.</param>
    /// <param name="after">The scenario that the new text is to say. Its library is not written; the files it came from are
    /// named.</param>
    /// <returns>Text that reads back to <paramref name="after"/> exactly.</returns>
    /// <exception cref="ArgumentException">The text doesn't say <paramref name="before"/>.</exception>
    /// <exception cref="ScenarioProblemsException">The text can't be read, <paramref name="after"/> can't be written, or a change
    /// can't be made without losing a comment.</exception>
    public static string Edited(string text, Scenario before, Scenario after) => ScenarioEdit.Apply(text, before, after);

    /// <summary>Writes a scenario file.</summary>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static void Write(Scenario scenario, string path) => TextFile.Write(path, Text(scenario));

    /// <summary>Whether a file says that it is a parts file, so that a command can take both kinds.</summary>
    public static bool IsPartsFile(string path)
    {
        var log = new ReadLog(path);
        return TextFile.Read(path, log) is { } text && FileFormat.NamesParts(text);
    }

    /// <summary>The files that a scenario is read from: its own, and the parts files that it names.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="path">Its file.</param>
    public static IReadOnlyList<string> Inputs(Scenario scenario, string path)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return [path, .. PartsFile.Named(scenario.PartsFrom, Path.GetDirectoryName(path) ?? "")];
    }

    /// <summary>The problems of a parts file; none if it is right.</summary>
    public static IReadOnlyList<Diagnostic> CheckParts(string path)
    {
        var log = new ReadLog(path);
        PartsFile.Read(path, log);
        return log.Problems;
    }
}

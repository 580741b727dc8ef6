using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Fits.Notes;

/// <summary>Files of field notes: reading with every problem at once, writing, and their schema.</summary>
public static class FieldNotesFile
{
    /// <summary>The JSON Schema (2020-12) of field notes.</summary>
    public static string JsonSchema =>
        FileFormat.Schema(FileFormat.FieldNotes, FieldNotesFormat.Whole, "RigScenarios field notes");

    /// <summary>Reads field notes with their scenario.</summary>
    /// <param name="path">The file: YAML, or a table whose name ends in <c>.csv</c>.</param>
    /// <param name="scenario">The scenario file; null for the one that the notes name.</param>
    /// <param name="build">The build that is planned, and of notes that name none where the file says nothing of it; null for the
    /// one that the file says.</param>
    /// <exception cref="ScenarioProblemsException">They can't be used; carries every problem.</exception>
    public static NotedBattery Read(string path, string? scenario = null, string? build = null)
    {
        var (noted, problems) = TryRead(path, scenario, build);
        return noted ?? throw new ScenarioProblemsException(problems);
    }

    /// <summary>Reads field notes with their scenario; null if they can't be used. Warnings come with usable ones.</summary>
    /// <param name="path">The file: YAML, or a table whose name ends in <c>.csv</c>.</param>
    /// <param name="scenario">The scenario file; null for the one that the notes name.</param>
    /// <param name="build">The build that is planned, and of notes that name none where the file says nothing of it; null for the
    /// one that the file says.</param>
    public static (NotedBattery? Noted, IReadOnlyList<Diagnostic> Problems) TryRead(string path, string? scenario = null,
        string? build = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var log = new ReadLog(path);
        return TextFile.Read(path, log) is { } text ? Checked(text, path, scenario, build, log) : (null, log.Problems);
    }

    /// <summary>Reads field notes from text that may not be saved yet; null if they can't be used.</summary>
    /// <param name="text">The text, at most 2 MB.</param>
    /// <param name="path">The file that the text is meant for: it stands in messages, and other files are looked for from its
    /// folder. It need not exist.</param>
    /// <param name="scenario">The scenario file; null for the one that the notes name.</param>
    /// <param name="build">The build that is planned, and of notes that name none where the file says nothing of it; null for the
    /// one that the file says.</param>
    public static (NotedBattery? Noted, IReadOnlyList<Diagnostic> Problems) TryReadText(string text, string path,
        string? scenario = null, string? build = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var log = new ReadLog(path);
        return TextFile.Take(text, log) is { } taken ? Checked(taken, path, scenario, build, log) : (null, log.Problems);
    }

    /// <summary>Whether a file says that it holds field notes, or is a table, so that a command can take every kind.</summary>
    /// <param name="path">The file.</param>
    public static bool IsFieldNotes(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
            || (TextFile.Read(path, new ReadLog(path)) is { } text && FileFormat.Names(text, FileFormat.FieldNotes));
    }

    /// <summary>Field notes as the text of a file.</summary>
    /// <param name="notes">The notes.</param>
    public static string Text(FieldNotes notes) => FileFormat.Text(FileFormat.FieldNotes, FieldNotesFormat.Whole, notes);

    private static (NotedBattery? Noted, IReadOnlyList<Diagnostic> Problems) Checked(string text, string path, string? scenario,
        string? build, ReadLog log)
    {
        var notes = path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? NotesTable.Read(text, log)
            : FileFormat.TryReadText(text, FileFormat.FieldNotes, FieldNotesFormat.Whole, log, out var read) ? read : null;
        if (notes is null)
            return (null, log.Problems);
        notes = notes with { Build = notes.Build ?? build };
        var folder = Path.GetDirectoryName(path) ?? "";
        var file = scenario ?? (notes.Scenario is { } named ? Path.Combine(folder, named) : null);
        if (file is null)
        {
            log.Error("scenario", "No scenario is named, so that nobody knows what the devices draw.",
                "the path of a scenario file from the folder of the notes, such as \"scenario: my-rig.yaml\"; or --scenario "
                    + "FILE");
            return (null, log.Problems);
        }
        var (rig, problems) = ScenarioFile.TryRead(file);
        if (rig is null)
            return (null, [.. log.Problems, .. problems]);
        NotesCheck.Run(notes, rig, build, log);
        return log.HasErrors ? (null, log.Problems)
            : (new NotedBattery(notes, rig, file, folder) { PlannedBuild = build }, [.. log.Problems, .. problems]);
    }
}

using RigScenarios.Scenarios;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;

namespace RigScenarios.Files;

/// <summary>Parts files: what can be bought or rented.</summary>
public static class PartsFile
{
    /// <summary>The most files that a scenario may name.</summary>
    internal const int MostFiles = 200;

    /// <summary>The JSON Schema (2020-12) of parts files.</summary>
    public static string JsonSchema => FileFormat.Schema(FileFormat.Parts, FileFormat.PartsForm, "RigScenarios parts file");

    /// <summary>Reads one parts file.</summary>
    /// <exception cref="ScenarioProblemsException">The file can't be used; carries all its problems.</exception>
    public static OrderedMap<Part> Read(string path)
    {
        var log = new ReadLog(path);
        var parts = Read(path, log);
        return log.HasErrors ? throw new ScenarioProblemsException(log.Problems) : parts;
    }

    /// <summary>Reads one parts file; every problem goes to the log.</summary>
    internal static OrderedMap<Part> Read(string path, ReadLog log)
    {
        if (!FileFormat.TryRead(path, FileFormat.Parts, FileFormat.PartsForm, log, out var content))
            return content?.Parts ?? OrderedMap<Part>.Empty;
        PartCheck.Run(content.Parts, "parts", log);
        return content.Parts;
    }

    /// <summary>Reads the files and folders that a scenario names; problems of all of them are added to the list. What is known
    /// of them is not read again.</summary>
    internal static OrderedMap<Part> ReadAll(IReadOnlyList<string> names, string folder, ReadLog scenarioLog,
        List<Diagnostic> problems, KnownParts? known = null)
    {
        var parts = new Dictionary<string, (Part Part, string File)>(StringComparer.Ordinal);
        var order = new List<KeyValuePair<string, Part>>();
        var files = 0;
        for (var index = 0; index < names.Count; index++)
        {
            foreach (var file in Files(names[index], folder, $"parts-from.{index + 1}", scenarioLog))
            {
                if (++files > MostFiles)
                {
                    scenarioLog.Error("parts-from", $"More than {MostFiles} parts files are named.");
                    return new OrderedMap<Part>(order);
                }
                var log = new ReadLog(file);
                var read = Read(file, log, known);
                // A problem is told with its line, which only who reads the file knows.
                if (known is not null && read.Keys.Any(parts.ContainsKey))
                    read = Read(file, log = new ReadLog(file));
                foreach (var (id, part) in read)
                {
                    if (parts.TryAdd(id, (part, file)))
                        order.Add(new(id, part));
                    else
                        log.Error($"parts.{id}", $"The part \"{id}\" is also described in {parts[id].File}.",
                            "each id once in all parts files of a scenario");
                }
                problems.AddRange(log.Problems);
            }
        }
        return new OrderedMap<Part>(order);
    }

    private static OrderedMap<Part> Read(string path, ReadLog log, KnownParts? known)
    {
        if (known is null)
            return Read(path, log);
        if (known.Find(path, out var mark) is { } found)
            return found;
        var parts = Read(path, log);
        if (log.Problems.Count == 0)
            known.Keep(path, mark, parts);
        return parts;
    }

    /// <summary>The files that the names lead to.</summary>
    internal static IEnumerable<string> Named(IReadOnlyList<string> names, string folder) =>
        names.SelectMany(name => Files(name, folder, "", new ReadLog("")));

    private static IEnumerable<string> Files(string name, string folder, string path, ReadLog log)
    {
        var full = Path.Combine(folder, name);
        if (!Directory.Exists(full))
            return [full];
        var files = Directory.EnumerateFiles(full, "*.yaml").Take(MostFiles + 1).Order(StringComparer.Ordinal).ToList();
        if (files.Count == 0 || files.Count > MostFiles)
            log.Error(path, files.Count == 0 ? $"The folder \"{name}\" holds no .yaml file."
                : $"The folder \"{name}\" holds more than {MostFiles} .yaml files.");
        return files.Take(MostFiles);
    }
}

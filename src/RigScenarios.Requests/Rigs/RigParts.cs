using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Parts;

namespace RigScenarios.Requests.Rigs;

/// <summary>The parts to choose from; read again when one of their files has changed.</summary>
internal sealed class RigParts(string folder, KnownParts known)
{
    private readonly Lock gate = new();
    private (string Mark, OrderedMap<Part> Parts)? read;

    /// <summary>Changes whenever one of the files does.</summary>
    public string Mark =>
        string.Join('\n', Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal)
        .Select(file => $"{file} {File.GetLastWriteTimeUtc(file).Ticks}"));

    /// <exception cref="Scenarios.ScenarioProblemsException">A parts file can't be used.</exception>
    public OrderedMap<Part> Read()
    {
        var mark = Mark;
        lock (gate)
        {
            if (read?.Mark != mark)
                read = (mark, RigLibrary.Read(known, [folder]));
            return read.Value.Parts;
        }
    }
}

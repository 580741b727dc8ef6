using RigScenarios.Drafts;
using RigScenarios.Parts;

namespace RigScenarios.Page.Rigs;

/// <summary>The parts to choose from; read again when one of their files has changed.</summary>
internal sealed class RigParts(string folder)
{
    private readonly Lock gate = new();
    private (string Mark, OrderedMap<Part> Parts)? read;

    /// <exception cref="Scenarios.ScenarioProblemsException">A parts file can't be used.</exception>
    public OrderedMap<Part> Read()
    {
        var mark = string.Join('\n', Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).Select(file => $"{file} {File.GetLastWriteTimeUtc(file).Ticks}"));
        lock (gate)
        {
            if (read?.Mark != mark)
                read = (mark, RigLibrary.Read(folder));
            return read.Value.Parts;
        }
    }
}

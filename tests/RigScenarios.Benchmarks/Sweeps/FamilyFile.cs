using RigScenarios.Batteries.Batch;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks.Sweeps;

/// <summary>The discharges of a case file as scenarios of a batch.</summary>
internal static class FamilyFile
{
    /// <summary>Reads them, in the order of the file.</summary>
    /// <param name="path">A case file (docs/discharge.md, "Case files").</param>
    /// <exception cref="CaseFileException">The file can't be used.</exception>
    public static IReadOnlyList<BatchScenario> Read(string path)
    {
        var file = DischargeCaseReader.Read(path);
        return [.. file.Cases.Select(one => new BatchScenario
        {
            Pack = one.Pack, Ambient = one.Ambient, Demand = one.Demand, Start = one.Start, TimeLimit = file.TimeLimit,
        })];
    }
}

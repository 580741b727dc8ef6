using System.Text.Json;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Checks.Wiring;

/// <summary>
/// 25 networks at one voltage and 25 runs of invented packs through invented wiring, solved by an independent program: each part
/// reduced to its loads,
/// DOP853 at 1e-10, begun anew at each change; every network checked by plain sweeps and by a general root finder, every run by
/// an implicit solver.
/// </summary>
internal static class ReferenceNetworks
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "data");
    private static readonly NetworkCaseFile Cases = NetworkCaseReader.Read(Path.Combine(Folder, "network-cases.json"));
    private static readonly JsonElement Results =
        JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, "network-results.json"))).RootElement;

    public static IReadOnlyDictionary<string, (StaticNetworkCase Case, JsonElement Expected)> Static { get; } =
        Cases.Static.Zip(Results.GetProperty("static").EnumerateArray())
            .ToDictionary(pair => Same(pair.First.Id, pair.Second), pair => (pair.First, pair.Second));

    public static IReadOnlyDictionary<string, (NetworkRunCase Case, JsonElement Expected)> Runs { get; } =
        Cases.Runs.Zip(Results.GetProperty("runs").EnumerateArray())
            .ToDictionary(pair => Same(pair.First.Id, pair.Second), pair => (pair.First, pair.Second));

    private static string Same(string id, JsonElement result) =>
        result.GetProperty("id").GetString() == id
            ? id : throw new InvalidDataException($"The results are not in the order of the cases: {id}.");
}

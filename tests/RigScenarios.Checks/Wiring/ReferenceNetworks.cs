using System.Text.Json;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Checks.Wiring;

/// <summary>
/// 25 networks at one voltage and 25 runs of invented packs through invented wiring, solved by an independent program: each
/// part reduced to its loads, DOP853 at 1e-10, begun anew at each change; every network checked by plain sweeps and by a
/// general root finder, every run by an implicit solver.
/// </summary>
internal static class ReferenceNetworks
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "data");
    private static readonly NetworkCaseFile Cases = NetworkCaseReader.Read(Path.Combine(Folder, "network-cases.json"));
    private static readonly JsonElement Results =
        JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, "network-results.json"))).RootElement;

    public static IReadOnlyDictionary<string, (StaticNetworkCase Case, JsonElement Expected)> Static { get; } =
        Joined(Cases.Static, one => one.Id, "static");

    public static IReadOnlyDictionary<string, (NetworkRunCase Case, JsonElement Expected)> Runs { get; } =
        Joined(Cases.Runs, one => one.Id, "runs");

    // A case without a result, or a result without a case, is an error: none is passed over.
    private static Dictionary<string, (T Case, JsonElement Expected)> Joined<T>(IReadOnlyList<T> cases, Func<T, string> idOf,
        string name)
    {
        var results = Results.GetProperty(name).EnumerateArray().ToDictionary(result => result.GetProperty("id").GetString()!);
        var ids = cases.Select(idOf).ToHashSet();
        return ids.Count == cases.Count && ids.SetEquals(results.Keys)
            ? cases.ToDictionary(idOf, one => (one, results[idOf(one)]))
            : throw new InvalidDataException($"Cases and results of \"{name}\" are not of the same names: "
                + string.Join(", ", ids.Order().Except(results.Keys).Concat(results.Keys.Except(ids))));
    }
}

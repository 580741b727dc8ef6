using System.Collections.Concurrent;
using System.Text.Json;
using RigScenarios.Benchmarks.Cases.Fits;
using RigScenarios.Fits;

namespace RigScenarios.Checks.Fits;

/// <summary>
/// 13 fits of invented notes and logs, done by an independent program: its run-times by another integrator (DOP853), its least
/// squares of its own.
/// </summary>
internal static class ReferenceFits
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "data", "fit-cases");

    private static readonly ConcurrentDictionary<string, Lazy<FitResult>> Found = new();

    public static IReadOnlyDictionary<string, FitCase> Cases { get; } =
        FitCaseReader.Read(Folder).ToDictionary(one => one.Id);

    public static IReadOnlyDictionary<string, JsonElement> Expected { get; } = Read();

    public static TheoryData<string> Ids => [.. Cases.Keys];

    /// <summary>The fit of a case, made once.</summary>
    public static FitResult Fit(string id) =>
        Found.GetOrAdd(id, name => new Lazy<FitResult>(() => BatteryFit.Find(Cases[name].Problem))).Value;

    private static Dictionary<string, JsonElement> Read()
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, "results.json")));
        return document.RootElement.GetProperty("results").Clone().EnumerateArray()
            .ToDictionary(one => one.GetProperty("id").GetString()!, one => one);
    }
}

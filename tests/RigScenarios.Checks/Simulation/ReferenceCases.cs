using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Days;

namespace RigScenarios.Checks.Simulation;

/// <summary>A folder of scenario files with what an independent program found for them.</summary>
internal sealed class ReferenceCases
{
    private readonly string folder;

    private ReferenceCases(string folder, IReadOnlyDictionary<string, (DayCase Case, JsonObject Expected)> all) =>
        (this.folder, All) = (folder, all);

    /// <summary>Eight days with swaps, chargers and hot swap (data/day-cases, day-format.md).</summary>
    public static ReferenceCases Days { get; } = In("day-cases", "day-results.json");

    /// <summary>Six whole days with wiring, takes, air, limits and reserve (data/one-day-cases, one-day-format.md).</summary>
    public static ReferenceCases OneDay { get; } = In("one-day-cases", "one-day-results.json");

    /// <summary>The cases by their names.</summary>
    public IReadOnlyDictionary<string, (DayCase Case, JsonObject Expected)> All { get; }

    /// <summary>Their names.</summary>
    public TheoryData<string> Ids => [.. All.Keys];

    /// <summary>The number of results in the file.</summary>
    public int Results => Expected(folder).Count;

    // Numbers that come from a text are all of one kind.
    public static JsonObject Reread(JsonObject made) => JsonNode.Parse(made.ToJsonString())!.AsObject();

    private static ReferenceCases In(string name, string results)
    {
        var path = Path.Combine(AppContext.BaseDirectory, "data", name);
        var expected = Expected(Path.Combine(path, results));
        return new ReferenceCases(
            Path.Combine(path, results), DayCase.In(path)
                .ToDictionary(one => one.Id, one => (one, expected[one.Id]!.AsObject())));
    }

    private static JsonObject Expected(string file) => JsonNode.Parse(File.ReadAllBytes(file))!["cases"]!.AsObject();
}

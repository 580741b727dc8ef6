using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Aging;

namespace RigScenarios.Checks.Cells.Aging;

/// <summary>
/// Forty invented histories against an independent program, which solved each twice: by exact steps in L^(1/p), and by the
/// differential form of every part in order of time, Runge-Kutta of order 8 at 1e-10.
/// </summary>
[Source(SourceKind.IndependentProgram,
    "Forty histories of data/aging-cases.json, by exact steps and by Runge-Kutta of order 8 at 1e-10, which differ by less "
        + "than 1e-12; read in the source")]
public class ReferenceAgingChecks
{
    // Asked for: every figure to 1e-7, the time to 80 % to 0.01 days or 1e-6 of it.
    private const double Figure = 1e-7;
    private const double Days = 0.01;

    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "data");

    private static readonly Dictionary<string, AgingCase> Cases =
        AgingCaseReader.Read(Path.Combine(Folder, "aging-cases.json")).ToDictionary(one => one.Id);

    private static readonly Dictionary<string, JsonNode> Results =
        JsonNode.Parse(File.ReadAllText(Path.Combine(Folder, "aging-results.json")))!["results"]!.AsArray()
            .ToDictionary(one => (string)one!["id"]!, one => one!);

    public static TheoryData<string> Ids => [.. Results.Keys];

    [Fact]
    [Guard]
    public void Every_result_of_the_file_has_its_case()
    {
        Assert.Equal(40, Cases.Count);
        Assert.Equal(Cases.Keys.Order(), Results.Keys.Order());
    }

    /// <summary>Capacity, resistance, the four parts, both paces, warnings, the day's cycles, the time to 80 %, the band, and the
    /// phases that words become: every field of the file, none besides.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_figure_is_that_of_the_independent_program(string id)
    {
        var differences = new List<string>();
        var fields = Compare("", Results[id], JsonNode.Parse(AgingAnswer.Of(Cases[id]).ToJsonString()), differences);
        Assert.Empty(differences);
        Assert.True(fields >= 10, $"only {fields} fields");
    }

    [Fact]
    [Guard]
    public void A_figure_that_is_off_is_noticed()
    {
        var differences = new List<string>();
        Compare("", JsonNode.Parse("""{"aQ": 0.9, "warnings": ["LONG"], "daysTo80": 100}"""),
            JsonNode.Parse("""{"aQ": 0.9000002, "warnings": ["KNEE"], "daysTo80": 100.02, "more": 1}"""), differences);
        Assert.Equal(4, differences.Count);
    }

    private static int Compare(string path, JsonNode? expected, JsonNode? found, List<string> differences)
    {
        switch (expected, found)
        {
            case (JsonObject one, JsonObject other):
                return one.Select(field => field.Key).Union(other.Select(field => field.Key)).Sum(name =>
                    one.ContainsKey(name) && other.ContainsKey(name)
                        ? Compare($"{path}.{name}", one[name], other[name], differences)
                        : Note($"{path}.{name}: only one has it"));
            case (JsonArray one, JsonArray other) when one.Count == other.Count:
                return one.Zip(other).Index().Sum(pair =>
                    Compare($"{path}[{pair.Index}]", pair.Item.First, pair.Item.Second, differences));
            case (JsonValue one, JsonValue other)
                when one.TryGetValue<double>(out var value) && other.TryGetValue<double>(out var figure):
                var tolerance = path == ".daysTo80" ? Math.Max(Days, 1e-6 * value) : Figure;
                return Math.Abs(value - figure) <= tolerance ? 1 : Note($"{path}: {value:R} expected, found {figure:R}");
            default:
                return expected?.ToJsonString() == found?.ToJsonString()
                    ? 1 : Note($"{path}: {expected?.ToJsonString()} expected, found {found?.ToJsonString()}");
        }

        int Note(string difference)
        {
            differences.Add(difference);
            return 1;
        }
    }
}

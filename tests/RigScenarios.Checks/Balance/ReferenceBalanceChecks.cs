using System.Text.Json.Nodes;
using System.Text.Json;
using RigScenarios.Benchmarks.Cases.Balance;

namespace RigScenarios.Checks.Balance;

/// <summary>
/// The balance model against 30 invented rigs, heads, hands, stands, places and envelopes solved by an independent program, each
/// figure of which was verified in a
/// second way. Asked for: 1e-6 relative, 1e-9 m or 1e-6 N·m near zero, envelope edges to 0.1 mm; held here: 1e-9 relative or
/// 1e-10 absolute (SI), whichever is
/// wider; words, true and false, the numbers of steps and the order of lists exactly.
/// </summary>
[Source(SourceKind.IndependentProgram,
    "30 rigs of data/balance-cases.json, solved by a program of its own from balance-format.md, each figure in a second way")]
public class ReferenceBalanceChecks
{
    private static readonly Dictionary<string, BalanceCase> Cases = BalanceCaseReader.Read(In("balance-cases.json"))
        .ToDictionary(one => one.Id);

    private static readonly Dictionary<string, JsonNode> Results =
        JsonNode.Parse(File.ReadAllText(In("balance-results.json")))!["results"]!.AsArray()
            .ToDictionary(one => one!["id"]!.GetValue<string>(), one => one!);

    public static TheoryData<string> Ids => [.. Results.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_figure_is_that_of_the_independent_program(string id)
    {
        var differences = new List<string>();
        Compare(Results[id], JsonNode.Parse(BalanceAnswer.Of(Cases[id]).ToJsonString()), id, differences);
        Assert.True(differences.Count == 0, string.Join('\n', differences.Take(20)));
    }

    [Fact]
    [Guard]
    public void The_comparison_notices_what_differs()
    {
        var (id, expected) = Results.First();
        foreach (var (path, change) in (IEnumerable<(string, Action<JsonNode>)>)
            [
                ("massKg", node => node["massKg"] = node["massKg"]!.GetValue<double>() * (1 + 1e-6)),
                ("head.stepIndex", node => node["head"]!["stepIndex"] = 0.0),
                ("stand.ballast", node => node["stand"]!["ballast"] = "impossible"),
                ("envelope.edges", node => node["envelope"]!["edges"]!.AsArray().RemoveAt(0)),
                ("envelope.points.inside[0]", node => node["envelope"]!["points"]!["inside"]![0] = false),
                ("shoulder", node => node.AsObject().Remove("shoulder")),
            ])
        {
            var changed = expected.DeepClone();
            change(changed);
            var differences = new List<string>();
            Compare(expected, changed, id, differences);
            Assert.Contains($"{id}.{path}", Assert.Single(differences), StringComparison.Ordinal);
        }
    }

    private static void Compare(JsonNode? expected, JsonNode? found, string path, List<string> differences)
    {
        switch (expected, found)
        {
            case (JsonObject one, JsonObject other):
                foreach (var name in one.Select(field => field.Key).Union(other.Select(field => field.Key)))
                {
                    if (one.ContainsKey(name) != other.ContainsKey(name))
                        differences.Add($"{path}.{name}: {(one.ContainsKey(name) ? "missing" : "not asked for")}");
                    else
                        Compare(one[name], other[name], $"{path}.{name}", differences);
                }

                break;
            case (JsonArray one, JsonArray other):
                if (one.Count != other.Count)
                    differences.Add($"{path}: {other.Count} entries for {one.Count}");
                else
                    foreach (var i in Enumerable.Range(0, one.Count))
                        Compare(one[i], other[i], $"{path}[{i}]", differences);
                break;
            case (JsonValue one, JsonValue other) when one.GetValueKind() == JsonValueKind.Number
                && other.GetValueKind() == JsonValueKind.Number:
                double a = one.GetValue<double>(), b = other.GetValue<double>();
                if (!(Math.Abs(a - b) <= Math.Max(1e-10, 1e-9 * Math.Abs(a))))
                    differences.Add($"{path}: {b:G12} for {a:G12}");
                break;
            default:
                if (expected?.ToJsonString() != found?.ToJsonString())
                    differences.Add($"{path}: {found?.ToJsonString() ?? "null"} for {expected?.ToJsonString() ?? "null"}");
                break;
        }
    }

    private static string In(string file) => Path.Combine(AppContext.BaseDirectory, "data", file);
}

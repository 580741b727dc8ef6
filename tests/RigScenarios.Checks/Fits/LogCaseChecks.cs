using System.Text.Json;
using RigScenarios.Benchmarks.Cases.Fits;
using RigScenarios.Fits.Logs;
using UnitsNet;

namespace RigScenarios.Checks.Fits;

/// <summary>Reading, pulse and bench test against the reference logs; tolerances of fit-format.md, beside the data.</summary>
[Source(SourceKind.IndependentProgram,
    "written from the equations of docs/calibration.md, NumPy and SciPy; invented logs; "
        + "tests/RigScenarios.Checks/data/fit-cases, "
    + "read in the source")]
public class LogCaseChecks
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "data", "fit-cases");
    private static readonly IReadOnlyDictionary<string, JsonElement> Cases = List("cases.json", "cases");
    private static readonly Dictionary<string, JsonElement> Results = List("results.json", "results");

    public static TheoryData<string> WithLogs => [.. Cases.Values.Where(one => one.TryGetProperty("logs", out var logs)
        && logs.GetArrayLength() > 0).Select(one => one.GetProperty("id").GetString()!)];

    [Theory]
    [MemberData(nameof(WithLogs))]
    public void What_was_done_to_a_log_is_counted_alike(string id)
    {
        var capacity = Cases[id].GetProperty("pack").GetProperty("capacityAh").GetDouble();
        Each.Pair(Cases[id].GetProperty("logs").EnumerateArray(), Results[id].GetProperty("logs").EnumerateArray(),
            (asked, expected) =>
            {
                var log = LogCase.Read(asked, Folder);
                SameCounts(expected, log);
                var bins = LogBins.Of(log.Rows, ElectricCharge.FromAmpereHours(capacity));
                Assert.Equal(expected.GetProperty("correlationTimeS").GetDouble(), bins.CorrelationSeconds, 1e-5);
                Assert.Equal(expected.GetProperty("binS").GetDouble(), bins.WidthSeconds, 1e-9);
                Assert.Equal(expected.GetProperty("blocks").GetInt32(), bins.Blocks.Count);
            });
    }

    [Fact]
    public void Steps_of_a_load_give_resistances_and_time_constants()
    {
        var expected = Results["fit-14"];

        var found = Parse(PulseCase.Answer("fit-14", Cases["fit-14"], Folder).ToJsonString());

        SameCounts(expected.GetProperty("log"), LogCase.Read(Cases["fit-14"], Folder));
        Each.Pair(expected.GetProperty("steps").EnumerateArray(), found.GetProperty("steps").EnumerateArray(), (one, other) =>
        {
            var errors = one.GetProperty("se").EnumerateArray().Select(error => error.GetDouble()).ToArray();
            Near(one, other, "at_s", 1e-9);
            Near(one, other, "stepA", 1e-8);
            Near(one, other, "r0Ohm", 0.01 * errors[0]);
            Near(one, other, "r1Ohm", 0.01 * errors[1]);
            Near(one, other, "r10Ohm", 0.01 * errors[0]);
            Near(one, other, "tauS", 0.01 * errors[2]);
            Each.Pair(errors, other.GetProperty("se").EnumerateArray(),
                (error, own) => Assert.Equal(error, own.GetDouble(), 0.01 * error));
            Assert.Equal(one.GetProperty("at_edge").GetBoolean(), other.GetProperty("at_edge").GetBoolean());
        }, atLeast: 2);
    }

    [Fact]
    public void A_slow_discharge_gives_capacity_and_open_circuit_table()
    {
        var expected = Results["fit-15"].GetProperty("table");

        var found = Parse(BenchCase.Answer("fit-15", Cases["fit-15"], Folder).ToJsonString()).GetProperty("table");

        SameCounts(Results["fit-15"].GetProperty("log"), LogCase.Read(Cases["fit-15"], Folder));
        Near(expected, found, "capacityAh", 1e-6 * expected.GetProperty("capacityAh").GetDouble());
        Each.Pair(expected.GetProperty("soc").EnumerateArray(), found.GetProperty("soc").EnumerateArray(),
            (one, other) => Assert.Equal(one.GetDouble(), other.GetDouble(), 1e-9), atLeast: 41);
        Each.Pair(expected.GetProperty("voltageV").EnumerateArray(), found.GetProperty("voltageV").EnumerateArray(),
            (one, other) => Assert.Equal(one.GetDouble(), other.GetDouble(), 1e-5), atLeast: 41);
        Assert.Equal(expected.GetProperty("pooled").GetInt32(), found.GetProperty("pooled").GetInt32());
    }

    private static void SameCounts(JsonElement expected, LogReading log)
    {
        var facts = Parse(LogCase.Facts(log).ToJsonString());
        string[] counts = ["rows", "dropped", "resets", "duplicates", "gaps"];
        Each.Of(counts, name => Assert.Equal(expected.GetProperty(name).GetInt32(), facts.GetProperty(name).GetInt32()));
        Assert.Equal(expected.GetProperty("flipped").GetBoolean(), log.Counts.Flipped);
        Near(expected, facts, "median_s", 1e-9);
    }

    private static void Near(JsonElement one, JsonElement other, string name, double tolerance) =>
        Assert.Equal(one.GetProperty(name).GetDouble(), other.GetProperty(name).GetDouble(), tolerance);

    private static JsonElement Parse(string json) => JsonDocument.Parse(json).RootElement;

    private static Dictionary<string, JsonElement> List(string file, string list) =>
        Parse(File.ReadAllText(Path.Combine(Folder, file))).GetProperty(list).EnumerateArray()
            .ToDictionary(one => one.GetProperty("id").GetString()!);
}

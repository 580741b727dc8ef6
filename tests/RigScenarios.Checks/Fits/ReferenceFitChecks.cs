using System.Text.Json;
using RigScenarios.Benchmarks.Cases.Fits;
using RigScenarios.Fits;

namespace RigScenarios.Checks.Fits;

/// <summary>The fit against the reference fits, with the tolerances of their page (fit-format.md beside the data).</summary>
[Source(SourceKind.IndependentProgram,
    "a least-squares program of its own on run-times of SciPy's DOP853; data files beside the test, read in the source")]
public class ReferenceFitChecks
{
    public static TheoryData<string> Ids => ReferenceFits.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Finds_the_same_values(string id)
    {
        var (result, expected) = Both(id);

        Assert.True(result.Found);
        Each.Pair(result.Estimates, List(expected, "estimates"), (mine, theirs) =>
        {
            var error = Number(theirs, "se");
            Assert.Equal(Text(theirs, "name"), mine.Unknown.Name);
            Assert.Equal(Number(theirs, "log"), mine.Log, Math.Max(1e-4, 0.01 * error));
            Assert.Equal(error, mine.StandardError, 0.01 * error);
        }, atLeast: 3);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Finds_the_same_intervals(string id)
    {
        var (result, expected) = Both(id);

        Each.Pair(result.Estimates, List(expected, "estimates"), (mine, theirs) =>
        {
            var within = (mine.ByProfile ? 0.03 : 0.02) * Number(theirs, "se");
            var (interval, check) = (theirs.GetProperty("interval"), theirs.GetProperty("profile_check"));
            Assert.Equal(Text(theirs, "kind") == "profile", mine.ByProfile);
            Assert.Equal(interval[0].GetDouble(), mine.LogLow, within);
            Assert.Equal(interval[1].GetDouble(), mine.LogHigh, within);
            Assert.Equal(check[0].GetDouble(), mine.ProfileCheck!.Value.Low, 0.02);
            Assert.Equal(check[1].GetDouble(), mine.ProfileCheck.Value.High, 0.02);
        }, atLeast: 3);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Finds_the_same_correlation(string id)
    {
        var (result, expected) = Both(id);

        Each.Pair(result.Correlation, List(expected, "correlation"), (mine, theirs) =>
            Each.Pair(mine, theirs.EnumerateArray(), (one, other) => Assert.Equal(other.GetDouble(), one, 0.01), atLeast: 3),
            atLeast: 3);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Misses_the_data_by_as_much(string id)
    {
        var (result, expected) = Both(id);

        AssertPart("cost", result.Cost, 0.005, 0.005);
        AssertPart("chi2", result.ChiSquared, 0.005, 0.005);
        AssertPart("inflation", result.Inflation, 0.005);
        Assert.Equal(expected.GetProperty("data").GetInt32(), result.Data);

        void AssertPart(string name, double mine, double share, double least = 0) =>
            Assert.Equal(Number(expected, name), mine, Math.Max(least, share * Number(expected, name)));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Leaves_out_and_doubts_the_same_notes(string id)
    {
        var (result, expected) = Both(id);

        AssertSame(List(expected, "outliers"), result.Outliers);
        AssertSame(List(expected, "doubtful"), result.Doubtful);

        static void AssertSame(List<JsonElement> theirs, IReadOnlyList<NoteMiss> mine) => Each.Pair(mine, theirs, (one, other) =>
        {
            Assert.Equal(Text(other, "note"), one.Note);
            Assert.Equal(Number(other, "deleted"), one.Deleted, 0.02);
        }, atLeast: 0);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Cannot_separate_the_same_pairs(string id)
    {
        var (result, expected) = Both(id);

        Each.Pair(result.Inseparable, List(expected, "inseparable"), (mine, theirs) =>
        {
            Assert.Equal(theirs.GetProperty("pair").EnumerateArray().Select(one => one.GetString()),
                [mine.First.Name, mine.Second.Name]);
            Assert.Equal(theirs.GetProperty("either").EnumerateArray().Select(one => one.GetString()!.Contains("more",
                StringComparison.Ordinal)), [mine.FirstIsMore, mine.SecondIsMore]);
            Assert.Equal(Number(theirs, "strong"), mine.Strong, 0.02 * Number(theirs, "strong"));
        }, atLeast: 0);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Forecasts_the_same_run(string id)
    {
        var (result, expected) = Both(id);
        var theirs = expected.GetProperty("forecast");

        var mine = result.Forecast(ReferenceFits.Cases[id].Forecast!, TestContext.Current.CancellationToken);

        Assert.Equal(Number(theirs, "runtimeS"), mine.Runtime.Seconds, 5e-4 * Number(theirs, "runtimeS"));
        Assert.Equal(Number(theirs, "sdParameters"), mine.BatteryDeviation, 0.01 * Number(theirs, "sdParameters"));
        Assert.Equal(Number(theirs, "sd"), mine.Deviation, 0.01 * Number(theirs, "sd"));
        var interval = theirs.GetProperty("intervalS");
        Assert.Equal(interval[0].GetDouble(), mine.Low.Seconds, 2e-3 * interval[0].GetDouble());
        Assert.Equal(interval[1].GetDouble(), mine.High.Seconds, 2e-3 * interval[1].GetDouble());
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Advises_the_same_test(string id)
    {
        var (result, expected) = Both(id);
        var one = ReferenceFits.Cases[id];

        var mine = result.NextTest(one.Forecast!, one.Candidates, TestContext.Current.CancellationToken);

        Assert.Equal(Text(expected, "next"), mine.Best!.Test);
        Each.Pair(mine.Tests, List(expected, "tests"), (test, theirs) =>
        {
            Assert.Equal(Text(theirs, "id"), test.Test);
            var after = Number(theirs, "sdParametersAfter");
            Assert.Equal(after, test.BatteryDeviationAfter, 0.01 * after);
        }, atLeast: 5);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Reads_and_fits_the_logs_alike(string id)
    {
        var (result, expected) = Both(id);

        if (expected.GetProperty("ocvOffsetV") is { ValueKind: JsonValueKind.Number } offset)
            Assert.Equal(offset.GetDouble(), result.OpenCircuitOffset!.Value.Volts, 0.01 * 0.02);
        else
            Assert.Null(result.OpenCircuitOffset);
        Each.Pair(result.Logs.Zip(ReferenceFits.Cases[id].Logs), List(expected, "logs"), (mine, theirs) =>
        {
            var (fitted, read) = mine;
            var counts = LogCase.Facts(read);
            foreach (var count in new[] { "rows", "dropped", "resets", "duplicates", "gaps", "flipped" })
                Assert.Equal(theirs.GetProperty(count).GetRawText(), counts[count]!.ToJsonString());
            Assert.Equal(Number(theirs, "blocks"), fitted.Blocks);
            Assert.Equal(Number(theirs, "correlationTimeS"), fitted.CorrelationTime.Seconds, 1e-3);
            Assert.Equal(Number(theirs, "binS"), fitted.BinWidth.Seconds, 1e-6);
            Assert.Equal(Number(theirs, "gain"), fitted.Gain, 0.01 * 0.01);
            Assert.Equal(Number(theirs, "start"), fitted.StartCharge, 0.01 * 0.01);
        }, atLeast: 0);
    }

    [Fact]
    public void There_is_a_case_of_each_kind()
    {
        Assert.Equal(13, ReferenceFits.Cases.Count);
        Assert.Contains(ReferenceFits.Cases.Values, one => one.Logs.Count > 0 && one.Problem.Notes.Count > 0);
        Assert.Contains(ReferenceFits.Expected.Values, one => one.TryGetProperty("outliers", out var left)
            && left.GetArrayLength() > 0);
        Assert.Contains(ReferenceFits.Expected.Values, one => one.TryGetProperty("inseparable", out var pairs)
            && pairs.GetArrayLength() > 0);
    }

    private static (FitResult Result, JsonElement Expected) Both(string id) =>
        (ReferenceFits.Fit(id), ReferenceFits.Expected[id]);

    private static List<JsonElement> List(JsonElement parent, string name) => [.. parent.GetProperty(name).EnumerateArray()];

    private static double Number(JsonElement parent, string name) => parent.GetProperty(name).GetDouble();

    private static string Text(JsonElement parent, string name) => parent.GetProperty(name).GetString()!;
}

using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Days;

namespace RigScenarios.Checks.Simulation;

/// <summary>
/// Whole days with wiring, takes, air, swaps, every limit and the reserve against an independent program, which solves the
/// network at every call of an
/// explicit Runge-Kutta method of order 8 (data/one-day-cases/one-day-format.md, which says the rules and the tolerances held
/// here).
/// </summary>
[Source(SourceKind.IndependentProgram,
    "Six days of data/one-day-cases (wiring, takes, air, limits, reserve), Runge-Kutta of order 8, rules in one-day-format.md")]
public class ReferenceOneDayChecks
{
    public static TheoryData<string> Ids => ReferenceCases.OneDay.Ids;

    [Fact]
    [Guard]
    public void Every_result_of_the_file_has_its_case() =>
        Assert.Equal((6, 6), (ReferenceCases.OneDay.All.Count, ReferenceCases.OneDay.Results));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_figure_of_the_day_is_that_of_the_independent_program(string id)
    {
        var (one, builds) = ReferenceCases.OneDay.All[id];

        var found = ReferenceCases.Reread(OneDayAnswer.Of(one, TestContext.Current.CancellationToken));

        var comparison = new FieldComparison();
        Assert.Equal(builds.Select(build => build.Key), found.Select(build => build.Key));
        foreach (var (build, expected) in builds)
        {
            comparison.Compare($"{id}.{build}", WithoutLimits(expected!), WithoutLimits(found[build]!));
            CompareLimits($"{id}.{build}", expected!["limits"]!.AsArray(), found[build]!["limits"]!.AsArray(), comparison);
        }

        Assert.Empty(comparison.Differences);
        Assert.True(comparison.Fields >= 100, $"only {comparison.Fields} fields");
    }

    private static void CompareLimits(string path, JsonArray expected, JsonArray found, FieldComparison comparison)
    {
        Assert.NotEmpty(expected);
        var known = found.ToDictionary(NameOf, limit => limit!.AsObject());
        Assert.Equal(expected.Select(NameOf).Order(StringComparer.Ordinal), known.Keys.Order(StringComparer.Ordinal));
        foreach (var limit in expected)
        {
            var (at, other) = ($"{path}.limits.{NameOf(limit)}", known[NameOf(limit)]);
            var (worst, allowed) = ((double)limit!["worst"]!, (double)limit["allowed"]!);
            var tolerance = (string)limit["kind"]! == "temperature" ? 0.05 : 0.001;
            comparison.Compare($"{at}.side", limit["side"], other["side"]);
            comparison.Compare($"{at}.worst", worst, (double)other["worst"]!, tolerance);
            comparison.Compare($"{at}.allowed", allowed, (double)other["allowed"]!, tolerance);
            comparison.Compare($"{at}.left", (double)limit["left"]!, (double)other["left"]!,
                2 * tolerance / Math.Abs(allowed) * (1 + Math.Abs(worst / allowed)));
            if (!(bool)limit["sharp"]!)
                continue;
            foreach (var field in (string[])["at_h", "day", "block"])
                comparison.Compare($"{at}.{field}", limit[field], other[field]);
        }
    }

    private static string NameOf(JsonNode? limit) => $"{limit!["element"]}, {limit["kind"]}, {limit["case"]}";

    private static JsonObject WithoutLimits(JsonNode fields) =>
        new(fields.AsObject().Where(field => field.Key != "limits")
            .Select(field => KeyValuePair.Create(field.Key, field.Value?.DeepClone())));
}

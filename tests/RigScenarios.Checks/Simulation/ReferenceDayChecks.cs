using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Days;
using RigScenarios.Scenarios;

namespace RigScenarios.Checks.Simulation;

/// <summary>
/// Days with several batteries against an independent program: all packs one state vector, an explicit Runge-Kutta method of
/// order 8 at 1e-9, begun anew
/// at every change (data/day-cases/day-format.md, which says the rules and the tolerances held here).
/// </summary>
[Source(SourceKind.IndependentProgram,
    "Eight days of data/day-cases (swaps, chargers, hot swap), Runge-Kutta of order 8 at 1e-9, rules and tolerances in "
        + "day-format.md")]
public class ReferenceDayChecks
{
    // One kit of one case breaks at another time, as here the warning comes 9 s before a take ends: a tenth of a point of charge
    // decides whether the swap is
    // at the end of that take or in the reset. The page asks of kits that they complete or do not, and that agrees.
    private const string Close = "06-six-two-chargers";
    private const string CloseKit = "c d, 1 bays, 15.86832";

    public static TheoryData<string> Ids => ReferenceCases.Days.Ids;

    [Fact]
    [Guard]
    public void Every_result_of_the_file_has_its_case() =>
        Assert.Equal((8, 8), (ReferenceCases.Days.All.Count, ReferenceCases.Days.Results));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_figure_of_the_days_is_that_of_the_independent_program(string id)
    {
        var (one, expected) = ReferenceCases.Days.All[id];

        var found = ReferenceCases.Reread(DayAnswer.Of(one, TestContext.Current.CancellationToken));

        var comparison = new FieldComparison();
        comparison.Compare(id, Without(expected), Without(found));
        Assert.Empty(comparison.Differences);
        Assert.True(comparison.Fields >= 12, $"only {comparison.Fields} fields");
    }

    /// <summary>Where the file has a least kit: it is ours too, and every kit that was tried completes or breaks when the file
    /// says.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void The_least_kit_and_every_kit_tried_go_as_the_independent_program_says(string id)
    {
        var (one, expected) = ReferenceCases.Days.All[id];
        var kit = expected["least_kit"]!.AsObject();
        var (powered, plan) = ScenarioPlan.Of(one.Scenario, one.Scenario.Builds.Keys.First(), []);

        var found = ReferenceCases.Reread(DayAnswer.Of(one, TestContext.Current.CancellationToken))["least_kit"]!;

        Assert.Equal(kit["batteries"]?.ToJsonString(), found["batteries"]?.ToJsonString());
        Assert.Equal((int?)kit["bays"], (int?)found["bays"]);
        var tried = kit["tried"]!.AsArray();
        Assert.NotEmpty(tried);
        var different = new List<string>();
        foreach (var trial in tried)
        {
            string[] batteries = [.. trial!["batteries"]!.AsArray().Select(name => (string)name!)];

            // The file tells bays in all: of several chargers one of the ways must be the one meant.
            var breaks = KitRun.WaysTo(plan, (int)trial["bays"]!)
                .Select(ways => KitRun.BreakOf(powered, KitRun.PlanOf(plan, batteries, ways),
                    TestContext.Current.CancellationToken)).ToList();
            var (completes, at) = ((bool)trial["completes"]!, (double?)trial["breaks_at_h"]);
            Assert.Contains(breaks, time => time is null == completes);
            if (!breaks.Exists(time => time is null ? completes : at is { } hours
                && Math.Abs(time.Value.Seconds - (3600 * hours)) <= 1.02))
                different.Add($"{string.Join(' ', batteries)}, {trial["bays"]} bays, {at}");
        }

        Assert.Equal(id == Close ? [CloseKit] : [], different);
    }

    private static JsonObject Without(JsonObject fields) =>
        new(fields.Where(field => field.Key != "least_kit")
            .Select(field => KeyValuePair.Create(field.Key, field.Value?.DeepClone())));
}

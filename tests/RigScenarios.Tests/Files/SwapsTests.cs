using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using RigScenarios.Tests.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Files;

/// <summary>Batteries, chargers and swaps in a scenario's file.</summary>
public sealed class SwapsTests
{
    private const string Text = """
        rigscenarios: scenario 1
        title: Two days at the lake
        note: Invented.
        conditions: {night: 17 °C}
        parts:
          brick-a: {kind: battery, name: brick, battery: {energy: 98 Wh, voltage: 14.4 V}}
          body-a: {kind: body, name: compact body A, power: {standby: 22 W, record: 30 W}, voltage: {minimum: 11.5 V,
            maximum: 17 V}}
        kit:
          brick: {part: brick-a, count: 3}
          camera: {part: body-a}
        builds:
          tripod:
            stance: tripod
            battery: {item: brick}
            devices:
              camera: {essential: yes}
        days:
          first:
            starts: "07:00"
            ambient-points: [{time: "07:00", temperature: -4 °C}, {time: "13:00", temperature: 9 °C}]
            blocks:
              morning: {length: 4 h, others: record, cycle: {take: 3 min, reset: 7 min}}
              talk: {length: 30 min, others: record, rolling: yes}
              evening: {length: 2 h, others: record, cycle: {take: 3 min, reset: 7 min, reset-states: {camera: off}}}
          second:
            starts: "08:00"
            ambient: 3 °C
            blocks:
              morning: {length: 3 h, others: record}
        batteries:
          red: {item: brick, capacity-left: 90 %, resistance-growth: 1.2, rests-at: 22 °C, heat-factor: 0.6}
          green: {item: brick, charge: 70 %, maximum-charge-current: 4 A}
        chargers:
          van: {bays: 2, current: 3 A, order: in-turn, wall-limit: 90 W, efficiency: 85 %,
            power-hours: ["12:00-13:30", "19:00-06:00"], ambient: 15 °C}
        swaps: {warning-voltage: 13 V, allowed: between-blocks, swap-time: 45 s, next: as-listed}
        """;

    [Fact]
    public void They_read_run_and_stand_again_in_what_is_written()
    {
        using var folder = new TemporaryFolder();
        var (scenario, problems) = ScenarioFile.TryRead(folder.Write("lake.yaml", Text));
        Assert.Empty(problems);
        var (build, plan) = ScenarioPlan.Of(scenario!, "tripod", []);
        Assert.Equal((2, 2, 1), (plan.Days.Count, plan.Batteries.Count, plan.Chargers.Count));
        Assert.Equal(17, plan.NightTemperature.DegreesCelsius, 1e-9);
        Assert.Equal((BayOrder.InTurn, 2, new TimeOnly(6, 0)),
            (plan.Chargers["van"].Order, plan.Chargers["van"].Bays, plan.Chargers["van"].PowerHours[1].To));
        Assert.Equal((SwapMoments.BetweenBlocks, NextBattery.AsListed, 45.0),
            (plan.Swaps.Allowed, plan.Swaps.Next, plan.Swaps.SwapTime.Seconds));
        var result = DaySimulation.Run(build, plan, null, null, TestContext.Current.CancellationToken);
        Assert.True(result.FromWall.WattHours > 10, result.Story());

        var written = ScenarioFile.Text(scenario!);
        var again = ScenarioFile.TryRead(folder.Write("again.yaml", written));
        Assert.Empty(again.Problems);
        Assert.Equal(written, ScenarioFile.Text(again.Scenario!));
        Assert.Equal(scenario!.Batteries, again.Scenario!.Batteries);
        Assert.Equal(scenario.Swaps, again.Scenario.Swaps);
        Assert.Equal(scenario.Chargers, again.Scenario.Chargers);
        Assert.Equal(scenario.Days, again.Scenario.Days);
        Assert.NotEqual(scenario.Days["first"], scenario.Days["first"] with { AmbientPoints = [] });
    }

    [Fact]
    public void Where_a_charger_stands_and_what_its_outlet_is_rated_for_is_read_and_written()
    {
        using var folder = new TemporaryFolder();
        var text = Text.Replace("wall-limit: 90 W,", "stands: on the floor of the hall, power-from: generator, "
            + "supply-rating: 0.2 kVA, power-factor: 70 %,", StringComparison.Ordinal).Replace("on the floor of the hall",
            "\"on the floor of the hall, with somebody\"", StringComparison.Ordinal);
        var scenario = ScenarioFile.Read(folder.Write("lake.yaml", text));
        var charger = scenario.Chargers["van"];
        Assert.Equal(("on the floor of the hall, with somebody", PowerSource.Generator), (charger.Stands, charger.PowerFrom));
        Assert.Equal(140, (double)charger.LargestFromWall!.Value.Watts, 1e-9);
        Assert.Equal(scenario, ScenarioFile.Read(folder.Write("again.yaml", ScenarioFile.Text(scenario))));
        var (_, problems) = ScenarioFile.TryRead(folder.Write("wrong.yaml",
            text.Replace("0.2 kVA", "200 W", StringComparison.Ordinal)
                .Replace("generator", "genrator", StringComparison.Ordinal)));
        Assert.Equal(["chargers.van.power-from", "chargers.van.supply-rating"],
            problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Path).Order());
    }

    [Fact]
    public void A_small_pack_in_the_plate_and_a_battery_in_the_camera_carry_it_through_its_swaps()
    {
        using var folder = new TemporaryFolder();
        var small = Text.Replace("kit:\n",
            "  small-a: {kind: battery, name: small pack, battery: {energy: 20 Wh, voltage: 14.4 V}}\nkit:\n",
            StringComparison.Ordinal).Replace("  camera: {part: body-a}\n",
            "  camera: {part: body-a}\n  small: {part: small-a}\n", StringComparison.Ordinal);
        TimeSpan Down(string text)
        {
            var scenario = ScenarioFile.Read(folder.Write("lake.yaml",
                text.Replace("between-blocks", "any-time", StringComparison.Ordinal)));
            Assert.Equal(scenario, ScenarioFile.Read(folder.Write("again.yaml", ScenarioFile.Text(scenario))));
            var (build, plan) = ScenarioPlan.Of(scenario, "tripod", []);
            var result = DaySimulation.Run(build, plan, null, null, TestContext.Current.CancellationToken);
            return TimeSpan.FromSeconds(result.DownTimes.Where(down => down.IsPlanned)
                .Sum(down => (down.End - down.Start).Seconds));
        }

        var without = Down(Text.ReplaceLineEndings("\n"));
        Assert.True(without > TimeSpan.Zero);
        Assert.True(Down(small.ReplaceLineEndings("\n") + "\nhot-swap: {pack: {item: small}, charge-power: 8 W}\n") < without);
        Assert.True(Down(small.ReplaceLineEndings("\n") + "\ninternal-batteries: {camera: {item: small}}\n") < without);
        var (_, problems) = ScenarioFile.TryRead(folder.Write("wrong.yaml",
            Text + "\nhot-swap: {pack: {item: camera}}\ninternal-batteries: {camra: {item: brick}}\n"));
        Assert.Equal(["hot-swap.pack.item", "internal-batteries.camra"],
            problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Path));
        Assert.Equal("camera", problems.Single(problem => problem.Path == "internal-batteries.camra").Nearest);
    }

    [Fact]
    public void The_charge_course_meets_the_spans_and_the_stretches_fill_the_days()
    {
        using var folder = new TemporaryFolder();
        var scenario = ScenarioFile.Read(folder.Write("lake.yaml", Text));
        var (build, plan) = ScenarioPlan.Of(scenario, "tripod", []);
        var result = DaySimulation.Run(build, plan, null, null, TestContext.Current.CancellationToken);
        foreach (var battery in result.Batteries.Values)
        {
            var course = battery.Charges;
            Each.Step(course, (one, next) => Assert.True(one.Time <= next.Time));
            // Points of rest may be left out: the line between the others has their charge.
            foreach (var span in battery.Spans)
            {
                var after = course.SkipWhile(point => point.Time.Seconds < span.End.Seconds - 1e-6).First();
                var before = course.TakeWhile(point => point.Time.Seconds < span.End.Seconds - 1e-6).Last();
                var part = (span.End - before.Time).Seconds / (after.Time - before.Time).Seconds;
                Assert.Equal(span.ChargeAtEnd.Percent, before.Charge.Percent + (part * (after.Charge - before.Charge).Percent),
                    0.02);
            }
        }
        // By hand: 4 h of ten-minute periods, half an hour that rolls, 2 h of periods; the second day one block that doesn't
        // roll.
        var stretches = plan.Stretches();
        Assert.Equal(2 * 24 + 1 + 2 * 12 + 1, stretches.Count);
        Assert.Equal((24 * 3) + 30 + (12 * 3), stretches.Where(stretch => stretch.Rolling)
            .Sum(stretch => (stretch.End - stretch.Start).Minutes), 1e-6);
        Assert.Equal(plan.Days.Sum(day => day.Length.Hours), stretches.Sum(stretch => (stretch.End - stretch.Start).Hours), 1e-9);
    }

    [Theory]
    [InlineData("green: {item: brick,", "green: {item: brik,", "batteries.green.item", "brick")]
    [InlineData("count: 3", "count: 1", "batteries", "the kit has only 1")]
    [InlineData("19:00-06:00", "19:00 to 06:00", "chargers.van.power-hours.2", "19:00-07:00")]
    [InlineData("order: in-turn", "order: in-tern", "chargers.van.order", "in-turn")]
    [InlineData("time: \"13:00\"", "time: \"06:00\"", "days.first.ambient-points.2.time", "not later")]
    [InlineData("\"12:00-13:30\", \"19:00-06:00\"", "", "chargers.van.power-hours",
        "Found a list of 0. Accepted: two different times of day")]
    [InlineData("12:00-13:30", "12:00-12:00", "chargers.van.power-hours.1", "two different times of day")]
    [InlineData("warning-voltage: 13 V", "warning-voltage: 17 V", "swaps.warning-voltage", "such as \"13.2 V\"")]
    [InlineData("warning-voltage: 13 V", "reserve: 100 %", "swaps.reserve", "outside the range")]
    [InlineData("swap-time: 45 s", "swap-time: 2 h", "swaps.swap-time",
        "Each swap takes 120 min without a battery; one or two minutes are usual. The block \"talk\" of \"first\" is over "
            + "before, after 30 min.")]
    [InlineData("morning: {length: 4 h,", "morning: {length: 23 h,", "days.second.starts",
        "begins at 08:00, before the day before it is over. Accepted: \"starts\" at 08:30 or later")]
    [InlineData("reset-states: {camera: off}", "reset-states: {camra: off}", "days.first.blocks.evening.states.camra", "camera")]
    public void What_is_wrong_is_told_with_its_place(string right, string wrong, string path, string said)
    {
        using var folder = new TemporaryFolder();
        var problem = Assert.Single(ScenarioFile.TryRead(folder.Write("lake.yaml",
            Text.Replace(right, wrong, StringComparison.Ordinal))).Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(said, problem.ToString(), StringComparison.Ordinal);
        Assert.True(problem.At.Line > 1);
    }

    [Fact]
    public void A_reserve_that_a_battery_starts_below_is_refused_only_where_nothing_charges_it()
    {
        using var folder = new TemporaryFolder();
        var low = Text.Replace("charge: 70 %", "charge: 12 %", StringComparison.Ordinal)
            .Replace("warning-voltage: 13 V", "reserve: 15 %", StringComparison.Ordinal);
        Assert.Empty(ScenarioFile.TryRead(folder.Write("lake.yaml", low)).Problems);
        var problem = Assert.Single(ScenarioFile.TryRead(folder.Write("lake.yaml",
            low.Replace("bays: 2", "bays: 0", StringComparison.Ordinal))).Problems);
        Assert.Equal("swaps.reserve", problem.Path);
        Assert.Contains("starts with 12 %", problem.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wall_that_gives_nothing_stays_so_through_a_file()
    {
        using var folder = new TemporaryFolder();
        var scenario = ScenarioFile.Read(folder.Write("lake.yaml",
            Text.Replace("wall-limit: 90 W", "wall-limit: 0 W", StringComparison.Ordinal)));
        Assert.Equal(Power.Zero, scenario.Chargers["van"].WallLimit);
        Assert.Equal(scenario.Chargers, ScenarioFile.Read(folder.Write("again.yaml", ScenarioFile.Text(scenario))).Chargers);
        var (build, plan) = ScenarioPlan.Of(scenario, "tripod", []);
        Assert.Equal(0, DaySimulation.Run(build, plan, null, null, TestContext.Current.CancellationToken).FromWall.WattHours);
    }
}

using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Tests.Files;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>What the wiring of a build does on a day, and what is found about it.</summary>
public class ScenarioWiringTests
{
    [Fact]
    public void A_camera_behind_a_thin_lead_drops_out_with_charge_left_and_one_sentence_says_why()
    {
        var wiring = Of(WiredScenario.Text(camera: ", power: {record: 60 W, peak: 60 W}", length: "5 m", blocks: "{all: {length: 4 h, others: record}}"));

        Assert.Equal("camera", wiring.Failure!.Element);
        var answer = WiringWords.Answer(wiring);
        Assert.Matches("^At \\d\\d:\\d\\d, in \"all\", the camera drops out while the battery still has \\d+ % of its charge: its own inlet falls below the 10 V that it needs, for of the", answer);
        Assert.Contains("in the lead to box", answer, StringComparison.Ordinal);
        Assert.InRange(wiring.Worst!.Charge.Percent, 5, 99);
    }

    [Fact]
    public void A_collapse_is_told_apart_from_a_cut_off()
    {
        var wiring = Of(WiredScenario.Text(camera: ", power: {record: 150 W, peak: 150 W}", length: "8 m"));

        Assert.Equal(RigScenarios.Batteries.EndCause.PowerLimit, wiring.Run.PackEndCause);
        Assert.Contains("cannot be delivered", WiringWords.Answer(wiring), StringComparison.Ordinal);
        Assert.Contains("not the battery's cut-off", WiringWords.Answer(wiring), StringComparison.Ordinal);
    }

    [Fact]
    public void Shorter_and_thicker_cables_are_found_by_running_the_day_and_hold()
    {
        var text = WiredScenario.Text(camera: ", power: {record: 60 W, peak: 60 W}", length: "5 m", blocks: "{all: {length: 1 h 45 min, others: record}}");
        var wiring = Of(text);

        Assert.NotNull(wiring.Failure);
        Assert.Contains(wiring.Fixes, fix => fix.ReachesEnd && fix.Words.StartsWith("Make the lead to box at most", StringComparison.Ordinal));
        Assert.Contains(wiring.Fixes, fix => fix.ReachesEnd && fix.Words.StartsWith("Take AWG", StringComparison.Ordinal));
        var longest = double.Parse(wiring.Fixes.First(fix => fix.Words.StartsWith("Make", StringComparison.Ordinal)).Words.Split("most ")[1].Split(" m")[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Null(Of(text.Replace("length: 5 m", FormattableString.Invariant($"length: {longest} m"), StringComparison.Ordinal)).Failure);
        Assert.NotNull(Of(text.Replace("length: 5 m", FormattableString.Invariant($"length: {longest + 0.8} m"), StringComparison.Ordinal)).Failure);
    }

    [Fact]
    public void Steady_loads_stand_against_each_limit_and_the_nearest_comes_first()
    {
        var wiring = Of(WiredScenario.Text());

        Assert.Equal(wiring.Findings.OrderBy(finding => finding.Margin.DecimalFractions), wiring.Findings);
        var outlet = Find(wiring, "outlet one of box", LoadCase.Steady, "current through it");
        var lost = wiring.Run.Loads["camera"].LowestInlet!.Value.Volts;
        Assert.Equal(20 / lost, outlet.Current!.Value.Amperes, 1e-6);
        Assert.Equal(100 * (1 - (20 / lost / 2)), outlet.Margin.Percent, 1e-6);
        // 75 % of 4 A at 20 °C, the usual rule.
        Assert.Equal("3.00 A", wiring.Findings.Single(finding => finding.Limit.StartsWith("fuse 4 A", StringComparison.Ordinal)).Allowed);
    }

    [Fact]
    public void A_motor_s_peak_and_a_start_up_are_counted_where_they_come_nearer_to_a_limit()
    {
        var wiring = Of(WiredScenario.Text());

        var peak = Find(wiring, "outlet one of box", LoadCase.Peak, "current through it");
        Assert.InRange(peak.Current!.Value.Amperes, 30 / 14.0, 30 / 10.0);
        Assert.True(peak.Margin.DecimalFractions < 0);
        Assert.Equal("camera at the peak", peak.States);
        var start = Find(wiring, "outlet one of box", LoadCase.StartUp, "current through it");
        Assert.Equal(Duration.Zero, start.At);
        Assert.Equal("camera starts", start.States);
        // What warms up over minutes knows no moments.
        Assert.DoesNotContain(wiring.Findings, finding => finding.Limit.StartsWith("fuse", StringComparison.Ordinal) && finding.Case != LoadCase.Steady);
        Assert.Contains(WiringWords.Passed(wiring), finding => finding == peak);
    }

    [Fact]
    public void A_start_up_in_a_later_block_counts_only_what_was_off_before()
    {
        var wiring = Of(WiredScenario.Text(blocks: "{one: {length: 10 min, others: standby}, two: {length: 10 min, others: record}, three: {length: 10 min, others: off}, four: {length: 10 min, states: {camera: record}}}"));

        Assert.Contains(wiring.Findings.Where(finding => finding.Case == LoadCase.StartUp), finding => finding.Block is 0 or 3);
        Assert.DoesNotContain(wiring.Findings, finding => finding.Case == LoadCase.StartUp && finding.Block is 1 or 2);
    }

    [Fact]
    public void The_trace_keeps_the_balance_of_power_and_ends_where_the_run_ends()
    {
        var wiring = Of(WiredScenario.Text(camera: ", power: {record: 60 W, peak: 60 W}", length: "5 m", blocks: "{a: {length: 30 min, others: record}, b: {length: 20 min, others: off}, c: {length: 3 h, others: record}}"));

        Assert.NotEmpty(wiring.Moments);
        Assert.Equal(wiring.Run.EndTime.Seconds, wiring.Moments[^1].At.Seconds, 1e-3);
        Assert.All(wiring.Moments, moment => Assert.Equal(
            (double)moment.Point.Power.Watts, (double)moment.Point.Delivered.Watts + moment.Point.Elements.Values.Sum(at => (double)at.Loss.Watts), 1e-6));
        Assert.Equal([0, 1, 2], wiring.Moments.Select(moment => moment.Block).Distinct());
        Assert.All(wiring.Moments.Where(moment => moment.Block == 1), moment => Assert.Equal(0, moment.Point.Current.Amperes, 1e-9));
    }

    [Fact]
    public void The_day_s_run_goes_through_the_cables_too()
    {
        var text = WiredScenario.Text(camera: ", power: {record: 60 W, peak: 60 W}", length: "5 m", blocks: "{all: {length: 4 h, others: record}}");
        var day = SmallScenario.Run(text);

        Assert.Equal("drop-out of camera", day.EndCause);
        Assert.Equal(Of(text).Run.BuildRuntime.Seconds, day.Runtime.Seconds, 0.5);
    }

    [Fact]
    public void The_order_in_which_outlets_and_devices_are_listed_changes_nothing()
    {
        const string light = "\n      light: {outlet: b}";
        var text = WiredScenario.Text();
        var turned = text.Replace(light, "", StringComparison.Ordinal).Replace("    devices:", $"    devices:{light}", StringComparison.Ordinal)
            .Replace("a: {maximum-current: 5 A}, b: {maximum-current: 5 A}", "b: {maximum-current: 5 A}, a: {maximum-current: 5 A}", StringComparison.Ordinal);
        Assert.NotEqual(text, turned);

        var (expected, found) = (Of(text), Of(turned));

        foreach (var finding in expected.Findings)
            Assert.Equal(finding.Margin.Percent, Find(found, finding.Element, finding.Case, finding.Limit).Margin.Percent, 1e-9);
    }

    [Theory]
    [InlineData("current")]
    [InlineData("resistance")]
    public void A_load_of_another_kind_draws_what_the_part_says_at_the_feed_s_voltage(string load)
    {
        var wiring = Of(WiredScenario.Text(camera: $", power: {{load: {load}}}"));
        var device = (Device)wiring.Network.Elements.Single(element => element.Name == "camera");

        var draw = device.DrawIn("record");

        Assert.Equal(0, (double)draw.ConstantPower.Watts);
        Assert.Equal(20, 14 * (draw.ConstantCurrent.Amperes + (14 * draw.Conductance.Siemens)), 1e-9);
    }

    [Fact]
    public void A_duty_is_the_mean_of_work_and_standby()
    {
        var wiring = Of(WiredScenario.Text(camera: ", power: {duty: 25 %}"));

        Assert.Equal((0.25 * 20) + (0.75 * 10), (double)((Device)wiring.Network.Elements.Single(element => element.Name == "camera")).DrawIn("record").ConstantPower.Watts, 1e-9);
    }

    [Fact]
    public void Another_outlet_is_offered_where_one_gives_more()
    {
        var wiring = Of(WiredScenario.Text(camera: ", power: {record: 30 W}"));

        Assert.Contains(wiring.Fixes, fix => fix.Words.Contains("from outlet one to outlet two of the box", StringComparison.Ordinal));
    }

    private static WiringFinding Find(WiringOfDay wiring, string element, LoadCase kind, string limit) =>
        wiring.Findings.Single(finding => finding.Element == element && finding.Case == kind && finding.Limit == limit);

    private static WiringOfDay Of(string text) => ScenarioWiring.Of(SmallScenario.Read(text), "one", "day", TestContext.Current.CancellationToken);
}

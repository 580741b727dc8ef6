using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using RigScenarios.Tests.Files;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>What stands against the limits of a build's wiring on a day; voltages and currents that can be worked out by
/// hand.</summary>
public sealed class BuildLimitTests
{
    [Fact]
    public void A_camera_behind_a_thin_cable_drops_out_with_charge_left()
    {
        var result = Run(Thin("{all: {length: 4 h, others: record}}"));

        Assert.Equal("drop-out of camera", result.FirstStop!.Reason.ToString());
        Assert.InRange(result.FirstStop.Charge.Percent, 5, 99);
        var camera = Find(result, "camera", LimitKind.LowestVoltage, LoadCase.Steady);
        Assert.Equal(10, ((ElectricPotential)camera.Worst).Volts, 1e-4);
        Assert.Equal(result.FirstStop.At.Seconds, camera.At!.Time.Seconds, 1);
    }

    [Fact]
    public void A_collapse_is_told_apart_from_a_cut_off()
    {
        var result = Run(WiredScenario.Text(camera: ", power: {record: 150 W, peak: 150 W}", length: "8 m"));

        Assert.Equal((StopKind.PowerLimit, true, null),
            (result.FirstStop!.Reason.Kind, result.FirstStop.RightAfterChange, result.FirstStop.Voltage));
    }

    [Fact]
    public void Steady_loads_stand_against_each_limit_and_the_least_left_comes_first()
    {
        var result = Run(WiredScenario.Text());

        Assert.Equal(result.Limits.OrderBy(limit => limit.Share), result.Limits);
        var outlet = Find(result, "outlet one of box", LimitKind.Current, LoadCase.Steady);
        var lowest = result.Series.Min(point => point.Wiring!.Elements["camera"].Inlet.Volts);
        Assert.Equal(20 / lowest, ((ElectricCurrent)outlet.Worst).Amperes, 1e-6);
        Assert.Equal(1 - (20 / lowest / 2), outlet.Share!.Value, 1e-6);

        // 75 % of 4 A at 20 °C, the usual rule (common practice, no source).
        var fuse = Find(result, "outlet one of box", LimitKind.Fuse, LoadCase.Steady);
        Assert.Equal(3, ((ElectricCurrent)fuse.Allowed!).Amperes, 1e-9);
        Assert.Equal(LimitForce.Default, fuse.Basis.Force);
    }

    [Fact]
    public void A_motor_s_peak_and_a_start_up_are_counted_where_they_come_nearer_to_a_limit()
    {
        var result = Run(WiredScenario.Text());

        var peak = Find(result, "outlet one of box", LimitKind.Current, LoadCase.Peak);
        Assert.InRange(((ElectricCurrent)peak.Worst).Amperes, 30 / 14.0, 30 / 10.0);
        Assert.True(peak.IsPassed);
        Assert.Equal("camera", peak.Situation);
        var start = Find(result, "outlet one of box", LimitKind.Current, LoadCase.StartUp);
        Assert.Equal(8, start.At!.Time.Hours, 1e-9);
        Assert.Equal("camera", start.Situation);

        // The current of the start-up through the cable, from the quadratic equation with its 28 W and the cable's own
        // resistance.
        var inlet = (double)Power.FromWatts(28).Watts / ((ElectricCurrent)start.Worst).Amperes;
        Assert.InRange(inlet, 12.5, 14);

        // What warms up over minutes knows no moments.
        Each.HasNot(result.Limits, limit => limit.Kind is LimitKind.Fuse or LimitKind.RatedCurrent
            && limit.Case != LoadCase.Steady);
    }

    [Theory]
    [InlineData("{one: {length: 10 min, others: standby}, two: {length: 10 min, others: record}}", "one")]
    [InlineData("{one: {length: 10 min, others: off}, two: {length: 10 min, others: standby}, three: {length: 10 min, others: "
        + "record}}", "two")]
    public void Only_what_was_off_before_starts_up(string blocks, string block)
    {
        var limits = Run(WiredScenario.Text(blocks: blocks)).Limits.Where(limit => limit.Case == LoadCase.StartUp).ToList();

        Assert.NotEmpty(limits);
        Each.Of(limits, limit => Assert.Equal(block, limit.At!.Block));
    }

    [Fact]
    public void A_peak_is_drawn_in_record_only() =>
        Assert.DoesNotContain(Run(WiredScenario.Text(blocks: "{all: {length: 1 h, others: standby}}")).Limits,
            limit => limit.Case == LoadCase.Peak);

    [Fact]
    public void Every_moment_keeps_the_balance_of_power()
    {
        var result = Run(Thin("{a: {length: 30 min, others: record}, b: {length: 20 min, others: off}, c: {length: 3 h, "
            + "others: record}}"));

        Assert.NotEmpty(result.Series);
        Each.Of(result.Series, point => Assert.Equal(
            (double)point.Wiring!.Power.Watts,
            (double)point.Wiring.Delivered.Watts + point.Wiring.Elements.Values.Sum(at => (double)at.Loss.Watts), 1e-6));
        Assert.Equal(["a", "b", "c"], result.Series.Select(point => result.Stretches[point.Stretch].Block).Distinct());
        Each.Of(
            result.Series.Where(point => result.Stretches[point.Stretch].Block == "b"), point =>
                Assert.Equal(0, point.Wiring!.Current.Amperes, 1e-9));
    }

    [Fact]
    public void The_order_in_which_outlets_and_devices_are_listed_changes_nothing()
    {
        const string light = "\n      light: {outlet: b}";
        var text = WiredScenario.Text();
        var turned = text.Replace(light, "", StringComparison.Ordinal)
            .Replace("    devices:", $"    devices:{light}", StringComparison.Ordinal)
            .Replace("a: {maximum-current: 5 A}, b: {maximum-current: 5 A}",
                "b: {maximum-current: 5 A}, a: {maximum-current: 5 A}", StringComparison.Ordinal);
        Assert.NotEqual(text, turned);

        var (expected, found) = (Run(text), Run(turned));

        Assert.Equal(expected.Limits.Count, found.Limits.Count);
        foreach (var limit in expected.Limits)
            Assert.Equal(limit.Share!.Value, Find(found, limit.Element, limit.Kind, limit.Case).Share!.Value, 1e-11);
    }

    [Theory]
    [InlineData("current")]
    [InlineData("resistance")]
    public void A_load_of_another_kind_draws_what_the_part_says_at_the_feed_s_voltage(string load)
    {
        var draw = CameraIn(WiredScenario.Text(camera: $", power: {{load: {load}}}")).DrawIn("record");

        Assert.Equal(0, (double)draw.ConstantPower.Watts);
        Assert.Equal(20, 14 * (draw.ConstantCurrent.Amperes + (14 * draw.Conductance.Siemens)), 1e-9);
    }

    [Fact]
    public void A_duty_is_the_mean_of_work_and_standby() => Assert.Equal(
        (0.25 * 20) + (0.75 * 10), (double)CameraIn(WiredScenario.Text(camera: ", power: {duty: 25 %}"))
            .DrawIn("record").ConstantPower.Watts, 1e-9);

    private static string Thin(string blocks) =>
        WiredScenario.Text(camera: ", power: {record: 60 W, peak: 60 W}", length: "5 m", blocks: blocks);

    private static Device CameraIn(string text) =>
        (Device)BuildWiring.Of(ScenarioPlan.Of(SmallScenario.Read(text), "one", []).Build).Elements
            .Single(element => element.Name == "camera");

    private static Limit Find(SimulationResult result, string element, LimitKind kind, LoadCase load) =>
        Assert.Single(result.Limits, limit => limit.Element == element && limit.Kind == kind && limit.Case == load);

    private static SimulationResult Run(string text) => SmallScenario.Run(text);
}

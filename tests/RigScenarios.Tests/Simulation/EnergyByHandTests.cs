using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>
/// Runtimes worked out by hand: the battery has 100 Wh at 10 V, no resistance and a flat voltage, so the time is energy over
/// power.
/// The camera draws 10 W in standby and 20 W in record, a light 1 W and 5 W.
/// </summary>
public sealed class EnergyByHandTests
{
    [Fact]
    public void One_camera_in_record_runs_for_energy_over_power()
    {
        var result = SmallScenario.Run(SmallScenario.Text());
        Hours(5, result);
        Assert.Equal("empty", result.Reserve.Ends!.ToString());
        Assert.Equal(3, result.Reserve.Time.Hours, 1e-6);
        Assert.Equal(60, result.Reserve.Energy.WattHours, 1e-6);
        Assert.True(result.Completes);
        Assert.Equal(40, result.FromPacks.WattHours, 1e-6);
        Assert.Equal(60, Left(result), 1e-6);
    }

    [Fact]
    public void A_day_that_is_too_long_has_a_negative_margin_and_names_the_block()
    {
        // 3 h at 20 W leave 40 Wh: 4 h at 10 W; the third block is never reached.
        var result = SmallScenario.Run(SmallScenario.Text(blocks: "{first: {length: 3 h, others: record}, wait: {length: 6 h, "
            + "others: standby}, last: {length: 1 h, others: record}}"));
        Hours(7, result);
        Assert.Equal(("wait", "empty"),
            (result.Devices["camera"].FirstStop!.Block, result.Devices["camera"].FirstStop!.Reason.ToString()));
        Assert.Equal(-3, result.Reserve.Time.Hours, 1e-6);
        Assert.Equal((0.0, null), (result.Reserve.Energy.WattHours, result.Reserve.Ends));
        Assert.False(result.Completes);
        Assert.Equal(0, Left(result), 1e-6);
        Assert.Equal(100, result.FromPacks.WattHours, 1e-6);
    }

    [Fact]
    public void A_day_that_is_survived_begins_again_in_the_same_order()
    {
        // A day takes 2 h x 20 W + 1 h x 10 W + 1 h x 0 W = 50 Wh: exactly two days; the end comes as the second working part
        // ends.
        var result = SmallScenario.Run(SmallScenario.Text(
            blocks: "{takes: {length: 2 h, others: record}, wait: {length: 1 h, states: {camera: standby}}, move: {length: 1 "
                + "h, others: off}}", battery: ", charge: 75 %"));
        Hours(4 + 1.25, result);
        Assert.Equal((1.25, 25.0), (Math.Round(result.Reserve.Time.Hours, 6), Math.Round(result.Reserve.Energy.WattHours, 6)));
        Assert.Equal(4, (result.Blocks[^1].End - result.Blocks[0].Start).Hours, 1e-9);
        Assert.Equal(25, Left(result), 1e-6);
    }

    [Fact]
    public void A_day_without_any_draw_gives_a_lower_bound_of_ten_days()
    {
        var result = SmallScenario.Run(SmallScenario.Text(blocks: "{all: {length: 2 h, others: off}}"));
        Assert.True(result.Reserve.IsLowerBound);
        Assert.Null(result.Reserve.Ends);
        Hours(2 + 240, result);
    }

    [Fact]
    public void The_count_of_a_device_multiplies_its_draw() =>
        Hours(100.0 / (20 + (3 * 5)),
            SmallScenario.Run(SmallScenario.Text(devices: "{camera: {essential: yes}, light: {count: 3}}")));

    [Fact]
    public void Others_is_the_state_of_all_that_are_not_named() =>
        Hours(100.0 / (20 + 1), SmallScenario.Run(SmallScenario.Text(
            devices: "{camera: {essential: yes}, light: {}}",
            blocks: "{all: {length: 1 h, others: standby, states: {camera: record}}}")));

    [Fact]
    public void A_draw_given_in_the_build_goes_before_that_of_the_part() =>
        Hours(100.0 / 25, SmallScenario.Run(SmallScenario.Text(devices: "{camera: {essential: yes, power: {record: 25 W}}}")));

    [Fact]
    public void What_is_switched_off_may_still_draw() =>
        Hours(100.0 / 0.5, SmallScenario.Run(SmallScenario.Text(
            devices: "{camera: {essential: yes, power: {off: 0.5 W}}}", blocks: "{all: {length: 40 h, others: off}}")));

    [Fact]
    public void A_battery_that_starts_half_full_runs_half_as_long() =>
        Hours(2.5, SmallScenario.Run(SmallScenario.Text(battery: ", charge: 50 %")));

    [Fact]
    public void A_battery_with_less_capacity_left_runs_shorter_in_proportion() =>
        Hours(4, SmallScenario.Run(SmallScenario.Text(battery: ", capacity-left: 80 %")));

    [Fact]
    public void A_regulator_takes_power_over_efficiency_and_its_own_draw()
    {
        // 20 W / 0.8 + 0.5 W = 25.5 W; the output current is 20 W / 8 V = 2.5 A of 5 A.
        var result = SmallScenario.Run(SmallScenario.Text(devices: "{camera: {essential: yes, fed-by: regulator}}",
            build: "regulators: {regulator: {fed-by: battery}}"));
        Hours(100 / 25.5, result);
        var limit = Assert.Single(result.Limits, limit => limit.Kind == LimitKind.OutputCurrent);
        Assert.Equal(2.5, ((ElectricCurrent)limit.Worst).Amperes, 1e-6);
        Assert.Equal(0.5, limit.Share!.Value, 1e-6);
    }

    [Fact]
    public void A_plate_and_a_regulator_draw_for_themselves_also_with_everything_off()
    {
        // 2 W of the plate and 0.5 W of the regulator.
        var result = SmallScenario.Run(SmallScenario.Text(
            devices: "{camera: {essential: yes, fed-by: regulator}}", build: "plate: plate\n    regulators: {regulator: {}}",
            blocks: "{all: {length: 45 h, others: off}}"));

        // Nothing is wanted, so nothing stops; but the battery does.
        Assert.Equal(8 + 40, result.FirstStop!.At.Hours, 1e-6);
        Assert.Equal("empty", result.FirstStop.Reason.ToString());
        Assert.Equal(2.5, (double)Assert.Single(result.Blocks).Demand.Watts, 1e-9);
    }

    [Fact]
    public void The_largest_currents_are_those_of_the_greatest_draw()
    {
        var result = SmallScenario.Run(SmallScenario.Text(blocks: "{a: {length: 1 h, others: standby}, b: {length: 1 h, "
            + "others: record}}"));
        var battery = Assert.Single(result.Limits, limit => limit is { Element: "battery", Kind: LimitKind.Current });
        Assert.Equal(2, ((ElectricCurrent)battery.Worst).Amperes, 1e-6);
        Assert.Equal(0.98, battery.Share!.Value, 1e-5);
    }

    [Fact]
    public void The_series_covers_the_planned_day_and_the_figures_don_t_depend_on_keeping_it()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(day: "ambient: -5 °C", battery: ", start-temperature: 10 °C"));
        var kept = SmallScenario.RunOne(scenario, "one", "day");
        var ends = SmallScenario.RunOne(scenario, "one", "day", SimulationOptions.EndOnly);
        Assert.Empty(ends.Series);
        Assert.Equal((8.0, 10.0), (kept.Series[0].Time.Hours, Math.Round(kept.Series[^1].Time.Hours, 6)));
        Each.Step(kept.Series, (one, next) => Assert.True(one.Time.Seconds <= next.Time.Seconds));
        Assert.Equal(kept.Runtime.Seconds, ends.Runtime.Seconds, 1e-6);
        Assert.Equal(kept.ColdestBattery.DegreesCelsius, ends.ColdestBattery.DegreesCelsius, 1e-9);
        // Newton's law of cooling with 1000 J/K and 0.5 W/K: -5 + 15 exp(-7200 / 2000).
        Assert.Equal(-5 + (15 * Math.Exp(-3.6)), kept.ColdestBattery.DegreesCelsius, 1e-4);
    }

    private static double Left(SimulationResult result) => result.Batteries["flat"].ChargeLeft.Percent;

    private static void Hours(double expected, SimulationResult result) =>
        Assert.Equal(expected, result.Runtime.Hours, expected * 1e-6);
}

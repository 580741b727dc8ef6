using RigScenarios.Limits;
using RigScenarios.Simulation;

namespace RigScenarios.Tests.Simulation;

/// <summary>
/// What stops first when the voltage falls. The battery has no resistance and a voltage that falls straight from 12 V (full) to 8
/// V
/// (empty) over 10 Ah, so a threshold U is reached at the charge (U - 8 V) / 4 V, and the energy drawn by then is the area under
/// the line.
/// </summary>
public sealed class DropOutTests
{
    private const string Sloped = """
          sloped:
            kind: battery
            name: Sloped battery
            mass: 1000 g
            battery:
              {energy: 100 Wh, voltage: 10 V, series-groups: 1, capacity: 10 Ah, cutoff-voltage: 1 V, maximum-current: 100 A,
                maximum-temperature: 100 °C, resistance-0: 0 mΩ, resistance-1: 0 mΩ, time-constant-1: 10 s,
               resistance-2: 0 mΩ, time-constant-2: 100 s, lead-resistance: 0 mΩ, activation-energy: 0 kJ/mol,
               resistance-floor: 0, heat-capacity: 1000 J/K, heat-conductance: 0.5 W/K,
               usable-capacity: [{temperature: 25 °C, usable: 100 %}],
               open-circuit-voltage: [{charge: 0 %, voltage: 8 V}, {charge: 100 %, voltage: 12 V}]}
          fussy: {kind: body, name: Fussy camera, power: {standby: 5 W, record: 10 W}, voltage: {minimum: 11 V}}
          hardy: {kind: monitor, name: Hardy monitor, power: {standby: 5 W, record: 10 W}, voltage: {minimum: 9 V}}
          guard: {kind: plate, name: Guard plate, plate: {switch-off-voltage: 10 V}}
          weak: {kind: regulator, name: Weak regulator, regulator: {input-minimum: 10.5 V, input-maximum: 20 V,
            output-voltage: 11.5 V, efficiency: 100 %}}
        """;

    [Fact]
    public void The_device_that_needs_most_voltage_stops_first_and_the_other_runs_on()
    {
        var result = Run("{fussy: {}, hardy: {essential: yes}}");
        // Both take 20 W down to 11 V, then the monitor alone 10 W from 11 V to 9 V.
        var first = WattHours(12, 11) / 20;
        Stop(result, "fussy", first, "drop-out of fussy");
        Stop(result, "hardy", first + (WattHours(11, 9) / 10), "drop-out of hardy");
        Assert.Equal(first + (WattHours(11, 9) / 10), result.Runtime.Hours, 1e-6);
        Assert.Equal(StopKind.ShortOfVoltage, result.FirstStop!.Reason.Kind);
        Assert.Equal("drop-out of hardy", result.FirstStop.Reason.ToString());
    }

    [Fact]
    public void The_runtime_of_a_build_is_that_of_its_first_essential_device_and_so_is_its_cause()
    {
        var result = Run("{fussy: {essential: yes}, hardy: {essential: yes}}");
        Assert.Equal(WattHours(12, 11) / 20, result.Runtime.Hours, 1e-6);
        Assert.Equal(20 - (WattHours(12, 11) / 20), -result.Reserve.Time.Hours, 1e-6);
        Stop(result, "fussy", WattHours(12, 11) / 20, "drop-out of fussy");
        Stop(result, "hardy", (WattHours(12, 11) / 20) + (WattHours(11, 9) / 10), "drop-out of hardy");
    }

    [Fact]
    public void Without_an_essential_device_only_the_battery_ends_the_day()
    {
        var result = Run("{fussy: {}, hardy: {power: {standby: 5 W, record: 10 W}}}");
        // Nothing draws below 9 V: the battery never becomes empty.
        Assert.Null(result.FirstStop);
        Assert.True(result.Reserve.IsLowerBound);
        Stop(result, "fussy", WattHours(12, 11) / 20, "drop-out of fussy");
        Stop(result, "hardy", (WattHours(12, 11) / 20) + (WattHours(11, 9) / 10), "drop-out of hardy");
    }

    [Fact]
    public void A_plate_that_switches_off_ends_everything_behind_it()
    {
        var result = Run("{hardy: {essential: yes}}", "plate: guard");
        Assert.Equal(WattHours(12, 10) / 10, result.Runtime.Hours, 1e-6);
        Assert.Equal("drop-out of guard", result.FirstStop!.Reason.ToString());
        Stop(result, "hardy", WattHours(12, 10) / 10, "drop-out of guard");
    }

    [Fact]
    public void A_device_fed_past_the_plate_runs_on_when_the_plate_has_switched_off()
    {
        var result = Run("{fussy: {power: {record: 10 W}, fed-by: weak}, hardy: {essential: yes, fed-by: battery}}",
            "plate: guard\n    regulators: {weak: {fed-by: guard}}");
        // The regulator stops at 10.5 V, before the plate.
        var first = WattHours(12, 10.5) / 20;
        Stop(result, "fussy", first, "drop-out of weak");
        Stop(result, "hardy", first + (WattHours(10.5, 9) / 10), "drop-out of hardy");
    }

    [Fact]
    public void A_device_behind_a_regulator_does_not_see_the_battery_s_voltage()
    {
        // Its own least voltage of 11 V is met by the regulator's 11.5 V until that stops at 10.5 V.
        var result = Run("{fussy: {essential: yes, fed-by: weak}}", "regulators: {weak: {}}");
        Assert.Equal(WattHours(12, 10.5) / 10, result.Runtime.Hours, 1e-6);
        Stop(result, "fussy", WattHours(12, 10.5) / 10, "drop-out of weak");
    }

    [Fact]
    public void A_device_that_is_off_does_not_drop_out_until_it_is_switched_on()
    {
        var result = Run("{fussy: {essential: yes}, hardy: {essential: yes}}",
            blocks: "{a: {length: 4 h, states: {hardy: record}}, b: {length: 1 h, others: record}}");
        // 4 h at 10 W bring the battery below 11 V, which it has after 28.75 Wh; the camera stops as the second block begins.
        Assert.Equal(4, result.Runtime.Hours, 1e-9);
        Assert.Equal("b", result.Devices["fussy"].FirstStop!.Block);
        Stop(result, "fussy", 4, "drop-out of fussy");
        Assert.True(Assert.Single(result.DropOuts, drop => drop.Element == "fussy").RightAfterChange);
    }

    [Fact]
    public void A_battery_too_low_at_the_start_stops_at_once()
    {
        var result = Run("{fussy: {essential: yes}}", battery: ", charge: 50 %");
        Assert.Equal(0, result.Runtime.Seconds, 1e-9);
        Stop(result, "fussy", 0, "drop-out of fussy");
    }

    [Fact]
    public void A_stop_keeps_its_first_reason()
    {
        // The camera drops out first, then the rig stops with the monitor; what each device is told stays what stopped it.
        var result = Run("{fussy: {}, hardy: {essential: yes}}",
            blocks: "{a: {length: 10 h, others: record}, b: {length: 1 h, others: standby}}");
        Each.Of(Downs("fussy"), span => Assert.Equal("drop-out of fussy", span.Reason!.ToString()));
        Each.Of(Downs("hardy"), span => Assert.Equal("drop-out of hardy", span.Reason!.ToString()));
        Assert.Equal(19, Downs("fussy")[^1].End.Hours, 1e-9);
        Assert.Equal(StopKind.NothingLeft, Downs("fussy")[^1].Awaits);

        List<DeviceSpan> Downs(string device) =>
            [.. result.Devices[device].Spans.Where(span => span.Activity == DeviceActivity.Down)];
    }

    [Fact]
    public void What_stops_with_the_rig_has_the_reason_of_the_rig()
    {
        var result = Run("{fussy: {essential: yes}, hardy: {}}");
        Stop(result, "hardy", WattHours(12, 11) / 20, "drop-out of fussy");
        Assert.Equal("fussy", Assert.Single(result.DropOuts).Element);
    }

    private static SimulationResult Run(string devices, string build = "",
        string blocks = "{all: {length: 20 h, others: record}}", string battery = "") =>
        SmallScenario.Run(SmallScenario.Text(devices, build, blocks, battery, Sloped)
            .Replace("kit: {flat", "kit: {sloped: {part: sloped}, fussy: {part: fussy}, hardy: {part: hardy}, guard: {part: "
                + "guard}, weak: {part: weak}, flat", StringComparison.Ordinal)
            .Replace("item: flat", "item: sloped", StringComparison.Ordinal));

    /// <summary>Energy between two voltages of the line: 2.5 Ah for each volt, at the mean voltage.</summary>
    private static double WattHours(double from, double to) => (from - to) * 2.5 * (from + to) / 2;

    private static void Stop(SimulationResult result, string device, double hours, string cause)
    {
        var found = result.Devices[device];
        Assert.Equal(hours, found.Runtime.Hours, 1e-6);
        Assert.Equal(8 + hours, found.FirstStop!.At.Hours, 1e-6);
        Assert.Equal(cause, found.FirstStop.Reason.ToString());
    }
}

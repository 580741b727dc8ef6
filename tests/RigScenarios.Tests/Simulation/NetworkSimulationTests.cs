using CsCheck;
using RigScenarios.Batteries;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using RigScenarios.Tests.Batteries;
using RigScenarios.Wiring;
using UnitsNet;
using static RigScenarios.Tests.Wiring.Networks;

namespace RigScenarios.Tests.Simulation;

/// <summary>Runs through wiring against runs without it, and what is told of them.</summary>
public sealed class NetworkSimulationTests
{
    private static readonly DischargeOptions EndOnly = new() { SeriesPoints = 0 };

    [Fact]
    public void Without_resistance_a_run_is_the_discharge_under_the_sum_of_the_draws()
    {
        Gen.Select(Gen.Double[5, 60], Gen.Double[0, 30], Gen.Double[-15, 35]).Holds(
            (first, second, celsius) =>
            {
                var network = new WiringNetwork([new Wire("cable", null, Ohms(0)), new LowVoltageSwitch("guard", "cable"),
                    Device("a", "guard", first), Device("b", null, second)]);
                var expected = Packs.Default.Run(celsius, Demand.OfPower(Power.FromWatts(first + second)), options: EndOnly);

                var result = Run(network, celsius);

                Assert.Equal(expected.Cause.AsStop(), result.FirstStop!.Reason);
                Assert.Equal(expected.EndTime.Seconds, result.FirstStop.At.Seconds, 1e-6 * (1 + expected.EndTime.Seconds));
                Assert.Equal(expected.EndStateOfCharge.DecimalFractions, result.FirstStop.Charge.DecimalFractions, 1e-7);
            },
            cases: 60);
    }

    [Fact]
    public void One_cable_before_everything_acts_as_resistance_of_the_pack_s_leads()
    {
        Gen.Select(Gen.Double[5, 60], Gen.Double[0, 0.3], Gen.Double[-15, 35]).Holds(
            (watts, ohms, celsius) =>
            {
                // Below 1 V the pack's own cut-off acts in neither; what ends both is the power that can't be delivered, or the
                // charge.
                var open = Packs.Default with { CutoffVoltage = Volts(1),
                    HeatConductance = ThermalConductance.FromWattsPerKelvin(1e6) };
                var network = new WiringNetwork([new Wire("cable", null, Ohms(ohms)), Device("camera", "cable", watts)]);
                var expected = (open with { LeadResistance = open.LeadResistance + Ohms(ohms) })
                    .Run(celsius, Demand.OfPower(Power.FromWatts(watts)), options: EndOnly);

                var result = Run(network, celsius, open);

                Assert.Equal(expected.Cause.AsStop(), result.FirstStop!.Reason);
                Assert.Equal(expected.EndTime.Seconds, result.FirstStop.At.Seconds, 1e-5 * (1 + expected.EndTime.Seconds));
            },
            cases: 60);
    }

    [Fact]
    public void A_thicker_cable_never_shortens_the_run_of_a_camera_alone()
    {
        Gen.Select(Gen.Double[10, 60], Gen.Double[0.01, 0.4], Gen.Double[-15, 35]).Holds(
            (watts, ohms, celsius, looked) =>
            {
                WiringNetwork Through(double resistance) => new(
                    [new Wire("cable", null, Ohms(resistance)),
                        Device("camera", "cable", watts) with { MinimumVoltage = Volts(11.5), Essential = true }]);

                var thick = Run(Through(ohms), celsius).FirstStop!.At;
                Assert.True(thick >= Run(Through(1.2 * ohms), celsius).FirstStop!.At);
                if (thick.Seconds > 0)
                    looked.One();
            },
            cases: 60, atLeast: 50);
    }

    [Fact]
    public void A_camera_behind_a_thin_cable_drops_out_with_charge_left_and_the_margins_say_where()
    {
        var network = new WiringNetwork(
        [
            new LowVoltageSwitch("plate", null, Volts(10)) { MaximumCurrent = ElectricCurrent.FromAmperes(10) },
            new Cable(Conductor.Awg(24), Length.FromMeters(2)).AsWire("long cable", "plate") with
            {
                Fuse = new FuseData(ElectricCurrent.FromAmperes(5), Ratio.FromPercent(100)),
            },
            Device("camera", "long cable", 50) with { MinimumVoltage = Volts(12.5), Essential = true },
            Device("monitor", "plate", 10) with { MinimumVoltage = Volts(10.5) },
        ]);

        var result = Run(network, 20);

        Assert.Equal("drop-out of camera", result.FirstStop!.Reason.ToString());
        Assert.True(result.FirstStop.Charge.Percent > 20);
        Assert.Equal(new DeviceStop(result.FirstStop.At, result.FirstStop.Reason, 1, result.Devices["camera"].FirstStop!.Block),
            result.Devices["camera"].FirstStop);
        Assert.Equal("camera", Assert.Single(result.DropOuts).Element);
        var camera = Assert.Single(result.Limits, limit => limit.Element == "camera");
        Assert.Equal(camera, result.Limits[0]);
        Assert.Equal(0, camera.Share!.Value, 1e-8);
        Assert.Equal(12.5, ((ElectricPotential)camera.Worst).Volts, 1e-6);
        Assert.Equal(
            ["battery", "battery", "battery", "camera", "long cable", "monitor", "plate", "plate"],
            result.Limits.Select(limit => limit.Element).Order(StringComparer.Ordinal));
        Assert.Equal(50 / 12.5 / 5, 1 - result.Limits.Single(limit => limit.Element == "long cable").Share!.Value, 1e-6);
    }

    [Fact]
    public void A_regulator_that_drops_out_stops_what_hangs_behind_it_and_the_rest_runs_on()
    {
        var network = new WiringNetwork(
        [
            new Regulator("regulator", null, Volts(7.6)) { InputMinimum = Volts(13.8), Efficiency = Ratio.FromPercent(90) },
            Device("camera", "regulator", 20) with { Essential = true },
            Device("recorder", null, 15) with { MinimumVoltage = Volts(13), Essential = true },
        ]);

        var result = Run(network, 20);

        Assert.Equal(["regulator", "recorder"], result.DropOuts.Select(drop => drop.Element));
        Assert.Equal("drop-out of regulator", result.Devices["camera"].FirstStop!.Reason.ToString());
        Assert.Equal(result.DropOuts[0].At, result.Devices["camera"].FirstStop!.At);
        Assert.Equal("drop-out of recorder", result.FirstStop!.Reason.ToString());
        Assert.Equal(0, result.Loads["regulator"].At.Seconds - result.DropOuts[0].At.Seconds, 1e-6);
    }

    [Fact]
    public void The_time_limit_comes_before_a_block_that_would_begin_then()
    {
        var network = new WiringNetwork([Device("camera", null, 20) with { MinimumVoltage = Volts(10), Essential = true },
            Device("motors", null, 400)]);
        WiringBlock[] blocks = [new(Duration.FromMinutes(10), new([new("camera", "on")])),
            new(Duration.FromMinutes(10), network.AllOn())];

        var result = NetworkSimulation.Run(
            network, Packs.Default, Temperature.FromDegreesCelsius(20), DischargeStart.Full, blocks,
            Duration.FromMinutes(10), null,
            TestContext.Current.CancellationToken);

        Assert.Null(result.FirstStop);
        Assert.Equal(600, result.Days[0].End.Seconds);
        Assert.Equal(2, result.Series.Count(point => point.Time.Seconds is 0 or 600));
        Assert.Single(result.Stretches);
    }

    [Fact]
    public void What_it_cannot_run_is_refused()
    {
        var network = new WiringNetwork([Device("camera", null, 20)]);
        SimulationResult With(IReadOnlyList<WiringBlock> blocks, double hours) => NetworkSimulation.Run(
            network, Packs.Default, Temperature.FromDegreesCelsius(20), DischargeStart.Full, blocks, Duration.FromHours(hours));

        Assert.Contains("one or more", Assert.Throws<ArgumentException>(() => With([], 1)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => With([new(Duration.FromHours(1), network.AllOn())], 0));
        Assert.Contains(
            "its devices: camera",
            Assert.Throws<ArgumentException>(() => With([new(Duration.FromHours(1), new([new("camra", "on")]))], 1)).Message,
            StringComparison.Ordinal);
    }

    private static SimulationResult Run(WiringNetwork network, double celsius, Pack? pack = null) => NetworkSimulation.Run(
        network, pack ?? Packs.Default, Temperature.FromDegreesCelsius(celsius), DischargeStart.Full,
        [new WiringBlock(Duration.FromHours(1), network.AllOn())], Duration.FromHours(48), new SimulationOptions(SeriesPoints: 0),
        TestContext.Current.CancellationToken);
}

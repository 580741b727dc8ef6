using CsCheck;
using RigScenarios.Batteries;
using RigScenarios.Parts;
using RigScenarios.Tests.Batteries;
using RigScenarios.Wiring;
using UnitsNet;
using static RigScenarios.Tests.Wiring.Networks;

namespace RigScenarios.Tests.Wiring;

/// <summary>Runs through wiring against runs without it, and what is told of them.</summary>
public class WiringRunTests
{
    private static readonly DischargeOptions EndOnly = new() { SeriesPoints = 0 };

    [Fact]
    public void Without_resistance_a_run_is_the_discharge_under_the_sum_of_the_draws()
    {
        Gen.Select(Gen.Double[5, 60], Gen.Double[0, 30], Gen.Double[-15, 35]).Sample(
            (first, second, celsius) =>
            {
                var network = new WiringNetwork([new Wire("cable", null, Ohms(0)), new LowVoltageSwitch("guard", "cable"), Device("a", "guard", first), Device("b", null, second)]);
                var expected = Packs.Default.Run(celsius, Demand.OfPower(Power.FromWatts(first + second)), options: EndOnly);

                var result = Run(network, celsius);

                Assert.Equal(expected.Cause, result.PackEndCause);
                Assert.Equal(expected.EndTime.Seconds, result.EndTime.Seconds, 1e-6 * (1 + expected.EndTime.Seconds));
                Assert.Equal(expected.EndStateOfCharge.DecimalFractions, result.FinalState.StateOfCharge.DecimalFractions, 1e-7);
            },
            iter: 60);
    }

    [Fact]
    public void One_cable_before_everything_acts_as_resistance_of_the_pack_s_leads()
    {
        Gen.Select(Gen.Double[5, 60], Gen.Double[0, 0.3], Gen.Double[-15, 35]).Sample(
            (watts, ohms, celsius) =>
            {
                // Below 1 V the pack's own cut-off acts in neither; what ends both is the power that can't be delivered, or the charge.
                var open = Packs.Default with { CutoffVoltage = Volts(1), HeatConductance = ThermalConductance.FromWattsPerKelvin(1e6) };
                var network = new WiringNetwork([new Wire("cable", null, Ohms(ohms)), Device("camera", "cable", watts)]);
                var expected = (open with { LeadResistance = open.LeadResistance + Ohms(ohms) }).Run(celsius, Demand.OfPower(Power.FromWatts(watts)), options: EndOnly);

                var result = Run(network, celsius, open);

                Assert.Equal(expected.Cause, result.PackEndCause);
                Assert.Equal(expected.EndTime.Seconds, result.EndTime.Seconds, 1e-5 * (1 + expected.EndTime.Seconds));
            },
            iter: 60);
    }

    [Fact]
    public void A_thicker_cable_never_shortens_the_run_of_a_camera_alone()
    {
        Gen.Select(Gen.Double[10, 60], Gen.Double[0.01, 0.4], Gen.Double[-15, 35]).Sample(
            (watts, ohms, celsius) =>
            {
                WiringNetwork Through(double resistance) => new(
                    [new Wire("cable", null, Ohms(resistance)), Device("camera", "cable", watts) with { MinimumVoltage = Volts(11.5), Essential = true }]);

                return Run(Through(ohms), celsius).EndTime >= Run(Through(1.2 * ohms), celsius).EndTime;
            },
            iter: 60);
    }

    [Fact]
    public void A_camera_behind_a_thin_cable_drops_out_with_charge_left_and_the_margins_say_where()
    {
        var network = new WiringNetwork(
        [
            new LowVoltageSwitch("plate", null, Volts(10)) { MaximumCurrent = ElectricCurrent.FromAmperes(10) },
            new Cable(Conductor.Awg(24), Length.FromMeters(2)).AsWire("long cable", "plate") with { FuseRating = ElectricCurrent.FromAmperes(5) },
            Device("camera", "long cable", 50) with { MinimumVoltage = Volts(12.5), Essential = true },
            Device("monitor", "plate", 10) with { MinimumVoltage = Volts(10.5) },
        ]);

        var result = Run(network, 20);

        Assert.Equal("drop-out of camera", result.EndCause);
        Assert.True(result.FinalState.StateOfCharge.Percent > 20);
        Assert.Equal(new WiringStop(result.EndTime, "camera"), result.Devices["camera"]);
        Assert.Null(result.Devices["monitor"].Because);
        var camera = Assert.Single(result.Margins, margin => margin.Element == "camera");
        Assert.Equal(camera, result.Margins[0]);
        Assert.Equal(0, camera.Margin.Percent, 1e-6);
        Assert.Equal("12.50 V", camera.Worst);
        Assert.Equal(
            ["camera", "long cable", "monitor", "pack", "pack", "plate", "plate"],
            result.Margins.Select(margin => margin.Element).Order(StringComparer.Ordinal));
        Assert.Equal(50 / 12.5 / 5, 1 - result.Margins.Single(margin => margin.Element == "long cable").Margin.DecimalFractions, 1e-6);
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
        Assert.Equal("regulator", result.Devices["camera"].Because);
        Assert.Equal(result.Devices["camera"].At, result.BuildRuntime);
        Assert.Equal("drop-out of recorder", result.EndCause);
        Assert.Equal(0, result.Loads["regulator"].At.Seconds - result.DropOuts[0].At.Seconds, 1e-6);
    }

    [Fact]
    public void The_time_limit_comes_before_a_block_that_would_begin_then()
    {
        var network = new WiringNetwork([Device("camera", null, 20) with { MinimumVoltage = Volts(10), Essential = true }, Device("motors", null, 400)]);
        WiringBlock[] blocks = [new(Duration.FromMinutes(10), new([new("camera", "on")])), new(Duration.FromMinutes(10), network.AllOn())];

        var result = WiringRun.Run(network, Packs.Default, Temperature.FromDegreesCelsius(20), DischargeStart.Full, blocks, new DischargeOptions { TimeLimit = Duration.FromMinutes(10) }, TestContext.Current.CancellationToken);

        Assert.Equal(EndCause.TimeLimit, result.PackEndCause);
        Assert.Equal(600, result.EndTime.Seconds);
        Assert.Equal(2, result.Series.Count(point => point.Time.Seconds is 0 or 600));
    }

    private static WiringResult Run(WiringNetwork network, double celsius, Pack? pack = null) => WiringRun.Run(
        network, pack ?? Packs.Default, Temperature.FromDegreesCelsius(celsius), DischargeStart.Full,
        [new WiringBlock(Duration.FromHours(1), network.AllOn())], EndOnly, TestContext.Current.CancellationToken);
}

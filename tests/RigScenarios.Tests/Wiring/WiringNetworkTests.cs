using RigScenarios.Simulation;
using RigScenarios.Tests.Batteries;
using RigScenarios.Wiring;
using UnitsNet;
using static RigScenarios.Tests.Wiring.Networks;

namespace RigScenarios.Tests.Wiring;

/// <summary>What a network refuses, and how it says so.</summary>
public class WiringNetworkTests
{
    [Fact]
    public void A_loop_is_refused_with_its_elements()
    {
        var error = Assert.Throws<WiringException>(() =>
            new WiringNetwork([new Wire("a", "b", Ohms(0.1)), new Wire("b", "a", Ohms(0.1)), Device("camera", "a", 10)]));

        Assert.Contains("A loop: \"a\" is fed by \"b\", \"b\" is fed by \"a\"", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_problems_are_told_at_once()
    {
        var error = Assert.Throws<WiringException>(() =>
            new WiringNetwork([Device("camera", "outlet", 10), Device("camera", null, 5), new Wire("cable", "camera", Ohms(0))]));

        Assert.Equal(3, error.Message.Split('\n').Length);
        Assert.Contains("\"camera\" is fed by \"outlet\", which is not there: it gets no power", error.Message,
            StringComparison.Ordinal);
        Assert.Contains("Two elements are named \"camera\"", error.Message, StringComparison.Ordinal);
        Assert.Contains("\"cable\" is fed by the device \"camera\"", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unregulated_pack_on_a_7_V_body_is_told_loudest_and_before_anything_runs()
    {
        var network = new WiringNetwork(
        [
            Device("body", null, 10) with { MaximumVoltage = Volts(8.4) },
            Device("monitor", null, 10) with { MaximumVoltage = Volts(16.8) },
            new Regulator("regulator", null, Volts(12)),
            Device("transmitter", "regulator", 5) with { MaximumVoltage = Volts(9) },
        ]);

        var wrong = network.OverVoltages(Volts(16.8));

        Assert.Equal(["body", "transmitter"], wrong.Select(one => one.Element));
        Assert.StartsWith("WRONG VOLTAGE: body takes at most 8.4 V, but the full battery without load puts 16.8 V on it.",
            wrong[0].ToString(), StringComparison.Ordinal);
        Assert.Throws<WiringException>(() => Run(network, 1));
    }

    [Fact]
    public void A_state_or_device_that_is_not_there_is_named_with_those_that_are()
    {
        var network = new WiringNetwork([Device("camera", null, 10)]);

        Assert.Contains("its devices: camera",
            Assert.Throws<ArgumentException>(() => network.TrySolve(Volts(14), new([new("camra", "on")]))).Message,
            StringComparison.Ordinal);
        Assert.Contains("it has: on, off",
            Assert.Throws<ArgumentException>(() => network.TrySolve(Volts(14), new([new("camera", "recording")]))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Too_much_power_for_the_cable_is_no_operating_point()
    {
        // 14.4 V behind 0.5 Ω gives at most 14.4²/(4·0.5) = 103.68 W.
        WiringNetwork Lamp(double watts) => new([new Wire("cable", null, Ohms(0.5)), Device("lamp", "cable", watts)]);

        Assert.NotNull(Lamp(103.6).TrySolve(Volts(14.4), Lamp(1).AllOn()));
        Assert.Null(Lamp(103.7).TrySolve(Volts(14.4), Lamp(1).AllOn()));
    }

    [Fact]
    public void A_gauge_that_is_not_in_the_table_is_refused_with_those_that_are()
    {
        Assert.Contains("accepted: 0.5, 0.75, 1, 1.5, 2.5 mm²",
            Assert.Throws<ArgumentOutOfRangeException>(() => Conductor.Metric(Area.FromSquareMillimeters(1.2))).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Conductor.Awg(2));
    }

    private static SimulationResult Run(WiringNetwork network, double hours) => NetworkSimulation.Run(
        network, Packs.Default, Temperature.FromDegreesCelsius(20), RigScenarios.Batteries.DischargeStart.Full,
        [new WiringBlock(Duration.FromHours(hours), network.AllOn())], Duration.FromHours(hours), null,
        TestContext.Current.CancellationToken);
}

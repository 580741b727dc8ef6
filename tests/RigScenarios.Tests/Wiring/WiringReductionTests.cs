using CsCheck;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Tests.Wiring;

public sealed class WiringReductionTests
{
    private static readonly Temperature Room = Temperature.FromDegreesCelsius(20);

    [Fact]
    public void What_hangs_on_the_terminals_is_its_own_formula()
    {
        var network = new WiringNetwork([new Device("all", null, new([new("on", new DeviceDraw
        {
            ConstantPower = Power.FromWatts(30), ConstantCurrent = ElectricCurrent.FromAmperes(0.4),
            Conductance = ElectricConductance.FromSiemens(0.02),
        })]))]);
        var reduced = Reduce(network)!;
        Assert.Equal(30, (double)reduced.ConstantPower.Watts, 1e-6);
        Assert.Equal(0.4, reduced.ConstantCurrent.Amperes, 1e-6);
        Assert.Equal(0.02, reduced.Conductance.Siemens, 1e-6);
        Assert.InRange(reduced.Error.DecimalFractions, 0, 1e-9);
        Assert.Null(reduced.StopsFirst);
    }

    [Fact]
    public void Nothing_on_is_no_draw_at_all()
    {
        var network = new WiringNetwork([new Wire("cable", null, Networks.Ohms(0.1)), Networks.Device("camera", "cable", 30)]);
        var reduced = WiringReduction.Of(network, OrderedMap<string>.Empty, Networks.Volts(11), Networks.Volts(17), Room)!;
        Assert.Equal((0.0, 0.0, 0.0), ((double)reduced.ConstantPower.Watts, reduced.ConstantCurrent.Amperes,
            reduced.Conductance.Siemens));
    }

    [Fact]
    public void The_error_that_is_told_is_never_passed_between_the_voltages_that_were_looked_at()
    {
        Gen.Select(Networks.Any, Gen.Double[10.5, 12], Gen.Double[13, 17]).Holds((one, looked) =>
        {
            var (network, lowest, highest) = one;
            if (Reduce(network, lowest, highest) is not { } reduced)
                return;
            looked.One();
            for (var i = 0; i <= 50; i++)
            {
                var volts = Networks.Volts(Math.Max(lowest, reduced.StopsAt?.Volts ?? 0) + ((highest
                    - Math.Max(lowest, reduced.StopsAt?.Volts ?? 0)) * i / 50));
                var real = network.TrySolve(volts, network.AllOn())!.Current.Amperes;
                Assert.InRange(Math.Abs(reduced.CurrentAt(volts).Amperes - real), 0,
                    (1.05 * reduced.Error.DecimalFractions * real) + 1e-8);
            }
        }, cases: 200, atLeast: 60);
    }

    [Fact]
    public void It_stops_where_the_network_itself_runs_short()
    {
        Gen.Select(Networks.Any, Gen.Double[0, 1]).Holds((one, looked) =>
        {
            // Each device wants some voltage: a few stop above the lowest, a few below.
            var network = new WiringNetwork(one.Item1.Elements.Select(element => element is Device device
                ? device with { MinimumVoltage = Networks.Volts(9 + (4 * one.Item2)) } : element));
            if (Reduce(network, 11, 16.8) is not { StopsAt: { } stop } reduced)
                return;
            looked.One();
            Assert.Equal(0, Margin(network, stop.Volts), 1e-5);
            Assert.True(Margin(network, stop.Volts + 1e-3) > 0);
            var stopped = network.Elements.First(element => element.Name == reduced.StopsFirst);
            Assert.Equal(Threshold(stopped)!.Value,
                network.TrySolve(stop, network.AllOn())!.Elements[stopped.Name].Inlet.Volts, 1e-5);
        }, cases: 300, atLeast: 40);
    }

    [Fact]
    public void What_is_short_at_every_voltage_or_cannot_be_delivered_has_no_formula()
    {
        Assert.Null(Reduce(new([Networks.Device("camera", null, 30) with { MinimumVoltage = Networks.Volts(18) }])));
        Assert.Null(Reduce(new([new Wire("cable", null, Networks.Ohms(1)), Networks.Device("lamp", "cable", 40)])));
        Assert.Throws<ArgumentOutOfRangeException>(() => Reduce(new([Networks.Device("camera", null, 30)]), 12, 12));
    }

    private static WiringReduction? Reduce(WiringNetwork network, double lowest = 11, double highest = 16.8) =>
        WiringReduction.Of(network, network.AllOn(), Networks.Volts(lowest), Networks.Volts(highest), Room);

    private static double Margin(WiringNetwork network, double volts)
    {
        var point = network.TrySolve(Networks.Volts(volts), network.AllOn())!;
        return network.Elements.Where(element => Threshold(element) is not null
                && (element is not Device device || device.DrawIn("on").DrawsAnything))
            .Min(element => point.Elements[element.Name].Inlet.Volts - Threshold(element)!.Value);
    }

    private static double? Threshold(WiringElement element) => element switch
    {
        LowVoltageSwitch guard => guard.OpensBelow?.Volts,
        Regulator regulator => regulator.InputMinimum?.Volts,
        Device device => device.MinimumVoltage?.Volts,
        _ => null,
    };
}

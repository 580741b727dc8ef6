using CsCheck;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Tests.Wiring;

/// <summary>Invented networks for the tests of this folder. Every device has the state "on".</summary>
internal static class Networks
{
    /// <summary>Any network on some 14 V: a random tree of wires, guards, regulators and devices.</summary>
    public static readonly Gen<WiringNetwork> Any = Gen.Select(Gen.Int[0, 5], Gen.Double[0, 1], Gen.Int[0, 1_000_000],
        Gen.Double[0.1, 40])
        .Array[2, 12].Select(choices => new WiringNetwork(Tree(choices)));

    public static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    public static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);

    public static DeviceDraw Watts(double watts) => DeviceDraw.OfPower(Power.FromWatts(watts));

    public static Device Device(string name, string? fedBy, double watts) => new(name, fedBy, new([new("on", Watts(watts))]));

    public static OrderedMap<string> AllOn(this WiringNetwork network) =>
        new(network.Elements.OfType<Device>().Select(device => KeyValuePair.Create(device.Name, "on")));

    /// <summary>The same network with so many times its draws, what regulators take themselves among them.</summary>
    public static WiringNetwork Loaded(WiringNetwork network, double factor) => new(network.Elements.Select(element =>
        element switch
        {
            Device device => new Device(device.Name, device.FedBy, new([new("on", device.DrawIn("on") with
            {
                ConstantPower = Power.FromWatts(factor * (double)device.DrawIn("on").ConstantPower.Watts),
                ConstantCurrent = factor * device.DrawIn("on").ConstantCurrent,
                Conductance = factor * device.DrawIn("on").Conductance,
            })])),
            Regulator regulator => regulator with { OwnDraw = Power.FromWatts(factor * (double)regulator.OwnDraw.Watts) },
            _ => element,
        }));

    private static IEnumerable<WiringElement> Tree((int Kind, double Amount, int Parent, double Watts)[] choices)
    {
        var feeds = new List<string?> { null };
        foreach (var (i, (kind, amount, parent, watts)) in choices.Index())
        {
            var above = feeds[parent % feeds.Count];
            switch (kind)
            {
                case 0 or 1:
                    feeds.Add($"wire-{i}");
                    yield return new Wire($"wire-{i}", above, Ohms(amount * 0.2));
                    break;
                case 2:
                    feeds.Add($"guard-{i}");
                    yield return new LowVoltageSwitch($"guard-{i}", above, Volts(10));
                    break;
                case 3:
                    feeds.Add($"regulator-{i}");
                    yield return new Regulator($"regulator-{i}", above, Volts(5 + (5 * amount)))
                    {
                        Efficiency = Ratio.FromDecimalFractions(0.8 + (0.2 * amount)),
                        OwnDraw = Power.FromWatts(0.5 * amount),
                        LossPerAmpere = Volts(0.1 * amount),
                        LossResistance = Ohms(0.02 * (1 - amount)),
                    };
                    break;
                default:
                    yield return new Device($"device-{i}", above, new([new("on", new DeviceDraw
                    {
                        ConstantPower = Power.FromWatts(watts),
                        ConstantCurrent = ElectricCurrent.FromAmperes(amount),
                        Conductance = ElectricConductance.FromSiemens(0.02 * amount),
                    })]));
                    break;
            }
        }
    }
}

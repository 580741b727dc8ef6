using MathNet.Numerics.RootFinding;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>
/// The network's own solution against a general method for nonlinear equations, which knows nothing of trees. The unknowns are
/// the inlet voltages of all elements; the equations are Kirchhoff's current law at each.
/// </summary>
[Source(SourceKind.ReferenceLibrary,
    "MathNet.Numerics, C. G. Broyden's method (Mathematics of Computation 19, 1965; second-hand)")]
public class GeneralSolverChecks
{
    private const double Pack = 14.4;

    /// <summary>Random trees of wires, a regulator and devices of all three kinds of load; the seed makes the same ones each
    /// time.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(12)]
    public void A_general_method_finds_the_same_voltages(int seed)
    {
        var elements = Tree(new Random(seed));
        var network = new WiringNetwork(elements);
        var states = new OrderedMap<string>(elements.OfType<Device>().Select(device => KeyValuePair.Create(device.Name, "on")));

        var point = network.TrySolve(ElectricPotential.FromVolts(Pack), states)!;
        var found = Broyden.FindRoot(volts => Imbalance(elements, volts),
            [.. elements.Select(element => Above(element, elements) is Regulator to ? to.Output.Volts : Pack - 0.1)], 1e-9, 500);

        Each.Of(elements.Index(), item => Assert.Equal(found[item.Index], point.Elements[item.Item.Name].Inlet.Volts, 1e-6));
    }

    private static List<WiringElement> Tree(Random random)
    {
        var elements = new List<WiringElement>();
        var feeds = new List<string?> { null };
        for (var i = 0; i < 3 + random.Next(5); i++)
        {
            elements.Add(new Wire($"wire-{i}", feeds[random.Next(feeds.Count)],
                ElectricResistance.FromOhms(0.02 + (0.08 * random.NextDouble()))));
            feeds.Add($"wire-{i}");
        }
        elements.Add(new Regulator("regulator", feeds[^1], ElectricPotential.FromVolts(7.6))
        {
            Efficiency = Ratio.FromPercent(90), OwnDraw = Power.FromWatts(0.2), LossPerAmpere = ElectricPotential.FromVolts(0.05),
            LossResistance = ElectricResistance.FromOhms(0.01),
        });
        elements.Add(new Wire("behind", "regulator", ElectricResistance.FromOhms(0.05)));
        feeds.Add("behind");
        for (var i = 0; i < 5; i++)
        {
            elements.Add(new Device($"device-{i}", feeds[1 + random.Next(feeds.Count - 1)], new([new("on", new DeviceDraw
            {
                ConstantPower = Power.FromWatts(6 * random.NextDouble()),
                ConstantCurrent = ElectricCurrent.FromAmperes(0.3 * random.NextDouble()),
                Conductance = ElectricConductance.FromSiemens(0.02 * random.NextDouble()),
            })])));
        }
        return elements;
    }

    private static WiringElement? Above(WiringElement element, List<WiringElement> elements) =>
        elements.Find(one => one.Name == element.FedBy);

    /// <summary>For each element: what the law of the one above it says its inlet voltage is, less that voltage.</summary>
    private static double[] Imbalance(List<WiringElement> elements, double[] volts)
    {
        double Into(int i) => elements[i] switch
        {
            Device device when device.DrawIn("on") is var draw =>
                draw.ConstantCurrent.Amperes + (draw.Conductance.Siemens * volts[i])
                + ((double)draw.ConstantPower.Watts / volts[i]),
            Regulator to when Out(i) is var output =>
                ((to.Output.Volts * output / to.Efficiency.DecimalFractions) + (double)to.OwnDraw.Watts
                    + (to.LossPerAmpere.Volts * output) + (to.LossResistance.Ohms * output * output)) / volts[i],
            _ => Out(i),
        };
        double Out(int i) => elements.Index().Where(item => item.Item.FedBy == elements[i].Name).Sum(item => Into(item.Index));
        return
        [
            .. elements.Index().Select(item =>
            {
                var above = elements.FindIndex(one => one.Name == item.Item.FedBy);
                var given = above < 0 ? Pack : elements[above] switch
                {
                    Wire wire => volts[above] - (wire.Resistance.Ohms * Into(above)),
                    Regulator to => to.Output.Volts,
                    _ => volts[above],
                };
                return given - volts[item.Index];
            }),
        ];
    }
}

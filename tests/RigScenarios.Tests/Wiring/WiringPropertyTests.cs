using CsCheck;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Tests.Wiring;

/// <summary>What must hold for any network at any voltage.</summary>
public class WiringPropertyTests
{
    private static readonly Gen<(WiringNetwork Network, double Volts)> AnyCase = Gen.Select(Networks.Any, Gen.Double[9, 17]);

    [Fact]
    public void Power_out_of_the_pack_is_power_of_the_devices_and_losses()
    {
        AnyCase.Sample(one =>
        {
            if (Solve(one.Network, one.Volts) is not { } point)
                return;
            var lost = point.Elements.Values.Sum(at => (double)at.Loss.Watts);
            Assert.Equal((double)point.Power.Watts, (double)point.Delivered.Watts + lost, 1e-9 * (1 + (double)point.Power.Watts));
            Assert.All(point.Elements.Values, at => Assert.True(at.Loss.Watts >= -1e-9m));
        });
    }

    [Fact]
    public void At_every_element_what_flows_in_flows_on_and_each_law_holds()
    {
        AnyCase.Sample(one =>
        {
            if (Solve(one.Network, one.Volts) is not { } point)
                return;
            foreach (var element in one.Network.Elements)
            {
                var at = point.Elements[element.Name];
                var above = element.FedBy is { } feed ? point.Elements[feed].Outlet!.Value.Volts : one.Volts;
                Assert.Equal(above, at.Inlet.Volts, 1e-10 * above);
                var on = one.Network.Elements.Where(other => other.FedBy == element.Name)
                    .Sum(other => point.Elements[other.Name].Current.Amperes);
                if (element is Device device)
                {
                    var draw = device.DrawIn("on");
                    on = draw.ConstantCurrent.Amperes + (draw.Conductance.Siemens * at.Inlet.Volts)
                        + ((double)draw.ConstantPower.Watts / at.Inlet.Volts);
                }

                Assert.Equal(on, (at.OutputCurrent ?? at.Current).Amperes, 1e-9 * (1 + on));
            }
        });
    }

    /// <summary>A plain backward and forward sweep, the textbook way, from the voltages without load: it falls to the same
    /// solution or never settles.</summary>
    [Fact]
    public void A_plain_sweep_finds_the_same_voltages()
    {
        AnyCase.Sample(
            one =>
            {
                var swept = Sweep(one.Network, one.Volts);
                var point = Solve(one.Network, one.Volts);
                if (point is null)
                {
                    Assert.Null(swept);
                    return;
                }

                // Right at the edge the sweep needs more steps than it is given.
                if (swept is null)
                {
                    Assert.InRange(one.Network.LoadFactorAtEdge(Networks.Volts(one.Volts), one.Network.AllOn()), 1, 1.01);
                    return;
                }

                Assert.All(point.Elements, item => Assert.Equal(swept[item.Key], item.Value.Inlet.Volts, 1e-6));
            },
            iter: 300);
    }

    [Fact]
    public void A_longer_cable_never_raises_a_voltage_and_never_lowers_the_current_of_constant_power()
    {
        AnyCase.Sample(one =>
        {
            var longer = new WiringNetwork(one.Network.Elements.Select(element => element is Wire wire
                ? wire with { Resistance = 1.2 * wire.Resistance } : element));
            if (Solve(longer, one.Volts) is not { } below)
                return;
            var above = Solve(one.Network, one.Volts);
            Assert.NotNull(above);
            Assert.All(below.Elements,
                item => Assert.True(item.Value.Inlet.Volts <= above.Elements[item.Key].Inlet.Volts * (1 + 1e-12)));
        });
    }

    [Fact]
    public void A_higher_voltage_of_the_pack_raises_every_voltage()
    {
        AnyCase.Sample(one =>
        {
            if (Solve(one.Network, one.Volts) is not { } lower)
                return;
            var higher = Solve(one.Network, 1.05 * one.Volts);
            Assert.NotNull(higher);
            Assert.All(lower.Elements,
                item => Assert.True(item.Value.Inlet.Volts <= higher.Elements[item.Key].Inlet.Volts * (1 + 1e-12)));
        });
    }

    [Fact]
    public void The_order_in_which_elements_are_listed_changes_nothing()
    {
        AnyCase.Sample(one =>
        {
            var turned = new WiringNetwork(one.Network.Elements.Reverse());
            var (expected, found) = (Solve(one.Network, one.Volts), Solve(turned, one.Volts));
            Assert.Equal(expected is null, found is null);
            foreach (var (name, at) in expected?.Elements ?? OrderedMap<ElementPoint>.Empty)
                Assert.Equal(at.Inlet.Volts, found!.Elements[name].Inlet.Volts, 1e-9 * at.Inlet.Volts);
        });
    }

    [Fact]
    public void Just_below_the_load_factor_at_the_edge_there_is_a_solution_and_just_above_none()
    {
        AnyCase.Sample(one =>
        {
            var edge = one.Network.LoadFactorAtEdge(Networks.Volts(one.Volts), one.Network.AllOn());
            Assert.Equal(edge >= 1, Solve(one.Network, one.Volts) is not null);
        });
    }

    [Fact]
    public void Splitting_a_wire_in_two_changes_nothing()
    {
        AnyCase.Sample(one =>
        {
            var split = new WiringNetwork(one.Network.Elements.SelectMany(element => element is Wire wire
                ? (WiringElement[])[new Wire($"{wire.Name}-near", wire.FedBy, 0.3 * wire.Resistance),
                    wire with { FedBy = $"{wire.Name}-near", Resistance = 0.7 * wire.Resistance }]
                : [element]));
            var (expected, found) = (Solve(one.Network, one.Volts), Solve(split, one.Volts));
            Assert.Equal(expected is null, found is null);
            if (expected is not null)
                Assert.Equal(expected.Current.Amperes, found!.Current.Amperes, 1e-9 * (1 + expected.Current.Amperes));
        });
    }

    private static OperatingPoint? Solve(WiringNetwork network, double volts) =>
        network.TrySolve(Networks.Volts(volts), network.AllOn());

    private static Dictionary<string, double>? Sweep(WiringNetwork network, double volts)
    {
        const int most = 20_000;
        var inlet = network.Elements.ToDictionary(element => element.Name, _ => volts);
        for (var sweep = 0; sweep < most; sweep++)
        {
            var into = network.Elements.ToDictionary(element => element.Name, _ => 0.0);
            foreach (var element in network.Elements.Reverse())
            {
                var passed = into[element.Name];
                into[element.Name] = element switch
                {
                    Device device => device.DrawIn("on") is var draw
                        ? draw.ConstantCurrent.Amperes + (draw.Conductance.Siemens * inlet[element.Name])
                        + ((double)draw.ConstantPower.Watts / inlet[element.Name]) : 0,
                    Regulator to =>
                        ((to.Output.Volts * passed / to.Efficiency.DecimalFractions) + (double)to.OwnDraw.Watts
                        + (to.LossPerAmpere.Volts * passed) + (to.LossResistance.Ohms * passed * passed)) / inlet[element.Name],
                    _ => passed,
                };
                if (element.FedBy is { } above)
                    into[above] += into[element.Name];
            }

            var change = 0.0;
            var outlet = new Dictionary<string, double>();
            foreach (var element in network.Elements)
            {
                var next = element.FedBy is { } above ? outlet[above] : volts;
                if (!(next > 0))
                    return null;
                change = Math.Max(change, Math.Abs(next - inlet[element.Name]));
                inlet[element.Name] = next;
                outlet[element.Name] = element switch
                {
                    Wire wire => next - (wire.Resistance.Ohms * into[element.Name]),
                    Regulator to => to.Output.Volts,
                    _ => next,
                };
            }

            if (change < 1e-11)
                return inlet;
        }

        return null;
    }
}

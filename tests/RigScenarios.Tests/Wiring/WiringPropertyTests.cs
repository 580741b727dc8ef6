using CsCheck;
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
        AnyCase.Holds((one, looked) =>
        {
            if (Solve(one.Network, one.Volts) is not { } point)
                return;
            looked.One();
            var lost = point.Elements.Values.Sum(at => (double)at.Loss.Watts);
            Assert.Equal((double)point.Power.Watts, (double)point.Delivered.Watts + lost, 1e-9 * (1 + (double)point.Power.Watts));
            Each.Of(point.Elements.Values, at => Assert.True(at.Loss.Watts >= -1e-9m));
        }, cases: 100, atLeast: 90);
    }

    [Fact]
    public void At_every_element_what_flows_in_flows_on_and_each_law_holds()
    {
        AnyCase.Holds((one, looked) =>
        {
            if (Solve(one.Network, one.Volts) is not { } point)
                return;
            looked.One();
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
        }, cases: 100, atLeast: 90);
    }

    /// <summary>A plain backward and forward sweep, the textbook way, from the voltages without load: it falls to the same
    /// solution or never settles.</summary>
    [Fact]
    public void A_plain_sweep_finds_the_same_voltages()
    {
        var (solved, beyond) = (new LookedAt(), new LookedAt());
        // Up to twice what can be delivered.
        Gen.Select(AnyCase, Gen.Double[0.1, 2]).Holds(
            (any, share) =>
            {
                var edge = any.Network.LoadFactorAtEdge(Networks.Volts(any.Volts), any.Network.AllOn());
                var one = double.IsInfinity(edge) ? any : (Network: Networks.Loaded(any.Network, share * edge), any.Volts);
                var swept = Sweep(one.Network, one.Volts);
                var point = Solve(one.Network, one.Volts);
                if (point is null)
                {
                    Assert.Null(swept);
                    beyond.One();
                    return;
                }

                // Right at the edge, which is known to 1e-13, the sweep needs more steps than it is given.
                if (swept is null)
                {
                    Assert.InRange(one.Network.LoadFactorAtEdge(Networks.Volts(one.Volts), one.Network.AllOn()),
                        1 - 1e-12, 1.01);
                    return;
                }

                Each.Of(point.Elements, item => Assert.Equal(swept[item.Key], item.Value.Inlet.Volts, 1e-6));
                solved.One();
            },
            cases: 300);
        Each.Of([solved, beyond], seen => seen.AtLeast(25));
    }

    [Fact]
    public void A_longer_cable_never_raises_a_voltage_and_never_lowers_the_current_of_constant_power()
    {
        AnyCase.Holds((one, looked) =>
        {
            var longer = new WiringNetwork(one.Network.Elements.Select(element => element is Wire wire
                ? wire with { Resistance = 1.2 * wire.Resistance } : element));
            if (Solve(longer, one.Volts) is not { } below)
                return;
            if (one.Network.Elements.Any(element => element is Wire))
                looked.One();
            var above = Solve(one.Network, one.Volts);
            Assert.NotNull(above);
            Each.Of(below.Elements,
                item => Assert.True(item.Value.Inlet.Volts <= above.Elements[item.Key].Inlet.Volts * (1 + 1e-12)));
            Assert.True(above.Current <= below.Current * (1 + 1e-12) || one.Network.Elements.OfType<Device>()
                .Any(device => device.DrawIn("on").Conductance.Siemens > 0));
        }, cases: 100, atLeast: 70);
    }

    [Fact]
    public void A_higher_voltage_of_the_pack_raises_every_voltage()
    {
        AnyCase.Holds((one, looked) =>
        {
            if (Solve(one.Network, one.Volts) is not { } lower)
                return;
            looked.One();
            var higher = Solve(one.Network, 1.05 * one.Volts);
            Assert.NotNull(higher);
            Each.Of(lower.Elements,
                item => Assert.True(item.Value.Inlet.Volts <= higher.Elements[item.Key].Inlet.Volts * (1 + 1e-12)));
        }, cases: 100, atLeast: 90);
    }

    [Fact]
    public void The_order_in_which_elements_are_listed_changes_nothing()
    {
        AnyCase.Holds((one, looked) =>
        {
            var turned = new WiringNetwork(one.Network.Elements.Reverse());
            var (expected, found) = (Solve(one.Network, one.Volts), Solve(turned, one.Volts));
            Assert.Equal(expected is null, found is null);
            if (expected is null)
                return;
            looked.One();
            foreach (var (name, at) in expected.Elements)
                Assert.Equal(at.Inlet.Volts, found!.Elements[name].Inlet.Volts, 1e-9 * at.Inlet.Volts);
        }, cases: 100, atLeast: 90);
    }

    [Fact]
    public void Just_below_the_load_factor_at_the_edge_there_is_a_solution_and_just_above_none()
    {
        AnyCase.Holds((one, looked) =>
        {
            var edge = one.Network.LoadFactorAtEdge(Networks.Volts(one.Volts), one.Network.AllOn());
            Assert.Equal(edge >= 1, Solve(one.Network, one.Volts) is not null);
            if (double.IsInfinity(edge))
                return;
            Assert.NotNull(Solve(Networks.Loaded(one.Network, 0.9999 * edge), one.Volts));
            Assert.Null(Solve(Networks.Loaded(one.Network, 1.0001 * edge), one.Volts));
            looked.One();
        }, cases: 100, atLeast: 20);
    }

    [Fact]
    public void Splitting_a_wire_in_two_changes_nothing()
    {
        AnyCase.Holds((one, looked) =>
        {
            var split = new WiringNetwork(one.Network.Elements.SelectMany(element => element is Wire wire
                ? (WiringElement[])[new Wire($"{wire.Name}-near", wire.FedBy, 0.3 * wire.Resistance),
                    wire with { FedBy = $"{wire.Name}-near", Resistance = 0.7 * wire.Resistance }]
                : [element]));
            var (expected, found) = (Solve(one.Network, one.Volts), Solve(split, one.Volts));
            Assert.Equal(expected is null, found is null);
            if (expected is null)
                return;
            Assert.Equal(expected.Current.Amperes, found!.Current.Amperes, 1e-9 * (1 + expected.Current.Amperes));
            if (split.Elements.Count > one.Network.Elements.Count)
                looked.One();
        }, cases: 100, atLeast: 70);
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

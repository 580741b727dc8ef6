using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>Voltage drops and losses of networks against printed worked examples.</summary>
public class VoltageDropChecks
{
    /// <summary>
    /// FAA AC 43.13-1B CHG 1 (27 September 2001), tables 11-7 and 11-8, p. 11-22 [read]: Ω/ft, run length in ft, A, printed drop
    /// in V. Left
    /// out: two rows whose printed drop is not the product of the other three.
    /// </summary>
    [Theory]
    [InlineData(0.00044, 107, 20, 0.942, 0.0005)]
    [InlineData(0.00028, 90, 20, 0.504, 0.0005)]
    [InlineData(0.00306, 100, 20, 6.12, 0.005)]
    [InlineData(0.00126, 39, 20, 0.98, 0.005)]
    [InlineData(0.00126, 156, 20, 3.93, 0.005)]
    [InlineData(0.00126, 273, 20, 6.88, 0.005)]
    public void Drop_in_a_wire_is_the_printed_one(double ohmsPerFoot, double feet, double amperes, double drop, double digits)
    {
        var network = Network(ohmsPerFoot * feet, new DeviceDraw { ConstantCurrent = ElectricCurrent.FromAmperes(amperes) });

        var point = network.TrySolve(ElectricPotential.FromVolts(28), On)!;

        Assert.Equal(drop, (point.Terminals - point.Elements["device"].Inlet).Volts, digits);
    }

    /// <summary>
    /// 100 ft of two-wire circuit, 16 AWG at 4.99 Ω per 1000 ft (NEC, chapter 9, table 8), 4 A from 24 V: 4.0 V, 16.7 %: a
    /// training page on voltage drop,
    /// electrician2.com, weltrain05, p. 135 [read].
    /// </summary>
    [Fact]
    public void A_pair_of_conductors_drops_there_and_back()
    {
        var cable = new Cable(Conductor.Awg(16), Length.FromFeet(100)) { CopperTemperature = Temperature.FromDegreesCelsius(75) };
        var network = Network(cable.LoopResistance.Ohms, new DeviceDraw { ConstantCurrent = ElectricCurrent.FromAmperes(4) });

        var point = network.TrySolve(ElectricPotential.FromVolts(24), On)!;

        var drop = (point.Terminals - point.Elements["device"].Inlet).Volts;
        Assert.Equal(4.0, drop, 0.05);
        Assert.Equal(0.167, drop / 24, 0.0015);
    }

    /// <summary>
    /// A load of constant power P behind a loop R on a source E: I = (E - sqrt(E² - 4PR))/(2R), a solution only for P ≤ E²/(4R);
    /// worked out by hand for 0.5 m
    /// of 18 AWG pair (20.95 mΩ) with four contacts of 5 mΩ.
    /// </summary>
    [Theory]
    [InlineData(14.4, 60, 4.2172, 14.2273, 0.728)]
    [InlineData(12.0, 60, 5.0884, 11.7916, 1.060)]
    [InlineData(14.4, 150, 10.745, 13.960, 4.728)]
    public void A_constant_power_behind_a_cable_solves_the_quadratic_equation(double source, double watts, double amperes,
        double volts, double lost)
    {
        var cable = new Cable(Conductor.Awg(18, stranded: false),
            Length.FromMeters(0.5)) { Contacts = ElectricResistance.FromMilliohms(20) };
        Assert.Equal(0.04095, cable.LoopResistance.Ohms, 5e-6);
        var network = Network(cable.LoopResistance.Ohms, DeviceDraw.OfPower(Power.FromWatts(watts)));

        var point = network.TrySolve(ElectricPotential.FromVolts(source), On)!;

        Assert.Equal(amperes, point.Current.Amperes, 6e-5 * amperes);
        Assert.Equal(volts, point.Elements["device"].Inlet.Volts, 1e-3);
        Assert.Equal(lost, (double)point.Elements["cable"].Loss.Watts, 1e-3);
        Assert.Equal(source * source / (4 * 0.040948),
            watts * network.LoadFactorAtEdge(ElectricPotential.FromVolts(source), On), 0.05);
    }

    /// <summary>
    /// A pack's own resistance is one more wire: 14.4 V behind 60 mΩ and the cable of 40 mΩ is 14.4 V behind 100 mΩ, P = 40 W: I
    /// = (14.4 - sqrt(14.4² - 16))/0.2 = 2.8335 A;
    /// by hand.
    /// </summary>
    [Fact]
    public void A_source_resistance_adds_to_the_cable()
    {
        var network = Network(0.04, DeviceDraw.OfPower(Power.FromWatts(40)));

        var point = network.TrySolve(ElectricPotential.FromVolts(14.4), ElectricResistance.FromOhms(0.06), On)!;

        var amperes = (14.4 - Math.Sqrt((14.4 * 14.4) - 16)) / 0.2;
        Assert.Equal(2.8335, amperes, 5e-5);
        Assert.Equal(amperes, point.Current.Amperes, 1e-10);
        Assert.Equal(14.4 - (0.06 * amperes), point.Terminals.Volts, 1e-10);
        Assert.Null(network.TrySolve(ElectricPotential.FromVolts(3.99), ElectricResistance.FromOhms(0.06), On));
        Assert.NotNull(network.TrySolve(ElectricPotential.FromVolts(4.01), ElectricResistance.FromOhms(0.06), On));
    }

    private static OrderedMap<string> On => new([new("device", "on")]);

    private static WiringNetwork Network(double ohms, DeviceDraw draw) => new(
    [
        new Wire("cable", null, ElectricResistance.FromOhms(ohms)),
        new Device("device", "cable", new([new("on", draw)])),
    ]);
}

using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>Voltage drops and losses of networks against printed worked examples.</summary>
public class VoltageDropChecks
{
    /// <summary>Ω/ft, run length in ft, A, printed drop in V. Left out: two rows whose printed drop is not the product of the
    /// other three.</summary>
    [Theory]
    [Source(SourceKind.Regulation, "FAA AC 43.13-1B CHG 1 (27 September 2001), tables 11-7 and 11-8, p. 11-22; read")]
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
    /// Two-wire circuits of American gauges, one way in ft, stranded copper at 75 °C; the second and third with 12.9 Ω·circular
    /// mil/ft for its copper. The fourth is solid copper at 20 °C.
    /// </summary>
    [Theory]
    [Source(SourceKind.Handbook,
        "electrician2.com, weltrain05, p. 135 (NEC, chapter 9, table 8); tradelicenseprep.com, voltage drop; "
        + "voltagedropcalculator.net, examples: worked examples for trainees; all read")]
    [InlineData(16, true, 75, 100, 4, 4.0, 0.05)]
    [InlineData(12, true, 75, 100, 20, 7.9, 0.05)]
    [InlineData(8, true, 75, 100, 20, 3.1, 0.05)]
    [InlineData(12, false, 20, 100, 20, 6.4, 0.05)]
    public void A_pair_of_conductors_drops_there_and_back(int gauge, bool stranded, double celsius, double feet, double amperes,
        double drop, double digits)
    {
        var cable = new Cable(Conductor.Awg(gauge, stranded), Length.FromFeet(feet))
        {
            CopperTemperature = Temperature.FromDegreesCelsius(celsius),
        };

        Assert.Equal(drop, Drop(cable.LoopResistance, 120, amperes), digits);
    }

    /// <summary>A pump of 8 A on 12 V at the end of 4 m of 2.5 mm² of 7.41 mΩ/m (the standard's class 2): 59.3 mΩ, 0.47 V, 3.9 %.
    /// </summary>
    [Fact]
    [Source(SourceKind.Handbook, "sailortools.com, voltage drop, worked example; read")]
    public void A_pump_on_a_boat_loses_what_the_example_says()
    {
        var loop = ElectricResistance.FromMilliohms(2 * 4 * 7.41);

        Assert.Equal(59.3, loop.Milliohms, 0.05);
        Assert.Equal(0.47, Drop(loop, 12, 8), 0.005);
        Assert.Equal(3.9, Drop(loop, 12, 8) / 12 * 100, 0.06);
    }

    /// <summary>
    /// A pump of 10 A, 11 ft of wire there and 10 ft back, which the table rounds up to 25 ft: 16 AWG for 10 % of 12 V, 10 AWG
    /// for 3 %. One even gauge less is too thin for each.
    /// </summary>
    [Theory]
    [Source(SourceKind.Handbook,
        "Holland Marine Products, catalogue 2021, pp. 52 and 53, tables of 3 % and 10 % voltage drop at 12 V "
        + "with their example; read")]
    [InlineData(10, 16)]
    [InlineData(3, 10)]
    public void The_thinnest_wire_that_will_do_is_that_of_the_table(double percent, int gauge)
    {
        double PercentLost(int number) => Drop(Conductor.Awg(number).Of(Length.FromFeet(25),
            Temperature.FromDegreesCelsius(20)), 12, 10) / 12 * 100;

        Assert.Equal(gauge, Enumerable.Range(3, 10).Select(half => 2 * half).Last(number => PercentLost(number) <= percent));
        Assert.True(PercentLost(gauge + 2) > percent);
    }

    /// <summary>
    /// A load of constant power P behind a loop R on a source E: I = (E - sqrt(E² - 4PR))/(2R), a solution only for P ≤ E²/(4R);
    /// for 0.5 m of 18 AWG pair (20.95 mΩ) with four contacts of 5 mΩ.
    /// </summary>
    [Theory]
    [Source(SourceKind.ClosedForm, "quadratic equation of a constant power behind a resistance, worked by hand")]
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
    /// = (14.4 - sqrt(14.4² - 16))/0.2 = 2.8335 A.
    /// </summary>
    [Fact]
    [Source(SourceKind.ClosedForm, "the same equation, worked by hand")]
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

    private static double Drop(ElectricResistance loop, double volts, double amperes)
    {
        var network = Network(loop.Ohms, new DeviceDraw { ConstantCurrent = ElectricCurrent.FromAmperes(amperes) });
        var point = network.TrySolve(ElectricPotential.FromVolts(volts), On)!;
        return (point.Terminals - point.Elements["device"].Inlet).Volts;
    }

    private static OrderedMap<string> On => new([new("device", "on")]);

    private static WiringNetwork Network(double ohms, DeviceDraw draw) => new(
    [
        new Wire("cable", null, ElectricResistance.FromOhms(ohms)),
        new Device("device", "cable", new([new("on", draw)])),
    ]);
}

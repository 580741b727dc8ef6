using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>
/// Circuits of textbooks: a battery with an inner resistance, resistors in series (wires) and side by side (devices that draw as
/// resistors). All that is printed is asserted, to the digits printed.
/// </summary>
public class TextbookCircuitChecks
{
    /// <summary>A load on a battery of 12.00 V. The page prints 11.90 V for the first, from a current that it had rounded; by its
    /// own formula it is 11.88 V.</summary>
    [Theory]
    [Source(SourceKind.Handbook, "OpenStax, University Physics vol. 2, section 10.1, battery and load: (a) read, (b) to (d) read "
        + "in their question, their answers from memory of the section")]
    [InlineData(0.100, 10.00, 1.188, 11.88, 14.1, 0.0005, 0.005, 0.05)]
    [InlineData(0.100, 0.500, 20.00, 10.00, 200, 0.005, 0.005, 0.5)]
    [InlineData(0.500, 0.500, 12.00, 6.00, 72.0, 0.005, 0.005, 0.05)]
    public void A_battery_with_a_load(double inner, double load, double amperes, double volts, double watts,
        double ampereDigits, double voltDigits, double wattDigits)
    {
        var point = Solve(12, inner, Lamp("load", null, load));

        Assert.Equal(amperes, point.Current.Amperes, ampereDigits);
        Assert.Equal(volts, point.Terminals.Volts, voltDigits);
        Assert.Equal(watts, WattsIn(point, "load"), wattDigits);
    }

    /// <summary>12.0 V, 1.00 Ω before 6.00 and 13.0 Ω side by side: 5.11 Ω in all, 2.35 A, 2.35 V on the first, 9.65 V on the
    /// others, 1.61 A and 15.5 W in the second.</summary>
    [Fact]
    [Source(SourceKind.Handbook,
        "OpenStax, College Physics, example 21.3, as ulearngo.com has it; total and current read, the rest "
        + "from memory of the example")]
    public void Series_and_parallel_resistors()
    {
        var point = Solve(12, 0, Wire("first", 1), Lamp("second", "first", 6), Lamp("third", "first", 13));

        Assert.Equal(5.11, 12 / point.Current.Amperes, 0.005);
        Assert.Equal(2.35, point.Current.Amperes, 0.005);
        Assert.Equal(2.35, 12 - point.Elements["second"].Inlet.Volts, 0.005);
        Assert.Equal(9.65, point.Elements["second"].Inlet.Volts, 0.005);
        Assert.Equal(1.61, point.Elements["second"].Current.Amperes, 0.005);
        Assert.Equal(15.5, WattsIn(point, "second"), 0.05);
    }

    /// <summary>12 V behind 1 Ω, 4 Ω before 6 and 3 Ω side by side: 12/7 = 1.71 A, 0.57 A and 1.14 A, 72/7 = 10.29 V at the
    /// battery.</summary>
    [Fact]
    [Source(SourceKind.Handbook, "doubts.ai, current electricity, exam pattern drill 2, worked; read")]
    public void Inner_resistance_before_series_and_parallel_resistors()
    {
        var point = Solve(12, 1, Wire("first", 4), Lamp("second", "first", 6), Lamp("third", "first", 3));

        Assert.Equal(1.71, point.Current.Amperes, 0.005);
        Assert.Equal(0.57, point.Elements["second"].Current.Amperes, 0.005);
        Assert.Equal(1.14, point.Elements["third"].Current.Amperes, 0.005);
        Assert.Equal(10.29, point.Terminals.Volts, 0.005);
        Assert.Equal(3.43, point.Elements["second"].Inlet.Volts, 0.005);
    }

    /// <summary>15 V behind 3 Ω, 3 and 6 Ω side by side: 3 A, 6 V, 2 A and 1 A.</summary>
    [Fact]
    [Source(SourceKind.Handbook, "byjus.com, a battery of e.m.f. 15 V and internal resistance 3 Ω, worked; read")]
    public void Two_loads_side_by_side_share_the_current()
    {
        var point = Solve(15, 3, Lamp("one", null, 3), Lamp("two", null, 6));

        Assert.Equal(3, point.Current.Amperes, 1e-9);
        Assert.Equal(6, point.Terminals.Volts, 1e-9);
        Assert.Equal(2, point.Elements["one"].Current.Amperes, 1e-9);
        Assert.Equal(1, point.Elements["two"].Current.Amperes, 1e-9);
    }

    /// <summary>12 V, 4 Ω before 3 and 6 Ω side by side: 2 A, 8 V and 4 V, 5.3 W in the 3 Ω.</summary>
    [Fact]
    [Source(SourceKind.Handbook, "homeworksource.com, p. 1022203, worked; read")]
    public void A_splitter_behind_a_cable()
    {
        var point = Solve(12, 0, Wire("cable", 4), Lamp("three", "cable", 3), Lamp("six", "cable", 6));

        Assert.Equal(2, point.Current.Amperes, 1e-9);
        Assert.Equal(8, 12 - point.Elements["three"].Inlet.Volts, 1e-9);
        Assert.Equal(4, point.Elements["six"].Inlet.Volts, 1e-9);
        Assert.Equal(5.3, WattsIn(point, "three"), 0.05);
    }

    /// <summary>12.0 V without a load, 11.5 V at 3.00 A: an inner resistance of 0.17 Ω and a load of 3.8 Ω. Put in, they give
    /// the two back.</summary>
    [Fact]
    [Source(SourceKind.Handbook,
        "Serway and Vuille, College Physics, 11th ed., chapter 18, problem 3; question read, answer worked")]
    public void A_battery_that_sags_under_three_amperes()
    {
        var point = Solve(12, 0.5 / 3, Lamp("load", null, 11.5 / 3));

        Assert.Equal(3.00, point.Current.Amperes, 0.005);
        Assert.Equal(11.5, point.Terminals.Volts, 0.05);
    }

    /// <summary>A starter motor of 0.0500 Ω on 12.0 V behind 0.0100 Ω, and with corroded connections of 0.0900 Ω more: current,
    /// voltage at the motor and power.</summary>
    [Theory]
    [Source(SourceKind.Handbook,
        "OpenStax, College Physics, chapter 21, problem on a starter motor, as collegephysicsanswers.com solves "
        + "it; read")]
    [InlineData(0, 200, 10.0, 2000)]
    [InlineData(0.0900, 80, 4.00, 320)]
    public void A_bad_contact_takes_a_starter_motor_its_voltage(double contact, double amperes, double volts, double watts)
    {
        var point = Solve(12, 0.0100, Wire("contacts", contact), Lamp("motor", "contacts", 0.0500));

        Assert.Equal(amperes, point.Current.Amperes, 1e-6);
        Assert.Equal(volts, point.Elements["motor"].Inlet.Volts, 1e-6);
        Assert.Equal(watts, WattsIn(point, "motor"), 1e-4);
    }

    /// <summary>Headlights on 12.6 V alone, and while a starter takes 35.0 A more. The first source rounds on its way to 10.74 V
    /// in the second case, which is 10.75 V by its own circuit, and is left out there.</summary>
    [Theory]
    [Source(SourceKind.Handbook, "jiskha.com 1378441784 and justaaa.com 319242, worked, after Serway, Physics, chapter 28; read")]
    [InlineData(0.0500, 5.60, 0, 12.49)]
    [InlineData(0.0890, 5.10, 0, 12.38)]
    [InlineData(0.0890, 5.10, 35.0, 9.32)]
    public void Headlights_dim_when_the_starter_turns(double inner, double headlights, double starter, double volts)
    {
        var point = Solve(12.6, inner, Lamp("headlights", null, headlights), Taking("starter", null, starter));

        Assert.Equal(volts, point.Elements["headlights"].Inlet.Volts, 0.0051);
    }

    /// <summary>A two-wire line with loads along it, resistances there and back: voltage at each load.</summary>
    [Fact]
    [Source(SourceKind.Handbook,
        "V. K. Mehta, R. Mehta, Principles of Power System, example 13.1, p. 313, as a public solution in code has "
        + "it; read")]
    public void A_line_with_four_loads_along_it()
    {
        var point = Solve(300, 0, Wire("ac", 0.010), Taking("c", "ac", 100), Wire("cd", 0.010, "ac"), Taking("d", "cd", 150),
            Wire("de", 0.012, "cd"), Taking("e", "de", 200), Wire("eb", 0.008, "de"), Taking("b", "eb", 50));

        Assert.Equal(295.0, point.Elements["c"].Inlet.Volts, 1e-6);
        Assert.Equal(291.0, point.Elements["d"].Inlet.Volts, 1e-6);
        Assert.Equal(288.0, point.Elements["e"].Inlet.Volts, 1e-6);
        Assert.Equal(287.6, point.Elements["b"].Inlet.Volts, 1e-6);
        Assert.Equal(500, point.Current.Amperes, 1e-6);
    }

    /// <summary>500 V, two sections of 0.08 Ω, 100 A at the first end and 200 A at the second: 476 and 460 V.</summary>
    [Fact]
    [Source(SourceKind.Handbook, "edurev.in, Distribution systems, distributor fed at one end, worked; read")]
    public void A_line_with_two_loads_along_it()
    {
        var point = Solve(500, 0, Wire("ab", 0.08), Taking("b", "ab", 100), Wire("bc", 0.08, "ab"), Taking("c", "bc", 200));

        Assert.Equal(476, point.Elements["b"].Inlet.Volts, 1e-6);
        Assert.Equal(460, point.Elements["c"].Inlet.Volts, 1e-6);
    }

    private static Wire Wire(string name, double ohms, string? fedBy = null) =>
        new(name, fedBy, ElectricResistance.FromOhms(ohms));

    private static Device Taking(string name, string? fedBy, double amperes) => new(name, fedBy,
        new([new("on", new DeviceDraw { ConstantCurrent = ElectricCurrent.FromAmperes(amperes) })]));


    private static Device Lamp(string name, string? fedBy, double ohms) => new(name, fedBy,
        new([new("on", new DeviceDraw { Conductance = ElectricConductance.FromSiemens(1 / ohms) })]));

    private static double WattsIn(OperatingPoint point, string name) =>
        point.Elements[name].Inlet.Volts * point.Elements[name].Current.Amperes;

    private static OperatingPoint Solve(double volts, double inner, params WiringElement[] elements) =>
        new WiringNetwork(elements).TrySolve(ElectricPotential.FromVolts(volts), ElectricResistance.FromOhms(inner),
            new OrderedMap<string>(elements.OfType<Device>().Select(device => KeyValuePair.Create(device.Name, "on"))))!;
}

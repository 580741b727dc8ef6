using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>Resistance of conductors against published tables.</summary>
public class ConductorChecks
{
    private const double FeetPerKilometre = 1000 / 0.3048;

    private static readonly Length Kilometre = Length.FromKilometers(1);
    private static readonly Temperature Cool = Temperature.FromDegreesCelsius(20);

    /// <summary>Ω per 1000 ft of solid wire.</summary>
    [Theory]
    [Source(SourceKind.Handbook,
        "T. L. Floyd, Electric Circuit Fundamentals, 2nd ed., American wire gages, as HyperPhysics (Georgia "
        + "State University) prints it; read")]
    [InlineData(12, 1.588)]
    [InlineData(14, 2.525)]
    [InlineData(16, 4.016)]
    [InlineData(18, 6.385)]
    [InlineData(20, 10.15)]
    [InlineData(22, 16.14)]
    [InlineData(24, 25.67)]
    [InlineData(26, 40.81)]
    [InlineData(28, 64.90)]
    public void American_gauges_have_the_resistance_of_the_table(int gauge, double ohmsPer1000Feet)
    {
        var found = Conductor.Awg(gauge, stranded: false).Of(Kilometre, Cool).Ohms;

        Assert.Equal(ohmsPer1000Feet * FeetPerKilometre / 1000, found, 5e-4 * found);
    }

    /// <summary>Cross-section in square inches of solid wire, to the digits printed. No gauge here is one of the table
    /// above.</summary>
    [Theory]
    [Source(SourceKind.Handbook, "T. R. Kuphaldt, Lessons in Electric Circuits, vol. V, copper wire gage table; read")]
    [InlineData(8, 0.01297)]
    [InlineData(9, 0.01028)]
    [InlineData(10, 0.008155)]
    [InlineData(11, 0.006467)]
    [InlineData(13, 0.004067)]
    [InlineData(15, 0.002558)]
    [InlineData(17, 0.001609)]
    [InlineData(19, 0.001012)]
    [InlineData(21, 0.0006363)]
    [InlineData(23, 0.0004001)]
    [InlineData(25, 0.0002517)]
    [InlineData(27, 0.0001583)]
    [InlineData(30, 0.00007894)]
    [InlineData(36, 0.00001963)]
    public void American_gauges_have_the_cross_section_of_the_table(int gauge, double squareInches)
    {
        var found = Conductor.Awg(gauge, stranded: false).Area.SquareInches;

        Assert.Equal(squareInches, found, 5e-4 * found);
    }

    /// <summary>5 m of 12 AWG: 3.31 mm², 0.025 Ω. The book's copper is 1.68e-8 Ω·m, that of the project 1/58 Ω·mm²/m = 1.724e-8:
    /// with the book's the project's wire has its figure to the digit.</summary>
    [Fact]
    [Source(SourceKind.Handbook, "OpenStax, University Physics vol. 2, section 9.3, table and example; read")]
    public void Textbook_wire_has_its_area_and_resistance()
    {
        var wire = Conductor.Awg(12, stranded: false);

        Assert.Equal(3.31, wire.Area.SquareMillimeters, 0.005);
        Assert.Equal(0.025, wire.Of(Length.FromMeters(5), Cool).Ohms * 1.68e-8 * 58e6, 0.0005);
    }

    /// <summary>Maxima in Ω/km at 20 °C, class 5, plain copper. They stand in the project as they stand here: this guards the
    /// copy.</summary>
    [Theory]
    [Source(SourceKind.Standard, "IEC 60228 (2004), class 5, plain copper; second-hand, as four cable makers' tables agree on")]
    [InlineData(0.5, 39.0)]
    [InlineData(0.75, 26.0)]
    [InlineData(1.0, 19.5)]
    [InlineData(1.5, 13.3)]
    [InlineData(2.5, 7.98)]
    public void Metric_flexible_gauges_have_the_maximum_of_the_standard(double squareMillimetres, double ohms)
    {
        Assert.Equal(ohms, Conductor.Metric(Area.FromSquareMillimeters(squareMillimetres)).Of(Kilometre, Cool).Ohms, 1e-9);
    }

    /// <summary>The standard allows a flexible conductor 13 to 16 % more than ideal copper of its nominal area: computed from
    /// the two.</summary>
    [Fact]
    [Source(SourceKind.Standard, "IEC 60228 (2004) over IEC 60028 (1925); second-hand")]
    public void Metric_maxima_lie_above_ideal_copper_of_the_area()
    {
        Each.Of(Conductor.MetricGauges, area =>
            Assert.InRange(Conductor.Metric(area).Of(Kilometre, Cool).Ohms / (1000.0 / 58 / area.SquareMillimeters), 1.130,
                1.158));
    }

    /// <summary>Correction to 20 °C, 1/(1 + 0.004·(T - 20)). Copper's own coefficient is 0.00393: 0.2 % apart at 50 °C, 0.4 %
    /// at 90 °C.</summary>
    [Theory]
    [Source(SourceKind.Standard, "IEC 60228 (2004), annex; second-hand, a cable maker's table")]
    [InlineData(40, 0.926)]
    [InlineData(50, 0.893)]
    [InlineData(60, 0.862)]
    [InlineData(75, 0.820)]
    [InlineData(90, 0.781)]
    public void Warm_copper_is_corrected_as_the_standard_says(double celsius, double correction)
    {
        var wire = Conductor.Awg(18);

        Assert.Equal(correction, wire.Of(Kilometre, Cool) / wire.Of(Kilometre, Temperature.FromDegreesCelsius(celsius)), 0.0035);
    }

    /// <summary>Run length at temperature T2 for the same drop: L2 = 254.5·L1/(234.5 + T2).</summary>
    [Theory]
    [Source(SourceKind.Regulation, "FAA AC 43.13-1B CHG 1 (2001), p. 11-22; read")]
    [InlineData(50)]
    [InlineData(100)]
    [InlineData(150)]
    public void Warm_copper_shortens_a_run_as_the_aircraft_rule_says(double celsius)
    {
        var wire = Conductor.Awg(18);

        Assert.Equal(254.5 / (234.5 + celsius),
            wire.Of(Kilometre, Cool) / wire.Of(Kilometre, Temperature.FromDegreesCelsius(celsius)), 3e-4);
    }

    /// <summary>Ω per 1000 ft at 75 °C, uncoated copper: 0.1 to 0.5 % apart for stranded wire, whose helix the project takes as
    /// 2 % for all.</summary>
    [Theory]
    [Source(SourceKind.Standard, "NEC, chapter 9, table 8, stranded; second-hand, public transcriptions that agree")]
    [InlineData(16, 4.99)]
    [InlineData(14, 3.14)]
    [InlineData(12, 1.98)]
    [InlineData(10, 1.24)]
    [InlineData(8, 0.778)]
    public void Stranded_wire_at_75_degrees_has_the_resistance_of_the_electrical_code(int gauge, double ohmsPer1000Feet)
    {
        var found = Conductor.Awg(gauge).Of(Kilometre, Temperature.FromDegreesCelsius(75)).Ohms;

        Assert.Equal(ohmsPer1000Feet * FeetPerKilometre / 1000, found, 0.005 * found);
    }

    /// <summary>The same of solid wire, to the digits printed.</summary>
    [Theory]
    [Source(SourceKind.Standard, "NEC, chapter 9, table 8, solid; second-hand, public transcriptions that agree")]
    [InlineData(14, 3.07, 0.005)]
    [InlineData(12, 1.93, 0.005)]
    [InlineData(10, 1.21, 0.005)]
    [InlineData(8, 0.764, 0.0005)]
    public void Solid_wire_at_75_degrees_has_the_resistance_of_the_electrical_code(int gauge,
        double ohmsPer1000Feet, double digits)
    {
        var found = Conductor.Awg(gauge, stranded: false).Of(Length.FromFeet(1000), Temperature.FromDegreesCelsius(75)).Ohms;

        Assert.Equal(ohmsPer1000Feet, found, digits);
    }
}

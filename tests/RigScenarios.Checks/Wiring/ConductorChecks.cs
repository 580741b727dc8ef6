using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>Resistance of conductors against published tables.</summary>
public class ConductorChecks
{
    private const double FeetPerKilometre = 1000 / 0.3048;

    private static readonly Length Kilometre = Length.FromKilometers(1);
    private static readonly Temperature Cool = Temperature.FromDegreesCelsius(20);

    /// <summary>
    /// Ω per 1000 ft of solid wire: "American Wire Gages", HyperPhysics (Georgia State University), after T. L. Floyd, Electric
    /// Circuit Fundamentals,
    /// 2nd ed. [read].
    /// </summary>
    [Theory]
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

    /// <summary>5 m of 12 AWG: 2.053 mm, 3.31 mm², 0.025 Ω: OpenStax, University Physics vol. 2, section 9.3, table and example
    /// (its copper has 2.6 % less resistivity) [read].</summary>
    [Fact]
    public void Textbook_wire_has_its_area_and_resistance()
    {
        var wire = Conductor.Awg(12, stranded: false);

        Assert.Equal(3.31, wire.Area.SquareMillimeters, 0.005);
        Assert.Equal(0.025, wire.Of(Length.FromMeters(5), Cool).Ohms, 0.0015);
    }

    /// <summary>Maxima in Ω/km at 20 °C, class 5, plain copper: IEC 60228, as four cable makers' tables agree on
    /// [second-hand].</summary>
    [Theory]
    [InlineData(0.5, 39.0)]
    [InlineData(0.75, 26.0)]
    [InlineData(1.0, 19.5)]
    [InlineData(1.5, 13.3)]
    [InlineData(2.5, 7.98)]
    public void Metric_flexible_gauges_have_the_maximum_of_the_standard(double squareMillimetres, double ohms)
    {
        Assert.Equal(ohms, Conductor.Metric(Area.FromSquareMillimeters(squareMillimetres)).Of(Kilometre, Cool).Ohms, 1e-9);
    }

    /// <summary>The standard allows a flexible conductor 13 to 16 % more than ideal copper of its nominal area: computed from the
    /// two.</summary>
    [Fact]
    public void Metric_maxima_lie_above_ideal_copper_of_the_area()
    {
        Each.Of(Conductor.MetricGauges, area =>
            Assert.InRange(Conductor.Metric(area).Of(Kilometre, Cool).Ohms / (1000.0 / 58 / area.SquareMillimeters), 1.12, 1.17));
    }

    /// <summary>Correction to 20 °C, 1/(1 + 0.004·(T - 20)): IEC 60228, annex [second-hand]; copper's own coefficient is 0.00393,
    /// 0.2 % apart at 50 °C.</summary>
    [Theory]
    [InlineData(40, 0.926)]
    [InlineData(50, 0.893)]
    [InlineData(60, 0.862)]
    [InlineData(75, 0.820)]
    [InlineData(90, 0.781)]
    public void Warm_copper_is_corrected_as_the_standard_says(double celsius, double correction)
    {
        var wire = Conductor.Awg(18);

        Assert.Equal(correction, wire.Of(Kilometre, Cool) / wire.Of(Kilometre, Temperature.FromDegreesCelsius(celsius)), 0.005);
    }

    /// <summary>Run length at temperature T2 for the same drop: L2 = 254.5·L1/(234.5 + T2): FAA AC 43.13-1B CHG 1 (2001), p.
    /// 11-22 [read].</summary>
    [Theory]
    [InlineData(50)]
    [InlineData(100)]
    [InlineData(150)]
    public void Warm_copper_shortens_a_run_as_the_aircraft_rule_says(double celsius)
    {
        var wire = Conductor.Awg(18);

        Assert.Equal(254.5 / (234.5 + celsius),
            wire.Of(Kilometre, Cool) / wire.Of(Kilometre, Temperature.FromDegreesCelsius(celsius)), 3e-4);
    }

    /// <summary>4.99 Ω per 1000 ft of 16 AWG, uncoated stranded copper at 75 °C: NEC, chapter 9, table 8 [second-hand].</summary>
    [Fact]
    public void Stranded_wire_at_75_degrees_has_the_resistance_of_the_electrical_code()
    {
        var found = Conductor.Awg(16).Of(Kilometre, Temperature.FromDegreesCelsius(75)).Ohms;

        Assert.Equal(4.99 * FeetPerKilometre / 1000, found, 0.01 * found);
    }
}

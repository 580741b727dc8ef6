using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>A copper conductor of a cable: its resistance per length at 20 °C, and where that figure comes from.</summary>
/// <remarks>
/// Two tables of gauges, not to be mixed: metric flexible conductors by the maxima of IEC 60228, American gauges by the diameter
/// of the gauge and
/// the resistivity of standard copper. A real cable of poor copper or thin strands may have more: measure it (docs/wiring.md).
/// </remarks>
public sealed record Conductor
{
    /// <summary>Resistivity of standard annealed copper at 20 °C, Ω·mm²/m: 1/58 (IEC 60028:1925, clause 1
    /// [second-hand]).</summary>
    internal const double CopperOhmSquareMillimetresPerMetre = 1.0 / 58;

    // Strands run in a helix, so that they are longer than the cable: ASTM B8, the customary 2 % [from memory].
    private const double Stranding = 1.02;

    private static readonly Citation Iec60228 = new(
        "IEC", "IEC 60228, Conductors of insulated cables", 2004, "class 5, plain copper, maximum at 20 °C", Standing.SecondHand);

    private static readonly Citation AstmB258 = new(
        "ASTM", "ASTM B258, Standard nominal diameters of AWG sizes; copper by IEC 60028 (1925)", null,
        "d = 0.127 mm · 92^((36-n)/39)", Standing.SecondHand);

    // mm² and maximum Ω/km at 20 °C, as cable makers' tables agree on.
    private static readonly (double SquareMillimetres, double OhmsPerKilometre)[] Class5 = [(0.5, 39.0), (0.75, 26.0),
        (1.0, 19.5), (1.5, 13.3), (2.5, 7.98)];

    private Conductor(string name, double ohmsPerMetre, Area area, Citation source) =>
        (Name, OhmsPerMetre, Area, Source) = (name, ohmsPerMetre, area, source);

    /// <summary>Its gauge in words: <c>18 AWG</c>, <c>1.5 mm²</c>.</summary>
    public string Name { get; }

    /// <summary>Copper in the cross-section (metric: nominal).</summary>
    public Area Area { get; }

    /// <summary>Where its resistance comes from.</summary>
    public Citation Source { get; }

    /// <summary>The metric gauges that there are, smallest first.</summary>
    public static IReadOnlyList<Area> MetricGauges { get; } =
        Array.AsReadOnly(Class5.Select(row => Area.FromSquareMillimeters(row.SquareMillimetres)).ToArray());

    internal double OhmsPerMetre { get; }

    /// <summary>A flexible metric conductor: the most that IEC 60228 allows for class 5, plain copper.</summary>
    /// <param name="area">Its nominal cross-section, one of <see cref="MetricGauges"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gauge in the table.</exception>
    public static Conductor Metric(Area area)
    {
        var wanted = area.SquareMillimeters;
        var row = Array.Find(Class5, one => Math.Abs(one.SquareMillimetres - wanted) < 1e-9);
        return row.OhmsPerKilometre > 0
            ? new Conductor($"{wanted:0.##} mm²", row.OhmsPerKilometre / 1000, area, Iec60228)
            : throw new ArgumentOutOfRangeException(nameof(area),
                $"{wanted:0.###} mm² is no gauge of the table; accepted: "
                    + $"{string.Join(", ", Class5.Select(one => $"{one.SquareMillimetres:0.##}"))} mm².");
    }

    /// <summary>An American gauge.</summary>
    /// <param name="gauge">Its number, 4…40.</param>
    /// <param name="stranded">Stranded wire has some 2 % more resistance than solid wire, as its strands run in a helix.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range.</exception>
    public static Conductor Awg(int gauge, bool stranded = true)
    {
        Require.Within(gauge, 4, 40, "AWG");
        var diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        var area = Math.PI * diameter * diameter / 4;
        var ohms = CopperOhmSquareMillimetresPerMetre / area * (stranded ? Stranding : 1);
        return new Conductor($"{gauge} AWG{(stranded ? "" : " solid")}", ohms, Area.FromSquareMillimeters(area), AstmB258);
    }

    /// <summary>The conductor of a gauge: stranded, as flexible cables are.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gauge.</exception>
    public static Conductor Of(WireGauge gauge) => gauge.Awg is { } number ? Awg(number) : Metric(gauge.Area ?? Area.Zero);

    /// <summary>Resistance of a length of this one conductor.</summary>
    /// <param name="length">0 or more.</param>
    /// <param name="temperature">Temperature of the copper, -100…200 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ElectricResistance Of(Length length, Temperature temperature)
    {
        Require.NotNegative(length.Meters, "m", nameof(length));
        return ElectricResistance.FromOhms(OhmsPerMetre * length.Meters * Cable.CopperFactor(temperature));
    }
}

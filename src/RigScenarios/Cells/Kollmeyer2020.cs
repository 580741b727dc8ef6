using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// What measured discharges of one 3 Ah NMC/graphite 18650 cell at -20…40 °C say of cold, resistance and heat. Reduced by this
/// project.
/// </summary>
/// <remarks>docs/measured-cells.md holds how well a cell with these values meets the discharges that they come from.</remarks>
public static class Kollmeyer2020
{
    /// <summary>The citation.</summary>
    public static Citation Source { get; } = new(
        "P. Kollmeyer, C. Vidal, M. Naguib, M. Skells",
        "",
        2020,
        "doi:10.17632/cp3473x7xv.3, CC BY 4.0; reduced here",
        Standing.Computed);

    /// <summary>Usable part of the capacity over cell temperature, fitted on the C/2 discharges.</summary>
    public static UsableCapacity UsableCapacity { get; } = new(
    [
        Point(-19, 0.738),
        Point(-9, 0.870),
        Point(-0.2, 0.911),
        Point(9.3, 0.929),
        Point(24, 0.994),
        Point(25, 1),
    ]);

    /// <summary>Activation energy of the sustained resistance: 25.9 kJ/mol at C/2 and 23.7 kJ/mol at 1C, -20…25 °C; 25 lies
    /// between.</summary>
    public static MolarEnergy ActivationEnergy { get; } = MolarEnergy.FromKilojoulesPerMole(25);

    /// <summary>From 25 to 40 °C the resistance falls by 13 % only.</summary>
    public const double ResistanceFloor = 0.87;

    /// <summary>Sustained resistance times capacity: 0.115 Ω·Ah at 1C to 0.128 Ω·Ah at C/2, 25 °C.</summary>
    public const double SustainedResistanceOhmAmpereHours = 0.12;

    /// <summary>
    /// 43 mΩ sustained for this cell. A fit of pulse and rest gives 14.8 mΩ at once, 6.7 mΩ with 0.5 s and 9.3 mΩ with 20 s; the
    /// 0.5 s part
    /// is counted as instant, which leaves 12.4 mΩ for what is slower than a pulse. Its time constant is set to 600 s, after the
    /// 590 s
    /// with which the same cell's current falls at constant voltage at the end of a charge.
    /// </summary>
    public static ResistanceSplit ResistanceSplit { get; } = new(0.50, 0.21, 0.29, Duration.FromSeconds(20),
        Duration.FromSeconds(600));

    private static UsableCapacityPoint Point(double celsius, double fraction) =>
        new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(fraction));
}

using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// What measured discharges of one 3 Ah NMC/graphite 18650 cell at -20…40 °C say of cold, resistance and heat. Reduced by this
/// project, with one well and with two; the values of the two sets belong together and must not be mixed.
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

    /// <summary>
    /// Usable part of the capacity over cell temperature, with two wells: what a slow discharge (C/20 and slower) finds. Known to
    /// 0.007. At 40 °C the cell gave 3.3 % less than in the series at 25 °C, which came first; that is in it.
    /// </summary>
    public static UsableCapacity UsableCapacity { get; } = new([Point(-20, 0.915), Point(10, 0.95), Point(25, 1)]);

    /// <summary>Sustained resistance times capacity at 25 °C, Ω·Ah, with two wells. Known to 10 %.</summary>
    public const double SustainedResistanceOhmAmpereHours = 0.125;

    /// <summary>Activation energy of the sustained resistance, with two wells. Known to 2.5 kJ/mol.</summary>
    public static MolarEnergy ActivationEnergy { get; } = MolarEnergy.FromKilojoulesPerMole(20);

    /// <summary>Share of the charge in the near well: set, not fitted; where it is fitted too, 0.57, and nothing gets
    /// better.</summary>
    public const double NearShare = 0.5;

    /// <summary>
    /// Time constant of the exchange between the wells at 25 °C. It goes together with its activation energy: alone it is known
    /// to a factor of 2, what both make of it to 1.17 at -10 °C (406 s) and to 1.04 at -20 °C (1460 s).
    /// </summary>
    public static Duration ExchangeTime { get; } = Duration.FromSeconds(9);

    /// <summary>Activation energy of the exchange, apparent. Known to 10 kJ/mol.</summary>
    public static MolarEnergy ExchangeActivationEnergy { get; } = MolarEnergy.FromKilojoulesPerMole(71);

    /// <summary>Usable part of the capacity over cell temperature, with one well; fitted on the C/2 discharges.</summary>
    public static UsableCapacity UsableCapacityOfOneWell { get; } = new(
    [
        Point(-19, 0.738),
        Point(-9, 0.870),
        Point(-0.2, 0.911),
        Point(9.3, 0.929),
        Point(24, 0.994),
        Point(25, 1),
    ]);

    /// <summary>Activation energy of the sustained resistance, with one well: 25.9 kJ/mol at C/2 and 23.7 kJ/mol at 1C,
    /// -20…25 °C; 25 lies between.</summary>
    public static MolarEnergy ActivationEnergyOfOneWell { get; } = MolarEnergy.FromKilojoulesPerMole(25);

    /// <summary>From 25 to 40 °C the resistance falls by 13 % only.</summary>
    public const double ResistanceFloor = 0.87;

    /// <summary>Sustained resistance times capacity, with one well: 0.115 Ω·Ah at 1C to 0.128 Ω·Ah at C/2, 25 °C.</summary>
    public const double SustainedResistanceOhmAmpereHoursOfOneWell = 0.12;

    /// <summary>
    /// 43 mΩ sustained for this cell with one well. A fit of pulse and rest gives 14.8 mΩ at once, 6.7 mΩ with 0.5 s and 9.3 mΩ
    /// with 20 s; the 0.5 s part is counted as instant, which leaves 12.4 mΩ for what is slower than a pulse. Its time constant
    /// is set to 600 s, after the 590 s with which this cell's current falls at constant voltage when it is nearly full.
    /// </summary>
    public static ResistanceSplit ResistanceSplit { get; } = new(0.50, 0.21, 0.29, Duration.FromSeconds(20),
        Duration.FromSeconds(600));

    private static UsableCapacityPoint Point(double celsius, double fraction) =>
        new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(fraction));
}

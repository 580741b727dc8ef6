using RigScenarios.Batteries;
using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// The values of the discharge model that a discharge in the cold hangs on, as one set: they belong together. Symbols as in
/// docs/discharge.md.
/// </summary>
/// <param name="NearShare">c, share of the charge in the near well; 1 for one well.</param>
/// <param name="ExchangeSeconds">tauX at 25 °C, s.</param>
/// <param name="ExchangeKilojoules">EX, kJ/mol.</param>
/// <param name="OhmAmpereHours">Sustained resistance times capacity, Ω·Ah.</param>
/// <param name="ActivationKilojoules">Ea, kJ/mol.</param>
/// <param name="Usable">kappa: °C and fraction, from cold to warm.</param>
internal sealed record CellSet(
    double NearShare, double ExchangeSeconds, double ExchangeKilojoules, double OhmAmpereHours, double ActivationKilojoules,
    IReadOnlyList<(double Celsius, double Fraction)> Usable)
{
    /// <summary>The defaults before there were two wells: what still goes with one well.</summary>
    public static CellSet Before { get; } = new(
        1, 9, 71, 0.12, 25, [(-19, 0.738), (-9, 0.870), (-0.2, 0.911), (9.3, 0.929), (24, 0.994), (25, 1)]);

    /// <summary>The project's NMC defaults.</summary>
    public static CellSet Now { get; } = Of(CellChemistries.Nmc);

    /// <summary>A pack with these values instead of its own; how the resistance divides stays.</summary>
    public Pack In(Pack pack)
    {
        var split = CellChemistries.Nmc.ResistanceSplit.Value;
        var ohms = OhmAmpereHours / pack.Capacity.AmpereHours;
        return pack with
        {
            NearShare = NearShare,
            ExchangeTime = Duration.FromSeconds(ExchangeSeconds),
            ExchangeActivationEnergy = MolarEnergy.FromKilojoulesPerMole(ExchangeKilojoules),
            Resistance0 = ElectricResistance.FromOhms(ohms * split.Share0),
            Resistance1 = ElectricResistance.FromOhms(ohms * split.Share1),
            Resistance2 = ElectricResistance.FromOhms(ohms * split.Share2),
            ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(ActivationKilojoules),
            UsableCapacity = UsableCapacity.FromTable(
                [.. Usable.Select(point => 273.15 + point.Celsius)], [.. Usable.Select(point => point.Fraction)]),
        };
    }

    private static CellSet Of(CellChemistry chemistry) => new(
        chemistry.NearShare.Value, chemistry.ExchangeTime.Value.Seconds,
        chemistry.ExchangeActivationEnergy.Value.KilojoulesPerMole, chemistry.SustainedResistanceOhmAmpereHours.Value,
        chemistry.ActivationEnergy.Value.KilojoulesPerMole,
        [.. chemistry.UsableCapacity.Value.Points.Select(point =>
            (point.Temperature.DegreesCelsius, point.Fraction.DecimalFractions))]);
}

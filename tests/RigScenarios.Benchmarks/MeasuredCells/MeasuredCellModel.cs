using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// The measured cell as a pack of one group: the project's NMC defaults, or another set of values, or its own open-circuit
/// voltage. Heat: 47 J/K and 0.54 W/K, a single cell in a chamber with a fan, from the temperatures at the ends of the same
/// discharges. The chamber is at the temperature with which its C/20 discharge begins, which follows the chamber; the cell at
/// the one with which its own discharge begins.
/// </summary>
internal sealed class MeasuredCellModel
{
    /// <summary>Heat conductance of the rig, W/K, re-estimated from the temperatures at the ends.</summary>
    public const double WattsPerKelvin = 0.54;

    /// <summary>What it was taken to be before: from the rise of one discharge, at 2C and 25 °C.</summary>
    public const double FormerWattsPerKelvin = 0.37;

    private const string SlowestRate = "C/20";
    private readonly IReadOnlyList<MeasuredDischarge> measured;
    private readonly Pack cell;

    /// <param name="measured">The discharges.</param>
    /// <param name="set">The values; the project's defaults, untouched, if null.</param>
    /// <param name="wattsPerKelvin">Heat conductance, W/K.</param>
    /// <param name="own">Its own open-circuit voltage with the capacity that goes with it; the project's, with the capacity of
    /// <see cref="CapacityWithDefaults"/>, if null.</param>
    public MeasuredCellModel(
        IReadOnlyList<MeasuredDischarge> measured, CellSet? set = null, double wattsPerKelvin = WattsPerKelvin,
        OwnOpenCircuit? own = null)
    {
        this.measured = measured;
        CapacityAmpereHours = own?.CapacityAmpereHours ?? CapacityWithDefaults(measured);
        var pack = Label(CapacityAmpereHours, wattsPerKelvin);
        if (own is not null)
            pack = pack with { OpenCircuitVoltage = own.With((set ?? CellSet.Now).OhmAmpereHours) };
        cell = set?.In(pack) ?? pack;
    }

    private MeasuredCellModel(IReadOnlyList<MeasuredDischarge> measured, double capacity) =>
        (this.measured, CapacityAmpereHours, cell) =
            (measured, capacity, CellSet.Before.In(Label(capacity, FormerWattsPerKelvin)));

    /// <summary>Q.</summary>
    public double CapacityAmpereHours { get; }

    /// <summary>
    /// The capacity with the project's open-circuit voltage: such that one well gives the measured charge at C/20 and 25 °C. Two
    /// wells keep it: their values were fitted with it.
    /// </summary>
    public static double CapacityWithDefaults(IReadOnlyList<MeasuredDischarge> measured)
    {
        var slow = measured.First(one => one is { ChamberCelsius: 25, Rate: SlowestRate });
        var capacity = slow.AmpereHours;

        // The charge down to 2.8 V is a little less than the capacity; the ratio hardly depends on it, so this settles at once.
        for (var i = 0; i < 5; i++)
            capacity *= slow.AmpereHours / new MeasuredCellModel(measured, capacity).Compare(slow).AmpereHours;
        return capacity;
    }

    public IReadOnlyList<CellComparison> CompareAll() => [.. measured.Select(Compare)];

    public CellComparison Compare(MeasuredDischarge one)
    {
        var result = Run(one, seriesPoints: 0);
        return new CellComparison(
            one, result.Energies.ChargeDrawn.AmpereHours, result.Energies.Delivered.WattHours,
            result.EndTemperature.DegreesCelsius);
    }

    /// <summary>The discharge as predicted, with as many points of its course as asked for.</summary>
    public DischargeResult Run(MeasuredDischarge one, int seriesPoints) => Discharge.Run(
        cell, Chamber(one.ChamberCelsius),
        DischargeStart.Full with { Temperature = Temperature.FromDegreesCelsius(one.StartCelsius) },
        Demand.OfCurrent(ElectricCurrent.FromAmperes(one.Amperes)), new DischargeOptions { SeriesPoints = seriesPoints });

    /// <summary>The temperature of the air in the chamber at one of its settings.</summary>
    public Temperature Chamber(double setting) => Temperature.FromDegreesCelsius(
        measured.First(one => one.ChamberCelsius == setting && one.Rate == SlowestRate).StartCelsius);

    /// <summary>The cell as a pack of one group.</summary>
    public Pack Cell() => cell;

    private static Pack Label(double capacity, double wattsPerKelvin) => PackModel.From(
        new Battery
        {
            Energy = Energy.FromWattHours(3.6 * capacity),
            Voltage = ElectricPotential.FromVolts(3.6),
            Chemistry = "nmc",
            LeadResistance = ElectricResistance.Zero,
            HeatCapacity = Entropy.FromJoulesPerKelvin(47),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(wattsPerKelvin),
            CutoffVoltage = ElectricPotential.FromVolts(2.8),
            MaximumCurrent = ElectricCurrent.FromAmperes(20),
        },
        Mass.FromGrams(47),
        size: null,
        Age.New).Pack;
}

using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// The measured cell by the project's NMC defaults, as a pack of one group. Its capacity alone is set by a measurement: such
/// that the C/20 discharge at 25 °C gives the measured charge. Heat: 47 J/K and 0.37 W/K, a single cell in a chamber with a
/// fan, which reproduce the rise of temperature at 2C (computed from the same data). The chamber is at the temperature with
/// which its C/20 discharge begins, which follows the chamber; the cell at the one with which its own discharge begins.
/// </summary>
internal sealed class MeasuredCellModel
{
    private const string SlowestRate = "C/20";
    private readonly IReadOnlyList<MeasuredDischarge> measured;

    public MeasuredCellModel(IReadOnlyList<MeasuredDischarge> measured)
    {
        this.measured = measured;
        var slow = measured.First(one => one is { ChamberCelsius: 25, Rate: SlowestRate });
        CapacityAmpereHours = slow.AmpereHours;

        // The charge down to 2.8 V is a little less than the capacity; the ratio hardly depends on it, so this settles at once.
        for (var i = 0; i < 5; i++)
            CapacityAmpereHours *= slow.AmpereHours / Compare(slow).AmpereHours;
    }

    /// <summary>The capacity that the one 25 °C C/20 discharge asks for.</summary>
    public double CapacityAmpereHours { get; }

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
        Cell(), Chamber(one.ChamberCelsius),
        DischargeStart.Full with { Temperature = Temperature.FromDegreesCelsius(one.StartCelsius) },
        Demand.OfCurrent(ElectricCurrent.FromAmperes(one.Amperes)), new DischargeOptions { SeriesPoints = seriesPoints });

    /// <summary>The temperature of the air in the chamber at one of its settings.</summary>
    public Temperature Chamber(double setting) => Temperature.FromDegreesCelsius(
        measured.First(one => one.ChamberCelsius == setting && one.Rate == SlowestRate).StartCelsius);

    /// <summary>The cell as a pack of one group.</summary>
    public Pack Cell() => PackModel.From(
        new Battery
        {
            Energy = Energy.FromWattHours(3.6 * CapacityAmpereHours),
            Voltage = ElectricPotential.FromVolts(3.6),
            Chemistry = "nmc",
            LeadResistance = ElectricResistance.Zero,
            HeatCapacity = Entropy.FromJoulesPerKelvin(47),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(0.37),
            CutoffVoltage = ElectricPotential.FromVolts(2.8),
            MaximumCurrent = ElectricCurrent.FromAmperes(20),
        },
        Mass.FromGrams(47),
        size: null,
        Age.New).Pack;
}

using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>A measured discharge beside the predicted one.</summary>
internal sealed record CellComparison(MeasuredDischarge Measured, double AmpereHours, double WattHours, double EndCelsius)
{
    /// <summary>Error of the charge, and so of the runtime at the measured current; 0.01 is 1 % too much.</summary>
    public double ChargeError => (AmpereHours / Measured.AmpereHours) - 1;

    /// <summary>Error of the delivered energy.</summary>
    public double EnergyError => (WattHours / Measured.WattHours) - 1;

    /// <summary>
    /// Error of the runtime that the model claims to keep, as a part: 2 % at 25 °C, 3 % down to -10 °C (there from C/2), 20 % at
    /// -20 °C, for the steady
    /// loads of a camera pack, up to 1C. Not claimed (null): 2C; 40 °C, where this cell gave less than at 25 °C; C/20 at -10 °C,
    /// where a
    /// day-long discharge gives more than the cold table, fitted at C/2, says.
    /// </summary>
    public double? ClaimedTolerance => (Measured.ChamberCelsius, Measured.Rate) switch
    {
        (_, "2C") or (40, _) or (-10, "C/20") => null,
        (25, _) => 0.02,
        (-20, _) => 0.20,
        _ => 0.03,
    };
}

/// <summary>
/// The measured cell by the project's NMC defaults, as a pack of one group. Its capacity alone is set by a measurement: such that
/// the C/20
/// discharge at 25 °C gives the measured charge. Heat: 47 J/K and 0.37 W/K, a single cell in a chamber with a fan, which
/// reproduce the rise of temperature at 2C (computed from the same data). The chamber is at the temperature with which its C/20
/// discharge
/// begins, which follows the chamber; the cell at the one with which its own discharge begins.
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
        var chamber = measured.First(other => other.ChamberCelsius == one.ChamberCelsius
            && other.Rate == SlowestRate).StartCelsius;
        var start = DischargeStart.Full with { Temperature = Temperature.FromDegreesCelsius(one.StartCelsius) };
        var result = Discharge.Run(
            Cell(), Temperature.FromDegreesCelsius(chamber), start, Demand.OfCurrent(ElectricCurrent.FromAmperes(one.Amperes)),
            new DischargeOptions { SeriesPoints = 0 });
        return new CellComparison(
            one, result.Energies.ChargeDrawn.AmpereHours, result.Energies.Delivered.WattHours,
            result.EndTemperature.DegreesCelsius);
    }

    private Pack Cell() => PackModel.From(
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

using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells.Fitted;

/// <summary>How far off the run-times of all measured discharges are, if a cell is known in one way.</summary>
/// <param name="Cell">How it is known.</param>
/// <param name="Errors">The measured discharges with predicted over measured run-time, less 1, in the file's order.</param>
internal sealed record FittedCellErrors(FittedCell Cell, IReadOnlyList<(MeasuredDischarge Measured, double Error)> Errors)
{
    /// <summary>Predicts every discharge of the file. The chamber is at the temperature with which its C/20 discharge begins, the
    /// cell at the one with which its own begins.</summary>
    public static FittedCellErrors Of(FittedCell cell, string folder)
    {
        var measured = MeasuredDischarge.Read(folder);
        return new(cell, [.. measured.Select(one => (one, Error(cell.Pack, one, measured)))]);
    }

    /// <summary>Root mean square of the errors in one chamber.</summary>
    public double Rms(double chamber) => Rms(Errors.Where(row => row.Measured.ChamberCelsius == chamber));

    /// <summary>Root mean square of the errors in all chambers but that of the tests.</summary>
    public double RmsElsewhere => Rms(Elsewhere);

    /// <summary>The largest error in all chambers but that of the tests, with its sign.</summary>
    public double WorstElsewhere => Elsewhere.MaxBy(row => Math.Abs(row.Error)).Error;

    private IEnumerable<(MeasuredDischarge Measured, double Error)> Elsewhere =>
        Errors.Where(row => row.Measured.ChamberCelsius != FittedCell.TestCelsius);

    private static double Rms(IEnumerable<(MeasuredDischarge Measured, double Error)> rows) =>
        Math.Sqrt(rows.Average(row => row.Error * row.Error));

    private static double Error(Pack pack, MeasuredDischarge one, IReadOnlyList<MeasuredDischarge> all)
    {
        var air = Temperature.FromDegreesCelsius(
            all.First(other => other.ChamberCelsius == one.ChamberCelsius && other.Rate == "C/20").StartCelsius);
        var result = Discharge.Run(pack, air,
            DischargeStart.Full with { Temperature = Temperature.FromDegreesCelsius(one.StartCelsius) },
            Demand.OfCurrent(ElectricCurrent.FromAmperes(one.Amperes)), new DischargeOptions { SeriesPoints = 0 });
        return (result.Energies.ChargeDrawn.AmpereHours / one.AmpereHours) - 1;
    }
}

using RigScenarios.Benchmarks.MeasuredCells;
using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>
/// One of eleven cells of 75 Ah (NMC and graphite) that were stored or cycled for up to ten months: what is behind K. Smith et
/// al., "Life prediction model for grid-connected Li-ion battery energy storage system", American Control Conference 2017,
/// 4062-4068. The measured capacities are those of the validation files of NREL's program ssc, BSD-3-Clause, © Alliance for
/// Sustainable Energy; they are read where they lie and are no part of this repository.
/// </summary>
/// <param name="Number">Number of the cell.</param>
/// <param name="IsStored">Whether it was stored; else cycled.</param>
/// <param name="Celsius">Mean temperature, °C.</param>
/// <param name="Depth">Depth of its cycles, 0…1.</param>
/// <param name="Charge">Charge in storage, or mean charge of its cycles, 0…1.</param>
/// <param name="Points">What was measured, in order of time; the first is the new cell.</param>
internal sealed record AgedCell(
    int Number, bool IsStored, double Celsius, double Depth, double Charge, IReadOnlyList<AgedCellPoint> Points)
{
    public const string FileName = "nmc75Ah_measured_aging.csv";

    // The rate is not in the data.
    private const double RatePerHour = 1;

    /// <summary>The last measurement.</summary>
    public AgedCellPoint End => Points[^1];

    /// <summary>The folder of the data where it lies beside the repository; null: it doesn't.</summary>
    /// <param name="root">The repository's folder.</param>
    public static string? FindFolder(string root)
    {
        var data = Path.GetFullPath(Path.Combine(root, "..", "shared", "reference", "data"));
        return File.Exists(Path.Combine(data, FileName)) ? data : null;
    }

    public static IReadOnlyList<AgedCell> Read(string folder) =>
    [
        .. MeasuredTable.Read(Path.Combine(folder, FileName)).GroupBy(row => row.Text("cell")).Select(cell => new AgedCell(
            (int)cell.First().Number("cell"), cell.First().Text("kind") == "storage",
            cell.First().Number("mean_temperature_C"), cell.First().Number("depth_of_discharge"),
            cell.First().Number("mean_soc"),
            [.. cell.Select(row => new AgedCellPoint(
                row.Number("days"), row.Text("cycles").Length == 0 ? 0 : row.Number("cycles"),
                row.Number("fraction_of_first")))])),
    ];

    /// <summary>Full cycles until a measurement.</summary>
    public double FullCycles(AgedCellPoint point) => IsStored ? 0 : (point.Cycles - 1) * Depth;

    /// <summary>The capacity left that a set says, from mean temperature and charge alone; nothing is fitted.</summary>
    public double Predicted(AgingSet set, AgedCellPoint point)
    {
        var (length, temperature) = (Duration.FromDays(point.Days), Temperature.FromDegreesCelsius(Celsius));
        var charge = Ratio.FromDecimalFractions(Charge);
        LifePhase phase = IsStored
            ? new Storage(length, temperature, charge)
            : new Cycling(length, temperature, FullCycles(point), Ratio.FromDecimalFractions(Depth), RatePerHour, charge);
        return BatteryLife.After(set, false, [phase]).Age.CapacityLeft.DecimalFractions;
    }

    /// <summary>How much more a set says than was measured, points of the first capacity.</summary>
    public double Error(AgingSet set, AgedCellPoint point) => 100 * (Predicted(set, point) - point.Left);
}

/// <summary>One measurement of the capacity.</summary>
/// <param name="Days">Days from the first.</param>
/// <param name="Cycles">Cycles counted, the first measurement's included.</param>
/// <param name="Left">Capacity over that of the first measurement.</param>
internal sealed record AgedCellPoint(double Days, double Cycles, double Left);

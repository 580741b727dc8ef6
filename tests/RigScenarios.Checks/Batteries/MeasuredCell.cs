using RigScenarios.Benchmarks.MeasuredCells;

namespace RigScenarios.Checks.Batteries;

/// <summary>
/// The cell whose measurements lie in data/measured: P. Kollmeyer, C. Vidal, M. Naguib, M. Skells (2020),
/// doi:10.17632/cp3473x7xv.3, CC BY 4.0; and the project's NMC defaults for it, its capacity set by one discharge.
/// </summary>
internal static class MeasuredCell
{
    public const string Citation =
        "P. Kollmeyer, C. Vidal, M. Naguib, M. Skells, 2020, doi:10.17632/cp3473x7xv.3, CC BY 4.0; data files beside the test, "
        + "read in the source";

    /// <summary>The folder of the data.</summary>
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "data", "measured");

    /// <summary>The discharges at a steady current.</summary>
    public static IReadOnlyList<MeasuredDischarge> Discharges { get; } = MeasuredDischarge.Read(Folder);

    /// <summary>The project's defaults for the cell.</summary>
    public static MeasuredCellModel Model { get; } = new(Discharges);

    /// <summary>The same with the cell's own open-circuit voltage.</summary>
    public static MeasuredCellModel WithOwnVoltage { get; } = new(Discharges, own: OwnOpenCircuit.Read(Folder));

    /// <summary>Each discharge beside the prediction.</summary>
    public static IReadOnlyList<CellComparison> Compared { get; } = Model.CompareAll();

    /// <summary>The discharge at a chamber's setting and a rate.</summary>
    public static MeasuredDischarge At(double chamber, string rate) =>
        Discharges.Single(one => one.ChamberCelsius == chamber && one.Rate == rate);

    /// <summary>The lines of one of the files.</summary>
    public static IReadOnlyList<MeasuredTable> Read(string file) => MeasuredTable.Read(Path.Combine(Folder, file));
}

using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// One constant-current discharge of the measured cell, to 2.8 V. Kollmeyer, Vidal, Naguib, Skells (2020),
/// doi:10.17632/cp3473x7xv.3, CC BY 4.0; the summary file in tests/RigScenarios.Checks/data/measured.
/// </summary>
internal sealed record MeasuredDischarge(
    double ChamberCelsius, string Rate, double Amperes, double AmpereHours, double WattHours, double StartCelsius,
    double EndCelsius)
{
    public const string FileName = "nmc18650_cc_discharge_summary.csv";

    /// <summary>The folder of the measured data, seen from a folder inside the repository.</summary>
    public static string FindFolder(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "RigScenarios.sln")))
                return Path.Combine(folder.FullName, "tests", "RigScenarios.Checks", "data", "measured");
        }

        throw new CaseFileException($"{from} lies in no folder with RigScenarios.sln; name the folder of the measured data.");
    }

    public static IReadOnlyList<MeasuredDischarge> Read(string folder) =>
        [.. MeasuredTable.Read(Path.Combine(folder, FileName)).Select(row => new MeasuredDischarge(
            row.Number("ambient_C"), row.Text("rate"), row.Number("current_A"), row.Number("capacity_Ah"),
            row.Number("energy_Wh"), row.Number("cell_T_start_C"), row.Number("cell_T_end_C")))];
}

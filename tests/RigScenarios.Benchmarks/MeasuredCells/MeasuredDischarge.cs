using System.Globalization;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// One constant-current discharge of the measured cell, to 2.8 V. Kollmeyer, Vidal, Naguib, Skells (2020),
/// doi:10.17632/cp3473x7xv.3, CC BY 4.0; the summary file in the reference folder beside the project.
/// </summary>
internal sealed record MeasuredDischarge(
    double ChamberCelsius, string Rate, double Amperes, double AmpereHours, double WattHours, double StartCelsius)
{
    public const string FileName = "nmc18650_cc_discharge_summary.csv";

    /// <summary>The reference folder beside the project, seen from a folder inside the repository; null where it is
    /// absent.</summary>
    public static string? FindFolder(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
        {
            if (!File.Exists(Path.Combine(folder.FullName, "RigScenarios.sln")))
                continue;
            var data = Path.Combine(folder.FullName, "..", "shared", "reference", "data");
            return File.Exists(Path.Combine(data, FileName)) ? Path.GetFullPath(data) : null;
        }

        return null;
    }

    public static IReadOnlyList<MeasuredDischarge> Read(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path))
            throw new CaseFileException($"{path}: there is no such file.");
        var lines = File.ReadAllLines(path);
        var columns = lines[0].Split(',');
        return [.. lines.Skip(1).Where(line => line.Length > 0)
            .Select((line, i) => Parse(path, i + 2, columns, line.Split(',')))];
    }

    private static MeasuredDischarge Parse(string path, int line, string[] columns, string[] cells)
    {
        return new MeasuredDischarge(
            Number("ambient_C"), Cell("rate"), Number("current_A"), Number("capacity_Ah"), Number("energy_Wh"),
            Number("cell_T_start_C"));

        string Cell(string column)
        {
            var index = Array.IndexOf(columns, column);
            return index >= 0 && index < cells.Length
                ? cells[index]
                : throw new CaseFileException($"{path}, line {line}: no column {column}.");
        }

        double Number(string column) =>
            double.TryParse(Cell(column), NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? value
            : throw new CaseFileException($"{path}, line {line}, column {column}: found '{Cell(column)}'; accepted: a number.");
    }
}

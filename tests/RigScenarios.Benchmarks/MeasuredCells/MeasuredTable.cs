using System.Globalization;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>One line of a table of measured values, its cells found by the name of the column.</summary>
internal sealed class MeasuredTable
{
    private readonly string place;
    private readonly string[] columns;
    private readonly string[] cells;

    private MeasuredTable(string place, string[] columns, string[] cells) =>
        (this.place, this.columns, this.cells) = (place, columns, cells);

    /// <summary>All lines of a comma-separated file whose first line names the columns.</summary>
    public static IReadOnlyList<MeasuredTable> Read(string path)
    {
        if (!File.Exists(path))
            throw new CaseFileException($"{path}: there is no such file.");
        var lines = File.ReadAllLines(path);
        var names = lines[0].Split(',');
        return [.. lines.Skip(1).Where(line => line.Length > 0)
            .Select((line, i) => new MeasuredTable($"{path}, line {i + 2}", names, line.Split(',')))];
    }

    public string Text(string column)
    {
        var index = Array.IndexOf(columns, column);
        return index >= 0 && index < cells.Length ? cells[index] : throw new CaseFileException($"{place}: no column {column}.");
    }

    public double Number(string column) =>
        double.TryParse(Text(column), NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
        ? value
        : throw new CaseFileException($"{place}, column {column}: found '{Text(column)}'; accepted: a number.");
}

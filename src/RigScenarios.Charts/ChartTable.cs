using UnitsNet;

namespace RigScenarios.Charts;

/// <summary>A column of a table: its title, and whether its cells are numbers (set to the right).</summary>
public sealed record TableColumn(string Title, bool IsNumber = false);

/// <summary>
/// A small table to be read by people: every cell is finished text. Also what a figure gives for those who want its numbers.
/// Immutable: <see cref="With(object?[])"/> gives a longer table.
/// </summary>
public sealed record ChartTable
{
    /// <summary>The line above the table, or empty.</summary>
    public string Caption { get; init; } = "";

    /// <summary>The columns, at least one.</summary>
    public required IReadOnlyList<TableColumn> Columns { get; init; }

    /// <summary>The rows, each with one cell a column.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows { get; init; } = [];

    /// <summary>An empty table with these column titles. Put the unit into the title: "runtime (h)".</summary>
    public static ChartTable Of(params IEnumerable<string> titles)
    {
        var columns = titles.Select(title => new TableColumn(title)).ToList();
        return columns.Count == 0
            ? throw new ArgumentException("A table needs at least one column.", nameof(titles))
            : new ChartTable { Columns = columns };
    }

    /// <summary>
    /// The table with one more row. Numbers are rounded to four digits, quantities are written in trade units, and a column
    /// whose first row holds a number or a quantity is set to the right.
    /// </summary>
    /// <exception cref="ArgumentException">The row has more or fewer cells than the table has columns.</exception>
    public ChartTable With(params object?[] cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        if (cells.Length != Columns.Count)
        {
            throw new ArgumentException(
                $"The row has {cells.Length} cells, but the table has {Columns.Count} columns "
                    + $"({string.Join(", ", Columns.Select(c => c.Title))}).",
                nameof(cells));
        }

        var columns = Rows.Count > 0
            ? Columns
            : [.. Columns.Select((column, i) => column with { IsNumber = column.IsNumber || IsNumber(cells[i]) })];
        return this with { Columns = columns, Rows = [.. Rows, [.. cells.Select(CellText)]] };
    }

    /// <summary>The table with many more rows, as <see cref="With(object?[])"/> adds one.</summary>
    public ChartTable WithRows(IEnumerable<object?[]> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var added = rows.ToList();
        if (added.Count == 0)
            return this;
        var first = With(added[0]);
        return first with { Rows = [.. first.Rows,
            .. added.Skip(1).Select(row => (first with { Rows = [] }).With(row).Rows[0])] };
    }

    private static bool IsNumber(object? cell) => cell is IQuantity or double or float or decimal or int or long;

    private static string CellText(object? cell) => cell switch
    {
        null => "",
        IQuantity quantity => TradeUnits.Text(quantity),
        double or float or decimal => Rounding.Text(Convert.ToDouble(cell, null)),
        IFormattable value => value.ToString(null, null),
        _ => cell.ToString() ?? "",
    };
}

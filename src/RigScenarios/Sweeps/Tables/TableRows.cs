using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Tables;

/// <summary>Some rows of a table, column by column: what both kinds of file are written from and read into. Numbers of results
/// carry ten digits, so that both kinds hold the same.</summary>
internal sealed class TableRows
{
    private readonly List<long> numbers = [];

    /// <summary>No rows yet.</summary>
    /// <param name="columns">The columns; the first is the scenario's number.</param>
    public TableRows(IReadOnlyList<SweepColumn> columns)
    {
        Columns = columns;
        Values = [.. columns.Skip(1).Select(column => new TableValues(column.Kind))];
    }

    /// <summary>The columns; the first is the scenario's number.</summary>
    public IReadOnlyList<SweepColumn> Columns { get; }

    /// <summary>The numbers of the scenarios.</summary>
    public IReadOnlyList<long> Numbers => numbers;

    /// <summary>The cells of the other columns.</summary>
    public IReadOnlyList<TableValues> Values { get; }

    /// <summary>How many rows there are.</summary>
    public int Count => numbers.Count;

    /// <summary>Adds the row of a scenario.</summary>
    public void Add(SweepRecord record)
    {
        if (record.Values.Count + record.Cells.Count != Values.Count)
            throw new ArgumentException($"Found {record.Values.Count} values and {record.Cells.Count} cells for "
                + $"{Values.Count} columns.", nameof(record));
        numbers.Add(record.Number);
        for (var field = 0; field < record.Values.Count; field++)
            Values[field].Add(SweptColumn.Cell(Columns[field + 1], record.Values[field]));
        for (var cell = 0; cell < record.Cells.Count; cell++)
        {
            var found = record.Cells[cell];
            Values[record.Values.Count + cell].Add(found is { Number: { } number, Text: null }
                ? SweepCell.Of(TenDigits.Of(number)) : found);
        }
    }

    /// <summary>Adds a number; a cell for each other column is to follow.</summary>
    public void AddNumber(long number) => numbers.Add(number);

    /// <summary>Adds rows of another table of the same columns.</summary>
    public void Add(TableRows other, int from, int count)
    {
        numbers.AddRange(other.numbers.GetRange(from, count));
        for (var column = 0; column < Values.Count; column++)
            Values[column].Add(other.Values[column], from, count);
    }

    /// <summary>Takes all rows out.</summary>
    public void Clear()
    {
        numbers.Clear();
        foreach (var values in Values)
            values.Clear();
    }
}

/// <summary>The cells of one column.</summary>
internal sealed class TableValues(ColumnKind kind)
{
    private readonly List<double?> numbers = [];
    private readonly List<string?> texts = [];
    private readonly List<bool?> yesNos = [];

    /// <summary>What the cells hold.</summary>
    public ColumnKind Kind => kind;

    /// <summary>The cells of a column of numbers.</summary>
    public ReadOnlyMemory<double?> NumberCells => numbers.ToArray();

    /// <summary>The cells of a column of words.</summary>
    public IReadOnlyCollection<string?> TextCells => texts;

    /// <summary>The cells of a column of yes and no.</summary>
    public ReadOnlyMemory<bool?> YesNoCells => yesNos.ToArray();

    /// <summary>A cell.</summary>
    public SweepCell this[int row] => kind switch
    {
        ColumnKind.Number => SweepCell.Of(numbers[row]),
        ColumnKind.Text => SweepCell.Of(texts[row]),
        _ => SweepCell.Of(yesNos[row]),
    };

    /// <summary>Adds a cell.</summary>
    public void Add(SweepCell cell)
    {
        if (!cell.IsNothing && (kind == ColumnKind.Number ? cell.Number is null
            : kind == ColumnKind.Text ? cell.Number is not null : cell.YesNo is null))
            throw new ArgumentException($"\"{cell.Text ?? $"{cell.Number}"}\" stands in a column of another kind ({kind}).",
                nameof(cell));
        if (kind == ColumnKind.Number)
            numbers.Add(cell.Number);
        else if (kind == ColumnKind.Text)
            texts.Add(cell.Text);
        else
            yesNos.Add(cell.YesNo);
    }

    /// <summary>Adds cells of a column of the same kind.</summary>
    public void Add(TableValues other, int from, int count)
    {
        if (kind == ColumnKind.Number)
            numbers.AddRange(other.numbers.GetRange(from, count));
        else if (kind == ColumnKind.Text)
            texts.AddRange(other.texts.GetRange(from, count));
        else
            yesNos.AddRange(other.yesNos.GetRange(from, count));
    }

    /// <summary>Takes all cells out.</summary>
    public void Clear()
    {
        numbers.Clear();
        texts.Clear();
        yesNos.Clear();
    }
}

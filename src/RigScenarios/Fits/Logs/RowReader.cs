using System.Globalization;
using nietras.SeparatedValues;

namespace RigScenarios.Fits.Logs;

/// <summary>Reads the rows of a log once its layout is known.</summary>
internal sealed class RowReader(LogLayout layout, CancellationToken cancellation)
{
    private const int RowsBetweenLooks = 65536;

    private readonly int time = layout.Columns[0].Number - 1;
    private readonly int voltage = layout.Columns[1].Number - 1;
    private readonly int current = layout.Columns[2].Number - 1;

    /// <summary>What was read, in the units of the file.</summary>
    public RawRows Rows { get; } = new();

    /// <summary>Rows in the file, blank lines not counted.</summary>
    public int Found { get; private set; }

    /// <summary>Rows left out.</summary>
    public int Dropped { get; private set; }

    /// <summary>What was wrong with the first of these.</summary>
    public DroppedCell? FirstDropped { get; private set; }

    /// <summary>Whether the times are written as clock times.</summary>
    public bool Clock { get; private set; }

    /// <summary>Reads all rows; false if there are more than may be.</summary>
    public bool Read(TextReader text, int mostRows)
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = layout.DecimalMark.ToString();
        using var reader = Sep.New(layout.Separator).Reader(options => options with
        {
            HasHeader = false,
            DisableColCountCheck = true,
            // A lone quote in a file without quotes must not swallow the rows below it.
            DisableQuotesParsing = !layout.Quoted,
            Unescape = layout.Quoted,
            CultureInfo = culture,
        }).From(text);
        foreach (var row in reader)
        {
            if (row.ColCount == 0 || (row.ColCount == 1 && row[0].Span.IsWhiteSpace()))
                continue;
            if (++Found > mostRows)
                return false;
            if (Found % RowsBetweenLooks == 0)
                cancellation.ThrowIfCancellationRequested();
            if (TryRead(row, 0, time, out var seconds) && TryRead(row, 1, voltage, out var volts)
                && TryRead(row, 2, current, out var amperes))
                Rows.Add(seconds, volts, amperes);
            else
                Dropped++;
        }
        return true;
    }

    private bool TryRead(SepReader.Row row, int quantity, int index, out double value)
    {
        value = 0;
        if (index < row.ColCount)
        {
            var cell = row[index];
            if (cell.TryParse(out value) && double.IsFinite(value))
                return true;
            if (LogNumber.TryRead(cell.Span, layout.DecimalMark, out value, out var clock))
            {
                Clock |= clock && quantity == 0;
                return true;
            }
        }
        FirstDropped ??= new(row.LineNumberFrom + layout.FirstRow, layout.Columns[quantity].Name,
            index < row.ColCount ? Shown(row[index].Span) : "");
        return false;
    }

    private static string Shown(ReadOnlySpan<char> cell)
    {
        const int longest = 40;
        cell = cell.Trim();
        return cell.Length > longest ? $"{cell[..longest]}…" : cell.ToString();
    }
}

using System.Buffers;
using System.Globalization;
using System.Text;
using RigScenarios.Files;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Tables;

/// <summary>
/// Rows as comma-separated values (Y. Shafranovich, "Common Format and MIME Type for CSV Files", RFC 4180, 2005), in UTF-8: words
/// in quotes, numbers never, an empty field where there is nothing, lines that end with CR LF. Numbers are the shortest texts
/// that read back exactly.
/// </summary>
internal static class CsvRows
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The first line of a table, after the mark by which spreadsheets know UTF-8.</summary>
    public static byte[] Heading(IReadOnlyList<SweepColumn> columns) =>
        Encoding.UTF8.GetBytes("\uFEFF" + string.Join(',', columns.Select(column => CsvField.Quoted(column.Name))) + "\r\n");

    /// <summary>Writes rows.</summary>
    public static void Write(TableRows rows, IBufferWriter<byte> to)
    {
        for (var row = 0; row < rows.Count; row++)
        {
            Write(rows.Numbers[row], to);
            foreach (var values in rows.Values)
            {
                to.Write(","u8);
                var cell = values[row];
                if (cell.Text is { } text)
                    WriteQuoted(text, to);
                else if (cell.Number is { } number)
                    Write(number, to);
            }
            to.Write("\r\n"u8);
        }
    }

    /// <summary>Reads rows; all of the bytes are whole rows.</summary>
    /// <exception cref="FormatException">They are not rows of these columns.</exception>
    public static void Read(ReadOnlySpan<byte> bytes, TableRows into)
    {
        while (!bytes.IsEmpty)
        {
            into.AddNumber(long.Parse(Field(ref bytes, out _, out _), NumberStyles.None, CultureInfo.InvariantCulture));
            for (var column = 0; column < into.Values.Count; column++)
            {
                Expect(ref bytes, ","u8);
                var field = Field(ref bytes, out var isQuoted, out var hasQuotes);
                into.Values[column].Add(Cell(field, isQuoted, hasQuotes, into.Values[column].Kind));
            }
            Expect(ref bytes, "\r\n"u8);
        }
    }

    /// <summary>How many of the bytes are whole rows: up to the last end of a line that stands in no quotes.</summary>
    public static int WholeRows(ReadOnlySpan<byte> bytes)
    {
        var (whole, inQuotes) = (0, false);
        for (var place = 0; place < bytes.Length; place++)
        {
            if (bytes[place] == (byte)'"')
                inQuotes = !inQuotes;
            else if (bytes[place] == (byte)'\n' && !inQuotes)
                whole = place + 1;
        }
        return whole;
    }

    private static SweepCell Cell(ReadOnlySpan<byte> field, bool isQuoted, bool hasQuotes, ColumnKind kind)
    {
        if (!isQuoted)
        {
            return field.IsEmpty ? SweepCell.Nothing : kind == ColumnKind.Number
                ? SweepCell.Of(double.Parse(field, NumberStyles.Float, CultureInfo.InvariantCulture))
                : throw new FormatException($"\"{Encoding.UTF8.GetString(field)}\" stands in no quotes.");
        }
        var text = Strict.GetString(field);
        return kind switch
        {
            ColumnKind.Text => SweepCell.Of(hasQuotes ? text.Replace("\"\"", "\"", StringComparison.Ordinal) : text),
            ColumnKind.YesNo when text is "yes" or "no" => SweepCell.Of(text == "yes"),
            _ => throw new FormatException($"\"{text}\" stands in a column of another kind."),
        };
    }

    /// <summary>The next field, without the quotes around it.</summary>
    private static ReadOnlySpan<byte> Field(ref ReadOnlySpan<byte> bytes, out bool isQuoted, out bool hasQuotes)
    {
        hasQuotes = false;
        isQuoted = bytes.Length > 0 && bytes[0] == (byte)'"';
        if (!isQuoted)
        {
            var end = bytes.IndexOfAny(",\r"u8);
            var plain = end < 0 ? bytes : bytes[..end];
            bytes = bytes[plain.Length..];
            return plain;
        }
        for (var place = 1; place < bytes.Length; place++)
        {
            if (bytes[place] != (byte)'"')
                continue;
            if (place + 1 < bytes.Length && bytes[place + 1] == (byte)'"')
            {
                hasQuotes = true;
                place++;
                continue;
            }
            var quoted = bytes[1..place];
            bytes = bytes[(place + 1)..];
            return quoted;
        }
        throw new FormatException("Quotes are opened and not closed.");
    }

    private static void Expect(ref ReadOnlySpan<byte> bytes, ReadOnlySpan<byte> what)
    {
        if (!bytes.StartsWith(what))
            throw new FormatException("A row has more or fewer fields than the table has columns.");
        bytes = bytes[what.Length..];
    }

    private static void Write<T>(T number, IBufferWriter<byte> to)
        where T : IUtf8SpanFormattable
    {
        var place = to.GetSpan(40);
        if (!number.TryFormat(place, out var length, default, CultureInfo.InvariantCulture))
            throw new InvalidOperationException("A number is longer than 40 characters.");
        to.Advance(length);
    }

    private static void WriteQuoted(string text, IBufferWriter<byte> to)
    {
        to.Write("\""u8);
        Encoding.UTF8.GetBytes(text.Replace("\"", "\"\"", StringComparison.Ordinal), to);
        to.Write("\""u8);
    }
}

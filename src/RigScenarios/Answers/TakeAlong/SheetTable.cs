using System.Globalization;
using System.Text;
using RigScenarios.Files;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>A column of numbers or of texts.</summary>
/// <param name="Name">What stands in it: "mass".</param>
/// <param name="Unit">The unit of its numbers; empty for texts and for what is counted.</param>
/// <param name="From">What its numbers count from, where the unit alone does not say it; or empty.</param>
public sealed record SheetColumn(string Name, string Unit = "", string From = "")
{
    /// <summary>Its heading in a file of numbers: "from (h since midnight of the first day)".</summary>
    public string Heading => Unit.Length == 0 ? Name : $"{Name} ({$"{Unit} {From}".TrimEnd()})";

    /// <summary>Its name in JSON: "from_h".</summary>
    public string Key => $"{Name}_{Unit.Replace("%", "percent", StringComparison.Ordinal)}".TrimEnd('_').Replace(' ', '_');
}

/// <summary>A cell: a text, a number, or nothing there.</summary>
public readonly record struct SheetCell
{
    /// <summary>The text; null where it is none.</summary>
    public string? Text { get; private init; }

    /// <summary>The number, in the unit of its column; null where it is none.</summary>
    public decimal? Number { get; private init; }

    /// <summary>A text; nothing there where it is null or empty.</summary>
    /// <param name="text">The text.</param>
    public static SheetCell Of(string? text) => new() { Text = string.IsNullOrEmpty(text) ? null : text };

    /// <summary>A number, rounded to four decimals, which is beyond what any of these figures means; nothing there where it is
    /// null.</summary>
    /// <param name="number">The number; finite.</param>
    public static SheetCell Of(double? number) => new() { Number = number is { } known ? Math.Round((decimal)known, 4) : null };

    /// <summary>An amount, as exact as it is; nothing there where it is null.</summary>
    /// <param name="number">The amount.</param>
    public static SheetCell Of(decimal? number) => new() { Number = number };
}

/// <summary>A sheet as a table for spreadsheets: what stands on it once more, numbers as numbers. Nothing is left out of
/// it.</summary>
/// <param name="Columns">The columns, each with its unit.</param>
/// <param name="Rows">The rows, a cell a column.</param>
public sealed record SheetTable(IReadOnlyList<SheetColumn> Columns, IReadOnlyList<IReadOnlyList<SheetCell>> Rows)
{
    /// <summary>
    /// The table as comma-separated values (RFC 4180): the mark at its start by which spreadsheets know UTF-8, units in the
    /// headings, texts in quotes, numbers never, an empty field where there is nothing (docs/take-along.md).
    /// </summary>
    public string ToCsv()
    {
        var text = new StringBuilder("\uFEFF");
        text.AppendJoin(',', Columns.Select(column => CsvField.Quoted(column.Heading))).Append("\r\n");
        foreach (var row in Rows)
            text.AppendJoin(',', row.Select(Field)).Append("\r\n");
        return text.ToString();
    }

    private static string Field(SheetCell cell) => cell switch
    {
        { Text: { } text } => CsvField.Quoted(text),
        { Number: { } number } => number.ToString("0.############", CultureInfo.InvariantCulture),
        _ => "",
    };
}

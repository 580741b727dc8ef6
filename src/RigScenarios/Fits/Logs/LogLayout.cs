using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Fits.Logs;

/// <summary>How the text of a log is laid out: separator, decimal mark, where the rows begin, and its three columns.</summary>
/// <param name="Separator">What stands between two columns.</param>
/// <param name="DecimalMark">The decimal mark.</param>
/// <param name="FirstRow">Index of the first line with a row.</param>
/// <param name="Quoted">Whether cells stand in quotes.</param>
/// <param name="Columns">Time, voltage and current.</param>
internal sealed record LogLayout(
    char Separator, char DecimalMark, int FirstRow, bool Quoted, IReadOnlyList<ReadColumn> Columns)
{
    /// <summary>What a log looks like, for messages.</summary>
    public const string Example = "a line with the names of the columns, such as \"time_s,voltage_V,current_A\", "
        + "and rows of numbers below it, such as \"60,16.52,1.59\"";

    /// <summary>A line is a row if it has this many numbers: one of the three may be missing.</summary>
    private const int LeastNumbers = 2;

    /// <summary>The last of the lines that are held tell separator and decimal mark: they are rows.</summary>
    private const int LinesToCount = 40;

    private static readonly LogQuantity[] Quantities = [LogQuantity.Time, LogQuantity.Voltage, LogQuantity.Current];

    /// <summary>Finds the layout; null if there is none, and what is wrong is in the log.</summary>
    public static LogLayout? Find(LogHead head, LogColumns asked, ReadLog log)
    {
        var (separator, decimalMark, numbers) = FindSeparator(head.Lines, asked);
        if (numbers == 0)
        {
            log.Error(new TextPlace(1, 1), "", $"No rows of numbers in the first {head.Lines.Count} lines.", Example);
            return null;
        }
        var first = FindFirstRow(head.Lines, separator, decimalMark);
        if (first < 0)
        {
            log.Error(new TextPlace(1, 1), "",
                $"No row with a time, a voltage and a current in the first {head.Lines.Count} lines.", Example);
            return null;
        }
        // A lone quote is dirt.
        var quoted = head.Lines.Skip(first).Any(line => line.AsSpan().Count('"') is > 0 and var quotes && quotes % 2 == 0);
        var columns = FindColumns(head, separator, first, asked, log);
        return columns is null ? null : new(separator, decimalMark, first, quoted, columns);
    }

    /// <summary>The first line with numbers and as many cells as most lines with numbers have; -1 if there is none.</summary>
    private static int FindFirstRow(IReadOnlyList<string> lines, char separator, char decimalMark)
    {
        var cells = lines.Select(line => LogCells.Numbers(line, separator, decimalMark) >= LeastNumbers
            ? LogCells.Of(line, separator).Count : 0).ToArray();
        var usual = cells.Where(count => count > 0).GroupBy(count => count).MaxBy(group => group.Count())?.Key;
        return usual is { } width ? Array.IndexOf(cells, width) : -1;
    }

    /// <summary>Separator and decimal mark with which the most numbers are read in the first lines.</summary>
    private static (char Separator, char Decimal, int Numbers) FindSeparator(IReadOnlyList<string> lines, LogColumns asked)
    {
        var best = (Separator: asked.Separator ?? ',', Decimal: asked.DecimalMark ?? '.', Numbers: 0);
        char[] separators = asked.Separator is { } one ? [one] : LogCells.Separators;
        char[] marks = asked.DecimalMark is { } told ? [told] : ['.', ','];
        foreach (var separator in separators)
        {
            foreach (var mark in marks)
            {
                // In quotes a comma can be both.
                if (mark == separator && !lines.Any(line => line.Contains('"', StringComparison.Ordinal)))
                    continue;
                var numbers = lines.TakeLast(LinesToCount).Sum(line => LogCells.Numbers(line, separator, mark));
                if (numbers > best.Numbers)
                    best = (separator, mark, numbers);
            }
        }
        return best;
    }

    private static List<ReadColumn>? FindColumns(LogHead head, char separator, int firstRow, LogColumns asked, ReadLog log)
    {
        var best = new HeaderLine(0, [], []);
        foreach (var header in HeaderLine.Above(head.Lines, separator, firstRow))
        {
            var columns = Quantities.Select(quantity => header.Find(quantity, asked[quantity])).ToList();
            if (columns.TrueForAll(column => column is not null)
                && columns.Select(column => column!.Number).Distinct().Count() == 3)
                return columns!;
            if (header.Found(asked) >= best.Found(asked))
                best = header;
        }
        if (ByNumber(asked, LogCells.Of(head.Lines[firstRow], separator).Count) is { } numbered)
            return numbered;
        Tell(best, firstRow, asked, log);
        return null;
    }

    /// <summary>All three columns by their numbers; null if they are not given so.</summary>
    private static List<ReadColumn>? ByNumber(LogColumns asked, int count)
    {
        var columns = new List<ReadColumn>();
        foreach (var quantity in Quantities)
        {
            if (asked[quantity] is not { } column || !int.TryParse(column.Name, out var number) || number < 1 || number > count)
                return null;
            columns.Add(new(quantity, column.Name, number, column.Factor ?? 1, Guessed: false,
                column.Factor is null ? UnitFrom.Usual : UnitFrom.Told));
        }
        return columns;
    }

    private static void Tell(HeaderLine best, int firstRow, LogColumns asked, ReadLog log)
    {
        if (best.Names.Count == 0)
        {
            log.Error(new TextPlace(firstRow + 1, 1), "",
                "The rows begin without a line that names the columns, so that nothing says which is the voltage.",
                "such a line, or the columns by their numbers from the left, such as 1, 2 and 3");
            return;
        }
        var names = string.Join(", ", best.Names.Where(name => name.Length > 0).Select(name => $"\"{name}\""));
        var at = new TextPlace(best.Line + 1, 1);
        foreach (var quantity in Quantities)
        {
            var what = quantity.ToString().ToLowerInvariant();
            var found = best.Candidates(quantity);
            if (best.Find(quantity, asked[quantity]) is not null)
                continue;
            if (asked[quantity] is { } column)
            {
                log.Error(at, what, $"No column is called \"{column.Name}\"; there are {names}.", "the name of a column",
                    log.Nearest(column.Name, best.Names));
            }
            else if (found.Count > 1)
            {
                log.Error(at, what, $"Several columns may be the {what}: "
                    + $"{string.Join(", ", found.Select(name => $"\"{name}\""))}.",
                    "one of them, named");
            }
            else
            {
                log.Error(at, what, $"No column looks like the {what}; there are {names}.",
                    $"a column called \"{what}\", or the name of the one that holds it");
            }
        }
        if (!log.HasErrors)
            log.Error(at, "", "Two of time, voltage and current are in one column.", "three columns");
    }
}

namespace RigScenarios.Fits.Logs;

/// <summary>A line above the rows that may name the columns, with the line of units below it where there is one.</summary>
internal sealed class HeaderLine(int line, IReadOnlyList<string> names, IReadOnlyList<string> units)
{
    /// <summary>A line with this many units names no columns, but says in which units they are.</summary>
    private const int LeastUnits = 2;

    /// <summary>Index of the line.</summary>
    public int Line { get; } = line;

    /// <summary>The names, from the left.</summary>
    public IReadOnlyList<string> Names { get; } = names;

    /// <summary>All lines above the first row, the nearest one first.</summary>
    public static IEnumerable<HeaderLine> Above(IReadOnlyList<string> lines, char separator, int firstRow)
    {
        for (var line = firstRow - 1; line >= 0; line--)
        {
            var names = LogCells.Of(lines[line], separator);
            if (names.Count < 3)
                continue;
            // "time;voltage" above "s;mV".
            if (line > 0 && names.Count(HeaderWords.IsUnit) >= LeastUnits
                && LogCells.Of(lines[line - 1], separator) is var above && above.Count == names.Count)
                yield return new(line - 1, above, names);
            yield return new(line, names, []);
        }
    }

    /// <summary>How many of the three columns are found.</summary>
    public int Found(LogColumns asked) =>
        Enum.GetValues<LogQuantity>().Count(quantity => Find(quantity, asked[quantity]) is not null);

    /// <summary>The names that fit a quantity equally well.</summary>
    public IReadOnlyList<string> Candidates(LogQuantity quantity) => [.. Best(quantity).Select(index => Names[index])];

    /// <summary>The column of a quantity; null if there is none, or if two fit equally well.</summary>
    public ReadColumn? Find(LogQuantity quantity, LogColumn? asked)
    {
        if (asked is not null)
        {
            var told = Names.Index().Where(pair => pair.Item.Equals(asked.Name.Trim(), StringComparison.OrdinalIgnoreCase))
                .Select(pair => pair.Index).ToList();
            return told.Count > 0 ? Read(quantity, told[0], asked.Factor, guessed: false) : null;
        }
        var best = Best(quantity);
        // The first of several clocks is as good as the others.
        return best.Count == 1 || (best.Count > 1 && quantity == LogQuantity.Time)
            ? Read(quantity, best[0], null, guessed: true) : null;
    }

    private ReadColumn Read(LogQuantity quantity, int index, double? factor, bool guessed)
    {
        var unit = HeaderWords.Factor(Whole(index), quantity);
        return new(quantity, Names[index], index + 1, factor ?? unit ?? 1, guessed,
            factor is not null ? UnitFrom.Told : unit is not null ? UnitFrom.Header : UnitFrom.Usual);
    }

    private List<int> Best(LogQuantity quantity)
    {
        var scores = Enumerable.Range(0, Names.Count).Select(index => HeaderWords.Score(Whole(index), quantity)).ToList();
        var most = scores.Count == 0 ? 0 : scores.Max();
        return most == 0 ? [] : [.. scores.Index().Where(pair => pair.Item == most).Select(pair => pair.Index)];
    }

    /// <summary>A name with its unit.</summary>
    private string Whole(int index) => units.Count > 0 ? $"{Names[index]} {units[index]}" : Names[index];
}

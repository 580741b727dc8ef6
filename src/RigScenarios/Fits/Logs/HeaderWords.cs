using System.Collections.Frozen;

namespace RigScenarios.Fits.Logs;

/// <summary>What the words above a column say of its quantity and unit.</summary>
internal static class HeaderWords
{
    private const int Named = 20;
    private const int Symbol = 10;

    private static readonly FrozenDictionary<string, (LogQuantity Quantity, double Factor)> Units =
        new Dictionary<string, (LogQuantity, double)>
        {
            ["s"] = (LogQuantity.Time, 1),
            ["sec"] = (LogQuantity.Time, 1),
            ["secs"] = (LogQuantity.Time, 1),
            ["second"] = (LogQuantity.Time, 1),
            ["seconds"] = (LogQuantity.Time, 1),
            ["ms"] = (LogQuantity.Time, 1e-3),
            ["msec"] = (LogQuantity.Time, 1e-3),
            ["millis"] = (LogQuantity.Time, 1e-3),
            ["milliseconds"] = (LogQuantity.Time, 1e-3),
            ["us"] = (LogQuantity.Time, 1e-6),
            ["µs"] = (LogQuantity.Time, 1e-6),
            ["μs"] = (LogQuantity.Time, 1e-6),
            ["min"] = (LogQuantity.Time, 60),
            ["minutes"] = (LogQuantity.Time, 60),
            ["h"] = (LogQuantity.Time, 3600),
            ["hr"] = (LogQuantity.Time, 3600),
            ["hours"] = (LogQuantity.Time, 3600),
            ["v"] = (LogQuantity.Voltage, 1),
            ["volt"] = (LogQuantity.Voltage, 1),
            ["volts"] = (LogQuantity.Voltage, 1),
            ["mv"] = (LogQuantity.Voltage, 1e-3),
            ["millivolts"] = (LogQuantity.Voltage, 1e-3),
            ["a"] = (LogQuantity.Current, 1),
            ["amp"] = (LogQuantity.Current, 1),
            ["amps"] = (LogQuantity.Current, 1),
            ["ampere"] = (LogQuantity.Current, 1),
            ["amperes"] = (LogQuantity.Current, 1),
            ["ma"] = (LogQuantity.Current, 1e-3),
            ["milliamps"] = (LogQuantity.Current, 1e-3),
        }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, (LogQuantity Quantity, int Score)> Words =
        new Dictionary<string, (LogQuantity, int)>
        {
            ["time"] = (LogQuantity.Time, Named),
            ["elapsed"] = (LogQuantity.Time, Named),
            ["clock"] = (LogQuantity.Time, Named),
            ["timestamp"] = (LogQuantity.Time, Named),
            ["datetime"] = (LogQuantity.Time, Named),
            ["uptime"] = (LogQuantity.Time, Named),
            ["t"] = (LogQuantity.Time, Symbol),
            ["voltage"] = (LogQuantity.Voltage, Named),
            ["vbat"] = (LogQuantity.Voltage, Named),
            ["vbatt"] = (LogQuantity.Voltage, Named),
            ["vbus"] = (LogQuantity.Voltage, Named),
            ["u"] = (LogQuantity.Voltage, Symbol),
            ["volts"] = (LogQuantity.Voltage, Symbol),
            ["current"] = (LogQuantity.Current, Named),
            ["ibat"] = (LogQuantity.Current, Named),
            ["ibatt"] = (LogQuantity.Current, Named),
            ["ibus"] = (LogQuantity.Current, Named),
            ["amps"] = (LogQuantity.Current, Symbol),
            ["i"] = (LogQuantity.Current, Symbol),
        }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>How well a column's name fits a quantity; 0 if it does not. More words than needed count against it, so that
    /// "voltage" goes before "voltage of cell 1".</summary>
    public static int Score(string name, LogQuantity quantity)
    {
        var words = Split(name);
        if (words.Count == 0)
            return 0;
        var unit = UnitOf(words);
        if (unit is { } known && known.Quantity != quantity)
            return 0;
        var best = unit is null ? 0 : words.Count == 1 ? Symbol : 1;
        foreach (var word in words)
        {
            if (Words.TryGetValue(word, out var found))
            {
                // "Current time" is a time if no unit says otherwise.
                if (found.Quantity != quantity && found.Quantity == LogQuantity.Time && unit is null)
                    return 0;
                if (found.Quantity == quantity)
                    best = Math.Max(best, found.Score);
            }
        }
        return best == 0 ? 0 : Math.Max(1, best + (unit is null ? 0 : 2) - words.Count);
    }

    /// <summary>The factor to s, V or A by the unit in a column's name; null if none stands there.</summary>
    public static double? Factor(string name, LogQuantity quantity) =>
        UnitOf(Split(name)) is { } unit && unit.Quantity == quantity ? unit.Factor : null;

    /// <summary>Whether a cell holds nothing but a unit, such as "[mV]".</summary>
    public static bool IsUnit(string cell) => Split(cell) is [var only] && Units.ContainsKey(only);

    /// <summary>A unit is the last word, as in "time_s", "U (mV)" and "Voltage/V", or the only one.</summary>
    private static (LogQuantity Quantity, double Factor)? UnitOf(List<string> words) =>
        words.Count > 0 && Units.TryGetValue(words[^1], out var unit) ? unit : null;

    private static List<string> Split(string name)
    {
        var words = new List<string>();
        var start = -1;
        for (var place = 0; place <= name.Length; place++)
        {
            var inWord = place < name.Length && char.IsLetterOrDigit(name[place]);
            if (inWord && start < 0)
                start = place;
            if (inWord || start < 0)
                continue;
            words.Add(name[start..place]);
            start = -1;
        }
        return words;
    }
}

using System.Globalization;
using System.Text.RegularExpressions;

namespace RigScenarios.Tests.Mutations;

/// <summary>Changes of a text, each at a place that is drawn; a text that has no such place stays as it is.</summary>
internal sealed partial class TextChanges
{
    private static readonly string[] OddNumbers =
    [
        "0", "-0", "0.0", "-1", "1e308", "-1e308", "1e-320", "1e999", "5e-324", "NaN", ".nan", "Infinity",
        "-Infinity", ".inf", "∞",
        "null", "~", "true", "0x10", "1_000", "1,5", "1.", ".5", "1e", "--1", "+1", "1 000", "99999999999999999999999999999999",
        "0.30000000000000004", "1e-9", "1e9", "2147483648", "-2147483649", "1/0", "''", "\"\"", "[]", "{}",
    ];

    private static readonly string[] Units =
    [
        "W", "Wh", "V", "A", "Ah", "mAh", "mm", "cm", "m", "km", "g", "kg", "lb", "oz", "N·m", "°C", "°F", "K", "%",
        "h", "min", "s",
        "d", "mΩ", "Ω", "mm²", "AWG", "°", "deg", "Pa", "bar", "km/h", "m/s", "N", "kN", "J", "EUR", "", "W W", "µm", "GW", "fs",
    ];

    private static readonly string[] OddTokens =
    [
        "&a ", "*a", "!!binary ", "!thing ", "<<: *a", "? ", "|\n", ">-\n", "---\n", "...\n", "%YAML 9.9\n", "[",
        "]", "{", "}", ",",
        ": ", "- ", "#", "'", "\"", "\t", "@", "`", "\\x00", "${HOME}", "../../../../etc/passwd", "/dev/zero",
        "<b>", "[red]", "[/]",
        "{0}", "%s", "=1+1", "\r", "\n\n\n",
    ];

    private static readonly string[] OddTexts =
    [
        "\u0000", "\u0007", "\u001b[31m", "\u0085", "\u009b", "\u00a0", "\u200b", "\u200f", "\u202e", "\u2028",
        "\u2029", "\ufeff",
        "\ufffd", "\uffff", "e\u0301\u0301\u0301", "😀", "𝟙", "ﬁ", "İ", "ß", "К", "−", "٫",
    ];

    private static readonly double[] Factors = [0, 0.001, 0.1, 0.5, 0.9, 0.99, 1.01, 1.1, 2, 3, 10, 100, 1000, 1e6, -1];

    private readonly IReadOnlyList<string> lines;
    private readonly IReadOnlyList<string> keys;
    private readonly ILookup<string, string> values;

    /// <param name="texts">Where foreign lines, keys and values are taken from.</param>
    public TextChanges(IReadOnlyList<string> texts)
    {
        lines = [.. texts.SelectMany(text => text.Split('\n')).Where(line => line.Trim().Length > 0)];
        var fields = texts.SelectMany(text => Field().Matches(text)).ToList();
        keys = [.. fields.Select(field => field.Groups["key"].Value).Distinct()];
        values = fields.ToLookup(field => field.Groups["key"].Value, field => field.Groups["value"].Value);
    }

    public string ScaleNumber(Random random, string text) => InPlace(random, text, Number(), found =>
        (double.Parse(found.Value, CultureInfo.InvariantCulture) * Pick(random, Factors)).ToString(CultureInfo.InvariantCulture));

    public string OddNumber(Random random, string text) => InPlace(random, text, Number(), _ => Pick(random, OddNumbers));

    public string OtherUnit(Random random, string text) => InPlace(random, text, Unit(), _ => Pick(random, Units));

    public string OtherDigits(Random random, string text) => InPlace(random, text, Number(), found =>
    {
        var zero = Pick(random, ['٠', '۰', '०', '０', '०', '௦']);
        return string.Concat(found.Value.Select(c => char.IsAsciiDigit(c) ? (char)(zero + (c - '0')) : c));
    });

    public string ValueOfSameKey(Random random, string text) => InPlace(random, text, Field(), found =>
        $"{found.Groups["key"].Value}: {Pick(random, [.. values[found.Groups["key"].Value].DefaultIfEmpty("")])}");

    public string OtherKey(Random random, string text) => InPlace(random, text, Field(), found =>
        $"{Pick(random, keys)}: {found.Groups["value"].Value}");

    public string LeaveOut(Random random, string text) => InPlace(random, text, FieldWithComma(), _ => "");

    public string Twice(Random random, string text) => InPlace(random, text, FieldWithComma(), found =>
        found.Value.Contains(',', StringComparison.Ordinal) ? found.Value + found.Value : $"{found.Value}, {found.Value}");

    public string SwapValues(Random random, string text)
    {
        var fields = Field().Matches(text);
        if (fields.Count < 2)
            return text;
        var (one, other) = (fields[random.Next(fields.Count)].Groups["value"], fields[random.Next(fields.Count)].Groups["value"]);
        if (one.Index == other.Index)
            return text;
        var (first, second) = one.Index < other.Index ? (one, other) : (other, one);
        return string.Concat(text.AsSpan(0, first.Index), second.Value,
            text.AsSpan(first.Index + first.Length, second.Index - first.Index - first.Length))
            + string.Concat(first.Value, text.AsSpan(second.Index + second.Length));
    }

    public string DropLine(Random random, string text) => InLines(random, text, (all, at) => all.RemoveAt(at));

    public string DoubleLine(Random random, string text) => InLines(random, text, (all, at) => all.Insert(at, all[at]));

    public string ForeignLine(Random random, string text) =>
        InLines(random, text, (all, at) => all.Insert(at, Pick(random, lines)));

    public string Indent(Random random, string text) => InLines(random, text, (all, at) =>
        all[at] = new string(' ', random.Next(8)) + all[at].TrimStart());

    /// <summary>A line with what stands below it, many times under names of its own.</summary>
    public string ManyBlocks(Random random, string text) => InLines(random, text, (all, at) =>
    {
        var depth = Depth(all[at]);
        var end = at + 1;
        while (end < all.Count && all[end].Trim().Length > 0 && Depth(all[end]) > depth)
            end++;
        var block = all.GetRange(at, end - at);
        foreach (var number in Enumerable.Range(2, random.Next(1, 60)))
            all.InsertRange(end, [Name().Replace(block[0], name => $"{name.Value}-{number}", 1), .. block.Skip(1)]);
    });

    public string OddToken(Random random, string text) => At(random, text, Pick(random, OddTokens));

    public string OddCharacters(Random random, string text)
    {
        for (var left = 1 + random.Next(3); left > 0; left--)
            text = At(random, text, Pick(random, OddTexts));
        return text;
    }

    public string LongText(Random random, string text) =>
        At(random, text, new string(Pick(random, ['x', '9', ' ', '"', 'é']), random.Next(1, 100_000)));

    public string CutOff(Random random, string text) => text[..random.Next(text.Length + 1)];

    public string DeepNesting(Random random, string text)
    {
        var depth = (int)Math.Pow(10, 1 + (random.NextDouble() * 3));
        return random.Next(3) switch
        {
            0 => InPlace(random, text, Field(), found =>
                $"{found.Groups["key"].Value}: {new string('[', depth)}1{new string(']', depth)}"),
            1 => InPlace(random, text, Field(), found =>
                $"{found.Groups["key"].Value}: {string.Concat(Enumerable.Repeat("{a: ", depth))}1{new string('}', depth)}"),
            _ => text + "\nnote:\n" + string.Concat(Enumerable.Range(1, Math.Min(depth, 1000))
                .Select(level => new string(' ', level) + "a:\n")),
        };
    }

    private static string InPlace(Random random, string text, Regex places, Func<Match, string> instead)
    {
        var found = places.Matches(text);
        if (found.Count == 0)
            return text;
        var place = found[random.Next(found.Count)];
        return string.Concat(text.AsSpan(0, place.Index), instead(place), text.AsSpan(place.Index + place.Length));
    }

    private static string InLines(Random random, string text, Action<List<string>, int> change)
    {
        var all = text.Split('\n').ToList();
        change(all, random.Next(all.Count));
        return string.Join('\n', all);
    }

    private static string At(Random random, string text, string piece) => text.Insert(random.Next(text.Length + 1), piece);

    private static T Pick<T>(Random random, IReadOnlyList<T> all) => all[random.Next(all.Count)];

    private static int Depth(string line) => line.Length - line.TrimStart(' ').Length;

    [GeneratedRegex(@"(?<![\w.])-?\d+(\.\d+)?", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<=\d )[A-Za-z°µΩ·²/%]+|(?<=\d)%", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Unit();

    [GeneratedRegex(@"(?<key>[a-z][a-z0-9-]*): (?<value>[^\s,{}\[\]#][^,{}\[\]\n#]*)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Field();

    [GeneratedRegex(@"[a-z][a-z0-9-]*: [^\s,{}\[\]#][^,{}\[\]\n#]*(, )?",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex FieldWithComma();

    [GeneratedRegex(@"[a-z][a-z0-9-]*(?=:)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Name();
}

using System.Globalization;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>Reads a spread the ways people write it.</summary>
internal static class SpreadText
{
    private const string Accepted = "\"PATH=190 Wh +- 8 Wh\" (68 of 100 within), \"PATH=1.3 +- a factor of 1.2\", \"PATH=between "
        + "170 Wh and 200 Wh\", \"PATH=between 170 Wh and 200 Wh, most likely 190 Wh\"; behind each also \", at least 150 Wh\", "
        + "\", at most 210 Wh\" or \", within 150 Wh..210 Wh\"";

    // What people put between a value and what it may be off by.
    private static readonly string[] GiveOrTake = ["+-", "+/-", "±", "give or take"];

    private static readonly string[] FactorWords = ["a factor of", "factor of", "a factor", "factor"];

    /// <summary>Reads a spread.</summary>
    /// <param name="scenario">The scenario that has the field.</param>
    /// <param name="path">The field.</param>
    /// <param name="text">What stands behind the path.</param>
    /// <exception cref="ScenarioProblemsException">It can't be read.</exception>
    public static Spread Read(Scenario scenario, string path, string text)
    {
        var clauses = Clauses.Of(path, text);
        // All values of the field are read together: each unit counts, the first is the one of the spread.
        string[] texts = [.. clauses.Values];
        if (FieldNumbers.Of(scenario, path, texts) is not { } numbers)
            throw Problem(path, $"{string.Join(", ", texts.Select(one => $"\"{one}\""))} are not values of the same quantity.");
        var (unit, read) = (numbers.Unit, texts.Zip(numbers.Numbers).DistinctBy(pair => pair.First).ToDictionary());
        double? Of(string? one) => one is null ? null : read[one];
        try
        {
            Spread shape = clauses switch
            {
                { Low: { } low, High: { } high, Likely: null } => new UniformSpread(unit, read[low], read[high]),
                { Low: { } low, High: { } high, Likely: { } likely } =>
                    new TriangularSpread(unit, read[low], read[likely], read[high]),
                { Off: { } off } when Factor(path, off) is { } factor => new LognormalSpread(unit, read[clauses.Middle!], factor),
                { Off: { } off } =>
                    new NormalSpread(unit, read[clauses.Middle!], Deviation(path, unit, read[clauses.Middle!], off)),
                _ => throw Problem(path, $"Found \"{text}\", which says no spread."),
            };
            return clauses.AtLeast is null && clauses.AtMost is null ? shape
                : shape.Within(Of(clauses.AtLeast), Of(clauses.AtMost));
        }
        catch (ArgumentException exception)
        {
            throw Problem(path, exception.Message, null);
        }
    }

    /// <summary>A problem with what is accepted.</summary>
    public static ScenarioProblemsException Problem(string path, string problem, string? accepted = Accepted) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, path, problem, accepted)]);

    private static double? Factor(string path, string text)
    {
        var word = Array.Find(FactorWords, one => text.StartsWith(one, StringComparison.OrdinalIgnoreCase));
        return word is null ? null
            : double.TryParse(text[word.Length..], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number
            : throw Problem(path, $"Found \"{text}\", in which the factor is no number.",
                "such as \"1.3 +- a factor of 1.2\"");
    }

    /// <summary>A deviation in the unit, or as a part of the middle; of a figure that is itself in percent it is
    /// points.</summary>
    private static double Deviation(string path, ValueUnit unit, double middle, string text)
    {
        if (unit.Difference(text) is { } own)
            return TenDigits.Of(own);
        if (text.EndsWith('%') && double.TryParse(text[..^1], NumberStyles.Float, CultureInfo.InvariantCulture, out var percent))
        {
            return unit.HasZero ? TenDigits.Of(Math.Abs(middle) * percent / 100)
                : throw Problem(path, $"{unit.Text(middle)} has no percent to be off by.", $"such as \"{unit.Text(middle)} +- "
                    + $"{unit.DifferenceText(2)}\"");
        }
        throw Problem(path, $"Found \"{text}\" behind +-, which is no difference of two values of this field.",
            $"such as \"{unit.Text(middle)} +- {unit.DifferenceText(2)}\"" + (unit.HasZero ? " or \"5 %\"" : ""));
    }

    /// <summary>The pieces of a spread, still as texts.</summary>
    private sealed record Clauses
    {
        public string? Middle { get; private init; }

        public string? Off { get; private init; }

        public string? Low { get; private init; }

        public string? High { get; private init; }

        public string? Likely { get; private init; }

        public string? AtLeast { get; private init; }

        public string? AtMost { get; private init; }

        /// <summary>Those that are values of the field; that of the spread's unit first.</summary>
        public IEnumerable<string> Values =>
            new[] { Middle, Low, High, Likely, AtLeast, AtMost }.OfType<string>();

        public static Clauses Of(string path, string text)
        {
            var pieces = WrittenDigits.Plain(text).Split(',');
            return pieces.Skip(1).Aggregate(Shape(path, pieces[0].Trim()), (clauses, piece) => With(path, clauses, piece.Trim()));
        }

        private static Clauses Shape(string path, string text)
        {
            if (Behind(text, "between") is { } ends)
            {
                var and = ends.IndexOf(" and ", StringComparison.OrdinalIgnoreCase);
                return and > 0 ? new Clauses { Low = ends[..and].Trim(), High = ends[(and + 5)..].Trim() }
                    : throw Problem(path, $"Found \"{text}\", in which the second end is missing.");
            }
            foreach (var sign in GiveOrTake)
            {
                if (text.IndexOf(sign, StringComparison.OrdinalIgnoreCase) is var at and > 0)
                    return new Clauses { Middle = text[..at].Trim(), Off = text[(at + sign.Length)..].Trim() };
            }
            throw Problem(path, $"Found \"{text}\", which says no spread.");
        }

        private static Clauses With(string path, Clauses clauses, string text)
        {
            if (Behind(text, "most likely") is { } likely)
            {
                return clauses is { Low: not null, Likely: null } ? clauses with { Likely = likely }
                    : throw Problem(path, $"\"{text}\" stands behind \"between … and …\", once.");
            }
            if (Behind(text, "at least") is { } least)
                return clauses.WithBounds(path, text, least, null);
            if (Behind(text, "at most") is { } most)
                return clauses.WithBounds(path, text, null, most);
            if (Behind(text, "within") is not { } within)
                throw Problem(path, $"Found \"{text}\" behind a comma.");
            var dots = within.IndexOf("..", StringComparison.Ordinal);
            return dots > 0 ? clauses.WithBounds(path, text, within[..dots].Trim(), within[(dots + 2)..].Trim())
                : throw Problem(path, $"Found \"{text}\", in which the second end is missing.");
        }

        private static string? Behind(string text, string words) =>
            text.StartsWith(words + " ", StringComparison.OrdinalIgnoreCase) ? text[(words.Length + 1)..].Trim() : null;

        private Clauses WithBounds(string path, string text, string? low, string? high) =>
            (low is not null && AtLeast is not null) || (high is not null && AtMost is not null)
                ? throw Problem(path, $"\"{text}\" gives a bound that another one gave before.")
                : this with { AtLeast = low ?? AtLeast, AtMost = high ?? AtMost };
    }
}

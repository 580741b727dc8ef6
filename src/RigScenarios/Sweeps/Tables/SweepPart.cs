using System.Globalization;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Tables;

/// <summary>One of several parts of a sweep, each of which may run on a machine of its own. Parts are ranges of scenarios in the
/// order of the plan, equal to within one; which scenario belongs to which part depends on nothing but their number.</summary>
public sealed record SweepPart
{
    /// <summary>More parts than this are refused.</summary>
    public const int MostParts = 100_000;

    /// <summary>A part.</summary>
    /// <param name="number">Which, from 1.</param>
    /// <param name="of">How many there are, 1 to <see cref="MostParts"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such part.</exception>
    public SweepPart(int number, int of)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(of, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(of, MostParts);
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, of);
        (Number, Of) = (number, of);
    }

    /// <summary>All of a sweep.</summary>
    public static SweepPart Whole { get; } = new(1, 1);

    /// <summary>Which part, from 1.</summary>
    public int Number { get; }

    /// <summary>How many parts there are.</summary>
    public int Of { get; }

    /// <summary>Whether it is all of the sweep.</summary>
    public bool IsWhole => Of == 1;

    /// <summary>Reads <c>K/N</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="rows">How many scenarios the sweep has: no part is empty.</param>
    /// <param name="option">What the text stands behind, for the message.</param>
    /// <exception cref="ScenarioProblemsException">There is no such part.</exception>
    public static SweepPart Parse(string text, long rows, string option = "--part")
    {
        ArgumentNullException.ThrowIfNull(text);
        var most = (int)Math.Min(rows, MostParts);
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash > 0 && Whole(text[..slash], out var number) && Whole(text[(slash + 1)..], out var of)
            && number >= 1 && number <= of && of <= most)
            return new SweepPart(number, of);
        throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, option, $"Found \"{text}\".",
            $"K/N: part K of N, K from 1 to N, N at most {most} here, such as \"1/{Math.Min(4, most)}\"")]);

        static bool Whole(string digits, out int value) =>
            int.TryParse(digits.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }

    /// <summary>The number of its first scenario.</summary>
    /// <param name="rows">How many scenarios the sweep has.</param>
    public long First(long rows) => (long)((Int128)rows * (Number - 1) / Of);

    /// <summary>How many scenarios it has.</summary>
    /// <param name="rows">How many the whole sweep has.</param>
    public long Count(long rows) => (long)((Int128)rows * Number / Of) - First(rows);

    /// <inheritdoc/>
    public override string ToString() => $"{Number}/{Of}";
}

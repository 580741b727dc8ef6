using System.Globalization;

namespace RigScenarios.Tests.Shared;

/// <summary>Cases drawn by hand, each from a source of its own, so that a red one can be repeated alone.</summary>
internal static class Drawn
{
    /// <summary>The check on so many cases, their seeds one after the other.</summary>
    public static void Cases(int firstSeed, int cases, Action<Random> check)
    {
        var wanted = Seeds.Wanted is { } text && int.TryParse(text, CultureInfo.InvariantCulture, out var seed)
            ? seed : (int?)null;
        for (var at = wanted ?? firstSeed; at < (wanted + 1 ?? firstSeed + cases); at++)
        {
            try
            {
                check(new Random(at));
            }
            catch (Exception error) when (error is not OperationCanceledException)
            {
                throw new InvalidOperationException($"Seed {at} ({Seeds.Variable}={at} repeats it): {error.Message}", error);
            }
        }
    }

    /// <summary>The same, of which at least so many are really looked at.</summary>
    public static void Cases(int firstSeed, int cases, int atLeast, Action<Random, LookedAt> check)
    {
        var looked = new LookedAt();
        Cases(firstSeed, cases, random => check(random, looked));
        if (Seeds.Wanted is null)
            looked.AtLeast(atLeast);
    }
}

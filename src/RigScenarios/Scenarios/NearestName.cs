using Quickenshtein;

namespace RigScenarios.Scenarios;

/// <summary>The valid name that a mistyped one was probably meant to be.</summary>
public static class NearestName
{
    /// <summary>The longest word that is compared: longer ones are no typing slips, and comparing costs length times
    /// length.</summary>
    private const int LongestWord = 64;

    private const int MostCandidates = 1000;

    /// <summary>
    /// The candidate with the fewest changed letters, if no more than three letters (and no more than half the word) differ;
    /// otherwise null. Upper and lower case count as equal.
    /// </summary>
    /// <param name="word">The word found.</param>
    /// <param name="candidates">The valid words.</param>
    public static string? To(string word, IEnumerable<string> candidates)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        if (string.IsNullOrEmpty(word) || word.Length > LongestWord)
            return null;
        var limit = Math.Min(3, Math.Max(1, word.Length / 2));
        var (name, distance) = candidates
            .Take(MostCandidates)
            .Where(candidate => candidate.Length <= LongestWord && Math.Abs(candidate.Length - word.Length) <= limit)
            .Select(candidate =>
                (candidate, distance: Levenshtein.GetDistance(word.ToUpperInvariant(), candidate.ToUpperInvariant())))
            .OrderBy(pair => pair.distance).ThenBy(pair => pair.candidate, StringComparer.Ordinal)
            .FirstOrDefault((candidate: "", distance: int.MaxValue));
        return distance <= limit ? name : null;
    }
}

namespace RigScenarios.Search.Rigs;

/// <summary>A part of what a search tells.</summary>
/// <param name="Title">What stands above it, without a stop.</param>
/// <param name="Lines">Its sentences; at least one.</param>
public sealed record RigSearchSection(string Title, IReadOnlyList<string> Lines);

/// <summary>What a search tells beside its rigs, part by part, each with its title: the same in every face. A part that has
/// nothing to say is left out.</summary>
public static class RigSearchSections
{
    /// <summary>What stands before the rigs: why there is none.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<RigSearchSection> Before(RigSearchResult result) =>
        Said([new("What stands in the way", RigConflictSentences.Of(result))]);

    /// <summary>What stands after the rigs: what more money buys, what each must costs, in which order to buy, how far the search
    /// goes.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<RigSearchSection> After(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Said(
        [
            new("What more money buys", RigSearchSentences.MoreMoney(result)),
            new("What each must costs", RigSearchSentences.MustPrices(result)),
            new("In which order to buy", result.Upgrades is null ? [] : [RigUpgradeSentences.Headline(result),
                .. RigUpgradeSentences.Years(result), .. RigUpgradeSentences.RestsOn(result)]),
            new("How far this goes", [.. RigSearchSentences.Work(result), .. RigSearchSentences.RestsOn(result)]),
        ]);
    }

    /// <summary>Why a rig has the parts that it has; null for one whose others were not looked at.</summary>
    /// <param name="result">The result.</param>
    /// <param name="pick">The number of the rig, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such rig.</exception>
    public static RigSearchSection? Why(RigSearchResult result, int pick)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentOutOfRangeException.ThrowIfNegative(pick);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(pick, result.Picks.Count);
        return result.Picks[pick].Others is { Count: > 0 } others ? new($"Why the parts of rig {pick + 1}",
            [.. others.Select(other => RigSearchSentences.Why(result, other))]) : null;
    }

    private static IReadOnlyList<RigSearchSection> Said(IEnumerable<RigSearchSection> sections) =>
        [.. sections.Where(section => section.Lines.Count > 0)];
}

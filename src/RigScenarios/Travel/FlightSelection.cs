using RigScenarios.Cells;

namespace RigScenarios.Travel;

/// <summary>
/// Which of the batteries fly: the most watt-hours in all that the limits on number let through, then the most batteries, then
/// the
/// fewest that need approval.
/// </summary>
/// <remarks>
/// The travellers are alike, so a limit of two a person is one of 2·N for all: whatever fills the sums can be dealt out (large
/// power banks
/// first, for only they count against two limits). For a given number of large power banks each other kind has a limit of its
/// own, so
/// taking the largest of each kind is best; trying every such number makes the choice exact.
/// </remarks>
internal static class FlightSelection
{
    /// <summary>How many of each group fly.</summary>
    /// <param name="groups">Groups that no rule on a single battery stops, with their counts.</param>
    /// <param name="rules">The edition's passenger rules.</param>
    /// <param name="travellers">How many people fly.</param>
    /// <returns>For each group, in the given order, how many fly.</returns>
    public static int[] Choose(IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups,
        PassengerRules rules, int travellers)
    {
        var large = rules.LargeSpares.Value * travellers;
        var banks = (rules.PowerBanks?.Value ?? 0) * travellers;
        int[]? best = null;
        (double WattHours, int Count, int FewApprovals) bestScore = default;
        for (var largeBanks = 0; largeBanks <= Math.Min(large, banks); largeBanks++)
        {
            var taken = new int[groups.Count];
            Take(groups, taken, BaggageKind.Installed, rules.Devices.Value * travellers);
            Take(groups, taken, BaggageKind.SmallSpare, rules.SmallSpares.Value * travellers);
            var left = Take(groups, taken, BaggageKind.LargePowerBank, largeBanks);
            Take(groups, taken, BaggageKind.LargeSpare, large - (largeBanks - left));
            Take(groups, taken, BaggageKind.SmallPowerBank, banks - (largeBanks - left));
            var score = (
                Math.Round(taken.Select((count, at) => count * groups[at].Battery.Rated.Energy.WattHours).Sum(), 6),
                taken.Sum(),
                -taken.Where((_, at) => groups[at].Check.NeedsApproval).Sum());
            if (best is null || score.CompareTo(bestScore) > 0)
                (best, bestScore) = (taken, score);
            if (left > 0)
                break;
        }
        return best!;
    }

    /// <summary>The rule on number that a battery of a kind meets when it has to stay.</summary>
    public static Sourced<int> LimitOf(BaggageKind kind, PassengerRules rules) => kind switch
    {
        BaggageKind.Installed => rules.Devices,
        BaggageKind.SmallSpare => rules.SmallSpares,
        BaggageKind.LargeSpare => rules.LargeSpares,
        _ => rules.PowerBanks ?? rules.LargeSpares,
    };

    private static int Take(IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups, int[] taken,
        BaggageKind kind, int places)
    {
        foreach (var at in Enumerable.Range(0, groups.Count).Where(at => groups[at].Check.Kind == kind)
            .OrderByDescending(at => groups[at].Battery.Rated.Energy.WattHours))
        {
            taken[at] = Math.Min(places, groups[at].Battery.Count);
            places -= taken[at];
        }
        return places;
    }
}

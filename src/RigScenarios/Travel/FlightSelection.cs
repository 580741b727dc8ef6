using RigScenarios.Cells;

namespace RigScenarios.Travel;

/// <summary>
/// Which of the batteries fly: the most watt-hours in all that the limits on number let through, then the most batteries, then
/// the
/// fewest that need approval.
/// </summary>
/// <remarks>
/// The travellers are alike, so a limit of two a person is one of 2·N for all: whatever fills the sums can be dealt out (large
/// power banks first, for they alone count against two limits besides that on all spare ones, then what has a limit of its
/// own, and the others last). For a given number of large power banks the limits that are left lie one within the other, so
/// taking the largest that still has room is best; trying every such number makes the choice exact.
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
        var most = Math.Min(rules.Spares.Value, Math.Min(rules.LargeSpares.Value, rules.PowerBanks?.Value ?? 0)) * travellers;
        int[]? best = null;
        (double WattHours, int Count, int FewApprovals) bestScore = default;
        for (var largeBanks = 0; largeBanks <= most; largeBanks++)
        {
            var taken = new int[groups.Count];
            Take(groups, taken, BaggageKind.Installed, rules.Devices.Value * travellers);
            var left = Take(groups, taken, BaggageKind.LargePowerBank, largeBanks);
            Spares(groups, taken, rules, travellers, largeBanks - left);
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

    /// <summary>The rule on number that a battery meets when it has to stay: that of its own kind where that is full, else that
    /// on all spare batteries.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="flying">How many of a kind fly.</param>
    /// <param name="rules">The edition's passenger rules.</param>
    /// <param name="travellers">How many people fly.</param>
    public static Sourced<int> LimitOf(BaggageKind kind, Func<BaggageKind, int> flying, PassengerRules rules, int travellers)
    {
        if (kind == BaggageKind.Installed)
            return rules.Devices;
        var banks = flying(BaggageKind.SmallPowerBank) + flying(BaggageKind.LargePowerBank);
        if (rules.PowerBanks is { } most && banks >= most.Value * travellers
            && kind is BaggageKind.SmallPowerBank or BaggageKind.LargePowerBank)
            return most;
        var large = flying(BaggageKind.LargeSpare) + flying(BaggageKind.LargePowerBank);
        return kind is BaggageKind.LargeSpare or BaggageKind.LargePowerBank && large >= rules.LargeSpares.Value * travellers
            ? rules.LargeSpares : rules.Spares;
    }

    /// <summary>Spare batteries other than large power banks, the largest first.</summary>
    private static void Spares(IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups, int[] taken,
        PassengerRules rules, int travellers, int largeBanks)
    {
        var all = (rules.Spares.Value * travellers) - largeBanks;
        var large = (rules.LargeSpares.Value * travellers) - largeBanks;
        var banks = ((rules.PowerBanks?.Value ?? 0) * travellers) - largeBanks;
        foreach (var at in Enumerable.Range(0, groups.Count)
            .Where(at => groups[at].Check.Kind is not (BaggageKind.Installed or BaggageKind.LargePowerBank))
            .OrderByDescending(at => groups[at].Battery.Rated.Energy.WattHours))
        {
            var kind = groups[at].Check.Kind;
            var places = Math.Min(all, kind switch
            {
                BaggageKind.LargeSpare => large,
                BaggageKind.SmallPowerBank => banks,
                _ => all,
            });
            var count = taken[at] = Math.Min(places, groups[at].Battery.Count);
            all -= count;
            large -= kind == BaggageKind.LargeSpare ? count : 0;
            banks -= kind == BaggageKind.SmallPowerBank ? count : 0;
        }
    }

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

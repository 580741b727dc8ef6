using System.Numerics;
using RigScenarios.Search.Upgrades;

namespace RigScenarios.Search.Rigs;

/// <summary>
/// Of all kits and things those that a best order of purchases needs. Left out is only what is proven to gain nothing: what
/// another thing of the same place does as well for no more money, in the buying and in the years until it is sold; and kits that
/// take all that another one takes and are no better.
/// </summary>
internal static class RigThingsThatMatter
{
    /// <summary>The kits and things that matter; and whether more things would have.</summary>
    public static (IReadOnlyList<RigKit> Kits, IReadOnlyList<int> Things, bool AreAll) Of(
        IReadOnlyList<RigKit> kits, RigThings things)
    {
        var needless = Needless(kits, things);
        var left = Smallest([.. kits.Where(kit => (kit.Things & needless) == 0)]);
        var there = Enumerable.Range(0, things.All.Count).Where(thing => things.All[thing].IsThere
            && (things.All[thing].Resale.Count > 0 || left.Any(kit => Takes(kit, thing)))).ToList();
        var taken = there.Take(UpgradeSearch.MostExact).ToList();
        var areAll = there.Count == taken.Count;
        // Each wanted kit as a whole: half of one is worth nothing. First the cheapest, then the best, and so on.
        foreach (var kit in InTurn(left))
        {
            var more = things.Of(kit.Choice).Except(taken).ToList();
            if (taken.Count + more.Count <= UpgradeSearch.MostExact)
                taken.AddRange(more);
            else
                areAll = false;
        }
        if (taken.Count == 0)
            taken.Add(0);
        var bits = RigKits.Bits(taken);
        return ([.. left.Where(kit => (kit.Things & ~bits) == 0)], [.. taken.Order()], areAll);
    }

    private static bool Takes(RigKit kit, int thing) => (kit.Things & (BigInteger.One << thing)) != 0;

    private static IEnumerable<RigKit> InTurn(IReadOnlyList<RigKit> kits)
    {
        var cheap = kits.OrderBy(kit => kit.ToBuy).ToList();
        return kits.Zip(cheap, (best, cheapest) => new[] { cheapest, best }).SelectMany(two => two).Distinct();
    }

    // The kits stand with the smallest figure first.
    private static List<RigKit> Smallest(IReadOnlyList<RigKit> kits)
    {
        var smallest = new List<RigKit>();
        foreach (var kit in kits)
        {
            if (!smallest.Exists(other => (other.Things & ~kit.Things) == 0))
                smallest.Add(kit);
        }
        return smallest;
    }

    private static BigInteger Needless(IReadOnlyList<RigKit> kits, RigThings things)
    {
        var byChoice = kits.ToDictionary(kit => kit.Choice);
        var places = kits.SelectMany(kit => kit.Choice.Select((candidate, place) => (Place: place, Candidate: candidate)))
            .Distinct().Order().ToList();
        // A thing that may stand in several places is left alone.
        var single = places.Where(at => things.Of(at.Place, at.Candidate) is not null)
            .GroupBy(at => things.Of(at.Place, at.Candidate)!.Value)
            .Where(thing => thing.Count() == 1).ToDictionary(thing => thing.First(), thing => thing.Key);
        var needless = BigInteger.Zero;
        foreach (var (at, thing) in single.Where(one => !things.All[one.Value].IsThere))
        {
            if (single.Any(other => other.Key.Place == at.Place && other.Value != thing
                && (needless & (BigInteger.One << other.Value)) == 0
                && CostsNoMore(things.All[other.Value], things.All[thing]) && DoesAsWell(at, other.Key.Candidate)))
                needless |= BigInteger.One << thing;
        }
        return needless;

        bool DoesAsWell((int Place, int Candidate) at, int other) => kits.Where(kit => kit.Choice[at.Place] == at.Candidate)
            .All(kit => byChoice.TryGetValue(kit.Choice.With(at.Place, other), out var same) && same.Goal <= kit.Goal);
    }

    /// <summary>Whether one costs no more than the other to buy, and loses no more of that until any year in which it is
    /// sold.</summary>
    private static bool CostsNoMore(RigThing one, RigThing other) => one.IsThere && one.Resale.Count == 0
        || (one.Price <= other.Price && one.Resale.Count == other.Resale.Count && Falls(one) && Falls(other)
            && one.Resale.Zip(other.Resale).All(year => one.Price - year.First <= other.Price - year.Second));

    private static bool Falls(RigThing thing) => thing.Resale.Zip(thing.Resale.Skip(1)).All(year => year.Second <= year.First);
}

using RigScenarios.Costs;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>Something that can stand in a place of the rig and is had or bought as one thing.</summary>
/// <param name="Place">The name of the slot that it is for; of the first one, where it may stand in several.</param>
/// <param name="Title">For people: "Brick 98 Wh".</param>
/// <param name="IsThere">Whether it is there already: owned, or rented on.</param>
/// <param name="Price">What it costs to buy, as many as the kit has of it; null where no price is known.</param>
public sealed record RigThing(string Place, string Title, bool IsThere, decimal? Price)
{
    /// <summary>What it brings in each year in which it may be sold, from the first; no more than it costs. Empty where it is
    /// kept: rented, without a price, or in use elsewhere.</summary>
    public IReadOnlyList<decimal> Resale { get; init; } = [];
}

/// <summary>The things behind the candidates of a question: what stands in the kit is one thing wherever it may stand, a part of
/// the library is one for each place.</summary>
internal sealed class RigThings
{
    private readonly Dictionary<(int Place, int Candidate), int> numbers = [];
    private readonly List<RigThing> all = [];

    /// <summary>Looks a question's candidates up.</summary>
    public RigThings(BestRigQuestion question, int years)
    {
        var kept = InUseElsewhere(question);
        var known = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (number, place) in question.Places.Index())
        {
            foreach (var (index, candidate) in place.Candidates.Index().Where(one => !one.Item.IsEmpty))
            {
                var kit = candidate.IsNow ? place.Replaces : candidate.FromKit;
                var key = kit is null ? $"{place.Name}\n{candidate.Name}" : kit;
                if (!known.TryGetValue(key, out var thing))
                {
                    known.Add(key, thing = all.Count);
                    all.Add(Thing(question, place, candidate, kit, years, kit is not null && kept.Contains(kit)));
                }
                numbers.Add((number, index), thing);
            }
        }
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<RigThing> All => all;

    /// <summary>The thing of a candidate, by its number; null for nothing.</summary>
    public int? Of(int place, int candidate) => numbers.TryGetValue((place, candidate), out var thing) ? thing : null;

    /// <summary>The things of a choice, each once.</summary>
    public IEnumerable<int> Of(IEnumerable<int> choice) =>
        choice.Select((candidate, place) => Of(place, candidate)).OfType<int>().Distinct();

    private static RigThing Thing(BestRigQuestion question, RigPlace place, RigCandidate candidate, string? kit, int years,
        bool isKept)
    {
        var name = kit ?? place.Replaces;
        var isThere = kit is not null && KitCost.Of(question.Scenario, [name]).Lines[0].Had != Had.Bought;
        var isRented = isThere && KitCost.Of(question.Scenario, [name]).Lines[0].Had == Had.Rented;
        var bought = question.Scenario with
        {
            Kit = question.Scenario.Kit.With(name, candidate.Item! with { Had = Had.Bought }),
        };
        var line = KitCost.Of(bought, [name]).Lines[0];
        var owned = isKept || isRented ? null : OwnedThing.Of(line, candidate.Part!, null);
        var terms = OwningTerms.Of(question.Scenario.Costs ?? new());
        return new(place.Name, candidate.Title, isThere, line.Total)
        {
            // In the first year of the plan it counts as used for a year, whenever it was bought: the least that it brings.
            Resale = owned is null ? [] : [.. Enumerable.Range(1, years).Select(used => owned.Count * Math.Min(owned.Price,
                owned.Resale ?? (terms with { Years = used }).Resale(owned.Price)))],
        };
    }

    /// <summary>Things of the kit that another build uses, or this one outside the slots: they are not sold.</summary>
    private static HashSet<string> InUseElsewhere(BestRigQuestion question) =>
    [
        .. question.Scenario.Builds.Where(build => build.Key != question.Best.Build).SelectMany(build => build.Value.Things),
        .. RigPrices.Things(question.Scenario, question.Best.Build)
            .Where(thing => question.Places.All(place => place.Replaces != thing)),
    ];
}

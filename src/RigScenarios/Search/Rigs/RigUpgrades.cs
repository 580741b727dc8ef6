using RigScenarios.Costs;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using RigScenarios.Search.Upgrades;

namespace RigScenarios.Search.Rigs;

/// <summary>
/// In which order to buy what the question allows: what is owned now, a budget a year, some years. A year's kit is good for the
/// best choice of what is there; it is feasible where the choice holds every must but the budget, each run through the one
/// answer.
/// </summary>
public static class RigUpgrades
{
    /// <summary>So many choices are run at most; where the money could pay more of them, those of the best rigs' parts.</summary>
    public const int MostRun = 5000;

    /// <summary>Looks for the best order.</summary>
    /// <param name="model">The question as it is searched; it asks for an order of purchases.</param>
    /// <param name="remembered">The same model with what is known already; null to begin anew.</param>
    /// <param name="picks">Choices of the best rigs: where there are too many choices to run them all, those of these rigs' parts
    /// are run.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">The question does not ask for it, or has no wish but the cost.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static RigUpgradePlan Find(RigChoices model, RememberedChoices? remembered = null, IReadOnlyList<Choice>? picks = null,
        CancellationToken cancellation = default) => Find(model, remembered, picks, MostRun, cancellation);

    internal static RigUpgradePlan Find(RigChoices model, RememberedChoices? remembered, IReadOnlyList<Choice>? picks,
        int mostRun, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(model);
        var plan = Asked(model);
        var things = new RigThings(model.Question, plan.Terms.Years);
        var most = (plan.Terms.BudgetAYear.Amount * plan.Terms.Years)
            + things.All.Where(thing => thing.IsThere).Sum(thing => thing.Resale.DefaultIfEmpty(0).Max());
        var (kits, areAll) = new RigKits(model, remembered ?? new(model), things, plan.Wish, mostRun)
            .Find(most, picks ?? [], cancellation);
        var (left, matter, areThings) = RigThingsThatMatter.Of(kits, things);
        plan = plan with
        {
            IsExact = areAll && areThings, Buyable = things.All.Count(thing => thing is { IsThere: false, Price: not null }),
            Tried = matter.Count(thing => !things.All[thing].IsThere),
        };
        if (left.Count == 0)
            return plan;
        var found = UpgradeSearch.Find(new Purchases(things, matter, left), 0, plan.Terms.BudgetAYear.Amount, plan.Terms.Years,
            cancellation: cancellation);
        return found.FirstFeasible is not { } first ? plan : plan with
        {
            FirstFeasible = first + 1,
            Years = [.. found.Years.Select(year => Told(year, model, things, matter, left, cancellation))],
        };
    }

    /// <summary>The plan of a question before anything was looked for.</summary>
    internal static RigUpgradePlan Asked(RigChoices model)
    {
        var best = model.Question.Best;
        if (best.Upgrade is not { } terms || best.Wishes.All(wish => wish == RigWish.LeastCost))
            throw new ArgumentException("The question asks for no order of purchases, or has no wish but the cost.",
                nameof(model));
        return new RigUpgradePlan
        {
            Terms = terms, Wish = best.Wishes.First(wish => wish != RigWish.LeastCost),
            NotPaid = [.. KitCost.Of(model.Question.Scenario, best.Build).Lines.Where(line => line.Had != Had.Owned
                && model.Question.Places.All(place => place.Replaces != line.Name)).Select(line => line.Name)],
        };
    }

    private static RigUpgradeYear Told(UpgradeYear year, RigChoices model, RigThings things, IReadOnlyList<int> matter,
        IReadOnlyList<RigKit> kits, CancellationToken cancellation)
    {
        var there = year.Owned.Select(thing => matter[thing]).ToHashSet();
        var choice = Best(kits, there)?.Choice;
        return new(year.Year + 1, [.. year.Bought.Select(thing => things.All[matter[thing]])
                .Select(thing => new RigTrade(thing, thing.Price!.Value))],
            [.. year.Sold.Select(thing => things.All[matter[thing]])
                .Select(thing => new RigTrade(thing, thing.Resale[year.Year]))],
            year.Money, choice, choice is null ? null : model.Figures(choice, cancellation),
            choice is null ? null : model.Answer(choice, cancellation).Answer,
            [.. model.Question.Places.Index().Where(place => !place.Item.Candidates.Index().Any(one => one.Item.IsEmpty
                || things.Of(place.Index, one.Index) is { } thing && (there.Contains(thing)
                    || (things.All[thing].IsThere && !matter.Contains(thing))))).Select(place => place.Item.Name)]);
    }

    /// <summary>The best kit of what is there. They stand with the best first.</summary>
    private static RigKit? Best(IReadOnlyList<RigKit> kits, IEnumerable<int> there)
    {
        var bits = RigKits.Bits(there);
        return kits.FirstOrDefault(kit => (kit.Things & ~bits) == 0);
    }

    /// <summary>The things that matter, as a search for an order of purchases sees them.</summary>
    private sealed class Purchases(RigThings things, IReadOnlyList<int> matter, IReadOnlyList<RigKit> kits) : IUpgradeModel
    {
        /// <summary>What each kit takes, by the places in <see cref="Things"/>: this is asked for every set of things.</summary>
        private readonly ulong[] taken = [.. kits.Select(kit => matter.Index()
            .Where(thing => !(kit.Things >> thing.Item).IsEven).Aggregate(0UL, (bits, thing) => bits | (1UL << thing.Index)))];

        public IReadOnlyList<string> Things { get; } = [.. matter.Select(thing => things.All[thing].Title)];

        public IReadOnlyList<int> Owned { get; } =
            [.. Enumerable.Range(0, matter.Count).Where(thing => things.All[matter[thing]].IsThere)];

        public decimal? Price(int thing, int year) => things.All[matter[thing]].Price;

        public decimal? Resale(int thing, int year) =>
            things.All[matter[thing]].Resale is { Count: > 0 } resale ? resale[year] : null;

        public UpgradeState Look(IReadOnlyList<int> owned, CancellationToken cancellation)
        {
            var there = owned.Aggregate(0UL, (bits, thing) => bits | (1UL << thing));
            var best = Array.FindIndex(taken, kit => (kit & ~there) == 0);
            return best >= 0 ? new(true, kits[best].Goal) : new(false, double.NaN);
        }
    }
}

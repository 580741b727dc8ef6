using System.Collections.Concurrent;
using RigScenarios.Numerics;

namespace RigScenarios.Search.Upgrades;

/// <summary>
/// The best order of purchases over some years: each year within what was saved, what is not spent is carried on, and what is
/// sold brings money. Best is what is feasible earliest, and stays so; then the least sum of the goal over the years; then the
/// most money left.
/// </summary>
/// <remarks>Up to <see cref="MostExact"/> things it is exact, by dynamic programming over kits: a year is gone through thing by
/// thing, each bought, sold or left, and of the paths to one kit those stay that no other is as good as in everything that counts
/// later. Above that it follows the best kits of each year only, and says so.</remarks>
public static class UpgradeSearch
{
    /// <summary>Up to so many things the plan is exact.</summary>
    public const int MostExact = 20;

    /// <summary>The most things.</summary>
    public const int MostThings = 60;

    /// <summary>So many kits are followed from year to year where it is not exact.</summary>
    public const int KitsFollowed = 40;

    /// <summary>Searches.</summary>
    /// <param name="model">What can be owned.</param>
    /// <param name="saved">The money at the start, zero or more.</param>
    /// <param name="budget">What is added at the start of each year, zero or more.</param>
    /// <param name="years">How many years, 1 to 30.</param>
    /// <param name="progress">Told the years done; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">No things or more than <see cref="MostThings"/>, or a price below zero.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Money or years out of range.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static UpgradePlan Find(
        IUpgradeModel model, decimal saved, decimal budget, int years, IProgress<int>? progress = null,
        CancellationToken cancellation = default) => Find(model, saved, budget, years, MostExact, progress, cancellation);

    internal static UpgradePlan Find(
        IUpgradeModel model, decimal saved, decimal budget, int years, int mostExact, IProgress<int>? progress,
        CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentOutOfRangeException.ThrowIfNegative(saved);
        ArgumentOutOfRangeException.ThrowIfNegative(budget);
        if (years is < 1 or > 30)
            throw new ArgumentOutOfRangeException(nameof(years), years, "A plan is for 1 to 30 years.");
        var things = new UpgradeThings(model, years);
        var isExact = things.Count <= mostExact;
        var states = new ConcurrentDictionary<ulong, UpgradeState>();
        var paths = new Dictionary<ulong, List<UpgradePath>>
        {
            [things.Owned] = [new(null, things.Owned, null, 0, saved, 0)],
        };
        for (var year = 0; year < years; year++)
        {
            cancellation.ThrowIfCancellationRequested();
            var begun = paths.ToDictionary(kit => kit.Key, kit => kit.Value.ConvertAll(path =>
                path with { Before = path, Money = path.Money + budget }));
            var after = isExact ? ThingByThing(begun, things, year, cancellation) : FewChanges(begun, things, year);
            var kits = after.Where(kit => kit.Value.Exists(path => path.Money >= 0)).ToList();
            Parallel.ForEach(kits.Select(kit => kit.Key).Where(kit => !states.ContainsKey(kit)), EveryCore.Until(cancellation),
                kit => states[kit] = model.Look(UpgradeThings.In(kit), cancellation));
            paths = [];
            foreach (var (kit, some) in kits)
            {
                var counted = some.Where(path => path.Money >= 0).Select(path => path.Counted(year, states[kit]))
                    .OfType<UpgradePath>().ToList();
                if (counted.Count > 0)
                    paths.Add(kit, Best(counted));
            }
            if (!isExact)
                paths = Followed(paths);
            progress?.Report(year + 1);
        }
        var best = paths.Values.SelectMany(some => some).Order(Comparer<UpgradePath>.Create(UpgradePath.Compare)).First();
        return new(UpgradeThings.Told(best, states), best.FirstFeasible, best.GoalSum, isExact, states.Count);
    }

    // Every thing once: it stays as it is, or is bought or sold. Money may be below zero on the way: what is sold in a year pays
    // for what is bought in it.
    private static Dictionary<ulong, List<UpgradePath>> ThingByThing(
        Dictionary<ulong, List<UpgradePath>> paths, UpgradeThings things, int year, CancellationToken cancellation)
    {
        for (var thing = 0; thing < things.Count; thing++)
        {
            cancellation.ThrowIfCancellationRequested();
            var next = new Dictionary<ulong, List<UpgradePath>>();
            foreach (var path in paths.Values.SelectMany(some => some))
            {
                Add(next, path);
                if (things.Changed(path, thing, year) is { } changed && changed.Money + things.MostStillSold(thing, year) >= 0)
                    Add(next, changed);
            }
            foreach (var kit in next.Keys.ToList())
                next[kit] = Best(next[kit]);
            paths = next;
        }
        return paths;
    }

    // Without all combinations: one change, or two, from each kit that is followed.
    private static Dictionary<ulong, List<UpgradePath>> FewChanges(
        Dictionary<ulong, List<UpgradePath>> paths, UpgradeThings things, int year)
    {
        var next = new Dictionary<ulong, List<UpgradePath>>();
        foreach (var path in paths.Values.SelectMany(some => some))
        {
            Add(next, path);
            for (var thing = 0; thing < things.Count; thing++)
            {
                if (things.Changed(path, thing, year) is not { } changed)
                    continue;
                Add(next, changed);
                for (var other = thing + 1; other < things.Count; other++)
                {
                    if (things.Changed(changed, other, year) is { } twice)
                        Add(next, twice);
                }
            }
        }
        return next;
    }

    private static void Add(Dictionary<ulong, List<UpgradePath>> paths, UpgradePath path)
    {
        if (!paths.TryGetValue(path.Kit, out var some))
            paths.Add(path.Kit, some = []);
        some.Add(path);
    }

    private static List<UpgradePath> Best(List<UpgradePath> some)
    {
        var best = new List<UpgradePath>();
        foreach (var path in some.Order(Comparer<UpgradePath>.Create(UpgradePath.Compare)))
        {
            if (!best.Exists(other => other.IsNoWorseThan(path)))
                best.Add(path);
        }
        return best;
    }

    // The best so far; and, because saving is not yet a gain, those with the most money.
    private static Dictionary<ulong, List<UpgradePath>> Followed(Dictionary<ulong, List<UpgradePath>> paths)
    {
        var all = paths.Values.SelectMany(some => some).Order(Comparer<UpgradePath>.Create(UpgradePath.Compare)).ToList();
        var followed = all.Take(KitsFollowed).Concat(all.OrderByDescending(path => path.Money).ThenBy(path => path.Kit)
            .Take(KitsFollowed)).Distinct();
        var next = new Dictionary<ulong, List<UpgradePath>>();
        foreach (var path in followed)
            Add(next, path);
        return next;
    }
}

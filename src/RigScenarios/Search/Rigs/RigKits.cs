using System.Collections.Concurrent;
using System.Numerics;
using RigScenarios.Numerics;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;

namespace RigScenarios.Search.Rigs;

/// <summary>A choice that holds every must but the budget, and what it takes.</summary>
/// <param name="Choice">The choice.</param>
/// <param name="Things">The things that it takes, as bits.</param>
/// <param name="Goal">The figure of the wish, which shall be small.</param>
/// <param name="ToBuy">What those of its things cost that are not there.</param>
internal sealed record RigKit(Choice Choice, BigInteger Things, double Goal, decimal ToBuy);

/// <summary>The choices that purchases can lead to, each run through the one answer.</summary>
internal sealed class RigKits(RigChoices model, RememberedChoices remembered, RigThings things, RigWish wish, int mostRun)
{
    /// <summary>All choices that hold every must but the budget and for which the money could ever do; and whether none was left
    /// out.</summary>
    /// <param name="most">The most that can ever be spent.</param>
    /// <param name="picks">Where there are too many choices, those of the candidates of these alone are looked at.</param>
    /// <param name="cancellation">Stops the work.</param>
    public (IReadOnlyList<RigKit> Kits, bool AreAll) Find(decimal most, IReadOnlyList<Choice> picks,
        CancellationToken cancellation)
    {
        var all = Affordable((_, _) => true, most, cancellation).Take(mostRun + 1).ToList();
        if (all.Count <= mostRun)
            return (Holding(all, cancellation), true);
        bool IsPicked(int place, int candidate) => candidate == 0 || picks.Any(pick => pick[place] == candidate);
        return (Holding([.. Affordable(picks.Count > 0 ? IsPicked : (_, _) => true, most, cancellation).Take(mostRun)],
            cancellation), false);
    }

    /// <summary>Choices whose candidates fit each other and can be had for the money, those alike in what carries current one
    /// after the other.</summary>
    private IEnumerable<Choice> Affordable(Func<int, int, bool> isLookedAt, decimal most, CancellationToken cancellation)
    {
        var order = Enumerable.Range(0, model.Slots.Count).OrderBy(place => model.Powered.Contains(place) ? 0 : 1).ToArray();
        return Filled(0, new int[order.Length]);

        IEnumerable<Choice> Filled(int depth, int[] choice)
        {
            cancellation.ThrowIfCancellationRequested();
            if (depth == order.Length)
            {
                yield return new Choice(choice);
                yield break;
            }
            var place = order[depth];
            for (var candidate = 0; candidate < model.Slots[place].Candidates.Count; candidate++)
            {
                choice[place] = candidate;
                if (!isLookedAt(place, candidate) || !model.IsCompatible(place, candidate)
                    || !order.Take(depth).All(other => model.IsCompatible(place, candidate, other, choice[other]))
                    || !(ToBuy(order.Take(depth + 1).Select(one => things.Of(one, choice[one])).OfType<int>().Distinct())
                        <= most))
                    continue;
                foreach (var filled in Filled(depth + 1, choice))
                    yield return filled;
            }
        }
    }

    private List<RigKit> Holding(IReadOnlyList<Choice> choices, CancellationToken cancellation)
    {
        var kits = new ConcurrentBag<RigKit>();
        // What shares its days is run by one core, so that the days are run once.
        var alike = choices.GroupBy(choice => new Choice(choice.Select((candidate, place) =>
            model.Powered.Contains(place) ? candidate : 0)));
        Parallel.ForEach(alike, EveryCore.Until(cancellation), some =>
        {
            foreach (var choice in some)
            {
                if (Kit(choice, cancellation) is { } kit)
                    kits.Add(kit);
            }
        });
        return [.. kits.OrderBy(kit => kit.Goal).ThenBy(kit => kit.ToBuy).ThenBy(kit => kit.Choice)];
    }

    private RigKit? Kit(Choice choice, CancellationToken cancellation)
    {
        if (model.AskedMusts.Contains(RigMust.Mass) && !(model.Mass.Of(choice) <= model.MostGrams))
            return null;
        var figures = remembered.Evaluate(choice, cancellation);
        var fails = model.AskedMusts.Index().Any(must => must.Item is not (RigMust.Mass or RigMust.Budget)
            && figures.Musts[must.Index] is not true);
        var goal = wish == RigWish.LeastMass ? (double?)model.Mass.Of(choice) ?? double.NaN
            : figures.Goals[model.Question.Best.Wishes.ToList().IndexOf(wish)];
        return fails || double.IsNaN(goal) ? null : new(choice, Bits(things.Of(choice)), goal, ToBuy(things.Of(choice))!.Value);
    }

    /// <summary>What those of the things cost that are not there; null where a price is not known.</summary>
    private decimal? ToBuy(IEnumerable<int> some)
    {
        decimal? sum = 0;
        foreach (var thing in some.Select(number => things.All[number]).Where(thing => !thing.IsThere))
            sum += thing.Price;
        return sum;
    }

    /// <summary>Things as bits.</summary>
    internal static BigInteger Bits(IEnumerable<int> some) =>
        some.Aggregate(BigInteger.Zero, (bits, thing) => bits | (BigInteger.One << thing));
}

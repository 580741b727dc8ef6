using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Search.Rigs;

/// <summary>The best order of purchases of a small question by trying every set of things in every year. Prices are those of the
/// small scenario's text, written here once more; the losses are the usual ones of docs/costs.md.</summary>
internal sealed class AllOrders
{
    private static readonly Dictionary<string, decimal> Prices = new(StringComparer.Ordinal)
    {
        ["light now"] = 70, ["light bright"] = 40, ["light thrifty"] = 90, ["flat now"] = 120, ["flat small"] = 60,
        ["flat large"] = 250, ["flat kit spare"] = 250,
    };

    private readonly List<string> things;
    private readonly List<(int Needs, double Goal)> kits = [];
    private readonly UpgradeTerms terms;

    public AllOrders(RigChoices model, CancellationToken cancellation)
    {
        terms = model.Question.Best.Upgrade!;
        var slots = model.Slots;
        things = [.. slots.SelectMany(slot => slot.Candidates.Where(name => name != "none")
            .Select(name => $"{slot.Name} {name}"))];
        foreach (var light in Enumerable.Range(0, slots[0].Candidates.Count))
        {
            foreach (var flat in Enumerable.Range(0, slots[1].Candidates.Count))
            {
                var choice = new Choice([light, flat]);
                if (!model.GoesTogether(choice) || model.Evaluate(choice, cancellation).Musts.Any(must => must is not true))
                    continue;
                var needs = new[] { $"light {slots[0].Candidates[light]}", $"flat {slots[1].Candidates[flat]}" }
                    .Where(things.Contains).Sum(thing => 1 << things.IndexOf(thing));
                kits.Add((needs, Goal(model.Question.Best.Wishes[0], model.Figures(choice, cancellation))));
            }
        }
    }

    public static double Goal(RigWish wish, RigFigures figures) =>
        wish == RigWish.LeastMass ? Math.Round(figures.Mass!.Value.Grams, 3) : -figures.Reserve!.Value.Hours;

    /// <summary>The first year with a rig, from 1; the sum of the wish from then on; what is left.</summary>
    public (int First, double GoalSum, decimal Money) Best() =>
        From(1, things.Contains("flat kit spare") ? 1 << things.IndexOf("flat kit spare") : 0, 0, int.MaxValue, 0);

    private (int First, double GoalSum, decimal Money) From(int year, int owned, decimal saved, int first, double sum)
    {
        if (year > terms.Years)
            return (first, sum, saved);
        (int First, double GoalSum, decimal Money)? best = null;
        for (var then = 0; then < 1 << things.Count; then++)
        {
            var money = saved + terms.BudgetAYear.Amount;
            for (var thing = 0; thing < things.Count; thing++)
            {
                var (before, after) = ((owned >> thing) & 1, (then >> thing) & 1);
                var price = Prices[things[thing]];
                money += before == after ? 0 : after == 1 ? -price : Worth(price, year);
            }
            if (money < 0)
                continue;
            var goals = kits.Where(kit => (kit.Needs & ~then) == 0).Select(kit => kit.Goal).ToList();
            if (goals.Count == 0 && first < year)
                continue;
            var end = From(year + 1, then, money, goals.Count > 0 ? Math.Min(first, year) : first,
                sum + (goals.Count > 0 ? goals.Min() : 0));
            if (best is not { } so || (end.First, end.GoalSum, -end.Money).CompareTo((so.First, so.GoalSum, -so.Money)) < 0)
                best = end;
        }
        return best ?? (int.MaxValue, double.PositiveInfinity, 0);
    }

    private static decimal Worth(decimal price, int year)
    {
        var left = price * 0.7m;
        for (var later = 1; later < year; later++)
            left *= 0.85m;
        return left;
    }
}

using RigScenarios.Scenarios;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Charts.Search;

/// <summary>The rigs that a search found, in their figures: what each gives for what it costs.</summary>
public static class RigFront
{
    // More names than these nobody finds again in a legend.
    private const int MostNamed = 6;

    /// <summary>The figure; null where fewer than two wishes were made, or no rig has two figures that are known.</summary>
    /// <param name="result">The result of the search.</param>
    /// <param name="title">What the chart answers.</param>
    public static Figure? Of(RigSearchResult result, string title = "What does each rig give for what it costs?")
    {
        ArgumentNullException.ThrowIfNull(result);
        // What one pays lies below, whichever wish comes first in the file.
        var wishes = result.Question.Best.Wishes.OrderBy(wish => wish != RigWish.LeastCost).ToList();
        var named = Named(result);
        List<FrontPoint> points = [.. result.Picks.Select((pick, number) =>
            new FrontPoint(Name(result, pick, number), [.. wishes.Select(wish => Value(pick, wish))])
            {
                IsPick = named.Contains(number),
            })];
        var drawn = points.Any(point => double.IsFinite(point.Values.FirstOrDefault(double.NaN))
            && point.Values.Skip(1).Any(double.IsFinite));
        return drawn ? FrontChart.Of("rig-front", title, [.. wishes.Select(wish => Axis(result, wish))], points,
            result.Front.IsComplete) : null;
    }

    // All where they are few; else the best in each wish, then those to which more money leads.
    private static HashSet<int> Named(RigSearchResult result)
    {
        var all = Enumerable.Range(0, result.Picks.Count);
        if (result.Picks.Count <= MostNamed)
            return [.. all];
        var best = result.Question.Best.Wishes.Select(wish => all.Where(number => Known(number, wish))
            .OrderBy(number => Goodness(result.Picks[number], wish)).Select(number => (int?)number).FirstOrDefault());
        return [.. best.OfType<int>().Concat(result.MoreMoney.Select(step => step.To)).Distinct().Take(MostNamed)];

        bool Known(int number, RigWish wish) => double.IsFinite(Value(result.Picks[number], wish));
    }

    private static double Goodness(RigPick pick, RigWish wish) =>
        Value(pick, wish) * (wish is RigWish.LeastCost or RigWish.LeastMass ? 1 : -1);

    private static string Name(RigSearchResult result, RigPick pick, int number) => pick.Cost is null ? $"rig {number + 1}"
        : $"rig {number + 1}: {RigSearchSentences.Cells(result, pick)[0].Words}";

    private static double Value(RigPick pick, RigWish wish) => wish switch
    {
        RigWish.LeastCost => (double?)pick.Cost ?? double.NaN,
        RigWish.LeastMass => (double?)pick.Grams / 1000 ?? double.NaN,
        RigWish.LongestDay => pick.Figures.Reserve?.Hours ?? double.NaN,
        _ => 100 * pick.Figures.Least?.Share ?? double.NaN,
    };

    private static ChartAxis Axis(RigSearchResult result, RigWish wish) => wish switch
    {
        RigWish.LeastCost => new("cost", result.Model.Currency ?? ""),
        RigWish.LeastMass => new("mass, without head and tripod", "kg"),
        RigWish.LongestDay => new("left after wrap", "h"),
        _ => new("left at the nearest limit", "%"),
    };
}

using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Costs;

namespace RigScenarios.Search.Rigs;

/// <summary>The sentences of an order of purchases: the same in every face.</summary>
public static class RigUpgradeSentences
{
    /// <summary>When there is a rig that holds all that must hold, and for what.</summary>
    /// <param name="result">The result; its file asks for an order of purchases.</param>
    public static string Headline(RigSearchResult result)
    {
        var (plan, budget) = (Plan(result), Money(result, Plan(result).Terms.BudgetAYear.Amount));
        var years = plan.Terms.Years == 1 ? "in 1 year" : $"over {plan.Terms.Years} years";
        return plan switch
        {
            { IsLookedFor: false } => $"Not known: {RigSearchSentences.Ended(result)} before an order of purchases was found.",
            { FirstFeasible: null, IsExact: true } =>
                $"No: {budget} a year {years} buy no rig that holds all musts but the budget.",
            { FirstFeasible: null } => "Not known: no rig that holds all musts but the budget was found for "
                + $"{budget} a year {years}, and not all were looked at.",
            { FirstFeasible: { } first } => $"With {budget} a year {years} a rig that holds all musts but the budget is there "
                + (first == 1 ? "from the first year on" : $"in year {first}, no sooner")
                + $"{(plan.IsExact ? "" : " by what was tried")}; this order serves the {RigSearchWords.Wish(plan.Wish)} best, "
                + $"and {Money(result, plan.Years[^1].MoneyLeft)} are left at the end.",
        };
    }

    /// <summary>Each year: what is bought and sold, what is left, what the answer says then.</summary>
    /// <param name="result">The result; its file asks for an order of purchases.</param>
    public static IReadOnlyList<string> Years(RigSearchResult result) =>
        [.. Plan(result).Years.Select(year => $"Year {year.Year}: {Trades(result, year)} {(IsAsBefore(result, year)
            ? "The rig stays as it is." : Then(result, year))}")];

    /// <summary>What the order rests on.</summary>
    /// <param name="result">The result; its file asks for an order of purchases.</param>
    public static IReadOnlyList<string> RestsOn(RigSearchResult result)
    {
        var plan = Plan(result);
        if (!plan.IsLookedFor)
            return [];
        if (plan is { FirstFeasible: null, IsExact: true })
            return ["Every choice of parts that this money could ever pay was weighed, and run through the answer where its "
                + "parts go together."];
        var terms = OwningTerms.Of(result.Question.Scenario.Costs ?? new());
        List<string> lines =
        [
            plan.IsExact ? $"No other order of purchases is better: of {Count(plan.Buyable, "thing")} that could be bought "
                    + $"{Count(plan.Tried, "thing")} matter, and every order of them was weighed."
                : $"Not every order was tried: the plan is the best of those of {Count(plan.Tried, "thing")}, out of "
                    + $"{Count(plan.Buyable, "thing")} that could be bought.",
            "Best is what holds all musts but the budget soonest and from then on; then the wish, summed over the years; then "
                + "the money left. Money that is not spent is carried on without interest, and prices stay as they are today.",
        ];
        if (plan.Years.Any(year => year.Sold.Count > 0))
        {
            var (first, later) = (RigSearchWords.Percent(terms.FirstYearLoss.DecimalFractions),
                RigSearchWords.Percent(terms.LaterLoss.DecimalFractions));
            lines.Add($"What is sold in year N brings its stated resale, else what {first} loss in the first year and {later} in "
                + "each later one leave of its price after N years, whenever it was bought. Nobody promises that price.");
        }
        if (plan.NotPaid.Count > 0)
            lines.Add("This money does not pay for what stands in no slot and is not owned: "
                + $"{string.Join(", ", plan.NotPaid.Select(LimitSentences.Element))}.");
        return lines;
    }

    private static bool IsAsBefore(RigSearchResult result, RigUpgradeYear year) => year.Choice is { } choice
        && Plan(result).Years.FirstOrDefault(other => other.Year == year.Year - 1)?.Choice is { } before && choice.Equals(before);

    private static string Trades(RigSearchResult result, RigUpgradeYear year)
    {
        List<string> words =
        [
            year.Bought.Count == 0 ? "nothing is bought" : $"buy {Listed(result, year.Bought)}",
            .. year.Sold.Count == 0 ? Array.Empty<string>() : [$"sell {Listed(result, year.Sold)}"],
            $"{Money(result, year.MoneyLeft)} are left",
        ];
        return $"{string.Join("; ", words)}.";
    }

    private static string Then(RigSearchResult result, RigUpgradeYear year) => year switch
    {
        { Figures: { } figures, Choice: { } choice } =>
            $"The rig: {string.Join(", ", RigSearchSentences.Titles(result, choice))}. "
            + string.Join(" ", new[] { figures.Headline, figures.AskFirst }.Where(words => words.Length > 0)),
        { EmptyPlaces.Count: > 0 } => $"Not yet a rig: there is nothing yet for {string.Join(", ", year.EmptyPlaces
            .Select(LimitSentences.Element))}.",
        _ => "No rig of what is there holds all musts but the budget.",
    };

    private static string Listed(RigSearchResult result, IEnumerable<RigTrade> trades) => string.Join(", ",
        trades.Select(trade => $"{trade.Thing.Title} for {Money(result, trade.Amount)}"));

    private static string Money(RigSearchResult result, decimal amount) => RigSearchWords.Amount(amount,
        Plan(result).Terms.BudgetAYear.Currency);

    private static string Count(int number, string one) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {one}{(number == 1 ? "" : "s")}");

    private static RigUpgradePlan Plan(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Upgrades ?? throw new ArgumentException("The result has no order of purchases.", nameof(result));
    }
}

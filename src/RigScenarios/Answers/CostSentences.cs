using RigScenarios.Costs;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers;

/// <summary>The words for what it costs.</summary>
public static class CostSentences
{
    private const int MostTold = 6;

    /// <summary>What the verdict rests on, as a clause: "what it needs costs 1,240 EUR (1,000 EUR to buy, 240 EUR to rent for 3
    /// days), 260 EUR under the budget of 1,500 EUR".</summary>
    /// <param name="answer">An answer that asks what it costs.</param>
    /// <exception cref="ArgumentException">It does not.</exception>
    public static string Line(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var cost = answer.Cost ?? throw new ArgumentException("The scenario says nothing of money.", nameof(answer));
        var unknown = cost.IsAtLeast ? $"; no price is known for {Names(cost.NotPriced)}" : "";
        return $"{Costs(cost)}{Against(answer, cost)}{unknown}";
    }

    /// <summary>The cost for a place in a table: "1,240 EUR (1,000 EUR to buy, 240 EUR to rent for 3 days)"; empty where
    /// nothing is priced.</summary>
    /// <param name="cost">The cost.</param>
    public static string InATable(KitCost cost)
    {
        ArgumentNullException.ThrowIfNull(cost);
        var (all, unknown) = (cost.Lines.Count, cost.NotPriced.Count);
        if (all == 0 || unknown == all)
            return "";
        if (cost.Lines.All(line => line.Had == Had.Owned))
            return "nothing: all is owned";
        return $"{(cost.IsAtLeast ? "at least " : "")}{Amounts(cost)}"
            + (unknown > 0 ? $"; {unknown} {(unknown == 1 ? "thing" : "things")} without a price" : "");
    }

    /// <summary>What nobody gave, in sentences.</summary>
    internal static IReadOnlyList<string> Missing(KitCost cost) => [.. cost.NotPriced.GroupBy(line => line.Had)
        .Select(lines => $"The price to {(lines.Key == Had.Rented ? "rent" : "buy")} is not known of {Names([.. lines])}.")];

    /// <summary>The section of details: what costs most, what is owned, tax, the years to come.</summary>
    internal static DetailSection Section(RigAnswer answer, AnswerQuestion question)
    {
        var cost = answer.Cost!;
        var paid = cost.Lines.Where(line => line.Total > 0).OrderByDescending(line => line.Total).ToList();
        List<string> lines =
        [
            .. paid.Take(MostTold).Select(line => $"{Thing(line)}: {Money(line.Total!.Value, cost)} to {Way(line, cost)}."),
            .. question.Missing, .. Terms(cost), .. CostAheadWords.Of(answer.CostAhead!, cost),
        ];
        return new(question.Kind, AnswerSentences.Title(question.Kind, answer.TheBuild.Stance), [], lines, Fold(cost, paid));
    }

    /// <summary>An amount in the currency of the kit.</summary>
    internal static string Money(decimal amount, KitCost cost) =>
        cost.Currency is { } currency ? MoneyText.Of(new Money(amount, currency)) : "nothing";

    /// <summary>Names of things, the part's behind that of the kit where they differ.</summary>
    internal static string Names(IReadOnlyList<KitCostLine> lines) =>
        string.Join(", ", lines.Select(line => LimitSentences.Element(line.Name)));

    private static string Costs(KitCost cost)
    {
        if (cost.Lines.All(line => line.Had == Had.Owned))
            return "nothing of it is to be paid for: all is owned";
        return $"what it needs costs {(cost.IsAtLeast ? "at least " : "")}{Amounts(cost)}";
    }

    private static string Amounts(KitCost cost)
    {
        var rent = $"to rent for {Days(cost.RentedDays)}";
        var (bought, rented) = (Money(cost.Bought, cost), Money(cost.Rented, cost));
        var how = (cost.Bought, cost.Rented) switch
        {
            ( > 0, > 0) => $" ({bought} to buy, {rented} {rent})",
            ( > 0, _) => " to buy",
            (_, > 0) => $" {rent}",
            _ => "",
        };
        return $"{Money(cost.Total, cost)}{how}";
    }

    private static string Against(RigAnswer answer, KitCost cost)
    {
        if (cost is not { Budget: { } budget, Left: { } left })
            return "; no budget is given";
        var of = $"the budget of {MoneyText.Of(budget)}";
        if (left < 0)
            return $", {Money(-left, cost)} over {of}";
        var wished = CostQuestion.Wished(answer, cost);
        return (left == 0 ? $", all of {of}" : $", {Money(left, cost)} under {of}")
            + (left < wished ? $", of which {Money(wished, cost)} is to stay" : "");
    }

    private static IEnumerable<string> Terms(KitCost cost)
    {
        if (cost.Lines.Count(line => line.IsHadAssumed) is > 0 and var open)
            yield return $"Nobody says how {(open == 1 ? "one thing is" : $"{open} things are")} had (owned, bought, rented): "
                + "taken as bought.";
        if (cost.Total > 0)
            yield return Tax(cost);
    }

    /// <summary>Whether tax is in the prices.</summary>
    internal static string Tax(KitCost cost) => cost.Vat switch
    {
        ValueAddedTax.Net => "Prices are net, without value added tax.",
        ValueAddedTax.Gross => "Prices are gross, with value added tax.",
        _ => "Nobody says whether the prices have value added tax in them (costs.vat).",
    };

    private static string? Fold(KitCost cost, List<KitCostLine> paid)
    {
        var rest = paid.Skip(MostTold).ToList();
        var owned = cost.Lines.Count(line => line.Had == Had.Owned);
        List<string> folded = [];
        if (rest.Count > 0)
            folded.Add($"{rest.Count} more cost {Money(rest.Sum(line => line.Total!.Value), cost)} together");
        if (owned > 0)
            folded.Add($"{owned} {(owned == 1 ? "is" : "are")} owned and cost{(owned == 1 ? "s" : "")} nothing more");
        return folded.Count == 0 ? null : $"{string.Join("; ", folded)}.";
    }

    private static string Thing(KitCostLine line) =>
        $"{line.Title}{(line.Count > 1 ? $", {line.Count} of them" : "")} ({LimitSentences.Element(line.Name)})";

    private static string Way(KitCostLine line, KitCost cost) =>
        line.Had == Had.Rented ? $"rent for {Days(cost.RentedDays)}" : "buy";

    /// <summary>A number of days.</summary>
    internal static string Days(int days) => days == 1 ? "1 day" : $"{days} days";
}

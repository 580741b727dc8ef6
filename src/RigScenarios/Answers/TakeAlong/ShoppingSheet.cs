using RigScenarios.Costs;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>The list for the shop and the rental house: what is bought, what is rented for the days, what is there already, what
/// it comes to, what to look at before paying. A price that nobody gave is said to be missing, and the sum is then the
/// least.</summary>
internal static class ShoppingSheet
{
    private const string Unknown = "not given";

    public static TakeAlongSheet Of(Scenario scenario, string? build, KitCost cost) => new()
    {
        Title = scenario.Title,
        Subtitle = "To buy and to rent: "
            + (build is null ? "the whole kit" : $"what {scenario.Builds[build].Title ?? build} needs"),
        Days = [Terms(cost)],
        Headline = Headline(cost),
        Sections =
        [
            Together(cost), .. Things(cost, Had.Bought), .. Things(cost, Had.Rented), .. Owned(cost),
            new("Look at these before you pay", SheetForm.Checks, [.. Checks(cost).Select(line => new[] { line })])
                { IsWide = true },
            new("Cautions", SheetForm.Sentences, [.. Cautions(cost).Select(line => new[] { line })]) { IsWide = true },
        ],
        Foot = "Prices are those of the file; nobody looked them up. Delivery, insurance and deposits are not in them.",
        WholeBy = "sheet --kind shopping --whole",
    };

    private static string Terms(KitCost cost) => CostSentences.Tax(cost) + (cost.Lines.Any(line => line.Had == Had.Rented)
        ? $" Rented for {CostSentences.Days(cost.RentedDays)}." : "");

    private static string Headline(KitCost cost)
    {
        var sum = Sum(cost, cost.Lines);
        var all = sum switch
        {
            "nothing" => "Nothing to pay: all of it is owned",
            "not known" => "What it comes to is not known: nothing has a price",
            _ => $"Together {sum}",
        };
        return Budget(cost) is var (words, amount) ? $"{all}. {words}: {amount}." : $"{all}.";
    }

    // What has no price makes what is left the most, and what is missing the least that it can be.
    private static (string Words, string Amount)? Budget(KitCost cost)
    {
        if (cost is not { Budget: { } budget, Left: { } left })
            return null;
        var bound = !cost.IsAtLeast ? "" : left >= 0 ? "at most " : "at least ";
        return (left >= 0 ? "Left of the budget" : "Over the budget",
            bound + MoneyText.Of(new Money(Math.Abs(left), budget.Currency)));
    }

    private static SheetSection Together(KitCost cost)
    {
        List<IReadOnlyList<string>> rows = [];
        var rented = $"To rent, {CostSentences.Days(cost.RentedDays)}";
        foreach (var (had, words) in new[] { (Had.Bought, "To buy"), (Had.Rented, rented), (Had.Owned, "Owned") })
        {
            var lines = cost.Lines.Where(line => line.Had == had).ToList();
            if (lines.Count > 0)
                rows.Add([words, $"{lines.Sum(line => line.Count)}", Sum(cost, lines)]);
        }
        rows.Add(["Together", $"{cost.Lines.Sum(line => line.Count)}", Sum(cost, cost.Lines)]);
        if (cost.Budget is { } budget)
        {
            rows.Add(["Budget", "", MoneyText.Of(budget)]);
            var (words, amount) = Budget(cost)!.Value;
            rows.Add([words, "", amount]);
        }
        return new("What it comes to", SheetForm.Table, rows) { Columns = ["", "Things", "Amount"], Note = Missing(cost) };
    }

    // A sum of things of which none has a price is not known; that of things that cost nothing is nothing.
    private static string Sum(KitCost cost, IReadOnlyList<KitCostLine> lines)
    {
        var known = lines.Where(line => line.Total is not null).ToList();
        if (lines.All(line => line.Had == Had.Owned))
            return "nothing";
        if (cost.Currency is not { } currency || known.TrueForAll(line => line.Had == Had.Owned))
            return "not known";
        var least = known.Count < lines.Count ? "at least " : "";
        return least + MoneyText.Of(new Money(known.Sum(line => line.Total!.Value), currency));
    }

    private static string Missing(KitCost cost)
    {
        var missing = cost.NotPriced;
        var assumed = cost.Lines.Any(line => line.IsHadAssumed) ? "Where the file does not say how a thing is had, it is taken "
            + "as bought. " : "";
        return missing.Count == 0 ? assumed.TrimEnd()
            : $"{assumed}No price is given for {CostSentences.Names(missing)}: what "
                + $"{(missing.Count == 1 ? "it costs" : "they cost")} comes on top.";
    }

    private static IEnumerable<SheetSection> Things(KitCost cost, Had had)
    {
        var lines = cost.Lines.Where(line => line.Had == had).ToList();
        if (lines.Count == 0)
            yield break;
        yield return new(had == Had.Bought ? "To buy" : $"To rent for {CostSentences.Days(cost.RentedDays)}", SheetForm.Table,
            [.. lines.OrderByDescending(line => line.Total ?? decimal.MaxValue).Select(line => new[]
            {
                "", $"{line.Count}", line.Title, SheetWords.Thing(line.Name), Amount(cost, line.Each), Amount(cost, line.Total),
            })])
        {
            Columns = ["Got", "Count", "What it is", "For", "Each", "Together"],
            IsWide = true, GoesAs = had == Had.Bought ? 6 : 5, Keeps = lines.Count, Things = "things",
        };
    }

    private static IEnumerable<SheetSection> Owned(KitCost cost)
    {
        var lines = cost.Lines.Where(line => line.Had == Had.Owned).ToList();
        if (lines.Count > 0)
            yield return new("Owned", SheetForm.Table, [.. lines.Select(line => new[]
            {
                "", $"{line.Count}", line.Title, SheetWords.Thing(line.Name),
            })])
            {
                Columns = ["Got", "Count", "What it is", "For"], IsWide = true, GoesAs = 4, Keeps = lines.Count,
                Things = "things that are owned",
            };
    }

    private static string Amount(KitCost cost, decimal? amount) =>
        amount is { } known && cost.Currency is { } currency ? MoneyText.Of(new Money(known, currency)) : Unknown;

    private static IEnumerable<string> Checks(KitCost cost)
    {
        yield return "Mounts, threads and rods fit what is there: put one on the other.";
        if (cost.Lines.Any(line => line.Kind == PartKind.Battery))
            yield return "Batteries: watt-hours, volts and the greatest current stand on the label; no dent, no swelling.";
        if (cost.Lines.Any(line => line.Kind is PartKind.Cable or PartKind.Plate or PartKind.Regulator or PartKind.Splitter))
            yield return "Plugs and plates: the maker says which voltage and current they are for.";
        if (cost.Lines.Any(line => line.Kind is PartKind.Head or PartKind.Tripod))
            yield return "Head and tripod: the maker's rated load, with everything on that you mean to carry.";
        if (cost.Lines.Any(line => line.Had == Had.Rented))
            yield return "Rented things: deposit, insurance, and what happens when one comes back late.";
        yield return "Used things: try them under power for half an hour; ask what a used battery still holds.";
    }

    private static IEnumerable<string> Cautions(KitCost cost)
    {
        if (cost.Lines.Any(line => line.Kind is PartKind.Cable or PartKind.Plate or PartKind.Regulator or PartKind.Splitter))
            yield return AnswerCautions.Polarity;
        yield return AnswerCautions.Always;
    }
}

using RigScenarios.Costs;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers;

/// <summary>The words for the years to come: what they cost, and from how many shooting days a year buying pays.</summary>
internal static class CostAheadWords
{
    private const int MostNamed = 6;

    /// <summary>The lines.</summary>
    public static IEnumerable<string> Of(CostAhead ahead, KitCost cost)
    {
        if (ahead.Years is { Total: > 0 } years)
            yield return Years(years, ahead.Each!, cost);
        if (ahead.BuyOrRent.Together is { } together)
        {
            yield return Together(together, ahead.BuyOrRent, cost);
            if (ahead.Years is { } at && Sorted(ahead.BuyOrRent, at.DaysPerYear) is { } sorted)
                yield return sorted;
        }
        if (ahead.BuyOrRent is { LeftOut.Count: > 0, Together: not null } few)
            yield return $"Not in these figures, for want of a price to buy or to rent: {CostSentences.Names(few.LeftOut)}.";
    }

    /// <summary>Stretches of days: "from 12 shooting days a year on", "at 2 to 6 and from 8 shooting days a year on".</summary>
    public static string Stretches(BreakEven one)
    {
        var last = one.Owning.Count - 1;
        var parts = one.Stretches.Select(stretch => stretch.To == last ? $"from {stretch.From}"
            : stretch.From == stretch.To ? $"at {stretch.From}" : $"at {stretch.From} to {stretch.To}").ToList();
        var on = one.Stretches[^1].To == last ? " on" : "";
        var all = parts.Count == 1 ? parts[0] : $"{string.Join(", ", parts.Take(parts.Count - 1))} and {parts[^1]}";
        var isOne = one.Stretches is [{ From: 1 } only] && (only.To == 1 || on.Length > 0);
        return $"{all} shooting {(isOne ? "day" : "days")} a year{on}";
    }

    private static string Years(YearsCost years, CostQuotients each, KitCost cost)
    {
        var shared = new (decimal? Amount, string Of)[]
        {
            (each.PerKilowattHour, "for each kWh that they deliver"),
            (each.PerHourOfReserve, "for each hour of reserve"),
        }.Where(one => one.Amount is > 0).Select(one => $"{CostSentences.Money(one.Amount!.Value, cost)} {one.Of}").ToList();
        var day = each.PerShootingDay is { } amount ? $": {CostSentences.Money(amount, cost)} a shooting day" : "";
        var total = $"{(years.IsAtLeast ? "at least " : "")}{CostSentences.Money(years.Total, cost)}";
        return $"Over {Count(years.Terms.Years, "year")} with {Count(years.DaysPerYear, "shooting day")} a year it costs {total} "
            + $"in today's money, what things bring in the end counted{day}."
            + (shared.Count == 0 ? "" : $" Owning the batteries over these years comes to {string.Join(", ", shared)}.");
    }

    private static string Together(BreakEven together, BuyOrRent all, KitCost cost)
    {
        var over = $"over {Count(all.Terms.Years, "year")}";
        var jobs = all.Terms.DaysInARow is { } row ? $"rented for jobs of {Count(row, "day")}"
            : "all days of a year rented in one go, the least that renting can cost";
        var loss = $"sold again after a loss of {all.Terms.FirstYearLoss.Percent:0.#} % and then "
            + $"{all.Terms.LaterLoss.Percent:0.#} % a year";
        var what = all.Each.Count == cost.Lines.Count(line => line.Had != Had.Owned) ? "all of it"
            : $"{Count(all.Each.Count, "thing")} together";
        return together.Stretches.Count == 0
            ? $"Buying {what} costs more than renting at any number of shooting days a year ({over}, {jobs}; {loss})."
            : $"Buying {what} costs no more than renting {Stretches(together)} ({over}, {jobs}; {loss}).";
    }

    // Only where some are cheaper one way and some the other: else the line above says it.
    private static string? Sorted(BuyOrRent all, int days)
    {
        var bought = all.Each.Where(one => one.BreakEven.IsOwningCheaper(days)).Select(one => one.Line).ToList();
        var rented = all.Each.Select(one => one.Line).Except(bought).ToList();
        return bought.Count == 0 || rented.Count == 0 ? null
            : $"At {Count(days, "shooting day")} a year buying costs no more for {Few(bought)}; renting costs less for "
                + $"{Few(rented)}.";
    }

    private static string Few(List<KitCostLine> lines) => CostSentences.Names([.. lines.Take(MostNamed)])
        + (lines.Count > MostNamed ? $" and {lines.Count - MostNamed} more" : "");

    private static string Count(int number, string of) => $"{number} {of}{(number == 1 ? "" : "s")}";
}

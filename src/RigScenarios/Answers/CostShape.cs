using System.Text.Json.Nodes;
using RigScenarios.Costs;
using RigScenarios.Parts;

namespace RigScenarios.Answers;

/// <summary>What it costs, for programs (docs/json.md). Amounts are numbers in <c>currency</c>, rounded to its smallest
/// unit.</summary>
internal static class CostShape
{
    /// <summary>The group <c>cost</c>; null where nobody asks.</summary>
    public static JsonObject? Of(RigAnswer answer)
    {
        if (answer is not { Cost: { } cost, CostAhead: { } ahead })
            return null;
        decimal? Amount(decimal? amount) => amount is { } known && cost.Currency is { } currency
            ? MoneyText.Rounded(new Money(known, currency)).Amount : amount;
        return new JsonObject
        {
            ["currency"] = cost.Currency,
            ["vat"] = cost.Vat?.ToString().ToLowerInvariant(),
            ["total"] = Amount(cost.Total),
            ["is_at_least"] = cost.IsAtLeast,
            ["bought"] = Amount(cost.Bought),
            ["rented"] = Amount(cost.Rented),
            ["rented_days"] = cost.RentedDays,
            ["budget"] = Amount(cost.Budget?.Amount),
            ["left"] = Amount(cost.Left),
            ["things"] = new JsonArray([.. cost.Lines.Select(line => (JsonNode)new JsonObject
            {
                ["name"] = line.Name, ["part"] = line.Part, ["title"] = line.Title,
                ["had"] = line.Had.ToString().ToLowerInvariant(), ["had_is_assumed"] = line.IsHadAssumed,
                ["count"] = line.Count, ["each"] = Amount(line.Each), ["total"] = Amount(line.Total),
            })]),
            ["years"] = ahead.Years is { } years ? Years(years, ahead.Each!, Amount) : null,
            ["buying_pays"] = ahead.BuyOrRent.Together is { } together ? Stretches(together) : null,
            ["each_pays"] = new JsonArray([.. ahead.BuyOrRent.Each.Select(one => (JsonNode)new JsonObject
            {
                ["name"] = one.Line.Name, ["days_a_year"] = Stretches(one.BreakEven),
            })]),
            ["left_out"] = new JsonArray([.. ahead.BuyOrRent.LeftOut.Select(line => (JsonNode)line.Name)]),
        };
    }

    private static JsonObject Years(YearsCost years, CostQuotients each, Func<decimal?, decimal?> amount) => new()
    {
        ["years"] = years.Terms.Years, ["days_a_year"] = years.DaysPerYear, ["total"] = amount(years.Total),
        ["is_at_least"] = years.IsAtLeast, ["price"] = amount(years.Bought.Price),
        ["batteries_anew"] = amount(years.Bought.Replacement), ["repairs"] = amount(years.Bought.Repairs),
        ["consumables"] = amount(years.Bought.Consumables), ["resale"] = amount(years.Bought.Resale),
        ["rented"] = amount(years.Rented), ["per_shooting_day"] = amount(each.PerShootingDay),
        ["batteries_per_kWh"] = amount(each.PerKilowattHour), ["batteries_per_h_of_reserve"] = amount(each.PerHourOfReserve),
    };

    private static JsonArray Stretches(BreakEven one) => new([.. one.Stretches.Select(stretch => (JsonNode)new JsonObject
    {
        ["from"] = stretch.From, ["to"] = stretch.To,
    })]);
}

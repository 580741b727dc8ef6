using RigScenarios.Costs;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>The list for the shop and the rental house as a table: a row for each thing of the kit. An amount that is not known
/// is an empty field, what is there already costs 0.</summary>
internal static class ShoppingTable
{
    public static SheetTable Of(KitCost cost)
    {
        var currency = cost.Currency ?? "";
        return new(
            [
                new("thing"), new("part"), new("what it is"), new("had"), new("had is assumed"), new("count"),
                new("rented for", "days"), new("each", currency), new("together", currency),
            ],
            [.. cost.Lines.Select(line => (IReadOnlyList<SheetCell>)
            [
                SheetCell.Of(line.Name), SheetCell.Of(line.Part), SheetCell.Of(line.Title),
                SheetCell.Of(line.Had.ToString().ToLowerInvariant()), SheetCell.Of(line.IsHadAssumed ? "yes" : "no"),
                SheetCell.Of((decimal)line.Count), SheetCell.Of(line.Had == Had.Rented ? (decimal?)cost.RentedDays : null),
                Amount(line.Each, currency), Amount(line.Total, currency),
            ])]);
    }

    private static SheetCell Amount(decimal? amount, string currency) => SheetCell.Of(amount is { } known && currency.Length > 0
        ? MoneyText.Rounded(new(known, currency)).Amount : amount);
}

using System.Text.Json.Nodes;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>An order of purchases for programs, as the document of a search has it (docs/json.md).</summary>
internal static class RigUpgradeShape
{
    /// <summary>The order of purchases of a result; null where its file does not ask for one.</summary>
    public static JsonObject? Of(RigSearchResult result) => result.Upgrades is not { } plan ? null : new JsonObject
    {
        ["budget_a_year"] = plan.Terms.BudgetAYear.Amount,
        ["years"] = plan.Terms.Years,
        ["wish"] = ChoiceFormat<RigWish>.Word(plan.Wish),
        ["answer"] = RigUpgradeSentences.Headline(result),
        ["is_exact"] = plan.IsExact,
        ["is_looked_for"] = plan.IsLookedFor,
        ["first_year"] = plan.FirstFeasible,
        ["plan"] = new JsonArray([.. plan.Years.Select(year => (JsonNode)new JsonObject
        {
            ["year"] = year.Year,
            ["bought"] = Trades(year.Bought),
            ["sold"] = Trades(year.Sold),
            ["money_left"] = year.MoneyLeft,
            ["parts"] = year.Choice is { } choice ? RigSearchShape.Parts(result, choice) : null,
            ["answer"] = year.Figures?.Headline,
            ["nothing_for"] = RigSearchShape.Texts(year.EmptyPlaces),
        })]),
        ["rests_on"] = RigSearchShape.Texts(RigUpgradeSentences.RestsOn(result)),
    };

    private static JsonArray Trades(IReadOnlyList<RigTrade> trades) => new([.. trades.Select(trade => (JsonNode)new JsonObject
    {
        ["slot"] = trade.Thing.Place, ["title"] = trade.Thing.Title, ["amount"] = trade.Amount,
    })]);
}

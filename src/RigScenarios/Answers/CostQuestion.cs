using RigScenarios.Costs;
using RigScenarios.Limits;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers;

/// <summary>What does it cost? The kit of a build and its days, held against the budget.</summary>
internal static class CostQuestion
{
    /// <summary>What a build and its days cost; null where the scenario says nothing of money, so that nobody asks.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="days">How many shooting days are asked about.</param>
    public static KitCost? KitOf(Scenario scenario, string build, int days) => scenario.Costs is not { } terms ? null
        : KitCost.Of(scenario, build, terms.ForDays(days));

    /// <summary>What a build and its days cost, also where the scenario says nothing of money; null where its prices are in
    /// several currencies, which the check of the file tells.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="days">How many shooting days are asked about.</param>
    public static KitCost? AnyOf(Scenario scenario, string build, int days)
    {
        try
        {
            return KitOf(scenario, build, days) ?? KitCost.Of(scenario, build, new CostTerms().ForDays(days));
        }
        catch (ScenarioProblemsException)
        {
            return null;
        }
    }

    /// <summary>
    /// The question: a known cost beyond the budget fails whatever else is not known; within it, a missing price leaves the
    /// verdict open. Prices have no error of their own, so that "close" is only what the scenario wants to keep. Without a budget
    /// nothing can be passed.
    /// </summary>
    public static AnswerQuestion Of(RigAnswer answer, KitCost cost)
    {
        var missing = CostSentences.Missing(cost);
        var verdict = cost.Left is not { } left ? Verdict.Holds
            : left < 0 ? Verdict.Fails
            : missing.Count > 0 ? Verdict.NotKnown
            : left < Wished(answer, cost) ? Verdict.Close
            : Verdict.Holds;
        return new(QuestionKind.Cost, verdict, [])
        {
            Missing = missing,
            MissingPaths = [.. cost.NotPriced.Select(line => $"parts.{line.Part}.{Price(line)}").Distinct()],
            Shortfall = cost.Left < 0 ? Over(cost) : 0,
        };
    }

    /// <summary>What is to stay of the budget.</summary>
    public static decimal Wished(RigAnswer answer, KitCost cost) =>
        (cost.Budget?.Amount ?? 0) * (decimal)(answer.Scenario.Costs?.Contingency?.DecimalFractions ?? 0);

    /// <summary>The field that a price is missing in.</summary>
    public static string Price(KitCostLine line) => line.Had == Had.Rented ? "rent-per-day" : "buy";

    private static double Over(KitCost cost) =>
        Math.Max(0.001, (double)(-cost.Left!.Value / Math.Max(cost.Budget!.Value.Amount, 1)));
}

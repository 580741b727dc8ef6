namespace RigScenarios.Search.Upgrades;

/// <summary>What is bought and sold in a year, and what stands then.</summary>
/// <param name="Year">The year, from 0.</param>
/// <param name="Bought">What is bought, by its place in the model.</param>
/// <param name="Sold">What is sold.</param>
/// <param name="Owned">What is owned afterwards.</param>
/// <param name="Money">What is left then.</param>
/// <param name="State">What the kit is good for.</param>
public sealed record UpgradeYear(
    int Year, IReadOnlyList<int> Bought, IReadOnlyList<int> Sold, IReadOnlyList<int> Owned, decimal Money, UpgradeState State);

/// <summary>An order of purchases over some years.</summary>
/// <param name="Years">Every year, in order.</param>
/// <param name="FirstFeasible">The year from which on the kit is feasible in every year; null if it never is.</param>
/// <param name="GoalSum">The sum of the goal over the years from then on; zero without one.</param>
/// <param name="IsExact">Whether no other order of purchases is better. Otherwise it is the best of those that were
/// tried.</param>
/// <param name="Looked">How many kits were looked at.</param>
public sealed record UpgradePlan(
    IReadOnlyList<UpgradeYear> Years, int? FirstFeasible, double GoalSum, bool IsExact, int Looked)
{
    /// <summary>The money that is left after the last year.</summary>
    public decimal MoneyLeft => Years[^1].Money;
}

namespace RigScenarios.Search.Upgrades;

/// <summary>A kit at the end of a year and how it came about. Kits are told as bits, thing by thing.</summary>
internal sealed record UpgradePath(
    UpgradePath? Before, ulong Kit, int? FirstFeasible, double GoalSum, decimal Money, int Changes)
{
    /// <summary>Whether the other path to the same kit is never the better beginning: not feasible earlier, no smaller goal, no
    /// more money. Of equals the one with fewer purchases and sales stays.</summary>
    public bool IsNoWorseThan(UpgradePath other) =>
        (FirstFeasible ?? int.MaxValue) <= (other.FirstFeasible ?? int.MaxValue) && GoalSum <= other.GoalSum
        && Money >= other.Money && (FirstFeasible != other.FirstFeasible || GoalSum < other.GoalSum || Money > other.Money
            || Changes <= other.Changes);

    /// <summary>The order of plans: feasible earliest; then the least sum of the goal; then the most money left; then the fewest
    /// purchases and sales.</summary>
    public static int Compare(UpgradePath one, UpgradePath other)
    {
        var order = (one.FirstFeasible ?? int.MaxValue).CompareTo(other.FirstFeasible ?? int.MaxValue);
        if (order == 0)
            order = one.GoalSum.CompareTo(other.GoalSum);
        if (order == 0)
            order = other.Money.CompareTo(one.Money);
        if (order == 0)
            order = one.Changes.CompareTo(other.Changes);
        return order == 0 ? one.Kit.CompareTo(other.Kit) : order;
    }

    /// <summary>The path with the year's state counted; null if the kit was feasible before and is no more.</summary>
    public UpgradePath? Counted(int year, UpgradeState state)
    {
        if (!state.Counts)
            return FirstFeasible is null ? this : null;
        return this with { FirstFeasible = FirstFeasible ?? year, GoalSum = GoalSum + state.Goal };
    }
}

using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// How a battery's resistance grows while its capacity falls: <c>aR = 1 + k·(1 - aQ)</c>, a straight line with one factor k for
/// each chemistry (<see cref="CellChemistry.GrowthPerLoss"/>). It stands in wherever one of the two is known and the other isn't.
/// </summary>
/// <remarks>docs/discharge.md, "Age", says where the factors come from and how far cells lie from the line.</remarks>
public static class Wear
{
    /// <summary>
    /// k where the resistance has doubled at 80 % of the capacity, the far end of what is usual: common practice of those who
    /// retire batteries, no source.
    /// </summary>
    public const double GreatestUsualGrowthPerLoss = 5;

    // Below this loss the ratio of growth to loss says more about how both were measured than about the battery.
    private const double LeastLossWithRatio = 0.02;

    /// <summary>Resistance over that of the new battery; 1 where no capacity is lost.</summary>
    /// <param name="capacityLeft">Part of the new capacity that is left; above 0.</param>
    /// <param name="growthPerLoss">k; 0 or more.</param>
    public static double ResistanceFactor(Ratio capacityLeft, double growthPerLoss) =>
        1 + (growthPerLoss * Math.Max(0, 1 - capacityLeft.DecimalFractions));

    /// <summary>
    /// A resistance that is known, after the capacity has gone on to fall (or is taken back): it keeps the battery's own ratio of
    /// growth to loss. A battery with hardly a loss has no such ratio, and goes along the line.
    /// </summary>
    /// <param name="resistanceFactor">Resistance over that of the new battery, as it is known; above 0.</param>
    /// <param name="from">Part of the new capacity that was left then.</param>
    /// <param name="to">Part of the new capacity that is left now.</param>
    /// <param name="growthPerLoss">k, for the line.</param>
    /// <returns>1 or more; where it is known to be less, not less than that.</returns>
    public static double Further(double resistanceFactor, Ratio from, Ratio to, double growthPerLoss)
    {
        var (before, after) = (1 - from.DecimalFractions, 1 - to.DecimalFractions);
        return before >= LeastLossWithRatio && resistanceFactor >= 1
            ? 1 + ((resistanceFactor - 1) * after / before)
            : Math.Max(Math.Min(1, resistanceFactor), resistanceFactor + (growthPerLoss * (after - before)));
    }
}

using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// How far a battery has aged, as the discharge model sees it: what is left of its capacity and how its resistance has grown.
/// "New" is what its label says: one that was measured may be better than that.
/// </summary>
public sealed record Age
{
    /// <param name="capacityLeft">Part of the new capacity that is left; above 0, up to 1.5.</param>
    /// <param name="resistanceFactor">Resistance over that of the new battery; above 0, up to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public Age(Ratio capacityLeft, double resistanceFactor)
    {
        CapacityLeft = capacityLeft;
        ResistanceFactor = resistanceFactor;
    }

    /// <summary>As new: all of the capacity, no growth of the resistance.</summary>
    public static Age New { get; } = new(Ratio.FromDecimalFractions(1), 1);

    /// <summary>Part of the new capacity that is left; above 0, up to 1.5.</summary>
    public Ratio CapacityLeft
    {
        get;
        init
        {
            Require.AboveUpTo(value.DecimalFractions, 0, 1.5, "");
            field = value;
        }
    }

    /// <summary>Resistance over that of the new battery; above 0, up to 1000.</summary>
    public double ResistanceFactor
    {
        get;
        init
        {
            Require.AboveUpTo(value, 0, 1000, "");
            field = value;
        }
    }
}

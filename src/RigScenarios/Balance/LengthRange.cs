using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>A stretch on which something can be moved, both ends included; for instance what the rods allow a battery
/// plate.</summary>
public sealed record LengthRange
{
    /// <param name="least">The lower end.</param>
    /// <param name="greatest">The upper end, not below the lower.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite, or they are the wrong way round.</exception>
    public LengthRange(Length least, Length greatest)
    {
        Require.Finite(least.Meters, "m", nameof(least));
        Require.Finite(greatest.Meters, "m", nameof(greatest));
        Require.NotNegative((greatest - least).Meters, "m", "greatest - least");
        (Least, Greatest) = (least, greatest);
    }

    /// <summary>The lower end.</summary>
    public Length Least { get; }

    /// <summary>The upper end.</summary>
    public Length Greatest { get; }

    /// <summary>Whether a length lies in it; the ends count.</summary>
    public bool Holds(Length length) => length >= Least && length <= Greatest;
}

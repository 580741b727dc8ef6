using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// The Beaufort number of a mean wind at 10 m over open ground (table of the World Meteorological Organization as national
/// weather services print it, m/s).
/// Gusts run above the mean; at the height of a camera the wind is lower in the open.
/// </summary>
public static class Beaufort
{
    private static readonly double[] From = [0, 0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7];

    /// <summary>The number, 0 to 12, of a wind speed; the table has one place after the point, and so the speed is rounded
    /// first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public static int Of(Speed wind)
    {
        Require.NotNegative(wind.MetersPerSecond, "m/s", nameof(wind));
        var rounded = Math.Round(wind.MetersPerSecond, 1);
        return Array.FindLastIndex(From, from => rounded >= from);
    }
}

using MathNet.Numerics;

namespace RigScenarios.Numerics;

/// <summary>The standard normal distribution by its probabilities.</summary>
internal static class NormalCurve
{
    /// <summary>Φ(z): the probability to lie below z, with all its digits for z below zero too.</summary>
    public static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / Constants.Sqrt2);

    /// <summary>Φ⁻¹(p): what a probability lies below.</summary>
    /// <param name="probability">0 to 1; the ends give infinity.</param>
    public static double At(double probability) => -Constants.Sqrt2 * SpecialFunctions.ErfcInv(2 * probability);

    /// <summary>What a share of the distribution between two ends lies below.</summary>
    /// <param name="low">The lower end, in standard deviations.</param>
    /// <param name="high">The upper end.</param>
    /// <param name="share">The share, 0 to 1.</param>
    public static double Within(double low, double high, double share)
    {
        // Near 1 a probability has lost its digits; the other tail, mirrored, has them.
        if (low > 0)
            return -Within(-high, -low, 1 - share);
        var (from, to) = (Below(low), Below(high));
        return Math.Clamp(At(from + (share * (to - from))), low, high);
    }
}

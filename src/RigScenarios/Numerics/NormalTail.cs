using MathNet.Numerics;

namespace RigScenarios.Numerics;

/// <summary>The standard normal distribution, also far out, where its probability is no longer a number by itself.</summary>
internal static class NormalTail
{
    /// <summary>The 97.5 % point: 95 % lie within so many deviations.</summary>
    public const double Of95Percent = 1.959964;

    // Below this the complementary error function runs out of digits.
    private const double FarOut = -30;

    /// <summary>ln Φ(u): the logarithm of the probability to lie below u.</summary>
    public static double LogBelow(double u)
    {
        if (u <= FarOut)
        {
            // Asymptotic series, M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), 26.2.12.
            var inverse = 1 / (u * u);
            return (-0.5 * u * u) - Math.Log(-u * Constants.Sqrt2Pi)
                + Math.Log(1 - (inverse * (1 - (3 * inverse) + (15 * inverse * inverse))));
        }

        if (u <= 0)
            return Math.Log(0.5 * SpecialFunctions.Erfc(-u / Constants.Sqrt2));

        // Near 1 what is missing is known to all digits, the probability itself isn't.
        var above = 0.5 * SpecialFunctions.Erfc(u / Constants.Sqrt2);
        return above < 1e-4 ? -above * (1 + (above * (0.5 + (above / 3)))) : Math.Log(1 - above);
    }

    /// <summary>φ(u)/Φ(u), the derivative of ln Φ(u).</summary>
    public static double Slope(double u) => Math.Exp((-0.5 * u * u) - Constants.LogSqrt2Pi - LogBelow(u));
}

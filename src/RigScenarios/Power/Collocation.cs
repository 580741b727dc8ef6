using MathNet.Numerics.LinearAlgebra;

namespace RigScenarios.Power;

/// <summary>
/// The nodes of a step, on [0, 1], and what follows from them: a polynomial through values at the nodes, its integral, and how an
/// exponential branch answers to it. Gauss-Lobatto nodes: both ends belong to them, so that the values at a demand step are exact.
/// </summary>
/// <remarks>
/// Nodes: the roots of P'(n-1) and the ends, M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), 25.4.32.
/// Immutable tables, computed once.
/// </remarks>
internal static class Collocation
{
    /// <summary>Number of nodes.</summary>
    public const int Count = 6;

    /// <summary>The nodes, from 0 to 1.</summary>
    public static readonly double[] Nodes = LobattoNodes();

    /// <summary>Row m, column j: the part of the value at node j in the coefficient of θ^m.</summary>
    public static readonly double[] Monomials = MonomialMatrix();

    /// <summary>Weights of the integral over the whole step.</summary>
    public static readonly double[] Weights = [.. Enumerable.Range(0, Count).Select(
        j => Enumerable.Range(0, Count).Sum(m => Monomials[(m * Count) + j] / (m + 1)))];

    /// <summary>Weights of the integral from 0 to θ.</summary>
    public static void WeightsUpTo(double theta, Span<double> weights)
    {
        if (theta == 1)
        {
            Weights.CopyTo(weights);
            return;
        }

        for (var j = 0; j < Count; j++)
        {
            var sum = 0.0;
            for (var m = Count - 1; m >= 0; m--)
                sum = (sum * theta) + (Monomials[(m * Count) + j] / (m + 1));
            weights[j] = sum * theta;
        }
    }

    /// <summary>Points between the nodes at which a step is held against its polynomial.</summary>
    public static readonly double[] CheckPoints = [Nodes[1] / 2, (Nodes[Count / 2] + Nodes[(Count / 2) - 1]) / 2];

    private static readonly double[] Reciprocals = [.. Enumerable.Range(0, Count + 11).Select(k => k == 0 ? 0 : 1.0 / k)];

    /// <summary>Sum of the products of as many values as there are nodes.</summary>
    public static double Dot(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        // Written out: this is where most of the time of a discharge goes.
        if (left.Length < 6 || right.Length < 6)
            throw new ArgumentException($"Six values are needed; found {left.Length} and {right.Length}.", nameof(left));
        return ((left[0] * right[0]) + (left[1] * right[1])) + ((left[2] * right[2]) + (left[3] * right[3])) + ((left[4] * right[4]) + (left[5] * right[5]));
    }

    /// <summary>Coefficients of 1, θ, θ², … of the polynomial through the values.</summary>
    public static void Coefficients(ReadOnlySpan<double> values, Span<double> coefficients)
    {
        ReadOnlySpan<double> table = Monomials;
        for (var m = 0; m < Count; m++)
            coefficients[m] = Dot(table.Slice(m * Count, Count), values);
    }

    /// <summary>The polynomial with the coefficients at θ.</summary>
    public static double Value(ReadOnlySpan<double> coefficients, double theta)
    {
        var value = coefficients[Count - 1];
        for (var m = Count - 2; m >= 0; m--)
            value = (value * theta) + coefficients[m];
        return value;
    }

    /// <summary>Integral of the polynomial with the coefficients from 0 to θ.</summary>
    public static double Integral(ReadOnlySpan<double> coefficients, double theta)
    {
        var value = 0.0;
        for (var m = Count - 1; m >= 0; m--)
            value = (value * theta) + (coefficients[m] * Reciprocals[m + 1]);
        return value * theta;
    }

    /// <summary>
    /// Response of a branch y' = -y/tau + θ^m over the time θ·h, for m = 0, 1, …, divided by h: θ^(m+1)·χ_m(θ·h/tau), with
    /// χ_m(x) = ∫ u^m exp(-x(1-u)) du over [0, 1].
    /// </summary>
    /// <param name="x">θ·h/tau; 0 for a branch that only integrates.</param>
    /// <param name="theta">Position in the step.</param>
    /// <param name="decay">exp(-x).</param>
    /// <param name="response">The responses.</param>
    public static void Response(double x, double theta, double decay, Span<double> response)
    {
        Chi(x, decay, response);
        var power = theta;
        for (var m = 0; m < Count; m++)
        {
            response[m] *= power;
            power *= theta;
        }
    }

    // χ_m = (1 - m·χ_(m-1))/x upwards loses the digits of 120/x^5, so it is for x that aren't small; downwards,
    // χ_(m-1) = (1 - x·χ_m)/m, nothing is lost, but the last one must be summed up.
    private static void Chi(double x, double decay, Span<double> chi)
    {
        if (x > 0.5)
        {
            var inverse = 1 / x;
            chi[0] = (1 - decay) * inverse;
            for (var m = 1; m < Count; m++)
                chi[m] = (1 - (m * chi[m - 1])) * inverse;
            return;
        }

        // χ_M = 1/(M+1)·(1 - x/(M+2)·(1 - x/(M+3)·(…))).
        const int top = Count - 1;
        ReadOnlySpan<double> reciprocals = Reciprocals;
        var series = 1.0;
        for (var k = x < 0.05 ? 6 : 10; k >= 1; k--)
            series = 1 - (x * reciprocals[top + 1 + k] * series);
        chi[top] = series * reciprocals[top + 1];
        for (var m = top; m >= 1; m--)
            chi[m - 1] = (1 - (x * chi[m])) * reciprocals[m];
    }

    private static double[] LobattoNodes()
    {
        const int degree = Count - 1;
        var nodes = new double[Count];
        nodes[Count - 1] = 1;
        for (var i = 1; i < Count - 1; i++)
        {
            // Newton on P'(degree) from the Chebyshev-Lobatto point; (1-x²)P'' = 2xP' - n(n+1)P.
            var x = -Math.Cos(Math.PI * i / degree);
            for (var iteration = 0; iteration < 50; iteration++)
            {
                double previous = 1, current = x;
                for (var k = 2; k <= degree; k++)
                    (previous, current) = (current, ((((2 * k) - 1) * x * current) - ((k - 1) * previous)) / k);
                var slope = degree * (previous - (x * current)) / (1 - (x * x));
                var curvature = ((2 * x * slope) - (degree * (degree + 1) * current)) / (1 - (x * x));
                x -= slope / curvature;
            }

            nodes[i] = (1 + x) / 2;
        }

        return nodes;
    }

    private static double[] MonomialMatrix()
    {
        var powers = Matrix<double>.Build.Dense(Count, Count, (j, m) => Math.Pow(Nodes[j], m));
        var inverse = powers.Inverse();
        return [.. Enumerable.Range(0, Count * Count).Select(k => inverse[k / Count, k % Count])];
    }
}

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

    /// <summary>Points between the nodes at which a step is held against its polynomial.</summary>
    public static readonly double[] CheckPoints = [Nodes[1] / 2, (Nodes[Count / 2] + Nodes[(Count / 2) - 1]) / 2];

    /// <summary>Coefficients of 1, θ, θ², … of the polynomial through the values.</summary>
    public static void Coefficients(ReadOnlySpan<double> values, Span<double> coefficients)
    {
        ReadOnlySpan<double> table = Monomials;
        for (var m = 0; m < Count; m++)
        {
            var row = table.Slice(m * Count, Count);
            var sum = 0.0;
            for (var j = 0; j < Count; j++)
                sum += row[j] * values[j];
            coefficients[m] = sum;
        }
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
            value = (value * theta) + (coefficients[m] / (m + 1));
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

    // χ_m = (1 - m·χ_(m-1))/x upwards loses digits for small x; downwards, χ_(m-1) = (1 - x·χ_m)/m, it doesn't.
    private static void Chi(double x, double decay, Span<double> chi)
    {
        if (x > 2)
        {
            var inverse = 1 / x;
            chi[0] = (1 - decay) * inverse;
            for (var m = 1; m < Count; m++)
                chi[m] = (1 - (m * chi[m - 1])) * inverse;
            return;
        }

        // χ_M = 1/(M+1)·(1 - x/(M+2)·(1 - x/(M+3)·(…))).
        const int top = Count - 1;
        var terms = x < 0.1 ? 7 : 16;
        var series = 1.0;
        for (var k = terms; k >= 1; k--)
            series = 1 - (x / (top + 1 + k) * series);
        chi[top] = series / (top + 1);
        for (var m = top; m >= 1; m--)
            chi[m - 1] = (1 - (x * chi[m])) / m;
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

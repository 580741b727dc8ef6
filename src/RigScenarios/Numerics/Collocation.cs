using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using MathNet.Numerics.LinearAlgebra;

namespace RigScenarios.Numerics;

/// <summary>
/// The nodes of a step, on [0, 1], and what follows from them: a polynomial through values at the nodes, its integral, and how an
/// exponential branch answers to it. Gauss-Lobatto nodes: both ends belong to them, so that the values at a demand step are
/// exact.
/// </summary>
/// <remarks>
/// Nodes: the roots of P'(n-1) and the ends, M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), 25.4.32.
/// Immutable tables, computed once. The methods with loops are compiled in full at once: they run some ten thousand times in the
/// first
/// tenth of a second, before the runtime would take its second look at them, and make up most of a cold start otherwise.
/// </remarks>
internal static class Collocation
{
    /// <summary>Number of nodes.</summary>
    public const int Count = 6;

    /// <summary>The nodes, from 0 to 1.</summary>
    public static readonly double[] Nodes = LobattoNodes();

    /// <summary>Row m, column j: the part of the value at node j in the coefficient of θ^m.</summary>
    public static readonly double[] Monomials = MonomialMatrix();

    /// <summary>
    /// The eight places of a step that are looked at together, one in each lane of a vector: the nodes, then two points between
    /// nodes at which the
    /// step is held against its polynomials.
    /// </summary>
    public static readonly Vector512<double> Places = Vector512.Create(
        Nodes[0], Nodes[1], Nodes[2], Nodes[3], Nodes[4], Nodes[5], Nodes[1] / 2, (Nodes[2] + Nodes[3]) / 2);

    /// <summary>The lanes of <see cref="Places"/> in the order of their places.</summary>
    public static readonly int[] LanesInOrder = [.. Enumerable.Range(0, 8).OrderBy(lane => Places[lane])];

    /// <summary>Weights with which the values at the nodes give the polynomial at all eight places.</summary>
    public static readonly Vector512<double>[] Interpolation = [.. Enumerable.Range(0, Count).Select(j => Lanes(
        theta => Enumerable.Range(0, Count).Sum(m => Monomials[(m * Count) + j] * Math.Pow(theta, m))))];

    /// <summary>In χ: the x from which on it is worked out upwards.</summary>
    public const double SmallestUpwards = 0.5;

    /// <summary>In χ: the terms of the series for smaller ones.</summary>
    public const int SeriesTerms = 10;

    /// <summary>1/k; 0 for 0.</summary>
    public static readonly double[] Reciprocals =
        [.. Enumerable.Range(0, Count + SeriesTerms + 1).Select(k => k == 0 ? 0 : 1.0 / k)];

    /// <summary>Weights with which the values at the nodes give the integral from 0 to θ (lanes 0…5; the others are 0).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static Vector512<double> IntegralWeights(double theta)
    {
        Span<double> weights = stackalloc double[Vector512<double>.Count];
        weights.Clear();
        for (var j = 0; j < Count; j++)
        {
            var sum = 0.0;
            for (var m = Count - 1; m >= 0; m--)
                sum = (sum * theta) + (Monomials[(m * Count) + j] * Reciprocals[m + 1]);
            weights[j] = sum * theta;
        }

        return Vector512.Create<double>(weights);
    }

    /// <summary>Coefficients of 1, θ, θ², … of the polynomial through the values at the nodes (lanes 0…5).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Coefficients(Vector512<double> values, Span<double> coefficients)
    {
        ReadOnlySpan<double> table = Monomials;
        Span<double> at = stackalloc double[Vector512<double>.Count];
        values.CopyTo(at);
        for (var m = 0; m < Count; m++)
        {
            var sum = 0.0;
            for (var j = 0; j < Count; j++)
                sum += table[(m * Count) + j] * at[j];
            coefficients[m] = sum;
        }
    }

    /// <summary>Integral of the polynomial with the coefficients from 0 to θ.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static double Integral(ReadOnlySpan<double> coefficients, double theta)
    {
        var value = 0.0;
        for (var m = Count - 1; m >= 0; m--)
            value = (value * theta) + (coefficients[m] * Reciprocals[m + 1]);
        return value * theta;
    }

    /// <summary>The largest of the lanes.</summary>
    public static double Largest(Vector512<double> values)
    {
        if (PlainCollocation.IsQuicker)
            return PlainCollocation.Largest(values);
        var four = Vector256.Max(values.GetLower(), values.GetUpper());
        var two = Vector128.Max(four.GetLower(), four.GetUpper());
        return Math.Max(two[0], two[1]);
    }

    /// <summary>The largest of the lanes, without its sign.</summary>
    public static double LargestSize(Vector512<double> values) =>
        PlainCollocation.IsQuicker ? PlainCollocation.LargestSize(values) : Largest(Vector512.Abs(values));

    /// <summary>How far values are from the polynomial through those at the nodes, at most.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static double Deviation(Vector512<double> values) => LargestSize(values - Weighted(Interpolation, values));

    /// <summary>The smallest of the lanes.</summary>
    public static double Least(Vector512<double> values) => -Largest(-values);

    /// <summary>Sum of the weights times the values at the nodes (lanes 0…5).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static Vector512<double> Weighted(ReadOnlySpan<Vector512<double>> weights, Vector512<double> values)
    {
        if (PlainCollocation.IsQuicker)
            return PlainCollocation.Weighted(weights, values);
        Span<double> at = stackalloc double[Vector512<double>.Count];
        values.CopyTo(at);
        var sum = weights[0] * at[0];
        for (var j = 1; j < Count; j++)
            sum = Vector512.FusedMultiplyAdd(weights[j], Vector512.Create(at[j]), sum);
        return sum;
    }

    /// <summary>What a branch answers to a driver with these values at the nodes: the weighted sum times the factor, and what is
    /// left of its start.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static Vector512<double> Response(
        ReadOnlySpan<Vector512<double>> weights, Vector512<double> driver, double factor, Vector512<double> decay,
        double start) => PlainCollocation.IsQuicker ? PlainCollocation.Response(weights, driver, factor, decay, start)
            : (Weighted(weights, driver) * factor) + (decay * start);

    /// <summary>Whether no lane differs from the one before by more than a limit; false where one of them is not a
    /// number.</summary>
    public static bool IsNear(Vector512<double> values, Vector512<double> before, double limit) => PlainCollocation.IsQuicker
        ? PlainCollocation.IsNear(values, before, limit)
        : Vector512.LessThanOrEqualAll(Vector512.Abs(values - before), Vector512.Create(limit));

    /// <summary>
    /// Weights with which a driver's values at the nodes give the response of a branch y' = -y/tau + driver at places of the
    /// step, divided by
    /// the step's length; and the decay of the branch until there.
    /// </summary>
    /// <remarks>
    /// To the driver θ^m the branch answers with θ^(m+1)·χ_m(θ·h/tau), χ_m(x) = ∫ u^m exp(-x(1-u)) du over [0, 1].
    /// </remarks>
    /// <param name="places">Places in the step, θ.</param>
    /// <param name="ratio">h/tau; 0 for a branch that only integrates.</param>
    /// <param name="weights">One for each node.</param>
    /// <param name="decay">exp(-θ·h/tau).</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Branch(
        Vector512<double> places, double ratio, Span<Vector512<double>> weights, out Vector512<double> decay)
    {
        if (PlainCollocation.IsQuicker)
        {
            PlainCollocation.Branch(places, ratio, weights, out decay);
            return;
        }

        Span<Vector512<double>> chi = stackalloc Vector512<double>[Count];
        decay = Chi(places * ratio, chi);
        weights[..Count].Clear();
        ReadOnlySpan<double> table = Monomials;
        var power = places;
        for (var m = 0; m < Count; m++)
        {
            var response = chi[m] * power;
            for (var j = 0; j < Count; j++)
                weights[j] = Vector512.FusedMultiplyAdd(response, Vector512.Create(table[(m * Count) + j]), weights[j]);
            power *= places;
        }
    }

    // χ_m = (1 - m·χ_(m-1))/x upwards loses the digits of 120/x^5, so it is for x that aren't small; downwards,
    // χ_(m-1) = (1 - x·χ_m)/m, nothing is lost, but the last one must be summed up: χ_M = 1/(M+1)·(1 - x/(M+2)·(1 -
    // x/(M+3)·(…))).
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static Vector512<double> Chi(Vector512<double> x, Span<Vector512<double>> chi)
    {
        const int top = Count - 1;
        ReadOnlySpan<double> reciprocals = Reciprocals;
        var one = Vector512<double>.One;
        var series = one;
        for (var k = SeriesTerms; k >= 1; k--)
            series = one - (x * reciprocals[top + 1 + k] * series);
        chi[top] = series * reciprocals[top + 1];
        for (var m = top; m >= 1; m--)
            chi[m - 1] = (one - (x * chi[m])) * reciprocals[m];
        var decay = Vector512.Exp(-x);
        var large = Vector512.GreaterThan(x, Vector512.Create(SmallestUpwards));
        if (large == Vector512<double>.Zero)
            return decay;

        var inverse = one / x;
        var upwards = (one - decay) * inverse;
        chi[0] = Vector512.ConditionalSelect(large, upwards, chi[0]);
        for (var m = 1; m < Count; m++)
        {
            upwards = (one - (upwards * m)) * inverse;
            chi[m] = Vector512.ConditionalSelect(large, upwards, chi[m]);
        }

        return decay;
    }

    private static Vector512<double> Lanes(Func<double, double> value) =>
        Vector512.Create([.. Enumerable.Range(0, Vector512<double>.Count).Select(lane => value(Places[lane]))]);

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

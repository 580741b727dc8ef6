using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace RigScenarios.Numerics;

/// <summary>
/// The sums of <see cref="Collocation"/>, one lane after the other, for the browser: there the runtime interprets, each operation
/// on a wide vector is a tree of calls, and each of its multiply-adds a call into the C library. They are the same to a rounding.
/// </summary>
internal static class PlainCollocation
{
    private const int Count = Collocation.Count;

    /// <summary>Whether these are the quicker ones here.</summary>
    public static bool IsQuicker => OperatingSystem.IsBrowser();

    /// <summary>The lanes as numbers in a row.</summary>
    public static Span<double> Of(ref Vector512<double> lanes) =>
        MemoryMarshal.CreateSpan(ref Unsafe.As<Vector512<double>, double>(ref lanes), Vector512<double>.Count);

    /// <summary>As <see cref="Collocation.Branch"/>.</summary>
    public static void Branch(
        Vector512<double> places, double ratio, Span<Vector512<double>> weights, out Vector512<double> decay)
    {
        decay = default;
        var left = Of(ref decay);
        var place = Of(ref places);
        var all = MemoryMarshal.Cast<Vector512<double>, double>(weights);
        Span<double> ofOne = stackalloc double[Count];
        for (var lane = 0; lane < left.Length; lane++)
        {
            left[lane] = BranchAt(place[lane], ratio, ofOne);
            for (var j = 0; j < Count; j++)
                all[(j * left.Length) + lane] = ofOne[j];
        }
    }

    /// <summary>The same at one place.</summary>
    /// <param name="place">The place in the step, θ.</param>
    /// <param name="ratio">h/tau; 0 for a branch that only integrates.</param>
    /// <param name="weights">One for each node.</param>
    /// <returns>exp(-θ·h/tau).</returns>
    public static double BranchAt(double place, double ratio, Span<double> weights)
    {
        Span<double> chi = stackalloc double[Count];
        var decay = Chi(place * ratio, chi);
        var power = place;
        for (var m = 0; m < Count; m++)
        {
            chi[m] *= power;
            power *= place;
        }

        var table = Collocation.Monomials;
        for (var j = 0; j < Count; j++)
        {
            var sum = 0.0;
            for (var m = 0; m < Count; m++)
                sum += chi[m] * table[(m * Count) + j];
            weights[j] = sum;
        }

        return decay;
    }

    /// <summary>As <see cref="Collocation.Weighted"/>.</summary>
    public static Vector512<double> Weighted(ReadOnlySpan<Vector512<double>> weights, Vector512<double> values)
    {
        Vector512<double> sums = default;
        var sum = Of(ref sums);
        var at = Of(ref values);
        var all = MemoryMarshal.Cast<Vector512<double>, double>(weights);
        for (var j = 0; j < Count; j++)
        {
            var value = at[j];
            for (var lane = 0; lane < sum.Length; lane++)
                sum[lane] += all[(j * sum.Length) + lane] * value;
        }

        return sums;
    }

    /// <summary>Sum of the weights times the values at the nodes.</summary>
    public static double WeightedAt(ReadOnlySpan<double> weights, Vector512<double> values)
    {
        var at = Of(ref values);
        var sum = 0.0;
        for (var j = 0; j < Count; j++)
            sum += weights[j] * at[j];
        return sum;
    }

    /// <summary>As <see cref="Collocation.Response"/>.</summary>
    public static Vector512<double> Response(
        ReadOnlySpan<Vector512<double>> weights, Vector512<double> driver, double factor, Vector512<double> decay, double start)
    {
        var sums = Weighted(weights, driver);
        var sum = Of(ref sums);
        var left = Of(ref decay);
        for (var lane = 0; lane < sum.Length; lane++)
            sum[lane] = (sum[lane] * factor) + (left[lane] * start);
        return sums;
    }

    /// <summary>As <see cref="Collocation.Largest"/>.</summary>
    public static double Largest(Vector512<double> values)
    {
        var value = Of(ref values);
        var largest = value[0];
        for (var lane = 1; lane < value.Length; lane++)
            largest = Math.Max(largest, value[lane]);
        return largest;
    }

    /// <summary>As <see cref="Collocation.IsNear"/>.</summary>
    public static bool IsNear(Vector512<double> values, Vector512<double> before, double limit)
    {
        var value = Of(ref values);
        var old = Of(ref before);
        var isNear = true;
        for (var lane = 0; lane < value.Length; lane++)
            isNear &= Math.Abs(value[lane] - old[lane]) <= limit;
        return isNear;
    }

    /// <summary>The largest of the lanes, without its sign.</summary>
    public static double LargestSize(Vector512<double> values)
    {
        var value = Of(ref values);
        var largest = 0.0;
        for (var lane = 0; lane < value.Length; lane++)
            largest = Math.Max(largest, Math.Abs(value[lane]));
        return largest;
    }

    // As Collocation.Chi: upwards where x is not small, downwards from the series elsewhere.
    private static double Chi(double x, Span<double> chi)
    {
        const int top = Count - 1;
        var decay = Math.Exp(-x);
        if (x > Collocation.SmallestUpwards)
        {
            var inverse = 1 / x;
            chi[0] = (1 - decay) * inverse;
            for (var m = 1; m < Count; m++)
                chi[m] = (1 - (chi[m - 1] * m)) * inverse;
            return decay;
        }

        var reciprocals = Collocation.Reciprocals;
        var series = 1.0;
        for (var k = Collocation.SeriesTerms; k >= 1; k--)
            series = 1 - (x * reciprocals[top + 1 + k] * series);
        chi[top] = series * reciprocals[top + 1];
        for (var m = top; m >= 1; m--)
            chi[m - 1] = (1 - (x * chi[m])) * reciprocals[m];
        return decay;
    }
}

using System.Security.Cryptography;
using System.Text;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Tables;

/// <summary>A digest of the scenarios of a plan: of every value of its axes, and of the values of a thousand scenarios spread
/// evenly over all, the first and the last among them. Any other range, distribution, correlation, method or seed gives other
/// values, and so another digest.</summary>
public static class PointsDigest
{
    private const int MostPoints = 1000;

    /// <summary>The digest (SHA-256, hexadecimal).</summary>
    /// <param name="plan">The plan.</param>
    public static string Of(SweepPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var value in plan.Paths.Concat(plan.Axes.SelectMany(axis => axis.Values)).Concat(Sample(plan)))
            hash.AppendData(Encoding.UTF8.GetBytes($"{value.Length}:{value}"));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>The values of the scenarios that are looked at.</summary>
    private static IEnumerable<string> Sample(SweepPlan plan)
    {
        var count = plan.Count;
        var points = Math.Min(count, MostPoints);
        for (long point = 0; point < points; point++)
        {
            foreach (var value in plan.At(points == 1 ? 0 : (long)((Int128)(count - 1) * point / (points - 1))).Values)
                yield return value;
        }
    }
}

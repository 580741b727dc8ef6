using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>
/// Joins fields that go together: independent shares become those of normal variables with the wanted correlations, and each
/// field keeps its own spread (R. B. Nelsen, An Introduction to Copulas, 2nd edition 2006, section 2.3).
/// </summary>
internal sealed class NormalCopula
{
    // A share of exactly 0 or 1, which no sample has, becomes a number all the same.
    private const double Nearest = 1e-15;

    private readonly double[][] factor;

    private NormalCopula(double[][] factor) => this.factor = factor;

    /// <summary>The copula of a plan; null if nothing goes together.</summary>
    /// <param name="paths">The uncertain fields.</param>
    /// <param name="correlations">Which go together.</param>
    /// <exception cref="ArgumentException">The correlations are not sound; says the first problem.</exception>
    public static NormalCopula? Of(IReadOnlyList<string> paths, IReadOnlyList<Correlation> correlations)
    {
        if (correlations.Count == 0)
            return null;
        if (CorrelationMatrix.Problems(paths, correlations).FirstOrDefault() is { } problem)
            throw new UnsoundPlanException(problem.ToString());
        return new NormalCopula(CorrelationMatrix.Factor(paths, correlations, out _)!);
    }

    /// <summary>The shares, joined.</summary>
    public double[] Joined(double[] unit)
    {
        var normal = new double[unit.Length];
        for (var field = 0; field < unit.Length; field++)
            normal[field] = NormalCurve.At(Math.Clamp(unit[field], Nearest, 1 - Nearest));
        var joined = new double[unit.Length];
        for (var field = 0; field < unit.Length; field++)
        {
            var row = factor[field];
            // A field by itself keeps its share to the last digit, and so does the first of a pair.
            if (row[^1] == 1)
            {
                joined[field] = unit[field];
                continue;
            }
            var sum = 0.0;
            for (var other = 0; other < row.Length; other++)
                sum += row[other] * normal[other];
            joined[field] = NormalCurve.Below(sum);
        }
        return joined;
    }
}

using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>
/// Joins fields that go together: independent shares become those of normal variables with the wanted correlations, and each field
/// keeps its own spread (R. B. Nelsen, An Introduction to Copulas, 2nd edition 2006, section 2.3; the factor is that of A.-L.
/// Cholesky).
/// </summary>
internal sealed class NormalCopula
{
    // No share of a sample is nearer to an end; a share of exactly 0 or 1 stays a number.
    private const double Nearest = 1e-15;

    // Below this a factor is rounding, and a field is given by the others.
    private const double Least = 1e-9;

    private readonly double[][] factor;

    private NormalCopula(double[][] factor) => this.factor = factor;

    /// <summary>The copula of a plan; null if nothing goes together.</summary>
    /// <param name="paths">The uncertain fields.</param>
    /// <param name="correlations">Which go together.</param>
    /// <exception cref="ArgumentException">A field is not there, a coefficient is out of range, a pair is named twice, or the
    /// coefficients contradict each other.</exception>
    public static NormalCopula? Of(IReadOnlyList<string> paths, IReadOnlyList<Correlation> correlations)
    {
        if (correlations.Count == 0)
            return null;
        var matrix = CorrelationMatrix.Of(paths, correlations);
        var factor = new double[paths.Count][];
        for (var row = 0; row < paths.Count; row++)
        {
            factor[row] = new double[row + 1];
            for (var column = 0; column <= row; column++)
            {
                var rest = matrix[row, column];
                for (var before = 0; before < column; before++)
                    rest -= factor[row][before] * factor[column][before];
                if (row != column)
                    factor[row][column] = rest / factor[column][column];
                else if (rest > Least)
                    factor[row][column] = Math.Sqrt(rest);
                else
                    throw new ArgumentException(CorrelationMatrix.Contradiction(paths[row]));
            }
        }
        return new NormalCopula(factor);
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
            // A field by itself keeps its share to the last digit, and the first of a pair too.
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

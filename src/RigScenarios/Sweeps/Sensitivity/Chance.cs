using MathNet.Numerics.Distributions;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>In how many of many runs something is so, as a probability with its error.</summary>
/// <param name="Yes">In how many runs it is so.</param>
/// <param name="No">In how many it is not.</param>
/// <param name="Unknown">In how many nobody can say: they count neither way, and are told.</param>
public sealed record Chance(long Yes, long No, long Unknown = 0)
{
    /// <summary>Runs in which it is known.</summary>
    public long Known => Yes + No;

    /// <summary>The share of the runs in which it is so, of those in which it is known; null where it is known in none.</summary>
    public Ratio? Share => Known > 0 ? Ratio.FromDecimalFractions((double)Yes / Known) : null;

    /// <summary>The standard error of <see cref="Share"/>, the root of p·(1 - p)/n; null where it is known in no run. It is 0
    /// where all runs agree, which does not make the matter certain: <see cref="Interval"/> says how far from it.</summary>
    public Ratio? StandardError => Share is { DecimalFractions: var share }
        ? Ratio.FromDecimalFractions(Math.Sqrt(share * (1 - share) / Known)) : null;

    /// <summary>
    /// The interval of E. B. Wilson, "Probable inference, the law of succession, and statistical inference", Journal of the
    /// American Statistical Association 22 (1927), pp. 209-212: it keeps its width where all runs agree. Null where it is known
    /// in no run.
    /// </summary>
    /// <param name="level">The level, above 0 and below 100 %; 95 % if null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 100 %.</exception>
    public ChanceInterval? Interval(Ratio? level = null)
    {
        var inside = level?.DecimalFractions ?? 0.95;
        if (inside is not (> 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(level), $"level is {level}; accepted: above 0 % and below 100 %.");
        if (Share is not { DecimalFractions: var share })
            return null;
        var z = Normal.InvCDF(0, 1, (1 + inside) / 2);
        var (n, perRun) = ((double)Known, z * z / Known);
        var middle = (share + (perRun / 2)) / (1 + perRun);
        var half = z * Math.Sqrt((share * (1 - share) / n) + (perRun / (4 * n))) / (1 + perRun);
        // At its own end the root leaves a rounding error, where the interval reaches exactly 0 or 1.
        return new(Ratio.FromDecimalFractions(No == Known ? 0 : middle - half),
            Ratio.FromDecimalFractions(Yes == Known ? 1 : middle + half));
    }

    /// <summary>How likely a figure reaches a bound, of a sample of it.</summary>
    /// <param name="sample">The figure in each run; not a number where it is not known.</param>
    /// <param name="bound">The bound, in the unit of the figure; to reach it counts.</param>
    public static Chance Reaching(IEnumerable<double> sample, double bound)
    {
        ArgumentNullException.ThrowIfNull(sample);
        var (yes, no, unknown) = (0L, 0L, 0L);
        foreach (var value in sample)
            _ = double.IsNaN(value) ? unknown++ : value >= bound ? yes++ : no++;
        return new(yes, no, unknown);
    }
}

/// <summary>The ends between which a probability lies.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
public readonly record struct ChanceInterval(Ratio Low, Ratio High);

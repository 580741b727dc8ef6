using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// First-order and total indices from the results of a design. With f in the rows of A, B and of A with the coordinates i from B:
/// <c>V·S_i = mean(f_B·(f_ABi - f_A))</c>, <c>V·S_i = V - mean((f_B - f_ABi)²)/2</c> and <c>V·T_i = mean((f_A - f_ABi)²)/2</c>,
/// table 2 of Saltelli et al. 2010 (see <see cref="VarianceDesign"/>), the latter two by M. J. W. Jansen, "Analysis of variance
/// designs for model output", Computer Physics Communications 117 (1999), pp. 35-43. f is taken from its mean, which changes no
/// expectation and lessens the error of the first. The intervals draw rows anew (G. E. B. Archer, A. Saltelli and I. M. Sobol',
/// "Sensitivity measures, ANOVA-like techniques and the use of bootstrap", Journal of Statistical Computation and Simulation 58
/// (1997), pp. 99-120).
/// </summary>
/// <remarks>
/// Of the two estimates of S_i the first errs little where the index is small, the second where it is near 1. They are weighted
/// so
/// that their mean errs least by what the redraws say of both, our choice; without redraws the first stands alone.
/// </remarks>
internal sealed class VarianceEstimator
{
    // A figure that only rounds differently does not vary.
    private const double Nothing = 1e-20;

    private readonly double[] sum;
    private readonly double[] squares;
    private readonly List<(double[] Difference, double[] Product, double[] Square, double[] Other)> sets = [];
    private readonly int[] kept;
    private readonly IReadOnlyList<double> a;
    private readonly IReadOnlyList<double> b;
    private readonly double scale;

    /// <param name="a">The figure in the rows of A.</param>
    /// <param name="b">The figure in the rows of B.</param>
    /// <param name="swapped">The figure in the rows of each table with swapped coordinates.</param>
    public VarianceEstimator(IReadOnlyList<double> a, IReadOnlyList<double> b, IReadOnlyList<IReadOnlyList<double>> swapped)
    {
        (this.a, this.b) = (a, b);
        kept = [.. Enumerable.Range(0, a.Count).Where(row => double.IsFinite(a[row]) && double.IsFinite(b[row])
            && swapped.All(set => double.IsFinite(set[row])))];
        Mean = kept.Length == 0 ? double.NaN : kept.Average(row => (a[row] + b[row]) / 2);
        scale = kept.Length == 0 ? 0 : kept.Max(row => Math.Max(Math.Abs(a[row]), Math.Abs(b[row])));
        sum = Row(row => (A(row) + B(row)) / 2);
        squares = Row(row => ((A(row) * A(row)) + (B(row) * B(row))) / 2);
        foreach (var set in swapped)
        {
            sets.Add((Row(row => set[row] - this.a[row]), Row(row => B(row) * (set[row] - this.a[row])),
                Row(row => (set[row] - this.a[row]) * (set[row] - this.a[row]) / 2),
                Row(row => (set[row] - this.b[row]) * (set[row] - this.b[row]) / 2)));
        }
    }

    /// <summary>Mean of the figure over A and B; not a number where it is known in no row.</summary>
    public double Mean { get; }

    /// <summary>Variance of the figure over A and B.</summary>
    public double Variance => kept.Length == 0 ? double.NaN : VarianceOf(sum.Average(), squares.Average());

    /// <summary>Rows in which something is not known.</summary>
    public int Unknown => a.Count - kept.Length;

    /// <summary>The indices of each set.</summary>
    /// <param name="options">How many redraws, at which level and from which seed.</param>
    /// <param name="cancellation">Stops it.</param>
    public IReadOnlyList<(IndexEstimate First, IndexEstimate Total)> Indices(VarianceOptions options,
        CancellationToken cancellation)
    {
        if (kept.Length == 0)
            return [.. sets.Select(_ => (new IndexEstimate(0, 0, 0), new IndexEstimate(0, 0, 0)))];
        var all = Estimates([.. Enumerable.Repeat(1, kept.Length)]);
        var redrawn = new List<Estimate[]>(options.Redraws);
        // Apart from the points of the design, which come from the seed itself.
        var drawn = new SeededSequence(unchecked(~options.Seed * 31));
        var counts = new int[kept.Length];
        for (var redraw = 0; redraw < options.Redraws; redraw++)
        {
            cancellation.ThrowIfCancellationRequested();
            Array.Clear(counts);
            for (var row = 0; row < counts.Length; row++)
                counts[drawn.Below(counts.Length)]++;
            redrawn.Add(Estimates(counts));
        }
        var outside = (1 - options.Level.DecimalFractions) / 2;
        return [.. all.Select((one, set) =>
        {
            var weight = WeightOfJansen([.. redrawn.Select(draw => draw[set])]);
            return (Interval(one.First(weight), [.. redrawn.Select(draw => draw[set].First(weight))], outside),
                Interval(one.Total, [.. redrawn.Select(draw => draw[set].Total)], outside));
        })];
    }

    private static IndexEstimate Interval(double value, double[] redrawn, double outside)
    {
        if (redrawn.Length == 0)
            return new(value, value, value);
        Array.Sort(redrawn);
        return new(value, Quantiles.OfSorted(redrawn, outside), Quantiles.OfSorted(redrawn, 1 - outside));
    }

    // The mean of two unbiased figures that errs least: (var 1 - cov)/(var 1 + var 2 - 2 cov) of the second.
    private static double WeightOfJansen(Estimate[] redrawn)
    {
        if (redrawn.Length == 0)
            return 0;
        var (one, other) = (redrawn.Average(draw => draw.Saltelli), redrawn.Average(draw => draw.Jansen));
        var (variance, difference) = (0.0, 0.0);
        foreach (var draw in redrawn)
        {
            var apart = draw.Saltelli - one - (draw.Jansen - other);
            variance += (draw.Saltelli - one) * apart;
            difference += apart * apart;
        }
        return difference > 0 ? Math.Clamp(variance / difference, 0, 1) : 0;
    }

    private Estimate[] Estimates(int[] counts)
    {
        var mean = WeightedMean(counts, sum);
        var variance = VarianceOf(mean, WeightedMean(counts, squares));
        return [.. sets.Select(set => variance <= 0 ? default
            : new Estimate((WeightedMean(counts, set.Product) - (mean * WeightedMean(counts, set.Difference))) / variance,
                1 - (WeightedMean(counts, set.Other) / variance), WeightedMean(counts, set.Square) / variance))];
    }

    private double VarianceOf(double mean, double square) =>
        square - (mean * mean) is var variance && variance > Nothing * scale * scale ? variance : 0;

    private static double WeightedMean(int[] counts, double[] values)
    {
        var total = 0.0;
        for (var row = 0; row < counts.Length; row++)
            total += counts[row] * values[row];
        return total / counts.Length;
    }

    private double[] Row(Func<int, double> of) => [.. kept.Select(of)];

    private double A(int row) => a[row] - Mean;

    private double B(int row) => b[row] - Mean;

    private readonly record struct Estimate(double Saltelli, double Jansen, double Total)
    {
        public double First(double weightOfJansen) => Saltelli + (weightOfJansen * (Jansen - Saltelli));
    }
}

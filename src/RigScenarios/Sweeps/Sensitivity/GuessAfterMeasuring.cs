using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearRegression;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// How often a yes or no is guessed wrong by somebody who knows some coordinates of the run: each run is guessed by the majority
/// of those that lie nearest to it, itself left out (the rule of the nearest neighbours, T. Cover and P. Hart, "Nearest neighbor
/// pattern classification", IEEE Transactions on Information Theory 13 (1967), pp. 21-27). Several coordinates are first joined
/// to the one weighted sum of their normal scores that tells most of the figure.
/// </summary>
/// <remarks>No rule is wrong less often than one that knows the probability at every point; so what is told here is an upper
/// bound of what knowing brings, up to its standard error.</remarks>
internal static class GuessAfterMeasuring
{
    private const double SurelyMore = 3;

    /// <summary>The gain of knowing coordinates.</summary>
    /// <param name="points">The runs, as points of the unit cube.</param>
    /// <param name="coordinates">The coordinates that are known.</param>
    /// <param name="figure">The figure in each run.</param>
    /// <param name="yes">Whether it is so in each run.</param>
    /// <returns>The gain; null for fewer than 16 runs.</returns>
    public static GuessGain? Of(IReadOnlyList<double[]> points, IReadOnlyList<int> coordinates, IReadOnlyList<double> figure,
        IReadOnlyList<bool> yes)
    {
        if (points.Count < VarianceOptions.FewestRows)
            return null;
        var order = Enumerable.Range(0, points.Count).ToArray();
        Array.Sort(Known(points, coordinates, figure), order);
        var before = new int[order.Length + 1];
        for (var at = 0; at < order.Length; at++)
            before[at + 1] = before[at] + (yes[order[at]] ? 1 : 0);
        var all = before[^1];
        var likelier = 2 * all >= order.Length;
        var half = Math.Max(1, (int)Math.Round(Math.Sqrt(order.Length) / 2));
        var (wrong, changed) = (0, 0);
        for (var at = 0; at < order.Length; at++)
        {
            // As many on either side as there are at the ends too: a window that is only moved.
            var low = Math.Clamp(at - half, 0, order.Length - 1 - (2 * half));
            var own = yes[order[at]] ? 1 : 0;
            var near = before[low + (2 * half) + 1] - before[low] - own;
            var guess = near == half ? likelier : near > half;
            wrong += guess != yes[order[at]] ? 1 : 0;
            changed += guess != likelier ? 1 : 0;
        }
        var count = (double)order.Length;
        var (now, then) = (Math.Min(all, count - all) / count, wrong / count);
        // Only runs whose guess has changed make the difference, each by one to either side: as in the test of Q. McNemar, "Note
        // on the sampling error of the difference between correlated proportions or percentages", Psychometrika 12 (1947).
        var gain = now - then > SurelyMore * Math.Sqrt(changed) / count ? now - then : 0;
        return new(Ratio.FromDecimalFractions(now), Ratio.FromDecimalFractions(then),
            Ratio.FromDecimalFractions(Math.Sqrt(then * (1 - then) / count)), Ratio.FromDecimalFractions(gain));
    }

    private static double[] Known(IReadOnlyList<double[]> points, IReadOnlyList<int> coordinates, IReadOnlyList<double> figure)
    {
        if (coordinates.Count == 1)
            return [.. points.Select(point => point[coordinates[0]])];
        double[][] scores = [.. points.Select(point => coordinates.Select(at => Score(point[at])).ToArray())];
        var weights = MultipleRegression.QR(scores, [.. figure], intercept: true);
        return [.. scores.Select(row => row.Select((score, at) => score * weights[at + 1]).Sum())];
    }

    // The ends of the cube have no score; they are as far out as a spread goes.
    private static double Score(double share) => Normal.InvCDF(0, 1, Math.Clamp(share, 1e-9, 1 - 1e-9));
}

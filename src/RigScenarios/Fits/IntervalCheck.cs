using MathNet.Numerics.LinearAlgebra;
using RigScenarios.Numerics;

namespace RigScenarios.Fits;

/// <summary>
/// Looks whether a normal interval holds: with the unknown at one of its ends and all others fitted again, the misfit should have
/// grown by what belongs to 95 %. Where it has not, the interval is taken where it has.
/// </summary>
/// <remarks>The profile likelihood: G. A. F. Seber, C. J. Wild, Nonlinear Regression (1989), ch. 5 (from memory).</remarks>
internal sealed class IntervalCheck(
    FitMinimum minimum, LeastSquaresEnd best, Matrix<double> covariance, double inflation, CancellationToken cancellation)
{
    // The 95 % point of chi-squared with one degree of freedom.
    private const double Growth = 3.8415;
    private const double LeastRatio = 0.75;
    private const double LargestRatio = 1.33;
    private const double Close = 1e-3;
    private const int MostSteps = 20;
    private const int MostRefits = 15;

    /// <summary>Growth of the misfit at both ends of the normal interval, over what it should be; and the interval.</summary>
    public (double AtLow, double AtHigh, double Low, double High, bool ByProfile) Look(int unknown)
    {
        var reach = NormalTail.Of95Percent * Math.Sqrt(covariance[unknown, unknown]);
        var (atLow, atHigh) = (Ratio(unknown, -reach), Ratio(unknown, reach));
        var middle = best.At[unknown];
        if (Holds(atLow) && Holds(atHigh))
            return (atLow, atHigh, middle - reach, middle + reach, false);
        return (atLow, atHigh, middle + End(unknown, -reach, atLow), middle + End(unknown, reach, atHigh), true);
    }

    private static bool Holds(double ratio) => ratio is >= LeastRatio and <= LargestRatio;

    private double Ratio(int unknown, double away)
    {
        // The others go along as they are correlated: near the bottom that is already the answer.
        var along = covariance.Row(unknown) * (away / covariance[unknown, unknown]);
        var start = best.At.Select((value, k) => value + along[k]).ToArray();
        start[unknown] = best.At[unknown] + away;
        var end = LevenbergMarquardt.Minimise(
            minimum, start, unknown, MostSteps, LevenbergMarquardt.CoarseStep, cancellation);
        return (end.Cost - best.Cost) / (inflation * inflation * Growth);
    }

    // The root of the ratio is nearly a straight line through the best value: secants on it, in a bracket.
    private double End(int unknown, double reach, double ratioAtReach)
    {
        var (inside, insideRoot) = (0.0, 0.0);
        var (outside, outsideRoot) = (double.NaN, double.NaN);
        var (at, ratio) = (reach, ratioAtReach);
        for (var i = 0; i < MostRefits && Math.Abs(ratio - 1) > Close; i++)
        {
            var root = Math.Sqrt(Math.Max(0, ratio));
            if (root < 1)
                (inside, insideRoot) = (at, root);
            else
                (outside, outsideRoot) = (at, root);
            if (double.IsNaN(outside))
                at *= Math.Clamp(1 / Math.Max(root, 1e-3), 1.1, 2);
            else
                at = i % 5 == 4 ? 0.5 * (inside + outside)
                    : inside + ((outside - inside) * (1 - insideRoot) / (outsideRoot - insideRoot));
            ratio = Ratio(unknown, at);
        }

        return at;
    }
}

using MathNet.Numerics.LinearAlgebra;

namespace RigScenarios.Numerics;

/// <summary>A sum of squares to be made least.</summary>
internal interface ILeastSquares
{
    /// <summary>The residuals at a place.</summary>
    double[] Residuals(double[] at);

    /// <summary>The residuals at a place and their derivatives, a row each.</summary>
    (double[] Residuals, Matrix<double> Slopes) Linearize(double[] at);
}

/// <summary>Where a minimisation ended.</summary>
/// <param name="At">The best place.</param>
/// <param name="Cost">The sum of squares there.</param>
/// <param name="Found">Whether it is the minimum, and not only where the steps ran out.</param>
internal sealed record LeastSquaresEnd(double[] At, double Cost, bool Found);

/// <summary>The Levenberg-Marquardt method: a step of Gauss and Newton, shortened until the sum falls.</summary>
/// <remarks>D. W. Marquardt, "An algorithm for least-squares estimation of nonlinear parameters", J. SIAM 11 (1963) 431-441
/// (from memory); damping by how well the last step kept its promise: H. B. Nielsen, "Damping parameter in Marquardt's method",
/// report IMM-REP-1999-05 (from memory). The loop is short, and when it stops is part of what is promised; so it stands
/// here.</remarks>
internal static class LevenbergMarquardt
{
    /// <summary>The step, in standard errors, below which the bottom is reached.</summary>
    public const double FineStep = 1e-4;

    /// <summary>The same where only the sum is asked for, which is known to the square of it.</summary>
    public const double CoarseStep = 1e-2;

    // Where the residuals have kinks, differences are no derivatives to the last digit: a step so short that leads nowhere says
    // that the bottom is reached, too.
    private const double KinkStep = 1e-3;
    private const double CostShare = 1e-9;
    private const double FirstDamping = 1e-3;

    /// <summary>Looks for the least sum of squares.</summary>
    /// <param name="problem">The residuals; priors among them, so that each unknown is held by something.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="held">The unknown that stays where it is; -1 for none.</param>
    /// <param name="mostSteps">Steps, tried or taken, after which it gives up.</param>
    /// <param name="lastStep">The step, in standard errors, below which it is done.</param>
    /// <param name="cancellation">Stops it.</param>
    public static LeastSquaresEnd Minimise(
        ILeastSquares problem, double[] start, int held, int mostSteps, double lastStep, CancellationToken cancellation)
    {
        var at = (double[])start.Clone();
        var (residuals, slopes) = problem.Linearize(at);
        var cost = Sum(residuals);
        var (damping, growth) = (FirstDamping, 2.0);
        var lastGain = false;
        for (var tried = 0; tried < mostSteps; tried++)
        {
            cancellation.ThrowIfCancellationRequested();
            var normal = slopes.TransposeThisAndMultiply(slopes);
            var downhill = slopes.TransposeThisAndMultiply(Vector<double>.Build.Dense(residuals)).Negate();
            if (held >= 0)
                Hold(normal, downhill, held);
            var deviations = normal.Inverse().Diagonal().PointwiseSqrt();
            var damped = normal.Clone();
            for (var k = 0; k < at.Length; k++)
                damped[k, k] *= 1 + damping;
            var step = damped.Cholesky().Solve(downhill);

            // As long as it would be without the damping: a step that is only held back says nothing of the bottom.
            var largest = step.PointwiseDivide(deviations).InfinityNorm() * (1 + damping);
            var next = at.Select((value, k) => value + step[k]).ToArray();
            var nextCost = Sum(problem.Residuals(next));
            if (!(nextCost <= cost))
            {
                if (largest < Math.Max(lastStep, KinkStep))
                    return new LeastSquaresEnd(at, cost, Found: true);
                (damping, growth) = (damping * growth, 2 * growth);
                continue;
            }

            var promised = (2 * (step * downhill)) - (step * normal * step);
            var kept = (cost - nextCost) / promised;
            var littleGain = cost - nextCost < CostShare * cost;
            (at, cost) = (next, nextCost);
            if (largest < lastStep || (littleGain && lastGain))
                return new LeastSquaresEnd(at, cost, Found: true);
            lastGain = littleGain;
            damping = Math.Max(1e-12, damping * Math.Max(0.1, 1 - Math.Pow((2 * kept) - 1, 3)));
            growth = 2;
            (residuals, slopes) = problem.Linearize(at);
        }

        return new LeastSquaresEnd(at, cost, Found: false);
    }

    private static void Hold(Matrix<double> normal, Vector<double> downhill, int held)
    {
        normal.ClearRow(held);
        normal.ClearColumn(held);
        normal[held, held] = 1;
        downhill[held] = 0;
    }

    private static double Sum(double[] residuals)
    {
        var sum = 0.0;
        foreach (var one in residuals)
            sum += one * one;
        return double.IsNaN(sum) ? double.PositiveInfinity : sum;
    }
}

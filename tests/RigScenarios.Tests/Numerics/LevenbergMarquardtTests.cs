using MathNet.Numerics.LinearAlgebra;
using RigScenarios.Numerics;

namespace RigScenarios.Tests.Numerics;

public sealed class LevenbergMarquardtTests
{
    // NIST Statistical Reference Datasets, nonlinear regression, Misra1a: y = b1·(1 - exp(-b2·x)). Data read at second hand,
    // certified values from memory.
    private static readonly double[] X =
        [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];

    private static readonly double[] Y =
        [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];

    [Theory]
    [InlineData(500, 0.0001)]
    [InlineData(250, 0.0005)]
    public void The_certified_values_are_found_from_both_starts(double b1, double b2)
    {
        var end = Minimise([b1, b2], -1, 40);

        Assert.True(end.Found);
        Assert.Equal(2.3894212918e2, end.At[0], 1e-3 * 2.7070075241);
        Assert.Equal(5.5015643181e-4, end.At[1], 1e-3 * 7.2668688436e-6);
        Assert.Equal(1.2455138894e-1, end.Cost, 1e-8);
    }

    [Fact]
    public void An_unknown_that_is_held_stays()
    {
        var end = Minimise([200, 0.0005], 0, 40);

        Assert.True(end.Found);
        Assert.Equal(200, end.At[0]);
        Assert.True(end.Cost > 0.13);
    }

    [Fact]
    public void Where_the_steps_run_out_nothing_is_found()
    {
        var end = Minimise([500, 0.0001], -1, 2);

        Assert.False(end.Found);
    }

    private static LeastSquaresEnd Minimise(double[] start, int held, int steps) => LevenbergMarquardt.Minimise(
        new Misra(), start, held, steps, LevenbergMarquardt.FineStep, TestContext.Current.CancellationToken);

    private sealed class Misra : ILeastSquares
    {
        public double[] Residuals(double[] at) => [.. X.Zip(Y, (x, y) => (at[0] * (1 - Math.Exp(-at[1] * x))) - y)];

        public (double[] Residuals, Matrix<double> Slopes) Linearize(double[] at) => (Residuals(at),
            Matrix<double>.Build.Dense(X.Length, 2, (i, k) => k == 0 ? 1 - Math.Exp(-at[1] * X[i])
                : at[0] * X[i] * Math.Exp(-at[1] * X[i])));
    }
}

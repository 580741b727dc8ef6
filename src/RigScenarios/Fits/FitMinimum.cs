using MathNet.Numerics.LinearAlgebra;
using RigScenarios.Numerics;

namespace RigScenarios.Fits;

/// <summary>
/// The sum of squares of a model with some of its notes, under deviations that are held: residuals of data, bounds and priors.
/// </summary>
internal sealed class FitMinimum(FitModel model, double[] deviations, bool[] leftOut, CancellationToken cancellation)
    : ILeastSquares
{
    private readonly int[] active = [.. Enumerable.Range(0, model.Data.Length)
        .Where(i => model.Data[i].Note < 0 || !leftOut[model.Data[i].Note])];

    /// <summary>Numbers of the data that count.</summary>
    public IReadOnlyList<int> Active => active;

    /// <summary>Standard deviation of each datum.</summary>
    public double[] Deviations => deviations;

    /// <inheritdoc/>
    public double[] Residuals(double[] at) => Residuals(at, model.Predict(at, cancellation));

    /// <inheritdoc/>
    public (double[] Residuals, Matrix<double> Slopes) Linearize(double[] at)
    {
        var predicted = model.Predict(at, cancellation);
        var gradients = model.Gradients(at, cancellation);
        var slopes = Matrix<double>.Build.Dense(active.Length + at.Length, at.Length);
        for (var row = 0; row < active.Length; row++)
        {
            var factor = SlopeOf(active[row], predicted[active[row]]);
            for (var k = 0; k < at.Length; k++)
                slopes[row, k] = factor * gradients[active[row], k];
        }

        for (var k = 0; k < at.Length; k++)
            slopes[active.Length + k, k] = 1 / model.Priors[k].Deviation;
        return (Residuals(at, predicted), slopes);
    }

    /// <summary>Observed less predicted of a datum, in its deviations.</summary>
    public double Miss(int datum, double predicted) => (model.Data[datum].Observed - predicted) / deviations[datum];

    /// <summary>Information of the data alone: Σ w·g·gᵀ/σ², bounds with their exact second derivative.</summary>
    public Matrix<double> Information(double[] at)
    {
        var predicted = model.Predict(at, cancellation);
        var gradients = model.Gradients(at, cancellation);
        var information = Matrix<double>.Build.Dense(at.Length, at.Length);
        foreach (var i in active)
        {
            var weight = 1 / (deviations[i] * deviations[i]);
            if (model.Data[i].IsBound)
            {
                var u = -Miss(i, predicted[i]);
                var slope = NormalTail.Slope(u);
                weight *= slope * (slope + u);
            }

            for (var j = 0; j < at.Length; j++)
            {
                for (var k = 0; k < at.Length; k++)
                    information[j, k] += weight * gradients[i, j] * gradients[i, k];
            }
        }

        return information;
    }

    /// <summary>The covariance of the unknowns: what data and priors leave.</summary>
    public Matrix<double> Covariance(double[] at)
    {
        var information = Information(at);
        for (var k = 0; k < at.Length; k++)
            information[k, k] += 1 / (model.Priors[k].Deviation * model.Priors[k].Deviation);
        return information.Inverse();
    }

    private double[] Residuals(double[] at, double[] predicted)
    {
        var residuals = new double[active.Length + at.Length];
        for (var row = 0; row < active.Length; row++)
        {
            var u = -Miss(active[row], predicted[active[row]]);
            residuals[row] = model.Data[active[row]].IsBound ? Math.Sqrt(-2 * NormalTail.LogBelow(u)) : u;
        }

        for (var k = 0; k < at.Length; k++)
            residuals[active.Length + k] = (at[k] - model.Priors[k].Mean) / model.Priors[k].Deviation;
        return residuals;
    }

    // Derivative of a residual after the prediction. Far above its bound a residual is nothing, and so is its slope.
    private double SlopeOf(int datum, double predicted)
    {
        if (!model.Data[datum].IsBound)
            return 1 / deviations[datum];
        var u = -Miss(datum, predicted);
        var residual = Math.Sqrt(-2 * NormalTail.LogBelow(u));
        return residual > 1e-100 ? -NormalTail.Slope(u) / (residual * deviations[datum]) : 0;
    }
}

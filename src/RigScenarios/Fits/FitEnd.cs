using MathNet.Numerics.LinearAlgebra;

namespace RigScenarios.Fits;

/// <summary>Where a fit ended, in plain numbers, for whatever is asked of it later.</summary>
/// <param name="Model">The model.</param>
/// <param name="Theta">The best values.</param>
/// <param name="Covariance">C, widened by the inflation.</param>
internal sealed record FitEnd(FitModel Model, double[] Theta, Matrix<double> Covariance)
{
    /// <summary>What was fitted.</summary>
    public FitProblem Problem => Model.Problem;
}

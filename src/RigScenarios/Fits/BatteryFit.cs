using MathNet.Numerics.LinearAlgebra;
using RigScenarios.Numerics;

namespace RigScenarios.Fits;

/// <summary>
/// Finds what notes, logs and tests say of one battery and its loads: Bayesian least squares, in which what is believed before
/// counts like a measurement. Equations, figures and limits: docs/calibration.md.
/// </summary>
public static class BatteryFit
{
    private const int MostSteps = 40;
    private const int MostRenewals = 25;
    private const double MissThatGoes = 3;

    /// <summary>Fits.</summary>
    /// <param name="problem">The battery and what was seen of it.</param>
    /// <param name="progress">Told how far it is, 0…1.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static FitResult Find(
        FitProblem problem, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var model = new FitModel(problem);
        var leftOut = new bool[problem.Notes.Count];
        var outliers = new List<NoteMiss>();
        var mayGo = problem.Options.LeavesOutOutliers ? MayGo(problem) : 0;
        while (true)
        {
            var (end, minimum) = Minimise(model, leftOut, cancellation);
            var covariance = minimum.Covariance(end.At);
            var misses = Misses(model, minimum, end.At, covariance, cancellation);
            progress?.Report(0.5 * (outliers.Count + 1) / (mayGo + 1));
            if (outliers.Count < mayGo && misses.Count > 0 && Math.Abs(misses[0].Deleted) > MissThatGoes)
            {
                outliers.Add(misses[0]);
                leftOut[problem.Notes.Index().First(item => item.Item.Id == misses[0].Note).Index] = true;
                continue;
            }

            var doubtful = misses.Where(miss => Math.Abs(miss.Deleted) > MissThatGoes).ToList();
            return new FitReport(model, minimum, end, leftOut, outliers, doubtful).Make(covariance, progress, cancellation);
        }
    }

    /// <summary>Minimises from the priors' means, renewing the deviations that belong to an estimate until it stays.</summary>
    private static (LeastSquaresEnd End, FitMinimum Minimum) Minimise(FitModel model, bool[] leftOut,
        CancellationToken cancellation)
    {
        var at = model.PriorMeans;
        for (var renewal = 0; ; renewal++)
        {
            var minimum = new FitMinimum(model, model.Deviations(at, cancellation), leftOut, cancellation);
            var end = LevenbergMarquardt.Minimise(minimum, at, held: -1, MostSteps, LevenbergMarquardt.FineStep, cancellation);
            if (model.Problem.Logs.Count == 0 || !end.Found)
                return (end, minimum);
            var errors = minimum.Covariance(end.At).Diagonal().PointwiseSqrt();
            var still = renewal > 0 && end.At.Zip(at).Index()
                .All(item => Math.Abs(item.Item.First - item.Item.Second) < 0.001 * errors[item.Index]);
            if (still || renewal == MostRenewals)
                return (end with { Found = still }, minimum);
            at = end.At;
        }
    }

    private static int MayGo(FitProblem problem)
    {
        var notes = problem.Notes.Count(note => note.Runtime is not null || note.PercentShown is not null);
        return notes >= 3 ? (notes + 1) / 4 : notes == 2 && problem.Logs.Count > 0 ? 1 : 0;
    }

    /// <summary>
    /// By how much each note misses what all others say of it, in its deviations, the worst first; of a note with two figures
    /// the worse.
    /// </summary>
    /// <remarks>The deleted residual, exact to first order: R. D. Cook, S. Weisberg, Residuals and Influence in
    /// Regression (1982), ch. 2 (from memory).</remarks>
    private static List<NoteMiss> Misses(FitModel model, FitMinimum minimum, double[] at, Matrix<double> covariance,
        CancellationToken cancellation)
    {
        var predicted = model.Predict(at, cancellation);
        var gradients = model.Gradients(at, cancellation);
        var misses = new List<NoteMiss>();
        foreach (var i in minimum.Active.Where(i => model.Data[i] is { Note: >= 0, IsBound: false }))
        {
            var gradient = gradients.Row(i);
            var own = gradient * covariance * gradient / (minimum.Deviations[i] * minimum.Deviations[i]);
            misses.Add(new NoteMiss(model.Problem.Notes[model.Data[i].Note].Id,
                minimum.Miss(i, predicted[i]) / Math.Sqrt(1 - own)));
        }

        return [.. misses.GroupBy(miss => miss.Note).Select(group => group.MaxBy(miss => Math.Abs(miss.Deleted))!)
            .OrderByDescending(miss => Math.Abs(miss.Deleted))];
    }
}

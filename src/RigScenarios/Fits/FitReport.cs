using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>Makes the result of a fit from its minimum.</summary>
internal sealed class FitReport(
    FitModel model, FitMinimum minimum, LeastSquaresEnd end, bool[] leftOut, IReadOnlyList<NoteMiss> outliers,
    IReadOnlyList<NoteMiss> doubtful)
{
    private const double MoreScatterThan = 0.975;
    private const double FarDeviations = 3;

    private double[] At => end.At;

    /// <summary>Makes it.</summary>
    /// <param name="plain">The covariance without inflation.</param>
    /// <param name="progress">Told of its second half.</param>
    /// <param name="cancellation">Stops it.</param>
    public FitResult Make(Matrix<double> plain, IProgress<double>? progress, CancellationToken cancellation)
    {
        var predicted = model.Predict(At, cancellation);
        var chiSquared = end.Cost;
        var data = 0;
        foreach (var i in minimum.Active)
        {
            if (model.Data[i].IsBound)
                chiSquared += 2 * NormalTail.LogBelow(-minimum.Miss(i, predicted[i]));
            else
                data++;
        }

        var scatters = data > 0 && chiSquared > ChiSquared.InvCDF(data, MoreScatterThan);
        var inflation = scatters ? Math.Sqrt(chiSquared / data) : 1;
        var covariance = plain * (inflation * inflation);
        var estimates = Estimates(covariance, inflation, progress, cancellation);
        progress?.Report(1);
        return new FitResult(new FitEnd(model, At, covariance))
        {
            Found = end.Found,
            Estimates = estimates,
            Correlation = Correlation(covariance),
            Cost = end.Cost,
            ChiSquared = chiSquared,
            Data = data,
            Inflation = inflation,
            Outliers = outliers,
            Doubtful = doubtful,
            Inseparable = Separability.Pairs(model, At, minimum.Information(At)),
            FarFromPrior = [.. model.Unknowns.Where((_, k) =>
                Math.Abs(At[k] - model.Priors[k].Mean) > FarDeviations * model.Priors[k].Deviation)],
            Notes = [.. model.Problem.Notes.Select((note, i) => Note(note, i, cancellation))],
            Logs = [.. model.Problem.Logs.Select((_, i) => Log(i, predicted, cancellation))],
            OpenCircuitOffset = model.Index.OpenCircuitOffset is >= 0 and var offset
                ? ElectricPotential.FromVolts(At[offset]) : null,
        };
    }

    private List<FitEstimate> Estimates(Matrix<double> covariance, double inflation, IProgress<double>? progress,
        CancellationToken cancellation)
    {
        var check = new IntervalCheck(minimum, end, covariance, inflation, cancellation);
        var estimates = new List<FitEstimate>();
        for (var k = 0; k < model.Main; k++)
        {
            var error = Math.Sqrt(covariance[k, k]);
            var reach = NormalTail.Of95Percent * error;
            var plain = new FitEstimate(
                model.Unknowns[k], model.Priors[k], At[k], error, At[k] - reach, At[k] + reach, false, null);
            // Where the bottom was not found there is nothing to measure from.
            if (model.Problem.Options.ChecksIntervals && end.Found)
            {
                var (atLow, atHigh, low, high, byProfile) = check.Look(k);
                plain = plain with { LogLow = low, LogHigh = high, ByProfile = byProfile, ProfileCheck = (atLow, atHigh) };
            }

            estimates.Add(plain);
            progress?.Report(0.5 + (0.5 * (k + 1) / model.Main));
        }

        return estimates;
    }

    private IReadOnlyList<IReadOnlyList<double>> Correlation(Matrix<double> covariance) =>
        [.. Enumerable.Range(0, model.Main).Select(j => Enumerable.Range(0, model.Main)
            .Select(k => covariance[j, k] / Math.Sqrt(covariance[j, j] * covariance[k, k])).ToList())];

    private FittedNote Note(FieldNote note, int number, CancellationToken cancellation)
    {
        var outputs = model.Predictors[number].At(At, cancellation);
        var time = model.Data.Index().First(item => item.Item.Note == number);
        var miss = minimum.Miss(time.Index, outputs[0]);
        return new FittedNote(
            note.Id, Duration.FromSeconds(Math.Exp(outputs[0])),
            outputs.Length > 1 ? Ratio.FromDecimalFractions(outputs[1]) : null, time.Item.IsBound ? -miss : miss,
            leftOut[number]);
    }

    private FittedLog Log(int number, double[] predicted, CancellationToken cancellation)
    {
        var predictor = model.Log(number);
        var bins = predictor.Drive.Bins;
        var blocks = Enumerable.Range(0, model.Data.Length).Where(i => model.Data[i].Predictor == model.FirstLog + number);
        var volts = predictor.Course(At, cancellation);
        var course = Enumerable.Range(0, bins.Count).Select(i => new LogMoment(
            Duration.FromSeconds((i + 0.5) * bins.WidthSeconds), ElectricPotential.FromVolts(bins.Volts[i]),
            ElectricPotential.FromVolts(volts[i]), ElectricCurrent.FromAmperes(bins.Amperes[i]), bins.Usable[i]));
        return new FittedLog(
            predictor.Log.Id, bins.Blocks.Count, Duration.FromSeconds(bins.CorrelationSeconds),
            Duration.FromSeconds(bins.WidthSeconds), At[model.Index.Gain(predictor.Log.Id)],
            At[model.Index.Start(predictor.Log.Id)], [.. blocks.Select(i => minimum.Miss(i, predicted[i]))], [.. course]);
    }
}

using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>What a fit says of runs and tests that were not made.</summary>
internal static class Forecasting
{
    // Of tests that leave about the same, the first one.
    private const double AboutTheSame = 1.01;

    /// <summary>The forecast of a run.</summary>
    public static FitForecast Of(FitEnd end, BatteryRun run, CancellationToken cancellation)
    {
        var (seconds, gradient) = Predicted(end, run, nameof(run), cancellation);
        return new FitForecast(Duration.FromSeconds(seconds), Math.Sqrt(gradient * end.Covariance * gradient),
            Spread.OfDay(run, seconds));
    }

    /// <summary>What each test would leave of the forecast's uncertainty.</summary>
    public static NextTest Next(FitEnd end, BatteryRun run, IReadOnlyList<CandidateTest> candidates,
        CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        var (seconds, wanted) = Predicted(end, run, nameof(run), cancellation);
        var spread = Spread.OfDay(run, seconds);
        var before = new FitForecast(Duration.FromSeconds(seconds), Math.Sqrt(wanted * end.Covariance * wanted), spread);
        var gains = new List<TestGain>();
        foreach (var candidate in candidates)
        {
            var (gradient, deviation) = Measured(end, candidate, cancellation);
            var spreadOut = end.Covariance * gradient;
            var shared = wanted * spreadOut;
            var left = (before.BatteryDeviation * before.BatteryDeviation)
                - (shared * shared / ((deviation * deviation) + (gradient * spreadOut)));
            var after = before with { BatteryDeviation = Math.Sqrt(Math.Max(0, left)) };
            gains.Add(new TestGain(candidate.Id, after.BatteryDeviation,
                0.5 * ((before.High - before.Low) - (after.High - after.Low))));
        }

        var least = gains.Count > 0 ? gains.Min(gain => gain.BatteryDeviationAfter) : 0;
        return new NextTest(before, gains, gains.FirstOrDefault(gain => gain.BatteryDeviationAfter <= AboutTheSame * least));
    }

    // Gradient and deviation of what a test would measure.
    private static (Vector<double> Gradient, double Deviation) Measured(FitEnd end, CandidateTest candidate,
        CancellationToken cancellation)
    {
        if (candidate is CandidateRun noted)
        {
            var (seconds, gradient) = Predicted(end, noted.Run, noted.Id, cancellation);
            return (gradient, Spread.OfNote(noted.Run, seconds, noted.ClockError.Seconds));
        }

        var test = (CandidateBenchTest)candidate;
        var one = Vector<double>.Build.Dense(end.Theta.Length);
        if (end.Model.Index.Of(test.Quantity, test.Device) is >= 0 and var unknown)
            one[unknown] = 1;
        return (one, test.Deviation);
    }

    private static (double Seconds, Vector<double> Gradient) Predicted(FitEnd end, BatteryRun run, string name,
        CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(run);
        var problems = FitProblem.ProblemsOf(name, run).ToList();
        if (problems.Count > 0)
            throw new ArgumentException(string.Join(Environment.NewLine, problems), nameof(run));
        var predictor = new RunPredictor(end.Problem.Pack, run, end.Model.Index, offsetApplies: true);
        var gradient = Vector<double>.Build.Dense(end.Theta.Length);
        foreach (var unknown in predictor.DependsOn)
            gradient[unknown] = predictor.Gradient(end.Theta, unknown, end.Model.StepOf(unknown), cancellation)[0];
        return (Math.Exp(predictor.At(end.Theta, cancellation)[0]), gradient);
    }
}

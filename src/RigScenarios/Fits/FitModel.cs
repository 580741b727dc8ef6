using MathNet.Numerics.LinearAlgebra;
using RigScenarios.Numerics;
using RigScenarios.Parts;

namespace RigScenarios.Fits;

/// <summary>
/// A problem in plain numbers: its unknowns with their priors, what predicts from them, and what was observed of the
/// predictions.
/// </summary>
internal sealed class FitModel
{
    private const double LogStep = 0.001;
    private const double KelvinStep = 0.1;

    public FitModel(FitProblem problem)
    {
        Problem = problem;
        var (pack, priors) = (problem.Pack, problem.Priors);
        var drives = problem.Drives;
        Unknowns = [.. ListUnknowns(problem)];
        Priors = [.. Unknowns.Select(one => PriorOf(one, priors, problem.Logs, drives, pack))];
        var index = new UnknownIndex(Unknowns, priors);

        var predictors = new List<Predictor>();
        var data = new List<FitDatum>();
        foreach (var (i, note) in problem.Notes.Index())
        {
            data.AddRange(FitDatum.Of(note, i, predictors.Count));
            predictors.Add(new RunPredictor(pack, note.Run, index, offsetApplies: true, note.PercentShown is null ? null
                : note.StillRunning!.Value.Seconds));
        }

        FirstLog = predictors.Count;
        foreach (var (log, drive) in problem.Logs.Zip(drives))
        {
            var voltage = new LogPredictor(pack, log, drive, index);
            data.AddRange(voltage.Data(predictors.Count));
            predictors.Add(voltage);
        }

        foreach (var (log, drive) in problem.Logs.Zip(drives).Where(pair => pair.First.Devices.Count > 0))
        {
            data.Add(new FitDatum(predictors.Count, 0, Math.Log(drive.MeanPower), Spread.MeanPower));
            predictors.Add(new PowerPredictor(log, index));
        }

        foreach (var test in problem.Tests)
        {
            data.Add(new FitDatum(predictors.Count, 0, Math.Log(test.Factor), test.Deviation));
            predictors.Add(new TestPredictor(index.Of(test)));
        }

        (Predictors, Data, Index) = ([.. predictors], [.. data], index);
    }

    public FitProblem Problem { get; }

    public FitUnknown[] Unknowns { get; }

    public NormalPrior[] Priors { get; }

    public Predictor[] Predictors { get; }

    public FitDatum[] Data { get; }

    public UnknownIndex Index { get; }

    /// <summary>Number of the first log's predictor; those of the others follow. Before it stand those of the notes.</summary>
    public int FirstLog { get; }

    /// <summary>Number of unknowns that are of interest themselves; they come first.</summary>
    public int Main => Unknowns.Count(one => one.IsMain);

    public double[] PriorMeans => [.. Priors.Select(prior => prior.Mean)];

    public LogPredictor Log(int number) => (LogPredictor)Predictors[FirstLog + number];

    /// <summary>The step of the differences in an unknown.</summary>
    public double StepOf(int unknown) => Unknowns[unknown].Kind == UnknownKind.AmbientOffset ? KelvinStep : LogStep;

    /// <summary>The standard deviation of each datum; those of a log's blocks belong to an estimate.</summary>
    public double[] Deviations(double[] theta, CancellationToken cancellation) =>
        [.. Data.Select(datum => datum.Deviation > 0 ? datum.Deviation
            : ((LogPredictor)Predictors[datum.Predictor]).BlockDeviation(theta, datum.Output, cancellation))];

    /// <summary>What is predicted for each datum.</summary>
    public double[] Predict(double[] theta, CancellationToken cancellation)
    {
        var all = Each(Predictors.Length, i => Predictors[i].At(theta, cancellation), cancellation);
        return [.. Data.Select(datum => all[datum.Predictor][datum.Output])];
    }

    /// <summary>The gradient of what is predicted for each datum: a row for a datum, a column for an unknown.</summary>
    public Matrix<double> Gradients(double[] theta, CancellationToken cancellation)
    {
        var asked = Predictors.Index().SelectMany(item => item.Item.DependsOn.Select(unknown => (item.Index, unknown))).ToArray();
        var found = Each(asked.Length, i => Predictors[asked[i].Index].Gradient(theta, asked[i].unknown,
            StepOf(asked[i].unknown), cancellation), cancellation);
        var columns = asked.Zip(found).ToLookup(pair => pair.First.Index, pair => (pair.First.unknown, pair.Second));
        var gradients = Matrix<double>.Build.Dense(Math.Max(1, Data.Length), Unknowns.Length);
        foreach (var (row, datum) in Data.Index())
        {
            foreach (var (unknown, slopes) in columns[datum.Predictor])
                gradients[row, unknown] = slopes[datum.Output];
        }

        return gradients;
    }

    private static T[] Each<T>(int count, Func<int, T> make, CancellationToken cancellation)
    {
        var made = new T[count];
        if (count < 2)
        {
            for (var i = 0; i < count; i++)
                made[i] = make(i);
            return made;
        }

        Parallel.For(0, count, EveryCore.Until(cancellation), i => made[i] = make(i));
        return made;
    }

    private static IEnumerable<FitUnknown> ListUnknowns(FitProblem problem)
    {
        yield return new FitUnknown(UnknownKind.Capacity);
        yield return new FitUnknown(UnknownKind.Resistance);
        if (problem.Priors.Devices.Count > 0)
        {
            foreach (var device in problem.Priors.Devices.Keys)
                yield return new FitUnknown(UnknownKind.Load, device);
        }
        else if (problem.Priors.Load is not null)
        {
            yield return new FitUnknown(UnknownKind.Load);
        }

        if (problem.Priors.AmbientDeviation is not null)
            yield return new FitUnknown(UnknownKind.AmbientOffset);
        foreach (var log in problem.Logs)
        {
            yield return new FitUnknown(UnknownKind.CurrentGain, log.Id);
            yield return new FitUnknown(UnknownKind.StartCharge, log.Id);
        }

        if (problem.Logs.Count > 0)
            yield return new FitUnknown(UnknownKind.OpenCircuitOffset);
    }

    private static NormalPrior PriorOf(FitUnknown unknown, FitPriors priors, IReadOnlyList<PowerLog> logs,
        IReadOnlyList<LogDrive> drives,
        Batteries.Pack pack) => unknown.Kind switch
        {
            UnknownKind.Capacity => priors.Capacity,
            UnknownKind.Resistance => priors.Resistance,
            UnknownKind.Load => unknown.Of is { } device ? priors.Devices[device] : priors.Load!,
            UnknownKind.AmbientOffset => new NormalPrior(0, priors.AmbientDeviation!.Value.Kelvins),
            UnknownKind.CurrentGain => new NormalPrior(0, 0.01),
            UnknownKind.StartCharge => Start(logs.Zip(drives).First(pair => pair.First.Id == unknown.Of), pack),
            _ => new NormalPrior(0, priors.OpenCircuitDeviation.Volts),
        };

    // What flowed in a gap is known by what flowed before it to half of that.
    private static NormalPrior Start((PowerLog Log, LogDrive Drive) one, Batteries.Pack pack)
    {
        var stated = Spread.StartCharge(one.Log.InitialCharge.DecimalFractions);
        var variance = stated * stated;
        foreach (var (amperes, seconds) in one.Drive.Gaps)
        {
            var share = 0.5 * Math.Abs(amperes) * seconds / (3600 * pack.Capacity.AmpereHours);
            variance += share * share;
        }

        return new NormalPrior(0, Math.Sqrt(variance));
    }
}

/// <summary>Where each unknown stands among them all.</summary>
internal sealed class UnknownIndex(FitUnknown[] unknowns, FitPriors priors)
{
    public int Capacity => Find(new FitUnknown(UnknownKind.Capacity));

    public int Resistance => Find(new FitUnknown(UnknownKind.Resistance));

    /// <summary>-1 where the air is taken as stated.</summary>
    public int AmbientOffset => Find(new FitUnknown(UnknownKind.AmbientOffset));

    public int OpenCircuitOffset => Find(new FitUnknown(UnknownKind.OpenCircuitOffset));

    public int Gain(string log) => Find(new FitUnknown(UnknownKind.CurrentGain, log));

    public int Start(string log) => Find(new FitUnknown(UnknownKind.StartCharge, log));

    /// <summary>The scale of a device's draw; -1 for a device that doesn't scale.</summary>
    public int Load(string device) => priors.Devices.Count > 0 ? Find(new FitUnknown(UnknownKind.Load, device))
        : priors.KnownDevices.Contains(device, StringComparer.Ordinal) ? -1 : Find(new FitUnknown(UnknownKind.Load));

    /// <summary>What a test measures; -1 if that is none of the unknowns.</summary>
    public int Of(DoneTest test) => Of(test.Quantity, test.Device);

    /// <summary>What a test measures; -1 if that is none of the unknowns.</summary>
    public int Of(BenchQuantity quantity, string? device) => quantity switch
    {
        BenchQuantity.Capacity => Capacity,
        BenchQuantity.Resistance => Resistance,
        _ => device is null ? Find(new FitUnknown(UnknownKind.Load)) : Load(device),
    };

    /// <summary>The unknowns that scale the draw of these devices.</summary>
    public IEnumerable<int> Loads(OrderedMap<UnitsNet.Power> devices) =>
        devices.Where(item => (double)item.Value.Watts > 0).Select(item => Load(item.Key)).Where(one => one >= 0);

    /// <summary>What these devices draw together, W.</summary>
    public double Watts(OrderedMap<UnitsNet.Power> devices, ReadOnlySpan<double> theta)
    {
        var watts = 0.0;
        foreach (var (name, power) in devices)
            watts += Watts(name, power, theta);
        return watts;
    }

    /// <summary>What a device draws, W.</summary>
    public double Watts(string device, UnitsNet.Power power, ReadOnlySpan<double> theta) =>
        Load(device) is >= 0 and var load ? (double)power.Watts * Math.Exp(theta[load]) : (double)power.Watts;

    private int Find(FitUnknown unknown) => Array.IndexOf(unknowns, unknown);
}

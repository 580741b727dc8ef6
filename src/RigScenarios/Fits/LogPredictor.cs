using RigScenarios.Batteries;

namespace RigScenarios.Fits;

/// <summary>
/// The mean voltage of each block of a log, from the discharge model under the log's own current. Outputs: the voltages, V, then
/// for each block the mean slope of the open-circuit voltage, V a group and charge of 1.
/// </summary>
internal sealed class LogPredictor(Pack pack, PowerLog log, LogDrive drive, UnknownIndex index)
    : Predictor([index.Capacity, index.Resistance, index.AmbientOffset, index.Gain(log.Id), index.Start(log.Id),
        index.OpenCircuitOffset])
{
    // An error of the charge that keeps the steep end from deciding, and the resolution of a meter, V.
    private const double ChargeError = 0.01;
    private const double ReadingError = 0.01;

    public PowerLog Log => log;

    public LogDrive Drive => drive;

    private int Blocks => drive.Bins.Blocks.Count;

    /// <summary>The blocks as data; their deviations belong to an estimate.</summary>
    public IEnumerable<FitDatum> Data(int number) =>
        drive.Bins.Blocks.Select((block, i) => new FitDatum(number, i, block.MeanVolts, 0));

    /// <summary>One standard deviation of a block's mean voltage, V.</summary>
    public double BlockDeviation(double[] theta, int block, CancellationToken cancellation)
    {
        double groups = pack.SeriesGroups;
        var model = groups * Spread.GroupVoltage(log.Ambient.Kelvins);
        var charge = groups * ChargeError * At(theta, cancellation)[Blocks + block];
        var bins = drive.Bins;
        var reading = ReadingError * ReadingError * bins.MedianSeconds / (bins.Blocks[block].UsableBins * bins.WidthSeconds);
        return Math.Sqrt((model * model) + (charge * charge) + reading);
    }

    /// <summary>The predicted mean voltage of each bin, V.</summary>
    public double[] Course(ReadOnlySpan<double> theta, CancellationToken cancellation)
    {
        var volts = new double[drive.Bins.Count];
        Run(theta, volts, new double[volts.Length], cancellation);
        return volts;
    }

    protected override double[] Predict(ReadOnlySpan<double> theta, CancellationToken cancellation)
    {
        var bins = drive.Bins;
        var (volts, slopes) = (new double[bins.Count], new double[bins.Count]);
        Run(theta, volts, slopes, cancellation);
        var outputs = new double[2 * Blocks];
        for (var i = 0; i < Blocks; i++)
        {
            var block = bins.Blocks[i];
            for (var bin = block.FirstBin; bin < block.EndBin; bin++)
            {
                if (!bins.Usable[bin])
                    continue;
                outputs[i] += volts[bin] / block.UsableBins;
                outputs[Blocks + i] += slopes[bin] / block.UsableBins;
            }
        }

        return outputs;
    }

    private void Run(ReadOnlySpan<double> theta, Span<double> volts, Span<double> slopes, CancellationToken cancellation)
    {
        var warmer = index.AmbientOffset is >= 0 and var offset ? theta[offset] : 0;
        var scaled = RunPredictor.Scaled(pack, theta[index.Capacity], theta[index.Resistance]);
        new DrivenPack(scaled, drive.Bins.WidthSeconds, log.Ambient.Kelvins + warmer).Run(
            drive.Bins.Amperes, Math.Exp(-theta[index.Gain(log.Id)]),
            log.InitialCharge.DecimalFractions + theta[index.Start(log.Id)], theta[index.OpenCircuitOffset], volts, slopes,
            cancellation);
    }
}

using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>
/// How long the battery lasts in a run, and what is left of it at a time: the discharge model under the constant mean power of
/// each stretch. Outputs: ln τ (τ in s), and the charge at the time if one is given.
/// </summary>
internal sealed class RunPredictor : Predictor
{
    // A run that can't begin; its logarithm must be a number.
    private const double ShortestRun = 1;

    // Times are then exact to some 1e-6; 1e-5 is asked for.
    private static readonly DischargeOptions Options = new() { SeriesPoints = 0, RelativeTolerance = 1e-4 };

    private readonly Pack pack;
    private readonly BatteryRun run;
    private readonly UnknownIndex index;
    private readonly int offset;
    private readonly double? chargeAt;

    /// <param name="pack">The battery as new.</param>
    /// <param name="run">Air, charge and draw.</param>
    /// <param name="index">Where the unknowns stand.</param>
    /// <param name="offsetApplies">Whether the air is as far from what is stated as the fit says.</param>
    /// <param name="chargeAt">The time at which the charge is asked, s; null for none.</param>
    public RunPredictor(Pack pack, BatteryRun run, UnknownIndex index, bool offsetApplies, double? chargeAt = null)
        : base(run.Stretches.SelectMany(stretch => stretch.States).Where(state => state.Share.DecimalFractions > 0)
            .SelectMany(state => index.Loads(state.Devices))
            .Append(index.Capacity).Append(index.Resistance).Append(offsetApplies ? index.AmbientOffset : -1))
    {
        (this.run, this.index, this.chargeAt) = (run, index, chargeAt);
        offset = offsetApplies ? index.AmbientOffset : -1;

        // No limits of current and temperature: whoever wrote the note saw the battery go on.
        this.pack = pack with
        {
            CutoffVoltage = run.Cutoff ?? pack.CutoffVoltage,
            MaximumCurrent = ElectricCurrent.FromAmperes(1e9),
            MaximumTemperature = Temperature.FromKelvins(1e6),
        };
    }

    /// <summary>The pack with the capacity and resistance of an estimate.</summary>
    public static Pack Scaled(Pack pack, double logCapacity, double logResistance)
    {
        var (capacity, resistance) = (Math.Exp(logCapacity), Math.Exp(logResistance));
        return pack with
        {
            Capacity = pack.Capacity * capacity,
            Resistance0 = pack.Resistance0 * resistance,
            Resistance1 = pack.Resistance1 * resistance,
            Resistance2 = pack.Resistance2 * resistance,
        };
    }

    protected override double[] Predict(ReadOnlySpan<double> theta, CancellationToken cancellation)
    {
        var warmer = offset < 0 ? 0 : theta[offset];
        var parameters = new PackParameters(Scaled(pack, theta[index.Capacity], theta[index.Resistance]));
        var air = Temperature.FromKelvins(run.Ambient.Kelvins + warmer);
        var start = new DischargeStart { StateOfCharge = run.InitialCharge, Temperature = run.InitialTemperature ?? air };
        var draws = Draws(theta);
        double[] lengths = [.. run.Stretches.SkipLast(1).Select(stretch => stretch.Length!.Value.Seconds),
            2 * DischargeOptions.LongestRun.Seconds];

        var end = Run(Options);
        var runtime = end.EndTime.Seconds;
        var log = Math.Log(Math.Max(runtime, ShortestRun));
        if (chargeAt is not { } seconds)
            return [log];
        if (seconds < runtime)
        {
            end = Run(Options with { TimeLimit = Duration.FromSeconds(seconds) });
            return [log, end.EndStateOfCharge.DecimalFractions];
        }

        // Beyond its end the charge goes on falling as it did on the whole: a percentage that was shown then still pulls.
        var fall = (run.InitialCharge.DecimalFractions - end.EndStateOfCharge.DecimalFractions) / Math.Max(runtime, ShortestRun);
        return [log, end.EndStateOfCharge.DecimalFractions - (fall * (seconds - runtime))];

        DischargeResult Run(DischargeOptions options) =>
            new DischargeRun(parameters, air, start, new DemandCursor(draws, lengths, 0), options, null).Run(cancellation);
    }

    private TerminalDraw[] Draws(ReadOnlySpan<double> theta)
    {
        var draws = new TerminalDraw[run.Stretches.Count];
        for (var i = 0; i < draws.Length; i++)
        {
            var devices = MeanWatts(run.Stretches[i], theta);
            draws[i] = run.Wiring is { } wiring ? WiredDemand.Of(wiring, devices, run.EndedBy)
                : new TerminalDraw(devices.Values.Sum(), 0, 0);
        }

        return draws;
    }

    // Mean power of each device over a stretch, W.
    private Dictionary<string, double> MeanWatts(RunStretch stretch, ReadOnlySpan<double> theta)
    {
        var mean = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var state in stretch.States)
        {
            foreach (var (device, power) in state.Devices)
            {
                mean[device] = mean.GetValueOrDefault(device)
                    + (state.Share.DecimalFractions * index.Watts(device, power, theta));
            }
        }

        return mean;
    }
}

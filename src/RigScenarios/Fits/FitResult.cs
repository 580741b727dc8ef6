using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>What notes, logs and tests say of a battery and its loads, how well, and what they leave open.</summary>
public sealed record FitResult
{
    private readonly FitEnd end;

    internal FitResult(FitEnd end) => this.end = end;

    /// <summary>Whether the best values were found; if not, the figures are those of the last step and no more than a
    /// hint.</summary>
    public required bool Found { get; init; }

    /// <summary>Capacity, resistance, loads and, if asked for, the offset of the air, in this order.</summary>
    public required IReadOnlyList<FitEstimate> Estimates { get; init; }

    /// <summary>Correlation of the estimates, in their order.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> Correlation { get; init; }

    /// <summary>F, the sum of squares that is least here, priors and bounds included.</summary>
    public required double Cost { get; init; }

    /// <summary>F without the bounds ("still running").</summary>
    public required double ChiSquared { get; init; }

    /// <summary>Number of data: run-times, percents, blocks, mean powers, tests; without bounds and notes left out.</summary>
    public required int Data { get; init; }

    /// <summary>f, how many times all deviations were widened, because the data scatter more than assumed; 1 if they
    /// don't.</summary>
    public required double Inflation { get; init; }

    /// <summary>Notes that were left out because they fit to nothing else, in the order in which they went.</summary>
    public required IReadOnlyList<NoteMiss> Outliers { get; init; }

    /// <summary>Notes that fit badly and were left in, because no more may be left out; the worst first.</summary>
    public required IReadOnlyList<NoteMiss> Doubtful { get; init; }

    /// <summary>Pairs of unknowns of which the data fix only the two together.</summary>
    public required IReadOnlyList<InseparablePair> Inseparable { get; init; }

    /// <summary>Unknowns that ended more than three deviations from what label and age say.</summary>
    public required IReadOnlyList<FitUnknown> FarFromPrior { get; init; }

    /// <summary>How the notes were met, in the problem's order; those left out too.</summary>
    public required IReadOnlyList<FittedNote> Notes { get; init; }

    /// <summary>What was found of each log.</summary>
    public required IReadOnlyList<FittedLog> Logs { get; init; }

    /// <summary>υ, the error of the open-circuit table, of one group; null without logs.</summary>
    public ElectricPotential? OpenCircuitOffset { get; init; }

    /// <summary>What was fitted.</summary>
    public FitProblem Problem => end.Problem;

    /// <summary>Capacity left and growth of the resistance, as the discharge model takes them; within what it takes.</summary>
    public Age Age => new(
        Ratio.FromDecimalFractions(Math.Min(1.5, this[UnknownKind.Capacity].Value)),
        Math.Min(1000, this[UnknownKind.Resistance].Value));

    /// <summary>The estimate of that kind; of the device if one is named.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public FitEstimate this[UnknownKind kind, string? device = null] =>
        Estimates.FirstOrDefault(one => one.Unknown == new FitUnknown(kind, device))
            ?? throw new KeyNotFoundException($"The fit has no unknown \"{new FitUnknown(kind, device).Name}\".");

    /// <summary>How long a planned run will last, with what is known now.</summary>
    /// <param name="run">The run.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <exception cref="ArgumentException">The run draws nothing, or names a device that its wiring has not.</exception>
    public FitForecast Forecast(BatteryRun run, CancellationToken cancellation = default) =>
        Forecasting.Of(end, run, cancellation);

    /// <summary>What each of the tests would leave of the uncertainty of a planned run, and which to make next.</summary>
    /// <param name="run">The run.</param>
    /// <param name="candidates">The tests that could be made.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <exception cref="ArgumentException">A run draws nothing, or names a device that its wiring has not.</exception>
    public NextTest NextTest(BatteryRun run, IReadOnlyList<CandidateTest> candidates, CancellationToken cancellation = default) =>
        Forecasting.Next(end, run, candidates, cancellation);

    /// <summary>Equal only to itself: it carries the whole fit.</summary>
    public bool Equals(FitResult? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}

using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Batteries.Batch;

/// <summary>Fills the cases of a batch from a number on; called from several threads at once, in any order.</summary>
/// <param name="first">Number of the first case to be filled, from 0.</param>
/// <param name="cases">Where they go.</param>
internal delegate void BatchSource(long first, Span<BatchCase> cases);

/// <summary>
/// Very many discharges, each by its end alone: the model of <see cref="Discharge"/>, several scenarios side by side, on all
/// cores. Model, method and how exact it is: docs/discharge.md.
/// </summary>
public static class BatchDischarge
{
    /// <summary>Runs scenarios to their ends.</summary>
    /// <param name="scenarios">They are read as they are needed, some thousands ahead of the ends that were taken.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <returns>The ends in the order of the scenarios, as they come. The same whatever the number of cores and whatever other
    /// scenarios are in the batch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A start's lag leaves one of the wells below empty or above full.</exception>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static IEnumerable<BatchEnd> Run(IEnumerable<BatchScenario> scenarios, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenarios);
        return Ends(scenarios, cancellation);
    }

    private static IEnumerable<BatchEnd> Ends(IEnumerable<BatchScenario> scenarios, CancellationToken cancellation)
    {
        foreach (var chunk in scenarios.Chunk(256))
        {
            var ends = new BatchEnd[chunk.Length];
            Parallel.For(0, chunk.Length, EveryCore.Until(cancellation), i => ends[i] = One(chunk[i], cancellation));
            foreach (var end in ends)
                yield return end;
        }
    }

    private static BatchEnd One(BatchScenario one, CancellationToken cancellation)
    {
        var result = Discharge.Run(one.Pack, one.Ambient, one.Start, one.Demand,
            new DischargeOptions { TimeLimit = one.TimeLimit, SeriesPoints = 300 }, cancellation);
        return new BatchEnd(result.EndTime, result.Cause, result.AtStep, result.SegmentsFinished, result.EndStateOfCharge,
            result.EndNearCharge, result.EndTemperature,
            result.Series.Select(point => point.Temperature).Append(result.EndTemperature).Min(),
            result.Energies.Delivered, false);
    }
}

using RigScenarios.Numerics;

namespace RigScenarios.Batteries.Batch;

/// <summary>Fills the cases of a batch from a number on; called from several threads at once, in any order.</summary>
/// <param name="first">Number of the first case to be filled, from 0.</param>
/// <param name="cases">Where they go.</param>
internal delegate void BatchSource(long first, Span<BatchCase> cases);

/// <summary>Takes the ends of cases from a number on; called in order, by one thread.</summary>
/// <param name="first">Number of the first case.</param>
/// <param name="ends">Their ends.</param>
internal delegate void BatchTake(long first, ReadOnlySpan<BatchCaseEnd> ends);

/// <summary>
/// Very many discharges, each by its end alone: the model of <see cref="Discharge"/>, several scenarios side by side, on all
/// cores. Model, method and how exact it is: docs/discharge.md.
/// </summary>
public static class BatchDischarge
{
    // So many cases are worked off by one core at a time: enough that the last of them don't leave lanes idle for long.
    private const int ChunkSize = 2048;

    // So many chunks for each core are read before the ends of the first go out.
    private const int ChunksPerCore = 4;

    /// <summary>Runs scenarios to their ends.</summary>
    /// <param name="scenarios">They are read as they are needed, some ten thousands ahead of the ends that were taken.</param>
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

    /// <summary>Runs cases in plain numbers to their ends, without an object for each.</summary>
    /// <param name="from">Number of the first case.</param>
    /// <param name="count">How many.</param>
    /// <param name="source">Fills the cases.</param>
    /// <param name="take">Takes the ends.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <param name="width">How many cases side by side; the widest that this machine is quick at if not given.</param>
    internal static void Run(long from, long count, BatchSource source, BatchTake take, CancellationToken cancellation,
        LaneWidth? width = null)
    {
        var chunks = new BatchChunk[ChunksPerCore * Environment.ProcessorCount];
        for (var done = 0L; done < count;)
        {
            var (start, inRound) = (done, (int)Math.Min(chunks.Length, (count - done + ChunkSize - 1) / ChunkSize));
            Parallel.For(0, inRound, EveryCore.Until(cancellation), i =>
            {
                var first = start + ((long)i * ChunkSize);
                var chunk = chunks[i] ??= new BatchChunk(ChunkSize);
                var cases = chunk.Begin((int)Math.Min(ChunkSize, count - first));
                source(from + first, cases);
                chunk.Run(width ?? LaneWidths.Widest);
            });
            for (var i = 0; i < inRound; i++)
            {
                take(from + done, chunks[i].Ends);
                done += chunks[i].Ends.Length;
            }
        }
    }

    private static IEnumerable<BatchEnd> Ends(IEnumerable<BatchScenario> scenarios, CancellationToken cancellation)
    {
        foreach (var some in scenarios.Chunk(ChunkSize * ChunksPerCore * Environment.ProcessorCount))
        {
            var shared = new SharedCurves();
            var ends = new BatchEnd[some.Length];
            Run(0, some.Length,
                (first, cases) =>
                {
                    for (var i = 0; i < cases.Length; i++)
                        cases[i] = CaseOf(some[first + i], shared);
                },
                (first, found) =>
                {
                    for (var i = 0; i < found.Length; i++)
                        ends[first + i] = BatchEnd.Of(found[i]);
                },
                cancellation);
            foreach (var end in ends)
                yield return end;
        }
    }

    /// <summary>A scenario in plain numbers.</summary>
    internal static BatchCase CaseOf(BatchScenario one, SharedCurves shared)
    {
        one.Start.RequireWells(one.Pack.NearShare);
        var made = BatchCase.Of(one.Pack, one.Ambient.Kelvins, one.Start);
        made.Curves = shared.Of(one.Pack);
        made.Demand = shared.Of(one.Demand);
        if (one.TimeLimit is { } limit)
            made.TimeLimit = limit.Seconds;
        return made;
    }
}

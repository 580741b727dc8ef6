namespace RigScenarios.Numerics;

/// <summary>How work is spread over the machine.</summary>
internal static class EveryCore
{
    /// <summary>One piece at a time on each core, and no more: without a bound the work takes every thread that the pool adds,
    /// and whoever asks it to stop waits for one.</summary>
    /// <param name="cancellation">Stops the work.</param>
    public static ParallelOptions Until(CancellationToken cancellation) =>
        new() { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount };
}

using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Requests.Runs;

/// <summary>Why a run was stopped before it was done.</summary>
internal enum StopReason
{
    /// <summary>A newer one of the same lane took its place.</summary>
    Overtaken,

    /// <summary>The reader asked for it, or left.</summary>
    Asked,

    /// <summary>It took longer than a run may.</summary>
    Time,

    /// <summary>The program used more memory than it may.</summary>
    Memory,
}

/// <summary>
/// Keeps runs within bounds for the whole server: how many go on at once, how long each takes, and how much memory the
/// program uses. A run that passes a bound is stopped and told why.
/// </summary>
internal sealed class RunWatch : IDisposable
{
    private readonly RequestLimits limits;
    private readonly SemaphoreSlim places;
    private readonly Lock gate = new();
    private readonly HashSet<WatchedRun> running = [];
    private readonly CancellationTokenSource ended = new();

    public RunWatch(RequestLimits limits)
    {
        this.limits = limits;
        places = new SemaphoreSlim(limits.Runs, limits.Runs);
        if (limits.BetweenMemoryLooks != Timeout.InfiniteTimeSpan)
            _ = LookAsync(ended.Token);
    }

    /// <summary>Waits for a place, then watches a run until it is disposed.</summary>
    /// <param name="cancellation">The run is no longer wanted.</param>
    public async Task<WatchedRun> StartAsync(CancellationToken cancellation)
    {
        await places.WaitAsync(cancellation);
        var run = new WatchedRun(this, limits.RunTime, cancellation);
        lock (gate)
            running.Add(run);
        // One that starts while there is too little memory would only make it worse.
        if (limits.MemoryInUse() > limits.MemoryBytes)
            run.Stop(StopReason.Memory);
        return run;
    }

    /// <summary>Does a piece of work within the same bounds, away from any living page.</summary>
    /// <param name="work">The work.</param>
    /// <param name="cancellation">It is no longer wanted.</param>
    /// <exception cref="ProblemException">It passed a bound.</exception>
    /// <exception cref="OperationCanceledException">It is no longer wanted.</exception>
    public async Task<T> RunAsync<T>(Func<CancellationToken, Task<T>> work, CancellationToken cancellation)
    {
        using var run = await StartAsync(cancellation);
        try
        {
            return await Task.Run(() => work(run.Cancellation), run.Cancellation);
        }
        catch (OperationCanceledException) when (run.Reason == StopReason.Time)
        {
            throw new ProblemException(ReplyStatus.Bounds,
                "This took longer than a run may. Choose fewer steps or a shorter range.");
        }
        catch (OperationCanceledException) when (run.Reason == StopReason.Memory)
        {
            throw new ProblemException(ReplyStatus.Bounds,
                "This needed more memory than a run may. Choose fewer steps or a shorter range, and close pages that you "
                    + "don't need.");
        }
    }

    /// <summary>Stops all runs: the server ends.</summary>
    public void StopAll() => StopAll(StopReason.Asked);

    public void Dispose()
    {
        StopAll();
        ended.Cancel();
        ended.Dispose();
        // Not the places: a run that is stopped gives its own back when it ends.
    }

    internal void Done(WatchedRun run)
    {
        lock (gate)
        {
            if (!running.Remove(run))
                return;
        }
        places.Release();
    }

    private void StopAll(StopReason reason)
    {
        List<WatchedRun> now;
        lock (gate)
            now = [.. running];
        foreach (var run in now)
            run.Stop(reason);
    }

    private async Task LookAsync(CancellationToken end)
    {
        // Away from whoever made this.
        await Task.Yield();
        using var timer = new PeriodicTimer(limits.BetweenMemoryLooks);
        try
        {
            while (await timer.WaitForNextTickAsync(end))
            {
                if (limits.MemoryInUse() <= limits.MemoryBytes)
                    continue;
                StopAll(StopReason.Memory);
                // What the stopped runs held is given back now, so that the next one has a chance.
                GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
            }
        }
        catch (OperationCanceledException)
        {
            // The server ends.
        }
    }
}

using System.Text.Json;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Requests.Runs;

/// <summary>Does what a run is about, and ends with the last word of the reply.</summary>
/// <param name="request">The page's message.</param>
/// <param name="reply">Told what is found.</param>
/// <param name="cancellation">Cancelled when the run is to stop.</param>
internal delegate Task RunWork(JsonElement request, RunReply reply, CancellationToken cancellation);

/// <summary>
/// The runs of one queue, one after the other. A newer one stops the one before, and of those that wait only the newest is
/// kept: a page that follows a moving slider gets the answer to where it is, not to where it was.
/// </summary>
internal sealed class RunQueue : IDisposable
{
    private readonly IMessages messages;
    private readonly string name;
    private readonly Func<RunWork> begin;
    private readonly RunWatch watch;
    private readonly RequestLimits limits;
    private readonly FaultReport report;
    private readonly Lock gate = new();
    private readonly SemaphoreSlim asked = new(0);
    private RunWork work;
    private RunRequest? waiting;
    private (CancellationTokenSource Stop, StopReason? Reason)? current;

    /// <param name="messages">Where replies go.</param>
    /// <param name="name">The queue's name.</param>
    /// <param name="begin">Gives the work of the queue, in the state in which it begins.</param>
    /// <param name="watch">Keeps runs within bounds.</param>
    /// <param name="limits">The bounds.</param>
    /// <param name="report">Told of what no reader is to blame for.</param>
    public RunQueue(IMessages messages, string name,
        Func<RunWork> begin, RunWatch watch, RequestLimits limits, FaultReport report)
    {
        (this.messages, this.name, this.begin, this.watch, this.limits, this.report) = (messages, name, begin, watch,
            limits, report);
        work = begin();
    }

    /// <summary>Whether a run goes on or waits.</summary>
    public bool IsBusy
    {
        get
        {
            lock (gate)
                return current is not null || waiting is not null;
        }
    }

    /// <summary>Asks for a run; the one that goes on and the one that waits are overtaken.</summary>
    public void Ask(RunRequest request) => Replace(request, StopReason.Overtaken);

    /// <summary>Stops the run that goes on and forgets the one that waits.</summary>
    public void Stop() => Replace(null, StopReason.Asked);

    /// <summary>Runs what is asked for until the reader leaves.</summary>
    public async Task RunAllAsync(CancellationToken left)
    {
        while (true)
        {
            await asked.WaitAsync(left);
            using var stop = CancellationTokenSource.CreateLinkedTokenSource(left);
            RunRequest? request;
            lock (gate)
            {
                (request, waiting) = (waiting, null);
                if (request is null)
                    continue;
                current = (stop, null);
            }
            try
            {
                await RunAsync(request, stop.Token);
            }
            finally
            {
                lock (gate)
                    current = null;
            }
        }
    }

    /// <summary>Only after <see cref="RunAllAsync"/> has ended.</summary>
    public void Dispose() => asked.Dispose();

    private void Replace(RunRequest? next, StopReason reason)
    {
        RunRequest? before;
        // At once: a run that has just begun is either the one that waited or the one that goes on, never neither and never both.
        lock (gate)
        {
            (before, waiting) = (waiting, next);
            if (current is { } now)
            {
                current = (now.Stop, now.Reason ?? reason);
                _ = now.Stop.CancelAsync();
            }
        }
        if (before is not null)
            Reply(before, CancellationToken.None).Stopped(reason);
        if (next is not null)
            asked.Release();
    }

    private async Task RunAsync(RunRequest request, CancellationToken stop)
    {
        var reply = Reply(request, stop);
        WatchedRun? watched = null;
        try
        {
            watched = await watch.StartAsync(stop);
            var cancellation = watched.Cancellation;
            reply = Reply(request, cancellation);
            var running = Task.Run(() => work(request.Json, reply, cancellation), CancellationToken.None);
            if (await EndsAsync(running, cancellation))
            {
                await running;
                return;
            }
            // Work that doesn't look whether it is to stop can't be stopped. It keeps its place until it ends; the queue starts
            // anew.
            LeaveBehind(running, watched);
            var reason = watched.Reason;
            watched = null;
            work = begin();
            reply.Stopped(reason ?? WhyStopped());
        }
        catch (OperationCanceledException)
        {
            reply.Stopped(watched?.Reason ?? WhyStopped());
        }
#pragma warning disable CA1031 // A bug in one run must end neither the connection nor the server.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            reply.Problems(ProblemResponse.Of(exception, $"a run of {name}", report));
        }
        finally
        {
            watched?.Dispose();
        }
    }

    /// <summary>Waits for the run, and after it was stopped no longer than the grace.</summary>
    private async Task<bool> EndsAsync(Task running, CancellationToken cancellation)
    {
        var stopped = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        await using (cancellation.Register(stopped.SetResult))
        {
            if (await Task.WhenAny(running, stopped.Task) == running)
                return true;
        }
        return await Task.WhenAny(running, Task.Delay(limits.Grace, CancellationToken.None)) == running;
    }

    private static void LeaveBehind(Task running, WatchedRun watched) => _ = running.ContinueWith(
        ended =>
        {
            // Looked at, so that it doesn't come back as an unobserved one.
            _ = ended.Exception;
            watched.Dispose();
        },
        CancellationToken.None,
        TaskContinuationOptions.ExecuteSynchronously,
        TaskScheduler.Default);

    private RunReply Reply(RunRequest request, CancellationToken cancellation) =>
        new(messages, name, request.Run, limits.BetweenProgress, cancellation);

    private StopReason WhyStopped()
    {
        lock (gate)
            return current?.Reason ?? StopReason.Asked;
    }
}

using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Live;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;

namespace RigScenarios.Page.Runs;

/// <summary>
/// The runs of one lane, one after the other. A newer one stops the one before, and of those that wait only the newest is
/// kept: a page that follows a moving slider gets the answer to where it is, not to where it was.
/// </summary>
internal sealed class LaneRuns : IDisposable
{
    private readonly LiveConnection connection;
    private readonly string lane;
    private readonly LiveNotebook notebook;
    private readonly RunWatch watch;
    private readonly PageLimits limits;
    private readonly Action<string>? report;
    private readonly Lock gate = new();
    private readonly SemaphoreSlim asked = new(0);
    private LiveSession state;
    private LiveAsk? waiting;
    private (CancellationTokenSource Stop, StopReason? Reason)? current;

    public LaneRuns(LiveConnection connection, string lane, LiveNotebook notebook, RunWatch watch, PageLimits limits, Action<string>? report)
    {
        (this.connection, this.lane, this.notebook, this.watch, this.limits, this.report) = (connection, lane, notebook, watch, limits, report);
        state = notebook.OpenSession();
    }

    /// <summary>Asks for a run; the one that goes on and the one that waits are overtaken.</summary>
    public void Ask(LiveAsk ask)
    {
        LiveAsk? overtaken;
        // At once: a run that has just begun is either the one that waited or the one that goes on, never neither and never both.
        lock (gate)
        {
            (overtaken, waiting) = (waiting, ask);
            StopCurrent(StopReason.Overtaken);
        }
        if (overtaken is not null)
            Talk(overtaken, CancellationToken.None).Stopped(StopReason.Overtaken);
        asked.Release();
    }

    /// <summary>Stops the run that goes on and forgets the one that waits.</summary>
    public void Stop()
    {
        LiveAsk? forgotten;
        lock (gate)
        {
            (forgotten, waiting) = (waiting, null);
            StopCurrent(StopReason.Asked);
        }
        if (forgotten is not null)
            Talk(forgotten, CancellationToken.None).Stopped(StopReason.Asked);
    }

    /// <summary>Runs what is asked for until the reader leaves.</summary>
    public async Task RunAllAsync(CancellationToken left)
    {
        while (true)
        {
            await asked.WaitAsync(left);
            using var stop = CancellationTokenSource.CreateLinkedTokenSource(left);
            LiveAsk? ask;
            lock (gate)
            {
                (ask, waiting) = (waiting, null);
                if (ask is null)
                    continue;
                current = (stop, null);
            }
            try
            {
                await RunAsync(ask, stop.Token);
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

    private async Task RunAsync(LiveAsk ask, CancellationToken stop)
    {
        var talk = Talk(ask, stop);
        WatchedRun? watched = null;
        try
        {
            watched = await watch.StartAsync(stop);
            talk = Talk(ask, watched.Cancellation);
            var cancellation = watched.Cancellation;
            var running = Task.Run(() => state.RunAsync(ask.Values, talk, cancellation), CancellationToken.None);
            if (!await EndsAsync(running, cancellation))
            {
                // A cell that doesn't look whether it is to stop can't be stopped. It keeps its place until it ends; the lane starts anew.
                LeaveBehind(running, watched);
                var reason = watched.Reason;
                watched = null;
                state = notebook.OpenSession();
                talk.Stopped(reason ?? WhyStopped());
                return;
            }
            var result = await running;
            if (result.Failure is { } failure)
                talk.Failed(failure);
            else
                talk.Done(result);
        }
        catch (OperationCanceledException)
        {
            talk.Stopped(watched?.Reason ?? WhyStopped());
        }
        catch (NotebookInputException exception)
        {
            talk.Problems([.. exception.Problems.Select(OfParameter)]);
        }
#pragma warning disable CA1031 // A bug in one run must end neither the connection nor the server.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            report?.Invoke($"Something went wrong inside RigScenarios while {notebook.Notebook.FileName} ran: {exception.Message}");
            talk.Failed(new NotebookFailure(notebook.Notebook.FileName, 0, null, "Something went wrong inside RigScenarios. The window where the program runs says more; please report it."));
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

    private LaneTalk Talk(LiveAsk ask, CancellationToken cancellation) => new(connection, lane, ask.Run, limits.BetweenProgress, cancellation);

    private void StopCurrent(StopReason reason)
    {
        lock (gate)
        {
            if (current is not { } now)
                return;
            current = (now.Stop, now.Reason ?? reason);
            _ = now.Stop.CancelAsync();
        }
    }

    private StopReason WhyStopped()
    {
        lock (gate)
            return current?.Reason ?? StopReason.Asked;
    }

    // Messages of parameters begin with the parameter's name.
    private Problem OfParameter(string text)
    {
        var name = notebook.Notebook.Parameters.All.FirstOrDefault(parameter => text.StartsWith(parameter.Name + ":", StringComparison.Ordinal));
        return name is null ? new Problem(text) : new Problem(text[(name.Name.Length + 1)..].TrimStart(), name.Name, name.Accepted);
    }
}

using System.Threading.Channels;
using RigScenarios.Notebooks;
using RigScenarios.Notebooks.Live;
using RigScenarios.Page.Answers;

namespace RigScenarios.Page.Live;

/// <summary>
/// The runs of one lane, one after the other. A newer one stops the one before, and of those that wait only the newest is
/// kept: a page that follows a moving slider gets the answer to where it is, not to where it was.
/// </summary>
internal sealed class LaneRuns
{
    private readonly LiveConnection connection;
    private readonly string lane;
    private readonly LiveNotebook notebook;
    private readonly RunWatch watch;
    private readonly PageLimits limits;
    private readonly Action<string>? report;
    private readonly Lock gate = new();
    private readonly Channel<LiveAsk> waiting;
    private LiveLane state;
    private (CancellationTokenSource Stop, StopReason? Reason)? current;

    public LaneRuns(LiveConnection connection, string lane, LiveNotebook notebook, RunWatch watch, PageLimits limits, Action<string>? report)
    {
        (this.connection, this.lane, this.notebook, this.watch, this.limits, this.report) = (connection, lane, notebook, watch, limits, report);
        state = notebook.Open();
        waiting = Channel.CreateBounded<LiveAsk>(
            new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropOldest, SingleReader = true },
            dropped => Talk(dropped, CancellationToken.None).Stopped(StopReason.Overtaken));
    }

    /// <summary>Asks for a run; the one that goes on is overtaken.</summary>
    public void Ask(LiveAsk ask)
    {
        // Both at one go: a run that is taken up in between would be this one, and would be stopped in the name of itself.
        lock (gate)
        {
            waiting.Writer.TryWrite(ask);
            StopCurrent(StopReason.Overtaken);
        }
    }

    /// <summary>Stops the run that goes on and forgets the one that waits.</summary>
    public void Stop()
    {
        while (waiting.Reader.TryRead(out var forgotten))
            Talk(forgotten, CancellationToken.None).Stopped(StopReason.Asked);
        StopCurrent(StopReason.Asked);
    }

    /// <summary>Runs what is asked for until the reader leaves.</summary>
    public async Task RunAllAsync(CancellationToken left)
    {
        await foreach (var ask in waiting.Reader.ReadAllAsync(left))
        {
            using var stop = CancellationTokenSource.CreateLinkedTokenSource(left);
            lock (gate)
                current = (stop, null);
            // One that came in between has overtaken this one already.
            if (waiting.Reader.TryPeek(out _))
                StopCurrent(StopReason.Overtaken);
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
                state = notebook.Open();
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

using RigScenarios.Page.Live;
using System.Net.WebSockets;
using System.Text.Json;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Live;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;

namespace RigScenarios.Page.Runs;

/// <summary>One reader at one living page, from the first message to the last.</summary>
internal sealed class LiveReading(LiveConnection connection, RunWatch watch, PageLimits limits, Action<string>? report)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    /// <summary>Shows the notebook, then runs what the page asks for until it closes.</summary>
    /// <param name="notebook">The notebook, shown before it is compiled.</param>
    /// <param name="compiled">The same, compiled.</param>
    /// <param name="ended">The server ends.</param>
    public async Task RunAsync(Notebook notebook, Task<LiveNotebook> compiled, CancellationToken ended)
    {
        using var left = CancellationTokenSource.CreateLinkedTokenSource(ended);
        // Cancelled last of all: a cancelled socket can't say goodbye any more.
        using var hangUp = new CancellationTokenSource();
        connection.Send(json => NotebookJson.Write(json, notebook), ended);
        var sending = connection.SendAllAsync(hangUp.Token);
        var running = new List<Task>();
        Task<byte[]?>? receiving = null;
        var lanes = new Dictionary<string, LaneRuns>(StringComparer.Ordinal);
        try
        {
            var live = await compiled.WaitAsync(left.Token);
            foreach (var name in LiveAsk.Lanes)
            {
                var lane = new LaneRuns(connection, name, live, watch, limits, report);
                lanes.Add(name, lane);
                running.Add(lane.RunAllAsync(left.Token));
            }
            while (true)
            {
                receiving = connection.ReceiveAsync(hangUp.Token);
                if (await receiving.WaitAsync(left.Token) is not { } message)
                    break;
                Take(message, lanes, left.Token);
            }
        }
        catch (NotebookInputException exception)
        {
            Refuse([.. exception.Problems.Select(text => new Problem(text))], left.Token);
        }
        catch (Exception exception) when (exception is WebSocketException or OperationCanceledException)
        {
            // The reader left without a word, or the server ends.
        }
        finally
        {
            await left.CancelAsync();
            await NoLongerThanAsync(limits.Grace + Patience, running);
            foreach (var lane in lanes.Values)
                lane.Dispose();
            connection.EndQueue();
            await NoLongerThanAsync(Patience, [sending]);
            await connection.CloseAsync(ended.IsCancellationRequested ? WebSocketCloseStatus.EndpointUnavailable : WebSocketCloseStatus.NormalClosure, "");
            if (receiving is not null)
                await NoLongerThanAsync(Patience, [receiving]);
            await hangUp.CancelAsync();
        }
    }

    /// <summary>Waits for tasks to end, however they do; a reader who doesn't answer is not waited for.</summary>
    private static async Task NoLongerThanAsync(TimeSpan time, IEnumerable<Task> tasks)
    {
        var all = Task.WhenAll(tasks);
        await Task.WhenAny(all, Task.Delay(time));
        // Looked at, so that it doesn't come back as an unobserved one.
        _ = all.ContinueWith(ended => _ = ended.Exception, CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
    }

    private void Take(byte[] message, Dictionary<string, LaneRuns> lanes, CancellationToken cancellation)
    {
        try
        {
            var ask = LiveAsk.Read(message);
            if (ask.IsStop)
                lanes[ask.Lane].Stop();
            else
                lanes[ask.Lane].Ask(ask);
        }
        catch (JsonException exception)
        {
            Refuse([RequestJson.Broken(exception)], cancellation);
        }
        catch (ProblemException refusal)
        {
            Refuse(refusal.Problems, cancellation);
        }
    }

    // A message that can't be read belongs to no lane and no run.
    private void Refuse(IReadOnlyList<Problem> problems, CancellationToken cancellation) => connection.Send(
        json =>
        {
            json.WriteString("kind", "problems");
            json.WriteNull("lane");
            json.WriteNull("run");
            NotebookJson.WriteProblems(json, problems);
        },
        cancellation);
}

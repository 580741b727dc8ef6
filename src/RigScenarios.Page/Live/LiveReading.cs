using System.Net.WebSockets;
using System.Text.Json;
using RigScenarios.Notebooks;
using RigScenarios.Notebooks.Live;
using RigScenarios.Page.Answers;

namespace RigScenarios.Page.Live;

/// <summary>One reader at one living page, from the first message to the last.</summary>
internal sealed class LiveReading(LiveConnection connection, RunWatch watch, PageLimits limits, Action<string>? report)
{
    /// <summary>Shows the notebook, then runs what the page asks for until it closes.</summary>
    /// <param name="notebook">The notebook, shown before it is compiled.</param>
    /// <param name="compiled">The same, compiled.</param>
    /// <param name="ended">The server ends.</param>
    public async Task RunAsync(Notebook notebook, Task<LiveNotebook> compiled, CancellationToken ended)
    {
        using var left = CancellationTokenSource.CreateLinkedTokenSource(ended);
        connection.Send(json => NotebookJson.Write(json, notebook), ended);
        var work = new List<Task> { connection.SendAllAsync(left.Token) };
        try
        {
            var lanes = new Dictionary<string, LaneRuns>(StringComparer.Ordinal);
            var live = await compiled.WaitAsync(left.Token);
            foreach (var name in LiveAsk.Lanes)
            {
                var lane = new LaneRuns(connection, name, live, watch, limits, report);
                lanes.Add(name, lane);
                work.Add(lane.RunAllAsync(left.Token));
            }
            while (await connection.ReceiveAsync(left.Token) is { } message)
                Take(message, lanes, left.Token);
        }
        catch (NotebookInputException exception)
        {
            Refuse([.. exception.Problems.Select(text => new Problem(text))], left.Token);
            connection.EndQueue();
            await work[0];
        }
        catch (Exception exception) when (exception is WebSocketException or OperationCanceledException)
        {
            // The reader left without a word, or the server ends.
        }
        finally
        {
            await left.CancelAsync();
            connection.EndQueue();
            await Task.WhenAll(work).ContinueWith(_ => { }, CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
            await connection.CloseAsync(ended.IsCancellationRequested ? WebSocketCloseStatus.EndpointUnavailable : WebSocketCloseStatus.NormalClosure, "");
        }
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
        catch (Refusal refusal)
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

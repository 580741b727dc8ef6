using System.Text.Json;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Requests.Runs;

/// <summary>One page's line: its queues by name, and what it asks of them. Messages that come before the queues are there
/// wait.</summary>
internal sealed class RunLine : IDisposable
{
    private readonly IMessages messages;
    private readonly RunWatch watch;
    private readonly RequestLimits limits;
    private readonly FaultReport report;
    private readonly Lock gate = new();
    private readonly CancellationTokenSource left;
    private readonly List<Task> running = [];
    private readonly List<ReadOnlyMemory<byte>> early = [];
    private Dictionary<string, RunQueue>? queues;

    /// <param name="messages">Where replies go.</param>
    /// <param name="watch">Keeps runs within bounds.</param>
    /// <param name="limits">The bounds.</param>
    /// <param name="report">Told of what no reader is to blame for.</param>
    /// <param name="gone">Cancelled when the page has gone, which stops its runs.</param>
    public RunLine(IMessages messages, RunWatch watch, RequestLimits limits, FaultReport report, CancellationToken gone)
    {
        (this.messages, this.watch, this.limits, this.report) = (messages, watch, limits, report);
        left = CancellationTokenSource.CreateLinkedTokenSource(gone);
    }

    /// <summary>Whether a run goes on or waits.</summary>
    public bool IsBusy
    {
        get
        {
            lock (gate)
                return queues is not null && queues.Values.Any(queue => queue.IsBusy);
        }
    }

    /// <summary>Begins the queues.</summary>
    /// <param name="begins">Each queue's name, with what begins its work.</param>
    public void Begin(IReadOnlyDictionary<string, Func<RunWork>> begins)
    {
        var made = new Dictionary<string, RunQueue>(StringComparer.Ordinal);
        foreach (var (name, begin) in begins)
        {
            var queue = new RunQueue(messages, name, begin, watch, limits, report);
            made.Add(name, queue);
            running.Add(queue.RunAllAsync(left.Token));
        }
        while (true)
        {
            ReadOnlyMemory<byte>[] waiting;
            lock (gate)
            {
                if (early.Count == 0)
                {
                    queues = made;
                    return;
                }
                waiting = [.. early];
                early.Clear();
            }
            foreach (var message in waiting)
                Take(message, made);
        }
    }

    /// <summary>Takes what the page sends: a run or a stop. What can't be read is told, and belongs to no queue and no
    /// run.</summary>
    public void Take(ReadOnlyMemory<byte> message)
    {
        Dictionary<string, RunQueue> now;
        lock (gate)
        {
            if (queues is null)
            {
                early.Add(message.ToArray());
                return;
            }
            now = queues;
        }
        // Not within the lock: a page that is slow to take what it is told must not hold up who only wants to know how it stands.
        Take(message, now);
    }

    /// <summary>Says that something can't be done, of no queue and no run.</summary>
    public void Refuse(ProblemResponse response) => messages.Send(
        json =>
        {
            json.WriteString("kind", "problems");
            json.WriteNull("queue");
            json.WriteNull("run");
            RunReply.WriteProblems(json, response);
        },
        left.Token);

    /// <summary>Stops all runs; done when they have ended, however they do.</summary>
    public async Task EndAsync()
    {
        await left.CancelAsync();
        await Task.WhenAll(running).ContinueWith(ended => _ = ended.Exception, CancellationToken.None,
            TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
    }

    /// <summary>Only after it was ended, or given up.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            foreach (var queue in queues?.Values.ToArray() ?? [])
                queue.Dispose();
        }
        left.Dispose();
    }

    private void Take(ReadOnlyMemory<byte> message, Dictionary<string, RunQueue> queues)
    {
        try
        {
            var request = RunRequest.Read(message, queues.Keys);
            if (request.IsStop)
                queues[request.Queue].Stop();
            else
                queues[request.Queue].Ask(request);
        }
        catch (JsonException exception)
        {
            Refuse(new ProblemResponse(ReplyStatus.BadRequest, [RequestJson.Broken(exception)]));
        }
        catch (ProblemException exception)
        {
            Refuse(new ProblemResponse(exception.Status, exception.Problems));
        }
    }
}

using System.Text.Json;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Requests;

/// <summary>A line from its opening to its close.</summary>
internal sealed class OpenLine : ILine, IMessages, IDisposable
{
    private readonly Lock gate = new();
    private readonly CancellationTokenSource left = new();
    private readonly Action<ReadOnlyMemory<byte>> send;
    private readonly FaultReport report;
    private readonly RunLine line;
    private bool isClosed;

    /// <param name="send">Takes what is sent to the page.</param>
    /// <param name="makes">Makes the queues' side of it.</param>
    /// <param name="report">Told of faults.</param>
    public OpenLine(Action<ReadOnlyMemory<byte>> send, Func<IMessages, CancellationToken, RunLine> makes, FaultReport report)
    {
        (this.send, this.report) = (send, report);
        line = makes(this, left.Token);
    }

    /// <summary>Says what it begins with, and begins its queues.</summary>
    /// <param name="opens">Gives what it begins with.</param>
    public async Task BeginAsync(Func<OpenedLine> opens)
    {
        try
        {
            var opened = opens();
            if (opened.Greeting is { } greeting)
                Send(greeting, CancellationToken.None);
            line.Begin(await opened.Queues(left.Token));
        }
        catch (OperationCanceledException)
        {
            // The page has gone.
        }
#pragma warning disable CA1031 // What can't be opened is told on the line.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            line.Refuse(ProblemResponse.Of(exception, "a line was opened", report));
        }
    }

    /// <inheritdoc/>
    public void Take(ReadOnlyMemory<byte> message) => line.Take(message);

    /// <inheritdoc/>
    public void Close()
    {
        lock (gate)
        {
            if (isClosed)
                return;
            isClosed = true;
        }
        left.Cancel();
        _ = line.EndAsync().ContinueWith(_ => Free(), CancellationToken.None,
            TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
    }

    /// <inheritdoc/>
    public void Dispose() => Close();

    /// <inheritdoc/>
    public void Send(Action<Utf8JsonWriter> write, CancellationToken cancellation)
    {
        var message = MessageBytes.Of(write);
        cancellation.ThrowIfCancellationRequested();
        lock (gate)
        {
            if (!isClosed)
                send(message);
        }
    }

    private void Free()
    {
        line.Dispose();
        left.Dispose();
    }
}

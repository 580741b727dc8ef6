using System.Net.WebSockets;
using System.Text.Json;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Page.Runs;

/// <summary>One reader at one page, from the first message to the last.</summary>
internal sealed class Conversation(PageConnection connection, RunWatch watch, PageLimits limits, FaultReport report)
{
    /// <summary>Tells a page why its connection is closed: another page needed its place.</summary>
    public const WebSocketCloseStatus MadeRoom = (WebSocketCloseStatus)4001;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    /// <summary>Runs what the page asks for until it closes, or another needs its place.</summary>
    /// <param name="page">The page among those that are open.</param>
    /// <param name="greeting">Writes the first message; null for none.</param>
    /// <param name="open">Gives the page's queues by name, each with what begins its work; may take its time.</param>
    /// <param name="ended">The server ends.</param>
    public async Task RunAsync(OpenPage page,
        Action<Utf8JsonWriter>? greeting, Func<CancellationToken, Task<IReadOnlyDictionary<string, Func<RunWork>>>> open,
        CancellationToken ended)
    {
        using var left = CancellationTokenSource.CreateLinkedTokenSource(ended, page.MakesRoom);
        // Cancelled last of all: a cancelled socket can't say goodbye any more.
        using var hangUp = new CancellationTokenSource();
        if (greeting is not null)
            connection.Send(greeting, ended);
        var sending = connection.SendAllAsync(hangUp.Token);
        Task<byte[]?>? receiving = null;
        var line = new RunLine(connection, watch, limits, report, left.Token);
        page.IsBusy = () => line.IsBusy;
        try
        {
            line.Begin(await open(left.Token));
            while (true)
            {
                receiving = connection.ReceiveAsync(hangUp.Token);
                if (await receiving.WaitAsync(left.Token) is not { } message)
                    break;
                page.Asked();
                line.Take(message);
            }
        }
        catch (Exception exception) when (exception is WebSocketException or OperationCanceledException)
        {
            // The reader left without a word, or the server ends.
        }
#pragma warning disable CA1031 // What can't be opened is told; the connection is closed in order.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            line.Refuse(ServerProblems.Of(exception, "a page was opened", report));
        }
        finally
        {
            await left.CancelAsync();
            await NoLongerThanAsync(limits.Grace + Patience, [line.EndAsync()]);
            line.Dispose();
            connection.EndQueue();
            await NoLongerThanAsync(Patience, [sending]);
            await connection.CloseAsync(ended.IsCancellationRequested ? WebSocketCloseStatus.EndpointUnavailable
                : page.MakesRoom.IsCancellationRequested ? MadeRoom : WebSocketCloseStatus.NormalClosure, "");
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
        _ = all.ContinueWith(ended => _ = ended.Exception, CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously,
            TaskScheduler.Default);
    }
}

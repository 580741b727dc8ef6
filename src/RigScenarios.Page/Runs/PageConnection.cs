using System.Buffers;
using System.Net.WebSockets;
using System.Text.Json;
using System.Threading.Channels;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Page.Runs;

/// <summary>
/// One reader's connection: whole JSON messages in both directions. What is sent waits in a queue of bounded length, so that
/// a slow reader slows its own runs and nothing else.
/// </summary>
internal sealed class PageConnection(WebSocket socket, int largestMessage) : IMessages
{
    private const int LongestQueue = 256;

    private readonly Channel<byte[]> queue =
        Channel.CreateBounded<byte[]>(new BoundedChannelOptions(LongestQueue) { SingleReader = true });

    /// <summary>Puts a message in the queue; waits where the queue is full.</summary>
    /// <param name="write">Writes the message's fields.</param>
    /// <param name="cancellation">The message is no longer wanted.</param>
    /// <exception cref="OperationCanceledException">It is no longer wanted, or the reader left.</exception>
    public void Send(Action<Utf8JsonWriter> write, CancellationToken cancellation)
    {
        var message = MessageBytes.Of(write);
        cancellation.ThrowIfCancellationRequested();
        if (queue.Writer.TryWrite(message))
            return;
        try
        {
            queue.Writer.WriteAsync(message, cancellation).AsTask().GetAwaiter().GetResult();
        }
        catch (ChannelClosedException exception)
        {
            throw new OperationCanceledException("The reader left.", exception);
        }
    }

    /// <summary>Sends what the queue holds until it is closed.</summary>
    public async Task SendAllAsync(CancellationToken cancellation)
    {
        try
        {
            await foreach (var message in queue.Reader.ReadAllAsync(cancellation))
                await socket.SendAsync(message, WebSocketMessageType.Text, endOfMessage: true, cancellation);
        }
        finally
        {
            queue.Writer.TryComplete();
        }
    }

    /// <summary>The next message; null when the reader has left or sent what no page sends.</summary>
    public async Task<byte[]?> ReceiveAsync(CancellationToken cancellation)
    {
        var message = new ArrayBufferWriter<byte>(1024);
        while (true)
        {
            var result = await socket.ReceiveAsync(message.GetMemory(4096), cancellation);
            if (result.MessageType == WebSocketMessageType.Close)
                return null;
            if (result.MessageType == WebSocketMessageType.Binary)
            {
                await CloseAsync(WebSocketCloseStatus.InvalidMessageType, "Texts only.");
                return null;
            }
            message.Advance(result.Count);
            if (message.WrittenCount > largestMessage)
            {
                await CloseAsync(WebSocketCloseStatus.MessageTooBig, "The message is larger than a page sends.");
                return null;
            }
            if (result.EndOfMessage)
                return message.WrittenSpan.ToArray();
        }
    }

    /// <summary>Takes no further messages; those in the queue are still sent.</summary>
    public void EndQueue() => queue.Writer.TryComplete();

    /// <summary>Says goodbye; a reader that doesn't answer is not waited for long.</summary>
    public async Task CloseAsync(WebSocketCloseStatus status, string why)
    {
        if (socket.State is not (WebSocketState.Open or WebSocketState.CloseReceived))
            return;
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        try
        {
            await socket.CloseOutputAsync(status, why, patience.Token);
        }
        catch (Exception exception) when (exception is WebSocketException or OperationCanceledException or IOException
            or ObjectDisposedException)
        {
            // Gone already.
        }
    }
}

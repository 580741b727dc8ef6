using System.Net.WebSockets;
using System.Text.Json;
using System.Text;

namespace RigScenarios.Page.Tests.Servers;

/// <summary>A reader's connection to a living page.</summary>
public sealed class LiveReader : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly ClientWebSocket socket = new();

    /// <summary>All messages so far, in order.</summary>
    public List<JsonElement> Messages { get; } = [];

    public WebSocketCloseStatus? Closed => socket.CloseStatus;

    public static Task<LiveReader> OpenAsync(TrialServer server, string notebook, string? origin = null, string? cookie = null,
        string? host = null, string? key = null) =>
        OpenAtAsync(server, $"/api/live/{notebook}", origin, cookie, host, key);

    /// <summary>The connection of the form of one's own rig.</summary>
    public static Task<LiveReader> OpenRigAsync(TrialServer server, string? origin = null) =>
        OpenAtAsync(server, "/api/rig/live", origin, null, null, null);

    private static async Task<LiveReader> OpenAtAsync(TrialServer server, string path, string? origin,
        string? cookie, string? host, string? key)
    {
        var reader = new LiveReader();
        reader.socket.Options.SetRequestHeader("Cookie", cookie ?? server.Cookie);
        reader.socket.Options.SetRequestHeader("Origin", origin ?? server.Origin);
        if (host is not null)
            reader.socket.Options.SetRequestHeader("Host", host);
        reader.socket.Options.AddSubProtocol("rig");
        if ((key ?? server.Key) is { Length: > 0 } shown)
            reader.socket.Options.AddSubProtocol(shown);
        reader.socket.Options.CollectHttpResponseDetails = true;
        try
        {
            await reader.socket.ConnectAsync(new Uri($"ws://{server.Host}{path}"), TestContext.Current.CancellationToken);
            return reader;
        }
        catch (WebSocketException exception)
        {
            var status = (int)reader.socket.HttpStatusCode;
            reader.Dispose();
            throw new RefusedException(status, exception);
        }
    }

    public Task SendAsync(object message) => SendTextAsync(JsonSerializer.Serialize(message));

    public async Task SendTextAsync(string text) =>
        await socket.SendAsync(Encoding.UTF8.GetBytes(text), WebSocketMessageType.Text, endOfMessage: true,
            TestContext.Current.CancellationToken);

    public async Task SendBytesAsync(byte[] bytes, WebSocketMessageType type) =>
        await socket.SendAsync(bytes, type, endOfMessage: true, TestContext.Current.CancellationToken);

    public Task RunAsync(int run, object values, string queue = "now") => SendAsync(new { kind = "run", queue, run, values });

    /// <summary>Reads until a message of that kind comes, for that run where one is given.</summary>
    public async Task<JsonElement> UntilAsync(string kind, int? run = null)
    {
        while (await NextAsync() is { } message)
        {
            if (message.Text("kind") == kind && (run is null || message.GetProperty("run").GetInt32() == run))
                return message;
        }
        throw new InvalidOperationException(
            $"The server closed the connection ({socket.CloseStatus}) before it sent \"{kind}\".");
    }

    /// <summary>Reads until the run has ended, and gives its last message.</summary>
    public async Task<JsonElement> EndAsync(int run)
    {
        while (await NextAsync() is { } message)
        {
            if (message.Text("kind") is "done" or "failed" or "stopped" or "problems"
                && message.GetProperty("run").GetInt32() == run)
                return message;
        }
        throw new InvalidOperationException($"The server closed the connection ({socket.CloseStatus}) before run {run} ended.");
    }

    /// <summary>The parts that a run showed, by their type.</summary>
    public IReadOnlyList<JsonElement> Parts(int run, string type) =>
    [
        .. Messages.Where(message => message.Text("kind") == "cell" && message.GetProperty("run").GetInt32() == run)
            .SelectMany(message => message.GetProperty("parts").EnumerateArray()).Where(part => part.Text("type") == type),
    ];

    /// <summary>The next message; null when the server has closed the connection.</summary>
    public async Task<JsonElement?> NextAsync()
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        limit.CancelAfter(Patience);
        using var message = new MemoryStream();
        var buffer = new byte[16 * 1024];
        WebSocketReceiveResult part;
        do
        {
            part = await socket.ReceiveAsync(buffer, limit.Token);
            if (part.MessageType == WebSocketMessageType.Close)
                return null;
            message.Write(buffer, 0, part.Count);
        }
        while (!part.EndOfMessage);
        using var document = JsonDocument.Parse(message.ToArray());
        Messages.Add(document.RootElement.Clone());
        return Messages[^1];
    }

    public void Dispose() => socket.Dispose();
}

/// <summary>The server let no connection be made.</summary>
public sealed class RefusedException(int status, Exception inner) : Exception($"Refused with {status}.", inner)
{
    public int Status { get; } = status;
}

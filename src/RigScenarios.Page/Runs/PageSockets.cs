using System.Text.Json;
using Microsoft.AspNetCore.Http;
using RigScenarios.Page.Address;
using RigScenarios.Page.Settings;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Page.Runs;

/// <summary>
/// The open pages: each has one connection, and so many may be open at once. One more closes the page that was left alone the
/// longest; it goes on when its reader comes back to it. Where all are in use, the new one is refused.
/// </summary>
internal sealed class PageSockets(RunWatch watch, PageOptions options, FaultReport report, CancellationToken ended)
{
    private readonly Lock gate = new();
    private readonly List<OpenPage> pages = [];

    /// <summary>Takes a page's connection and serves it until it closes.</summary>
    /// <param name="context">The request.</param>
    /// <param name="largestMessage">The largest message that this page sends, in bytes.</param>
    /// <param name="greeting">Writes the first message; null for none.</param>
    /// <param name="open">Gives the page's queues by name, each with what begins its work.</param>
    /// <exception cref="ProblemException">It is no WebSocket, or too many pages are open.</exception>
    public async Task ServeAsync(
        HttpContext context, int largestMessage,
        Action<Utf8JsonWriter>? greeting, Func<CancellationToken, Task<IReadOnlyDictionary<string, Func<RunWork>>>> open)
    {
        if (!context.WebSockets.IsWebSocketRequest)
            throw new ProblemException(StatusCodes.Status400BadRequest, "This address is for living pages (a WebSocket).");
        using var page = new OpenPage(TimeProvider.System);
        Enter(page);
        try
        {
            using var socket = await context.WebSockets.AcceptWebSocketAsync(RequestGate.Protocol);
            var connection = new PageConnection(socket, largestMessage);
            await new Conversation(connection, watch, options.Limits, report).RunAsync(page, greeting, open, ended);
        }
        finally
        {
            lock (gate)
                pages.Remove(page);
        }
    }

    private void Enter(OpenPage page)
    {
        lock (gate)
        {
            var isFull = pages.Count >= options.MostReaders;
            var left = isFull || IsShortOfMemory ? LongestAlone() : null;
            if (isFull && left is null)
                throw new ProblemException(StatusCodes.Status503ServiceUnavailable,
                    $"{pages.Count} pages are open, the most that may be, and all of them are in use. Close one of them and load "
                    + "this one again.");
            if (left is not null)
            {
                pages.Remove(left);
                left.MakeRoom();
            }
            pages.Add(page);
        }
    }

    private bool IsShortOfMemory =>
        options.Limits.MemoryInUse() > options.Limits.MemoryForNewPages * options.Limits.MemoryBytes;

    private OpenPage? LongestAlone() =>
        pages.Where(page => page.Quiet >= options.Limits.Idle && !page.IsBusy()).MaxBy(page => page.Quiet);
}

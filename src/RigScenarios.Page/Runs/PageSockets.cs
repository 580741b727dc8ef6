using System.Text.Json;
using Microsoft.AspNetCore.Http;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;

namespace RigScenarios.Page.Runs;

/// <summary>The open pages: each has one connection, and so many may be open at once.</summary>
internal sealed class PageSockets(RunWatch watch, PageOptions options, CancellationToken ended)
{
    private int readers;

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
        try
        {
            if (Interlocked.Increment(ref readers) > options.Limits.Readers)
                throw new ProblemException(StatusCodes.Status503ServiceUnavailable,
                    $"{options.Limits.Readers} pages are open already. Close one of them and load this one again.");
            using var socket = await context.WebSockets.AcceptWebSocketAsync();
            var connection = new PageConnection(socket, largestMessage);
            await new Conversation(connection, watch, options.Limits, options.Report).RunAsync(greeting, open, ended);
        }
        finally
        {
            Interlocked.Decrement(ref readers);
        }
    }
}

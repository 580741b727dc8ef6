using Microsoft.AspNetCore.Http;
using RigScenarios.Charts.Pages;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Requests;

/// <summary>Answers whatever goes wrong in a request: with problems as JSON, or with a page that says them.</summary>
internal sealed class ExceptionHandler(FaultReport report)
{
    public async Task RunAsync(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
            if (context.Response is { HasStarted: false, StatusCode: >= 400, ContentType: null })
                await AnswerAsync(context, ServerProblems.Of(context.Response.StatusCode));
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The reader left; nobody is there to be told.
        }
#pragma warning disable CA1031 // A bug must not show a stack trace to someone on set.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            await AnswerAsync(context, ServerProblems.Of(exception, $"{context.Request.Method} {context.Request.Path}", report));
        }
    }

    private static async Task AnswerAsync(HttpContext context, ProblemResponse response)
    {
        if (context.Response.HasStarted)
        {
            context.Abort();
            return;
        }
        context.Response.Clear();
        if (context.Request.Path.StartsWithSegments("/api")
            || !context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.Ordinal))
        {
            await JsonReply.WriteProblemsAsync(context, response.Status, response.Problems);
            return;
        }
        context.Response.StatusCode = response.Status;
        context.Response.ContentType = "text/html; charset=utf-8";
        await context.Response.WriteAsync(Page(context.Request, response.Problems), context.RequestAborted);
    }

    // Someone who followed a link from another site has the cookie, but the browser doesn't send it that time: a link from here
    // does.
    private static string Page(HttpRequest request, IReadOnlyList<Problem> problems) => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>This page can't be shown</title>
        <style>
        {Style}
        </style>
        </head>
        <body>
        <main>
        <h1>This page can't be shown</h1>
        {string.Join('\n', problems.Select(problem => $"<p>{HtmlText.Escape(problem.Text)}</p>"))}
        <p>Did you follow a link to get here? Then <a href="{HtmlText.Escape(OwnPath(request))}">open it again from here</a>.
        Or go to <a href="/">the shelf</a>.</p>
        </main>
        </body>
        </html>

        """;

    private const string Style = """
        body { font: 1.1rem/1.5 system-ui, sans-serif; max-width: 36rem; margin: 3rem auto; padding: 0 1rem }
        body { color: #222; background: #fff }
        @media (prefers-color-scheme: dark) { body { color: #cfc8bd; background: #1b1b1b } a { color: #56b4e9 } }
        """;

    // One slash in front: with two, a browser would take the path for the name of another server.
    private static string OwnPath(HttpRequest request) => "/" + request.Path.ToUriComponent().TrimStart('/', '\\');
}

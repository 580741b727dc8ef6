using Microsoft.AspNetCore.Http;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Scenarios;

namespace RigScenarios.Page.Requests;

/// <summary>
/// Turns whatever goes wrong in a request into plain words for the reader. No stack trace and no name of a type leaves here.
/// </summary>
internal sealed class ExceptionHandler(Action<string>? report)
{
    public async Task RunAsync(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
            if (context.Response is { HasStarted: false, StatusCode: >= 400, ContentType: null })
                await AnswerAsync(context, context.Response.StatusCode, [new Problem(Words(context.Response.StatusCode))]);
        }
        catch (ProblemException exception)
        {
            await AnswerAsync(context, exception.Status, exception.Problems);
        }
        catch (ScenarioProblemsException exception)
        {
            await AnswerAsync(context, StatusCodes.Status400BadRequest, Problem.Of(exception.Problems));
        }
        catch (NotebookInputException exception)
        {
            await AnswerAsync(context, StatusCodes.Status400BadRequest, [.. exception.Problems.Select(text => new Problem(text))]);
        }
        catch (BadHttpRequestException exception)
        {
            await AnswerAsync(context, exception.StatusCode, [new Problem(Words(exception.StatusCode))]);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The reader left; nobody is there to be told.
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            report?.Invoke($"A file could not be read or written: {exception.Message}");
            await AnswerAsync(context, StatusCodes.Status500InternalServerError, [new Problem("The file can't be read or written. Is the disk full, or the folder write-protected? The window where the program runs says more.")]);
        }
#pragma warning disable CA1031 // A bug must not show a stack trace to someone on set.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            report?.Invoke($"Something went wrong inside RigScenarios ({context.Request.Method} {context.Request.Path}): {exception.Message}");
            await AnswerAsync(context, StatusCodes.Status500InternalServerError, [new Problem("Something went wrong inside RigScenarios. Your files are as they were. The window where the program runs says more; please report it.")]);
        }
    }

    private static async Task AnswerAsync(HttpContext context, int status, IReadOnlyList<Problem> problems)
    {
        if (context.Response.HasStarted)
        {
            context.Abort();
            return;
        }
        context.Response.Clear();
        if (context.Request.Path.StartsWithSegments("/api") || !context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.Ordinal))
        {
            await PageJson.WriteProblemsAsync(context, status, problems);
            return;
        }
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        await context.Response.WriteAsync(Page(context.Request, problems), context.RequestAborted);
    }

    // Someone who followed a link from another site has the cookie, but the browser doesn't send it that time: a link from here does.
    private static string Page(HttpRequest request, IReadOnlyList<Problem> problems) =>
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<title>This page can't be shown</title>\n<style>body{font:1.1rem/1.5 system-ui,sans-serif;max-width:36rem;margin:3rem auto;padding:0 1rem;color:#222;background:#fff}"
        + "@media(prefers-color-scheme:dark){body{color:#cfc8bd;background:#1b1b1b}a{color:#56b4e9}}</style>\n</head>\n<body>\n<main>\n<h1>This page can't be shown</h1>\n"
        + string.Concat(problems.Select(problem => $"<p>{HtmlText.Escape(problem.Text)}</p>\n"))
        + $"<p>Did you follow a link to get here? Then <a href=\"{HtmlText.Escape("/" + request.Path.ToUriComponent().TrimStart('/', '\\'))}\">open it again from here</a>. Or go to <a href=\"/\">the shelf</a>.</p>\n</main>\n</body>\n</html>\n";

    private static string Words(int status) => status switch
    {
        StatusCodes.Status404NotFound => "There is no such page.",
        StatusCodes.Status405MethodNotAllowed => "This address can't be asked that way.",
        StatusCodes.Status413PayloadTooLarge => "This is more than the server takes at once.",
        StatusCodes.Status408RequestTimeout => "The request took too long to arrive.",
        _ => "The request isn't one that this server understands.",
    };
}

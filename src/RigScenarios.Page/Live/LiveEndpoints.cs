using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Runs;
using RigScenarios.Page.Settings;
using RigScenarios.Page.TakeAlong;
using RigScenarios.Requests.Live;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Live;

/// <summary>Notebooks that answer while someone reads them, and the page of one as a file to keep.</summary>
internal sealed class LiveEndpoints(NotebookRequests notebooks, PageSockets pages, PageLimits limits)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/live/{notebook}", LiveAsync);
        routes.MapGet("/api/page/{notebook}", PageAsync);
        routes.MapPost("/api/take-along/{notebook}", TakeAlongAsync);
    }

    private Task LiveAsync(HttpContext context)
    {
        var line = notebooks.Line(Name(context));
        if (!context.WebSockets.IsWebSocketRequest)
            throw new ProblemException(StatusCodes.Status400BadRequest, "This address is for living pages (a WebSocket).");
        return pages.ServeAsync(context, limits.LargestMessageBytes, line.Greeting, line.Queues);
    }

    private async Task PageAsync(HttpContext context)
    {
        var values = context.Request.Query.ToDictionary(field => field.Key, field => field.Value.ToString(),
            StringComparer.Ordinal);
        var page = await notebooks.PageAsync(Name(context), values, plotly: null, context.RequestAborted);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.ContentDisposition = $"attachment; filename=\"{NotebookRequests.FileName(Name(context))}\"";
        await context.Response.WriteAsync(page, context.RequestAborted);
    }

    private async Task TakeAlongAsync(HttpContext context)
    {
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        await SheetDownload.WriteAsync(context, await notebooks.SheetAsync(Name(context), json, context.RequestAborted));
    }

    private static string Name(HttpContext context) => (string)context.GetRouteValue("notebook")!;
}

using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Runs;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Shelf;

namespace RigScenarios.Page.Live;

/// <summary>Notebooks that answer while someone reads them, and the page of one as a file to keep.</summary>
internal sealed class LiveEndpoints(NotebookShelf shelf, PageSockets pages, RunWatch watch, PageLimits limits)
{
    /// <summary>A reader has the present version and may pin another beside it: each has its queue.</summary>
    private static readonly string[] Versions = ["now", "pinned"];

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/live/{notebook}", LiveAsync);
        routes.MapGet("/api/page/{notebook}", PageAsync);
    }

    private async Task LiveAsync(HttpContext context)
    {
        var notebook = Found((string)context.GetRouteValue("notebook")!);
        if (!context.WebSockets.IsWebSocketRequest)
            throw new ProblemException(StatusCodes.Status400BadRequest, "This address is for living pages (a WebSocket).");
        using var reading = shelf.Open(notebook.Name);
        await pages.ServeAsync(context, limits.LargestMessageBytes, json => NotebookJson.Write(json, notebook), async left =>
        {
            var live = await reading.Live.WaitAsync(left);
            return Versions.ToDictionary(name => name, _ => (Func<RunWork>)(() => new NotebookRuns(live).RunAsync),
                StringComparer.Ordinal);
        });
    }

    private async Task PageAsync(HttpContext context)
    {
        var notebook = Found((string)context.GetRouteValue("notebook")!);
        var values = context.Request.Query.ToDictionary(field => field.Key, field => field.Value.ToString(),
            StringComparer.Ordinal);
        using var reading = shelf.Open(notebook.Name);
        var live = await reading.Live.WaitAsync(context.RequestAborted);
        var session = live.OpenSession();
        await watch.RunAsync(cancellation => session.RunAsync(values, new Nobody(), cancellation), context.RequestAborted);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.ContentDisposition = $"attachment; filename=\"{FileName(notebook.Name)}.html\"";
        await context.Response.WriteAsync(NotebookPage.Of(session.ToRun()).ToHtml(), context.RequestAborted);
    }

    private Notebook Found(string name) =>
        shelf.Find(name) ?? throw new ProblemException(StatusCodes.Status404NotFound, "There is no such notebook on the shelf.");

    private static string FileName(string name) =>
        string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-'));

    /// <summary>Nobody watches while a page is made to be kept.</summary>
    private sealed class Nobody : ILiveObserver
    {
        public void Parameters(IReadOnlyList<LiveParameter> parameters)
        {
        }

        public void Cell(int cell, IReadOnlyList<PagePart> parts)
        {
        }

        public void Progress(int cell, double fraction, string text)
        {
        }
    }
}

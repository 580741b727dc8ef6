using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Answers;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Runs;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Shelf;
using RigScenarios.Page.TakeAlong;
using RigScenarios.Requests.TakeAlong;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Runs;

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
        routes.MapPost("/api/take-along/{notebook}", TakeAlongAsync);
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

    /// <summary>The cells are run until the answer is there, and no further.</summary>
    private async Task TakeAlongAsync(HttpContext context)
    {
        var notebook = Found((string)context.GetRouteValue("notebook")!);
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        var kind = SheetReply.Kind(RequestJson.Text(json, "sheet"));
        using var reading = shelf.Open(notebook.Name);
        var live = await reading.Live.WaitAsync(context.RequestAborted);
        using var found = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted);
        var first = new FirstAnswer(found);
        try
        {
            await watch.RunAsync(cancellation => live.OpenSession().RunAsync(NotebookRuns.Values(json), first, cancellation),
                found.Token);
        }
        catch (OperationCanceledException) when (first.Answer is not null)
        {
            // It was stopped for that.
        }
        await SheetDownload.WriteAsync(context, SheetReply.Page(first.Answer, kind, RequestJson.Flag(json, "whole")));
    }

    private Notebook Found(string name) =>
        shelf.Find(name) ?? throw new ProblemException(StatusCodes.Status404NotFound, "There is no such notebook on the shelf.");

    private static string FileName(string name) =>
        string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-'));

    /// <summary>Waits for the first answer, and then stops the run.</summary>
    private sealed class FirstAnswer(CancellationTokenSource found) : Nobody
    {
        public RigAnswer? Answer { get; private set; }

        public override void Cell(int cell, IReadOnlyList<PagePart> parts)
        {
            if ((Answer ??= parts.OfType<AnswerPart>().FirstOrDefault(part => part.Whole is not null)?.Whole) is not null)
                found.Cancel();
        }
    }

    /// <summary>Nobody watches while a page is made to be kept.</summary>
    private class Nobody : ILiveObserver
    {
        public void Parameters(IReadOnlyList<LiveParameter> parameters)
        {
        }

        public virtual void Cell(int cell, IReadOnlyList<PagePart> parts)
        {
        }

        public void Progress(int cell, double fraction, string text)
        {
        }
    }
}

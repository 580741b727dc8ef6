using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Files;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Shelf;
using RigScenarios.Requests;
using RigScenarios.Requests.Live;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.OwnFiles;

namespace RigScenarios.Page.Saved;

/// <summary>A notebook as a file to keep whose controls answer: how large it becomes, and the file.</summary>
/// <param name="requests">What the local pages ask.</param>
/// <param name="shelf">The notebooks.</param>
/// <param name="options">Where data lies, and the library that such a page carries.</param>
internal sealed class SavedPageEndpoints(PageRequests requests, NotebookShelf shelf, PageOptions options) : IDisposable
{
    // Making one takes a run of its own, and memory for the whole file: one after the other.
    private readonly SemaphoreSlim oneAtATime = new(1, 1);

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/page-that-answers/{notebook}/size", SizeAsync);
        routes.MapGet("/api/page-that-answers/{notebook}", PageAsync);
    }

    public void Dispose() => oneAtATime.Dispose();

    private Task SizeAsync(HttpContext context)
    {
        var why = WhyNot(Found(context));
        var size = why is null && options.CarriedLibrary?.Ready is { } folder ? AnsweringPage.LeastBytes(folder) : (long?)null;
        return JsonReply.WriteAsync(context, new { bytes = size, why });
    }

    private async Task PageAsync(HttpContext context)
    {
        var (notebook, cancellation) = (Found(context), context.RequestAborted);
        if (WhyNot(notebook) is { } why)
            throw new ProblemException(StatusCodes.Status400BadRequest, why);
        var values = context.Request.Query.ToDictionary(field => field.Key, field => field.Value.ToString(),
            StringComparer.Ordinal);
        await oneAtATime.WaitAsync(cancellation);
        try
        {
            var html = await MakeAsync(notebook, values, options.CarriedLibrary!, cancellation);
            context.Response.ContentType = "text/html; charset=utf-8";
            context.Response.Headers.ContentDisposition =
                $"attachment; filename=\"{NotebookRequests.FileName(notebook.Name)}\"";
            await context.Response.WriteAsync(html, cancellation);
        }
        finally
        {
            oneAtATime.Release();
        }
    }

    private async Task<string> MakeAsync(Notebook notebook, Dictionary<string, string> values, ICarriedLibrary library,
        CancellationToken cancellation)
    {
        var recorder = new ConversationRecorder(options.DataFolder, TimeProvider.System) { Limits = options.Limits };
        var conversation = await recorder.RecordAsync(notebook, values, OwnFiles(notebook, values), null, cancellation);
        return AnsweringPage.Of(conversation, await library.FolderAsync(cancellation),
            typeof(SavedPageEndpoints).Assembly.GetName().Version!.ToString(3));
    }

    /// <summary>The own files that are named, as texts that need no other file: nothing else of the folder goes along.</summary>
    private Dictionary<string, string> OwnFiles(Notebook notebook, Dictionary<string, string> values)
    {
        var own = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var parameter in notebook.Parameters.All.Where(parameter => parameter.Kind == ParameterKind.ScenarioFile))
        {
            if (!values.TryGetValue(parameter.Name, out var id)
                || !id.StartsWith($"{RigFiles.Own}/", StringComparison.Ordinal))
                continue;
            var file = requests.Files.Read(id);
            own[file.Name] = ScenarioFile.Text(requests.Scenarios.Read(file, "The page").SelfContained());
        }
        return own;
    }

    private string? WhyNot(Notebook notebook) => options.CarriedLibrary is { } library ? library.WhyNot(notebook)
        : "The library for browsers did not come with this program.";

    private Notebook Found(HttpContext context) => shelf.Find((string)context.GetRouteValue("notebook")!)
        ?? throw new ProblemException(StatusCodes.Status404NotFound, "There is no such notebook on the shelf.");
}

using System.Text;
using System.Text.Json;
using RigScenarios.Requests.Live;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Requests.Reading;
using RigScenarios.Requests.Rigs;
using RigScenarios.Requests.Runs;
using RigScenarios.Requests.Settings;
using RigScenarios.Requests.Shelf;
using RigScenarios.Requests.TakeAlong;
using RigScenarios.Requests.Texts;

namespace RigScenarios.Requests;

/// <summary>What pages ask and what they are answered, whatever carries it: a server, or the page's own browser. The list
/// stands in <c>docs/living-page.md</c>, its types in <c>site/shared/requests.js</c>.</summary>
/// <remarks>All of it works on one thread too: nothing waits for anything but by <c>await</c>. There a run is not stopped from
/// outside, for nobody else's turn comes before it ends.</remarks>
public sealed class PageRequests : IDisposable
{
    private const string JsonType = "application/json; charset=utf-8";
    private const string PageType = "text/html; charset=utf-8";

    private readonly Dictionary<string, Answered> requests = new(StringComparer.Ordinal);
    private readonly RequestOptions options;
    private readonly RigLogs logs;
    private readonly RigRuns runs;

    /// <param name="options">The folders that hold parts, samples and own files; the bounds; the clock.</param>
    /// <exception cref="DirectoryNotFoundException">One of the folders isn't there.</exception>
    public PageRequests(RequestOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        this.options = options;
        Report = new FaultReport(options.Report, options.ReportPlace);
        Watch = new RunWatch(options.Limits);
        Files = new RigFiles(options);
        Scenarios = new ReadScenarios(Files);
        logs = new RigLogs(options.Limits);
        var parts = new RigParts(Files.PartsFolder, Files.KnownParts);
        Places = new RigPlaces(Files, Scenarios, parts, options);
        runs = new RigRuns(Places);
        AddRigs(new RigRequests(Files, Places, parts, logs));
        AddTexts(new TextRequests(Files, Watch, options.Clock));
        if (options.Notebooks is { } makes)
        {
            Shelf = makes([new(RigFiles.Own, Files.OwnFolder), new(RigFiles.Samples, Files.SamplesFolder)]);
            Notebooks = new NotebookRequests(Shelf, Watch);
            AddNotebooks(Notebooks);
        }
        AddShelf(new ShelfRequests(Files, Shelf));
    }

    /// <summary>The names of the requests that are answered here.</summary>
    public IReadOnlyCollection<string> Names => requests.Keys;

    /// <summary>The notebooks; null where pages have none.</summary>
    internal INotebookShelf? Shelf { get; }

    /// <summary>What is asked of notebooks; null where pages have none.</summary>
    internal NotebookRequests? Notebooks { get; }

    /// <summary>Keeps runs within bounds.</summary>
    internal RunWatch Watch { get; }

    /// <summary>The scenario files.</summary>
    internal RigFiles Files { get; }

    /// <summary>Their scenarios.</summary>
    internal ReadScenarios Scenarios { get; }

    /// <summary>Where the rig of a form stands.</summary>
    internal RigPlaces Places { get; }

    /// <summary>Where faults are told.</summary>
    internal FaultReport Report { get; }

    /// <summary>What the form's line begins with.</summary>
    internal OpenedLine RigLine => new(null, _ => Task.FromResult<IReadOnlyDictionary<string, Func<RunWork>>>(
        new Dictionary<string, Func<RunWork>>(StringComparer.Ordinal) { ["now"] = () => runs.NowAsync }));

    /// <summary>Answers one request. What is refused, or goes wrong, is an answer too: with its status, and problems in
    /// words.</summary>
    /// <param name="name">The request's name.</param>
    /// <param name="json">What is asked, as a JSON object.</param>
    /// <param name="attachment">A file that goes with it, as it is; empty for none.</param>
    /// <param name="cancellation">The answer is no longer wanted.</param>
    /// <exception cref="OperationCanceledException">It is no longer wanted.</exception>
    public async Task<RequestReply> AskAsync(string name, ReadOnlyMemory<byte> json, ReadOnlyMemory<byte> attachment,
        CancellationToken cancellation)
    {
        try
        {
            if (!requests.TryGetValue(name, out var request))
                throw new ProblemException(ReplyStatus.NotFound, "The program behind this page doesn't answer this.");
            if (attachment.Length > request.LargestAttachment)
                throw RequestJson.TooLarge(request.LargestAttachment);
            return await request.Answer(RequestJson.Read(json, request.LargestJson), attachment, cancellation);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // A bug must not show a stack trace to someone on set.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            var response = ProblemResponse.Of(exception, name, Report);
            return Written(response.Status, json => json.WriteObjects("problems", response.Problems, Problem.Write));
        }
    }

    /// <summary>Opens a line: runs are asked for on it, and what they find is sent.</summary>
    /// <param name="lineJson">Which line, as a JSON object: <c>{"kind": "rig"}</c>.</param>
    /// <param name="send">Takes each message to the page, a JSON object; one at a time.</param>
    /// <returns>The page's end of it. Where there is no such line, that is sent as <c>problems</c> of no queue and no
    /// run.</returns>
    public ILine Open(string lineJson, Action<ReadOnlyMemory<byte>> send)
    {
        ArgumentNullException.ThrowIfNull(send);
        var line = new OpenLine(send, (messages, left) => new RunLine(messages, Watch, options.Limits, Report, left), Report);
        var most = options.Limits.LargestJsonBytes;
        _ = line.BeginAsync(() => LineOf(RequestJson.Read(Encoding.UTF8.GetBytes(lineJson), most)));
        return line;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Watch.Dispose();
        logs.Dispose();
        Shelf?.Dispose();
    }

    /// <summary>What a line begins with. Another kind of line is one more case here.</summary>
    /// <exception cref="ProblemException">There is no such line.</exception>
    private OpenedLine LineOf(JsonElement line) => RequestJson.NeededText(line, "kind") switch
    {
        "rig" => RigLine,
        "notebook" when Notebooks is not null => Notebooks.Line(RequestJson.NeededText(line, "name")),
        _ => throw new ProblemException(ReplyStatus.NotFound,
            [new Problem("The program behind this page has no such line.", "kind", "rig")]),
    };

    private void AddRigs(RigRequests rigs)
    {
        var most = options.Limits.LargestJsonBytes;
        AddWritten("rig-questions", most, _ => rigs.Questions());
        AddWritten("rig-given", most, rigs.Given);
        AddWritten("rig-alone", most, rigs.Alone);
        AddWritten("rig-edit", most, rigs.Edit);
        Add("save-rig", most, rigs.Save);
        requests.Add("rig-log", new(most, options.Limits.LargestLogBytes, async (json, log, cancellation) =>
            Json(ReplyStatus.Ok, await rigs.LogAsync(new SentLog(json, log), cancellation))));
        requests.Add("rig-sheet", new(most, 0, (json, _, cancellation) => Task.FromResult(
            Page(rigs.Sheet(json, cancellation), SheetReply.FileName))));
    }

    private void AddNotebooks(NotebookRequests notebooks)
    {
        var most = options.Limits.LargestJsonBytes;
        requests.Add("picture", new(most, 0, (json, _, _) =>
        {
            var (content, type) = notebooks.Picture(json);
            return Task.FromResult(new RequestReply(ReplyStatus.Ok, type, content, null));
        }));
        // The charts' script lies beside the pages, and in a browser not in the program too.
        requests.Add("page", new(most, NotebookRequests.LargestPlotly, async (json, plotly, cancellation) =>
        {
            var name = RequestJson.NeededText(json, "notebook");
            var page = await notebooks.PageAsync(name, NotebookRuns.Values(json),
                plotly.IsEmpty ? null : Encoding.UTF8.GetString(plotly.Span), cancellation);
            return Page(page, NotebookRequests.FileName(name));
        }));
        requests.Add("notebook-sheet", new(most, 0, async (json, _, cancellation) => Page(await notebooks.SheetAsync(
            RequestJson.NeededText(json, "notebook"), json, cancellation), SheetReply.FileName)));
    }

    private void AddTexts(TextRequests texts)
    {
        var most = options.Limits.LargestFileBytes;
        Add("file", options.Limits.LargestJsonBytes, texts.Read);
        Add("save-file", most, texts.Save);
        Add("text-help", most, TextRequests.Help);
        requests.Add("check-text", new(most, 0, async (json, _, cancellation) =>
            Json(ReplyStatus.Ok, await texts.CheckAsync(json, cancellation))));
    }

    private void AddShelf(ShelfRequests shelf)
    {
        AddWritten("abilities", options.Limits.LargestJsonBytes, _ => options.Abilities.Write);
        requests.Add("shelf", new(options.Limits.LargestJsonBytes, 0, (_, _, cancellation) =>
            Task.FromResult(Json(ReplyStatus.Ok, shelf.All(cancellation)))));
    }

    private void Add(string name, int largest, Func<JsonElement, object> answer) =>
        requests.Add(name, new(largest, 0, (json, _, _) => Task.FromResult(Json(ReplyStatus.Ok, answer(json)))));

    private void AddWritten(string name, int largest, Func<JsonElement, Action<Utf8JsonWriter>> answer) =>
        requests.Add(name, new(largest, 0, (json, _, _) => Task.FromResult(Written(ReplyStatus.Ok, answer(json)))));

    private static RequestReply Written(int status, Action<Utf8JsonWriter> content) =>
        new(status, JsonType, MessageBytes.Of(content), null);

    private static RequestReply Json(int status, object value) =>
        new(status, JsonType, JsonSerializer.SerializeToUtf8Bytes(value, PageJson.Options), null);

    private static RequestReply Page(string html, string fileName) =>
        new(ReplyStatus.Ok, PageType, Encoding.UTF8.GetBytes(html), fileName);

    /// <summary>How a request is answered.</summary>
    /// <param name="LargestJson">The most bytes of what is asked.</param>
    /// <param name="LargestAttachment">The most bytes of a file that goes with it; 0 where none does.</param>
    /// <param name="Answer">Answers it.</param>
    private sealed record Answered(int LargestJson, int LargestAttachment,
        Func<JsonElement, ReadOnlyMemory<byte>, CancellationToken, Task<RequestReply>> Answer);
}

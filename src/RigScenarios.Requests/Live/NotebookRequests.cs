using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Reading;
using RigScenarios.Requests.Runs;
using RigScenarios.Requests.TakeAlong;

namespace RigScenarios.Requests.Live;

/// <summary>Notebooks that answer while someone reads them, and the page of one as a file to keep.</summary>
internal sealed class NotebookRequests(INotebookShelf shelf, RunWatch watch)
{
    private const long LargestPicture = 2 * 1024 * 1024;

    /// <summary>A reader has the present version and may pin another beside it: each has its queue.</summary>
    private static readonly string[] Versions = ["now", "pinned"];

    /// <summary>The picture of a notebook.</summary>
    /// <exception cref="ProblemException">There is none.</exception>
    public (byte[] Content, string Type) Picture(JsonElement json) =>
        Found(RequestJson.NeededText(json, "notebook")).PictureFile is { } file
            && new FileInfo(file) is { Exists: true, Length: <= LargestPicture }
            ? (File.ReadAllBytes(file), Path.GetExtension(file) == ".png" ? "image/png" : "image/svg+xml")
            : throw new ProblemException(ReplyStatus.NotFound, "This notebook has no picture.");

    /// <summary>What a notebook's line begins with. Its reader's hold on it ends with the line.</summary>
    /// <param name="name">The notebook's name.</param>
    /// <exception cref="ProblemException">There is no such notebook.</exception>
    public OpenedLine Line(string name)
    {
        var notebook = Found(name);
        return new OpenedLine(json => NotebookJson.Write(json, notebook), async left =>
        {
            var reading = shelf.Open(notebook.Name);
            left.Register(reading.Dispose);
            var live = await reading.Live.WaitAsync(left);
            return Versions.ToDictionary(version => version, _ => (Func<RunWork>)(() => new NotebookRuns(live).RunAsync),
                StringComparer.Ordinal);
        });
    }

    /// <summary>The most bytes of the charts' script.</summary>
    public const int LargestPlotly = 4 * 1024 * 1024;

    /// <summary>A notebook, run with values of its parameters, as one page.</summary>
    /// <param name="name">The notebook's name.</param>
    /// <param name="values">The values.</param>
    /// <param name="plotly">The charts' script, where the program does not have it in itself; null: its own.</param>
    /// <param name="cancellation">Stops the run.</param>
    public async Task<string> PageAsync(string name, IReadOnlyDictionary<string, string> values, string? plotly,
        CancellationToken cancellation)
    {
        using var reading = shelf.Open(Found(name).Name);
        var session = (await reading.Live.WaitAsync(cancellation)).OpenSession();
        await watch.RunAsync(run => session.RunAsync(values, new Nobody(), run), cancellation);
        return (NotebookPage.Of(session.ToRun()) with { Plotly = plotly }).ToHtml();
    }

    /// <summary>The sheet to take along of a notebook's answer. The cells are run until the answer is there, and no further.
    /// </summary>
    public async Task<string> SheetAsync(string name, JsonElement json, CancellationToken cancellation)
    {
        var kind = SheetReply.Kind(RequestJson.Text(json, "sheet"));
        using var reading = shelf.Open(Found(name).Name);
        var live = await reading.Live.WaitAsync(cancellation);
        using var found = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var first = new FirstAnswer(found);
        try
        {
            await watch.RunAsync(run => live.OpenSession().RunAsync(NotebookRuns.Values(json), first, run), found.Token);
        }
        catch (OperationCanceledException) when (first.Answer is not null)
        {
            // It was stopped for that.
        }
        return SheetReply.Page(first.Answer, kind, RequestJson.Flag(json, "whole"));
    }

    /// <summary>The name of a file to keep a notebook's page in.</summary>
    public static string FileName(string name) =>
        string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')) + ".html";

    private Notebook Found(string name) =>
        shelf.Find(name) ?? throw new ProblemException(ReplyStatus.NotFound, "There is no such notebook on the shelf.");

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

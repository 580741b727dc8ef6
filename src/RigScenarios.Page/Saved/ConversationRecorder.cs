using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Page.Shelf;
using RigScenarios.Requests;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Page.Saved;

/// <summary>Runs a notebook as its living page would, and keeps what the page would hear.</summary>
/// <param name="dataFolder">The folder that holds <c>parts</c> and <c>scenarios</c>, the data that came with the
/// program.</param>
/// <param name="clock">Tells what day it is.</param>
public sealed class ConversationRecorder(string dataFolder, TimeProvider clock)
{
    private const string Queue = "now";

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>How long the run may take, and how much memory. Unless given, an hour: whoever waits for it may stop
    /// it.</summary>
    public RequestLimits Limits { get; init; } = new() { RunTime = TimeSpan.FromHours(1) };

    /// <summary>Runs the notebook. While it does, the process's current folder must be the notebook's.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="given">Values of parameters by name, as a page sends them: a scenario file as <c>own/NAME</c> or
    /// <c>samples/NAME</c>; the others keep the notebook's value.</param>
    /// <param name="ownFiles">The reader's own scenario files that are named there: texts that need no other file.</param>
    /// <param name="progress">Told in a few words what is done; null where nobody listens.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="NotebookInputException">A value can't be used; nothing was run.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task<SavedConversation> RecordAsync(Notebook notebook, IReadOnlyDictionary<string, string> given,
        IReadOnlyDictionary<string, string> ownFiles, IProgress<string>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(ownFiles);
        // Of the reader's folder nothing but what the page carries.
        var own = Directory.CreateTempSubdirectory("rigscenarios-saved-");
        try
        {
            foreach (var (name, text) in ownFiles)
                await File.WriteAllTextAsync(Path.Combine(own.FullName, name), text, cancellation);
            using var requests = new PageRequests(new RequestOptions
            {
                DataFolder = dataFolder,
                OwnFolder = own.FullName,
                Notebooks = folders => new NotebookShelf(Path.GetDirectoryName(notebook.FilePath)!, folders),
                Limits = Limits,
                Clock = clock,
            });
            var heard = new Heard(progress);
            var line = requests.Open(JsonSerializer.Serialize(new { kind = "notebook", name = notebook.Name }), heard.Take);
            try
            {
                line.Take(JsonSerializer.SerializeToUtf8Bytes(new { kind = "run", queue = Queue, run = 1,
                    values = Asked(notebook, given) }));
                await heard.Ended.WaitAsync(cancellation);
            }
            finally
            {
                line.Close();
            }
            return Of(notebook, given, ownFiles, heard);
        }
        finally
        {
            own.Delete(recursive: true);
        }
    }

    /// <summary>The values that a page asks for at first: the notebook's own, and those that were given.</summary>
    internal static Dictionary<string, string> Asked(Notebook notebook, IReadOnlyDictionary<string, string> given) =>
        notebook.Parameters.All.ToDictionary(parameter => parameter.Name,
            parameter => given.GetValueOrDefault(parameter.Name, parameter.Default), StringComparer.Ordinal);

    private static SavedConversation Of(Notebook notebook, IReadOnlyDictionary<string, string> given,
        IReadOnlyDictionary<string, string> ownFiles, Heard heard)
    {
        var last = heard.Messages[^1];
        var failure = Kind(last) switch
        {
            "done" => null,
            "failed" => new NotebookFailure(notebook.FileName, (int)last["cell"]!, (int?)last["line"], (string)last["text"]!),
            "problems" => throw new NotebookInputException([.. last["problems"]!.AsArray().Select(problem =>
                $"{(problem!["path"] is { } path ? $"{path}: " : "")}{problem["text"]}")]),
            _ => throw new IOException(
                $"{notebook.FileName}: the run was stopped: it takes more time or memory than this machine has."),
        };
        var answers = heard.Messages.Where(message => Kind(message) == "cell")
            .SelectMany(message => message["parts"]!.AsArray()).Where(part => (string?)part!["type"] == "answer").ToList();
        return new SavedConversation
        {
            Notebook = notebook,
            Given = given,
            OwnFiles = ownFiles,
            Greeting = heard.Messages[0].ToJsonString(Plain),
            Messages = [.. heard.Messages.Skip(1).Select(message => Lasting(message).ToJsonString(Plain))],
            Answers = [.. answers.Select(part => (string)part!["text"]!)],
            Cautions = [.. answers.SelectMany(part => part!["cautions"]?.AsArray() ?? [])
                .Select(caution => (string)caution!).Distinct(StringComparer.Ordinal)],
            Failure = failure,
        };
    }

    private static string? Kind(JsonObject message) => (string?)message["kind"];

    // The same run gives the same page, to the letter.
    private static JsonObject Lasting(JsonObject message)
    {
        message.Remove("queue");
        message.Remove("run");
        if (message.ContainsKey("milliseconds"))
            message["milliseconds"] = 0;
        return message;
    }

    /// <summary>What came on the line.</summary>
    private sealed class Heard(IProgress<string>? progress)
    {
        private static readonly string[] Last = ["done", "failed", "problems", "stopped"];

        private string told = "";
        private readonly TaskCompletionSource ended = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public List<JsonObject> Messages { get; } = [];

        public Task Ended => ended.Task;

        // The same words are told once: how far a cell has come is of no use in a list.
        private void Tell(string words)
        {
            if (words != told)
                progress?.Report(words);
            told = words;
        }

        public void Take(ReadOnlyMemory<byte> json)
        {
            var message = JsonNode.Parse(json.Span)!.AsObject();
            var kind = Kind(message);
            if (kind == "progress")
            {
                Tell($"cell {message["cell"]}{((string?)message["text"] is { Length: > 0 } words ? $": {words}" : "")}");
                return;
            }
            // What is on the screen first is a matter of the screen.
            if (kind == "inSight" || ended.Task.IsCompleted)
                return;
            Messages.Add(message);
            if (Last.Contains(kind))
                ended.TrySetResult();
        }
    }
}

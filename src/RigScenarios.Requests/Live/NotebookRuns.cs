using System.Text.Json;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Requests.Live;

/// <summary>The runs of a notebook in one queue: its cells, told as they are run, those in the reader's sight first.</summary>
internal sealed class NotebookRuns(LiveNotebook notebook)
{
    private const int MostValues = 100;
    private const int LongestValue = 4096;

    private readonly LiveSession session = notebook.OpenSession();

    public async Task RunAsync(JsonElement request, RunReply reply, CancellationToken cancellation)
    {
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var observer = new Observer(reply, UntilCell(request), enough);
        try
        {
            var result = await session.RunAsync(Values(request), InSight(request), observer, enough.Token);
            if (result.Failure is { } failure)
                reply.End("failed", json =>
                {
                    json.WriteNumber("cell", failure.Cell);
                    if (failure.Line is { } line)
                        json.WriteNumber("line", line);
                    else
                        json.WriteNull("line");
                    json.WriteString("text", failure.Message);
                });
            else
                reply.End("done", json => WriteEnd(json, result));
        }
        catch (OperationCanceledException) when (enough.IsCancellationRequested && !cancellation.IsCancellationRequested)
        {
            // All that was wanted of it is there; the next run does the rest.
            reply.End("done", json => WriteEnd(json, new LiveRun(observer.Shown, TimeSpan.Zero, null)));
        }
        catch (NotebookInputException exception)
        {
            throw new ProblemException(ReplyStatus.BadRequest, [.. exception.Problems.Select(OfParameter)]);
        }
    }

    private static void WriteEnd(Utf8JsonWriter json, LiveRun result)
    {
        json.WriteNumber("milliseconds", Math.Round(result.Elapsed.TotalMilliseconds, 1));
        json.WriteStartArray("rerun");
        foreach (var cell in result.Rerun)
            json.WriteNumberValue(cell);
        json.WriteEndArray();
    }

    // Messages of parameters begin with the parameter's name.
    private Problem OfParameter(string text)
    {
        var name = notebook.Notebook.Parameters.All
            .FirstOrDefault(parameter => text.StartsWith(parameter.Name + ":", StringComparison.Ordinal));
        return name is null ? new Problem(text) : new Problem(text[(name.Name.Length + 1)..].TrimStart(),
            name.Name, name.Accepted);
    }

    // Values of parameters by name, as a person writes them. Texts, and never code: the notebook reads each by its declared kind.
    internal static Dictionary<string, string> Values(JsonElement json)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        if (!json.TryGetProperty("values", out var given))
            return values;
        if (given.ValueKind != JsonValueKind.Object)
            throw Refused("values", "The values must be an object of texts.", "{\"name\":\"value\"}");
        foreach (var value in given.EnumerateObject())
        {
            var text = RequestJson.NeededText(given, value.Name);
            if (values.Count >= MostValues || value.Name.Length > LongestValue || text.Length > LongestValue)
                throw Refused("values", "These are more or longer values than any notebook has.",
                    $"at most {MostValues} values of at most {LongestValue} characters");
            values[value.Name] = text;
        }
        return values;
    }

    private static HashSet<int> InSight(JsonElement json) =>
        json.TryGetProperty("inSight", out var cells) && cells.ValueKind == JsonValueKind.Array
            ? [.. cells.EnumerateArray().Where(cell => cell.ValueKind == JsonValueKind.Number)
                .Select(cell => cell.TryGetInt32(out var number) ? number : 0)]
            : [];

    private static int? UntilCell(JsonElement json) =>
        json.TryGetProperty("untilCell", out var cell) && cell.ValueKind == JsonValueKind.Number
            && cell.TryGetInt32(out var number) ? number : null;

    private static ProblemException Refused(string path, string text, string accepted) =>
        new(ReplyStatus.BadRequest, [new Problem(text, path, accepted)]);

    /// <summary>Sends what a run shows as soon as it is there.</summary>
    private sealed class Observer(RunReply reply, int? untilCell, CancellationTokenSource enough) : ILiveObserver
    {
        private readonly List<int> shown = [];

        /// <summary>The cells that were run.</summary>
        public IReadOnlyList<int> Shown => shown;

        public void Parameters(IReadOnlyList<LiveParameter> parameters) => reply.Send("parameters", json =>
        {
            json.WriteStartArray("parameters");
            foreach (var parameter in parameters)
            {
                json.WriteStartObject();
                json.WriteString("name", parameter.Parameter.Name);
                json.WriteString("value", parameter.Value);
                NotebookJson.WriteChoices(json, parameter.Choices);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        });

        public void Cell(int cell, IReadOnlyList<PagePart> parts)
        {
            reply.Send("cell", json =>
            {
                json.WriteNumber("cell", cell);
                json.WriteStartArray("parts");
                foreach (var part in parts.Where(PartJson.IsShown))
                    PartJson.Write(json, part);
                json.WriteEndArray();
            });
            shown.Add(cell);
            if (cell == untilCell)
                enough.Cancel();
        }

        public void Progress(int cell, double fraction, string text) => reply.Progress(fraction, text, cell);

        public void WantedShown(LiveRun soFar) => reply.Send("inSight", json => WriteEnd(json, soFar));
    }
}

using RigScenarios.Page.Live;
using System.Text.Json;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Page.Requests;

namespace RigScenarios.Page.Runs;

/// <summary>
/// Tells a page what a run shows, while it runs and when it ends. Nothing of a run that was stopped reaches the page after
/// the word that it was.
/// </summary>
internal sealed class LaneTalk(LiveConnection connection, string lane, int run, TimeSpan betweenProgress, CancellationToken cancellation) : ILiveObserver
{
    private readonly ProgressPace pace = new(betweenProgress);

    public void Parameters(IReadOnlyList<LiveParameter> parameters) => Tell("parameters", json =>
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

    public void Cell(int cell, IReadOnlyList<PagePart> parts) => Tell("cell", json =>
    {
        json.WriteNumber("cell", cell);
        json.WriteStartArray("parts");
        foreach (var part in parts.Where(PartJson.IsShown))
            PartJson.Write(json, part);
        json.WriteEndArray();
    });

    public void Progress(int cell, double fraction, string text)
    {
        if (!pace.Lets(fraction))
            return;
        Tell("progress", json =>
        {
            json.WriteNumber("cell", cell);
            json.WriteNumber("fraction", double.IsFinite(fraction) ? Math.Clamp(fraction, 0, 1) : 0);
            json.WriteString("text", text);
        });
    }

    public void Done(LiveRun result) => TellEnd("done", json =>
    {
        json.WriteNumber("milliseconds", Math.Round(result.Elapsed.TotalMilliseconds, 1));
        json.WriteStartArray("rerun");
        foreach (var cell in result.Rerun)
            json.WriteNumberValue(cell);
        json.WriteEndArray();
    });

    public void Failed(NotebookFailure failure) => TellEnd("failed", json =>
    {
        json.WriteNumber("cell", failure.Cell);
        if (failure.Line is { } line)
            json.WriteNumber("line", line);
        else
            json.WriteNull("line");
        json.WriteString("text", failure.Message);
    });

    public void Problems(IReadOnlyList<Problem> problems) => TellEnd("problems", json => NotebookJson.WriteProblems(json, problems));

    public void Stopped(StopReason why) => TellEnd("stopped", json => json.WriteString("why", why switch
    {
        StopReason.Overtaken => "overtaken",
        StopReason.Time => "time",
        StopReason.Memory => "memory",
        _ => "asked",
    }));

    private void Tell(string kind, Action<Utf8JsonWriter> write) => Send(kind, write, cancellation);

    // The last word of a run is wanted also when the run was cancelled.
    private void TellEnd(string kind, Action<Utf8JsonWriter> write) => Send(kind, write, CancellationToken.None);

    private void Send(string kind, Action<Utf8JsonWriter> write, CancellationToken wanted) => connection.Send(
        json =>
        {
            json.WriteString("kind", kind);
            json.WriteString("lane", lane);
            json.WriteNumber("run", run);
            write(json);
        },
        wanted);
}

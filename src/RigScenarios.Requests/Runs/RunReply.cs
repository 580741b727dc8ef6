using System.Text.Json;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Requests.Runs;

/// <summary>
/// Tells a page what a run has found, while it goes on and when it ends. Nothing of a run that was stopped reaches the page
/// after the word that it was; before that word it may still give what it had found (<see cref="Keep"/>).
/// </summary>
internal sealed class RunReply(IMessages messages, string queue, int run, TimeSpan betweenProgress,
    CancellationToken cancellation)
{
    private readonly ProgressPace pace = new(betweenProgress);
    private readonly Lock ending = new();
    private bool hasEnded;

    /// <summary>Sends what the run has found so far.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped, or the reader left.</exception>
    public void Send(string kind, Action<Utf8JsonWriter> write) => Put(kind, write, cancellation);

    /// <summary>Tells how far a run has come, as often as a person can follow.</summary>
    /// <param name="fraction">From 0 to 1.</param>
    /// <param name="text">What is being done; may be empty.</param>
    /// <param name="cell">The notebook's cell that does it; null elsewhere.</param>
    /// <param name="isNews">It is told however short ago the last word was.</param>
    public void Progress(double fraction, string text, int? cell = null, bool isNews = false)
    {
        if (!pace.Lets(fraction, isNews))
            return;
        Send("progress", json =>
        {
            if (cell is { } number)
                json.WriteNumber("cell", number);
            json.WriteNumber("fraction", double.IsFinite(fraction) ? Math.Clamp(fraction, 0, 1) : 0);
            json.WriteString("text", text);
        });
    }

    /// <summary>The last word of a run; the first of several counts. It is wanted also when the run was cancelled.</summary>
    public void End(string kind, Action<Utf8JsonWriter> write)
    {
        lock (ending)
        {
            if (!hasEnded)
                Put(kind, write, CancellationToken.None);
            hasEnded = true;
        }
    }

    /// <summary>Sends what the run has found, also where it was stopped; nothing once the page has its last word.</summary>
    public void Keep(string kind, Action<Utf8JsonWriter> write)
    {
        lock (ending)
        {
            if (!hasEnded)
                Put(kind, write, CancellationToken.None);
        }
    }

    public void Problems(ProblemResponse response) => End("problems", json => WriteProblems(json, response));

    public void Stopped(StopReason why) => End("stopped", json => json.WriteString("why", why switch
    {
        StopReason.Overtaken => "overtaken",
        StopReason.Time => "time",
        StopReason.Memory => "memory",
        _ => "asked",
    }));

    internal static void WriteProblems(Utf8JsonWriter json, ProblemResponse response)
    {
        json.WriteNumber("status", response.Status);
        json.WriteObjects("problems", response.Problems, Problem.Write);
    }

    private void Put(string kind, Action<Utf8JsonWriter> write, CancellationToken wanted) => messages.Send(
        json =>
        {
            json.WriteString("kind", kind);
            json.WriteString("queue", queue);
            json.WriteNumber("run", run);
            write(json);
        },
        wanted);
}

using System.Text.Json;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Requests.Runs;

/// <summary>What a page asks for: a run of a queue, or that its run stops.</summary>
/// <param name="Queue">The queue's name.</param>
/// <param name="Run">The page's own number of the run; 0 where a run is to stop.</param>
/// <param name="Json">The whole message, with what the run is about.</param>
internal sealed record RunRequest(string Queue, int Run, JsonElement Json)
{
    public bool IsStop => Run == 0;

    /// <param name="message">The message.</param>
    /// <param name="queues">The names of the page's queues.</param>
    /// <exception cref="JsonException">The message is no JSON object.</exception>
    /// <exception cref="ProblemException">The message asks for something else.</exception>
    public static RunRequest Read(ReadOnlyMemory<byte> message, IReadOnlyCollection<string> queues)
    {
        var json = RequestJson.Parse(message);
        var queue = RequestJson.NeededText(json, "queue");
        if (!queues.Contains(queue))
            throw Refused("queue", "There is no such queue.", string.Join(", ", queues));
        return RequestJson.NeededText(json, "kind") switch
        {
            "stop" => new RunRequest(queue, 0, json),
            "run" => new RunRequest(queue, RequestJson.NeededCount(json, "run"), json),
            _ => throw Refused("kind", "There is no such message.", "run, stop"),
        };
    }

    private static ProblemException Refused(string path, string text, string accepted) =>
        new(ReplyStatus.BadRequest, [new Problem(text, path, accepted)]);
}

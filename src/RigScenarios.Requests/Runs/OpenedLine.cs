using System.Text.Json;

namespace RigScenarios.Requests.Runs;

/// <summary>What a kind of line begins with.</summary>
/// <param name="Greeting">Writes the first message; null for none.</param>
/// <param name="Queues">Gives the queues by name, each with what begins its work; may take its time.</param>
internal sealed record OpenedLine(Action<Utf8JsonWriter>? Greeting,
    Func<CancellationToken, Task<IReadOnlyDictionary<string, Func<RunWork>>>> Queues);

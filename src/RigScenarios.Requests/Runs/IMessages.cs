using System.Text.Json;

namespace RigScenarios.Requests.Runs;

/// <summary>Where messages to a page go.</summary>
internal interface IMessages
{
    /// <summary>Sends one message; may wait where the page is slow to take them.</summary>
    /// <param name="write">Writes the message's fields.</param>
    /// <param name="cancellation">The message is no longer wanted.</param>
    /// <exception cref="OperationCanceledException">It is no longer wanted, or the page has gone.</exception>
    void Send(Action<Utf8JsonWriter> write, CancellationToken cancellation);
}

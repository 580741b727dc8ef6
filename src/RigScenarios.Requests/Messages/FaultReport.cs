namespace RigScenarios.Requests.Messages;

/// <summary>Where faults are told that no reader is to blame for.</summary>
/// <param name="Tell">Told in one line; null where nobody listens.</param>
/// <param name="Place">The place where a person finds what was told, as the first words of a sentence: "The window where the
/// program runs".</param>
internal sealed record FaultReport(Action<string>? Tell, string Place);

using System.Text.Json;

namespace RigScenarios.Requests.Rigs;

/// <summary>A power log as a page sends it.</summary>
/// <param name="What">What is said about it: the rig, the file's name, air and charge.</param>
/// <param name="Bytes">The file as it is.</param>
internal sealed record SentLog(JsonElement What, ReadOnlyMemory<byte> Bytes);

using RigScenarios.Drafts;
using RigScenarios.Requests.OwnFiles;

namespace RigScenarios.Requests.Rigs;

/// <summary>What a form changes: a build and a day of a scenario that is there, or of a new one.</summary>
/// <param name="File">The file as it was read; null for a new one.</param>
/// <param name="Frame">What it says, and which build and day.</param>
internal sealed record RigPlace(RigText? File, RigFrame Frame);

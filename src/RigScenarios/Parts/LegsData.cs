using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>A tripod's legs as they usually stand.</summary>
/// <param name="Height">From the ground to where the head sits.</param>
/// <param name="FootRadius">From the middle between the feet to a foot.</param>
/// <param name="CentreHeight">Height of the legs' own centre of gravity; null for half of the height.</param>
public sealed record LegsData(Length Height, Length FootRadius, Length? CentreHeight = null);

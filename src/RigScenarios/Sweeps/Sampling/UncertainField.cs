namespace RigScenarios.Sweeps.Sampling;

/// <summary>A field of a scenario that isn't known exactly, and what it may be.</summary>
/// <param name="Path">The field, by the path that it has in the scenario file.</param>
/// <param name="Spread">What it may be.</param>
public sealed record UncertainField(string Path, Spread Spread);

namespace RigScenarios.Cells;

/// <summary>A value with the reason for it and the place that it comes from.</summary>
/// <param name="Value">The value itself.</param>
/// <param name="Why">Why this value, in plain words; says where it is borrowed or weak.</param>
/// <param name="Source">Where it comes from.</param>
/// <typeparam name="T">Type of the value, with its unit.</typeparam>
public sealed record Sourced<T>(T Value, string Why, Citation Source);

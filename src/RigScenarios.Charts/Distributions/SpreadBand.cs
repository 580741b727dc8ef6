namespace RigScenarios.Charts.Distributions;

/// <summary>Between which values a part of the runs lies, at each place of an axis.</summary>
/// <param name="Name">Which part it is ("8 of 10 days"), as it stands beside the band.</param>
/// <param name="Lower">Its lower edge, one value a place; not-a-number leaves a gap.</param>
/// <param name="Upper">Its upper edge, one value a place.</param>
public sealed record SpreadBand(string Name, IReadOnlyList<double> Lower, IReadOnlyList<double> Upper);

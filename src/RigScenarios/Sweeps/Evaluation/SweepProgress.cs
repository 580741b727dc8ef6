namespace RigScenarios.Sweeps.Evaluation;

/// <summary>How far a sweep has come. Rate and time left are made of it by whoever has a clock.</summary>
/// <param name="Done">Scenarios that have been run.</param>
/// <param name="Count">All scenarios of this call.</param>
public readonly record struct SweepProgress(long Done, long Count);

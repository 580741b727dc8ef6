using RigScenarios.Fits;
using RigScenarios.Fits.Logs;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>One fit of a case file.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Problem">What is fitted.</param>
/// <param name="Logs">How each log of the problem was read.</param>
/// <param name="Forecast">The planned run; null for none.</param>
/// <param name="Candidates">The tests that could be made.</param>
internal sealed record FitCase(
    string Id, FitProblem Problem, IReadOnlyList<LogReading> Logs, BatteryRun? Forecast, IReadOnlyList<CandidateTest> Candidates);

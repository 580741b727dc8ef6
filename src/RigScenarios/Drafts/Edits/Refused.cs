using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>A change that can't be made, told as every problem is.</summary>
internal static class Refused
{
    public static ScenarioProblemsException Because(string path, string problem, string? accepted = null,
        string? nearest = null) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, path, problem, accepted, nearest)]);
}

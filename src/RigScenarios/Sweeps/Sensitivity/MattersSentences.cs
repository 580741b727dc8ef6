namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Which uncertainty matters, in sentences for people who plan a day.</summary>
public static class MattersSentences
{
}

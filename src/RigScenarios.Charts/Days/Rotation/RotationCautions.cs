using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Charts.Days.Rotation;

/// <summary>What a reader of predicted days with several batteries must know beside the numbers.</summary>
public static class RotationCautions
{
    /// <summary>All that go with a plan and its result; the first says that it is predicted.</summary>
    public static IReadOnlyList<string> Of(DayPlan plan, SimulationResult result) => DayPlanWords.Cautions(result, plan);

    /// <summary>Only that it is predicted, and how far off it may be: the least that goes with any answer.</summary>
    public static string Prediction(SimulationResult result) => DayPlanWords.Prediction(result);
}

using RigScenarios.Answers;
using RigScenarios.Charts.Days;
using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Charts.Timeline;

/// <summary>What a reader of predicted days with several batteries must know beside the numbers.</summary>
public static class TimelineCautions
{
    /// <summary>That it is predicted, and what goes with a generator and with charging.</summary>
    public static IReadOnlyList<string> Of(DayPlan plan, SimulationResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return [DayCautions.Prediction(result.ExpectedError), .. PowerCautions.Generators(plan),
            .. AnswerCautions.Charging(plan)];
    }
}

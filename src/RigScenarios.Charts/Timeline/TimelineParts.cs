using RigScenarios.Charts.Pages;
using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Charts.Timeline;

/// <summary>Days with several batteries, as parts of a page below their answer: where each battery is, what was taken for what
/// nobody planned.</summary>
public static class TimelineParts
{
    /// <summary>The parts.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="result">How it went; of this plan.</param>
    /// <param name="notPlanned">What was taken for what nobody planned, each in a sentence.</param>
    public static IEnumerable<PagePart> Of(DayPlan plan, SimulationResult result, IReadOnlyList<string> notPlanned)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notPlanned);
        yield return new HeadingPart("Do the batteries last?", 3);
        foreach (var words in notPlanned)
            yield return new ProsePart(words);
        yield return new DrawingPart(DayTimeline.Of(plan, result));
    }
}

using RigScenarios.Days;

namespace RigScenarios.Answers;

/// <summary>What an answer says of a battery whose figures come from its own notes and logs.</summary>
public static class FittedWords
{
    /// <summary>"Rests on 5 notes and 1 log of this battery."; null where no battery of the plan was fitted.</summary>
    /// <param name="plan">The plan.</param>
    public static string? RestsOn(DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var fitted = plan.Batteries.Where(battery => battery.Value.RuntimeKnownTo is not null).ToList();
        return fitted.Count == 0 ? null : "Rests on " + string.Join(", and on ", fitted.Select(battery =>
            $"{battery.Value.FittedFrom ?? "a fit to notes"} of "
            + (plan.Batteries.Count == 1 ? "this battery" : LimitSentences.Element(battery.Key)))) + ".";
    }
}

using RigScenarios.Travel;

namespace RigScenarios.Scenarios;

/// <summary>A battery that does not come along.</summary>
public static class BatteryAtHome
{
    /// <summary>The scenario without one of the batteries that take turns: it is not there on the days, and goes on no
    /// journey.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="battery">The battery's short name among those that take turns.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such battery.</exception>
    public static Scenario Without(this Scenario scenario, string battery)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var item = Chosen.From(scenario.Batteries, battery, "battery", "batteries").Item;
        var rest = scenario with { Batteries = scenario.Batteries.Without(battery) };
        if (scenario.Kit[item] is { Count: > 1 } some)
            return rest with { Kit = scenario.Kit.With(item, some with { Count = some.Count - 1 }) };
        return rest with
        {
            // A journey that names no battery takes all of the kit: one that had only this one is left out.
            Journeys = new(scenario.Journeys
                .Select(journey => KeyValuePair.Create(journey.Key, Without(scenario, journey.Value, item)))
                .Where(journey => journey.Value.Batteries.Count > 0)),
        };
    }

    private static JourneyPlan Without(Scenario scenario, JourneyPlan journey, string item) => journey with
    {
        Batteries = [.. scenario.BatteriesOn(journey).Where(name => name != item)], Packed = journey.Packed.Without(item),
    };
}

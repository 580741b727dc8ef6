using RigScenarios.Travel;

namespace RigScenarios.Scenarios;

/// <summary>Journeys of a scenario with the batteries of its kit.</summary>
public static class ScenarioTravel
{
    /// <summary>The answer for a journey of the scenario.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="journey">The journey's short name.</param>
    /// <param name="today">The day that a journey without a date is meant for.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="ArgumentException">The scenario has no such journey, or no battery travels.</exception>
    public static TravelAnswer Answer(Scenario scenario, string journey, DateOnly today, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return scenario.Journeys.TryGetValue(journey, out var plan)
            ? TravelPlan.For(JourneyOf(scenario, plan, plan.Title ?? journey, today), cancellation)
            : throw new ArgumentException($"The scenario has no journey \"{journey}\".", nameof(journey));
    }

    /// <summary>The answer for a passenger flight of one traveller with all batteries of the kit, spare and covered: where the
    /// scenario plans no journey.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="date">The day of travel.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="ArgumentException">The kit has no battery.</exception>
    public static TravelAnswer PlainFlight(Scenario scenario, DateOnly date, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return TravelPlan.For(JourneyOf(scenario, new JourneyPlan(), "A passenger flight, one traveller", date), cancellation);
    }

    private static Journey JourneyOf(Scenario scenario, JourneyPlan plan, string title, DateOnly today)
    {
        var batteries = scenario.BatteriesOn(plan)
            .SelectMany(name => Packed(scenario, name, plan.Packed.TryGetValue(name, out var how) ? how : new BatteryPacking()))
            .ToList();
        return batteries.Count == 0
            ? throw new ArgumentException("No battery travels: the kit has none.", nameof(scenario))
            : new Journey(title, plan.Date ?? today, plan.Travellers, plan.By, batteries);
    }

    private static IEnumerable<PackedBattery> Packed(Scenario scenario, string name, BatteryPacking how)
    {
        var part = scenario.PartOf(name)!;
        var spare = new PackedBattery
        {
            Name = name, Title = part.Name, Rated = RatedEnergy.Of(part.Battery!, part.Assumed),
            Mass = part.Mass, Count = scenario.Kit[name].Count - how.Installed,
            ContactsCovered = how.ContactsCovered, PowerBank = how.PowerBank, WithEquipment = how.WithEquipment,
            Charge = how.Charge,
        };
        if (how.Installed > 0)
            yield return spare with { Installed = true, Count = how.Installed, ContactsCovered = true, PowerBank = false,
                WithEquipment = false };
        if (spare.Count > 0)
            yield return spare;
    }
}

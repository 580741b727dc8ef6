using RigScenarios.Batteries;
using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>Batteries that have worn further than a scenario says, or less.</summary>
public static class ScenarioWear
{
    /// <summary>The least that is left of a battery's capacity.</summary>
    public static Ratio LeastLeft { get; } = Ratio.FromPercent(20);

    /// <summary>
    /// The scenario with every battery of its builds and of its rotation worn further. Capacity and resistance move together: a
    /// growth that the scenario gives, or that a battery's life says, keeps its own ratio to the loss; one that nobody knows goes
    /// by the rule of <see cref="Wear"/>. A life in words is over with that: what it says is taken, and then worn.
    /// </summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="by">Part of the new capacity that is lost besides; below 0 for less worn. What is left ends at 100 %, or
    /// at what the scenario says if that is more, and at
    /// <see cref="LeastLeft"/>. 0 gives the scenario as it is.</param>
    public static Scenario MoreWorn(this Scenario scenario, Ratio by)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        if (by.DecimalFractions == 0)
            return scenario;
        return scenario with
        {
            Builds = new(scenario.Builds.Select(build =>
            {
                var battery = build.Value.Battery;
                var (left, growth) = Worn(scenario.AgeOf(battery), by);
                return KeyValuePair.Create(build.Key, build.Value with
                {
                    Battery = battery with { CapacityLeft = left, ResistanceGrowth = growth, Life = null },
                });
            })),
            Batteries = new(scenario.Batteries.Select(battery =>
            {
                var (left, growth) = Worn(scenario.AgeOf(battery.Value), by);
                return KeyValuePair.Create(battery.Key,
                    battery.Value with { CapacityLeft = left, ResistanceGrowth = growth, Life = null });
            })),
        };
    }

    private static (Ratio Left, double? Growth) Worn(KnownAge known, Ratio by)
    {
        var before = known.CapacityLeft ?? Ratio.FromPercent(100);
        var after = Ratio.FromPercent(Math.Round(
            Math.Clamp(before.Percent - by.Percent, Math.Min(LeastLeft.Percent, before.Percent),
                Math.Max(100, before.Percent)), 3));
        return (after, known.ResistanceFactor is { } factor
            ? Math.Round(Wear.Further(factor, before, after, known.Set.Chemistry.GrowthPerLoss.Value), 4) : null);
    }
}

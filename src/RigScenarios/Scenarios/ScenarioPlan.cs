using RigScenarios.Builds;
using RigScenarios.Days.Rotation;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>The days of a scenario with its batteries in rotation, its chargers and its swaps.</summary>
public static class ScenarioPlan
{
    /// <summary>Makes the plan and the build that runs through it.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name. If the scenario has no batteries in rotation, the build's own battery is the only one.</param>
    /// <param name="days">The days' short names, one after the other; all of the scenario, in their order, if empty.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day.</exception>
    public static (PoweredBuild Build, DayPlan Plan) Of(Scenario scenario, string build, IReadOnlyList<string> days)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(days);
        var chosen = ScenarioRun.Choose(scenario.Builds, build, "build", "builds");
        var powered = PoweredBuild.From(chosen, scenario.PartOf);
        var names = days.Count > 0 ? days : [.. scenario.Days.Keys];
        var own = new BatteryInRotation
        {
            Item = chosen.Battery.Item, Charge = chosen.Battery.Charge, CapacityLeft = chosen.Battery.CapacityLeft,
            ResistanceGrowth = chosen.Battery.ResistanceGrowth, StartTemperature = chosen.Battery.StartTemperature,
        };
        var batteries = scenario.Batteries.Count > 0 ? scenario.Batteries : new OrderedMap<BatteryInRotation>([new(chosen.Battery.Item, own)]);
        return (powered, new DayPlan
        {
            Days = [.. names.Select(name => ScenarioRun.Choose(scenario.Days, name, "day", "days")).Select(day => day with { Ambient = scenario.AmbientOn(day) })],
            Batteries = new(batteries.Select(item => KeyValuePair.Create(item.Key, BatteryOf(scenario, item.Value)))),
            Chargers = scenario.Chargers,
            Swaps = scenario.Swaps,
            NightTemperature = scenario.Conditions.Night ?? Temperature.FromDegreesCelsius(20),
        });
    }

    private static KitBattery BatteryOf(Scenario scenario, BatteryInRotation battery) => new(scenario.PartOf(battery.Item)!)
    {
        Charge = battery.Charge ?? Ratio.FromDecimalFractions(1),
        CapacityLeft = battery.CapacityLeft,
        ResistanceGrowth = battery.ResistanceGrowth,
        StartTemperature = battery.StartTemperature,
        Rests = new RestingPlace(battery.RestsAt, battery.HeatFactor),
        MaximumChargeCurrent = battery.MaximumChargeCurrent,
    };
}

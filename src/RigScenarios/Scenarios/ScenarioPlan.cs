using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>The days of a scenario with its batteries that are swapped, its chargers and its swaps.</summary>
public static class ScenarioPlan
{
    /// <summary>Makes the plan and the build that runs through it.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name. If the scenario has no batteries that are swapped, the build's own is the only
    /// one.</param>
    /// <param name="days">The days' short names, one after the other; all of the scenario, in their order, if empty.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day, or a day of this order begins before
    /// the one before it is over.</exception>
    public static (PoweredBuild Build, DayPlan Plan) Of(Scenario scenario, string build, IReadOnlyList<string> days)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(days);
        var chosen = Chosen.From(scenario.Builds, build, "build", "builds");
        var powered = PoweredBuild.From(chosen, scenario.PartOf);
        var names = days.Count > 0 ? days : [.. scenario.Days.Keys];
        MustFollow(scenario, names);
        var batteries = scenario.Batteries.Count > 0 ? scenario.Batteries : Own(chosen);
        return (powered, new DayPlan
        {
            Days = [.. names.Select(name => Chosen.From(scenario.Days, name, "day", "days"))
                .Select(day => day with { Ambient = scenario.AmbientOn(day) })],
            Batteries = new(batteries.Select(item => KeyValuePair.Create(item.Key, BatteryOf(scenario, item.Value)))),
            TakesAnyCharge = scenario.Batteries.Count == 0,
            Chargers = scenario.Chargers,
            Swaps = scenario.Swaps,
            HotSwap = scenario.HotSwap is { } reserve
                ? new HotSwapReserve(
                    BatteryOf(scenario, reserve.Pack), reserve.ChargePower ?? HotSwapInUse.UsualChargePower,
                    reserve.ForwardDrop ?? HotSwapInUse.UsualForwardDrop,
                    HotSwapInUse.UsualResistance)
                : null,
            // A device that this build leaves at home keeps its battery there.
            Internal = new(scenario.InternalBatteries.Where(item => powered.Devices.ContainsKey(item.Key))
                .Select(item => KeyValuePair.Create(item.Key, BatteryOf(scenario, item.Value)))),
            NightTemperature = scenario.Conditions.Night ?? Temperature.FromDegreesCelsius(20),
        });
    }

    // In the order of the file the check of the file has told it, with its line; here days are left out or take another order.
    private static void MustFollow(Scenario scenario, IReadOnlyList<string> names)
    {
        foreach (var (before, name) in names.Zip(names.Skip(1)))
        {
            var (first, then) = (Chosen.From(scenario.Days, before, "day", "days"),
                Chosen.From(scenario.Days, name, "day", "days"));
            if (DaySchedule.BeginsTooEarly(first, then))
                throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, $"days.{name}",
                    $"The day begins before \"{before}\" is over, which comes right before it in the order that is asked for.",
                    "days in an order in which each begins after the one before")]);
        }
    }

    private static OrderedMap<BatteryAtStart> Own(Build build) => new([KeyValuePair.Create(build.Battery.Item, new BatteryAtStart
    {
        Item = build.Battery.Item, Charge = build.Battery.Charge, CapacityLeft = build.Battery.CapacityLeft,
        ResistanceGrowth = build.Battery.ResistanceGrowth, Life = build.Battery.Life,
        StartTemperature = build.Battery.StartTemperature, RuntimeKnownTo = build.Battery.RuntimeKnownTo,
        FittedFrom = build.Battery.FittedFrom,
    })]);

    private static KitBattery BatteryOf(Scenario scenario, BatteryAtStart battery) => new(scenario.PartOf(battery.Item)!)
    {
        Charge = battery.Charge ?? Ratio.FromDecimalFractions(1),
        CapacityLeft = battery.CapacityLeft,
        ResistanceGrowth = battery.ResistanceGrowth,
        Life = battery.Life,
        StartTemperature = battery.StartTemperature,
        RuntimeKnownTo = battery.RuntimeKnownTo,
        FittedFrom = battery.FittedFrom,
        Rests = new RestingPlace(battery.RestsAt, battery.HeatFactor),
        MaximumChargeCurrent = battery.MaximumChargeCurrent,
    };
}

using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>The days of a scenario with its batteries in rotation, its chargers and its swaps.</summary>
public static class ScenarioPlan
{
    /// <summary>The charge at which a battery is swapped where the file plans no swaps: common practice, no source.</summary>
    public static Ratio UsualReserve { get; } = Ratio.FromPercent(15);

    /// <summary>Makes the plan and the build that runs through it.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name. If the scenario has no batteries in rotation, those of the kit that are like the build's own are taken, in its state.</param>
    /// <param name="days">The days' short names, one after the other; all of the scenario, in their order, if empty.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day.</exception>
    public static (PoweredBuild Build, DayPlan Plan) Of(Scenario scenario, string build, IReadOnlyList<string> days)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(days);
        var chosen = ScenarioRun.Choose(scenario.Builds, build, "build", "builds");
        var powered = PoweredBuild.From(chosen, scenario.PartOf);
        var names = days.Count > 0 ? days : [.. scenario.Days.Keys];
        var batteries = scenario.Batteries.Count > 0 ? scenario.Batteries : Own(scenario, chosen);
        return (powered, new DayPlan
        {
            Days = [.. names.Select(name => ScenarioRun.Choose(scenario.Days, name, "day", "days")).Select(day => day with { Ambient = scenario.AmbientOn(day) })],
            Batteries = new(batteries.Select(item => KeyValuePair.Create(item.Key, BatteryOf(scenario, item.Value)))),
            Chargers = scenario.Chargers,
            Swaps = PlansSwaps(scenario) ? scenario.Swaps : scenario.Swaps with { Reserve = UsualReserve },
            HotSwap = scenario.HotSwap is { } reserve
                ? new HotSwapReserve(BatteryOf(scenario, reserve.Pack), reserve.ChargePower ?? HotSwapInUse.UsualChargePower, reserve.ForwardDrop ?? HotSwapInUse.UsualForwardDrop, HotSwapInUse.UsualResistance)
                : null,
            // A device that this build leaves at home keeps its battery there.
            Internal = new(scenario.InternalBatteries.Where(item => powered.Devices.ContainsKey(item.Key)).Select(item => KeyValuePair.Create(item.Key, BatteryOf(scenario, item.Value)))),
            NightTemperature = scenario.Conditions.Night ?? Temperature.FromDegreesCelsius(20),
        });
    }

    /// <summary>What the plan takes for what the file doesn't plan, each in a sentence; empty if the file plans batteries, chargers and swaps.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build.</exception>
    public static IReadOnlyList<string> NotPlanned(Scenario scenario, string build)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var chosen = ScenarioRun.Choose(scenario.Builds, build, "build", "builds");
        var sentences = new List<string>();
        if (scenario.Batteries.Count == 0)
        {
            var count = CountOf(scenario, chosen);
            sentences.Add(count == 1
                ? $"The file plans no batteries in rotation: the build's own \"{chosen.Battery.Item}\" is the only one, because the kit has one."
                : $"The file plans no batteries in rotation: the kit's {count} of \"{chosen.Battery.Item}\" are taken, all in the state that the build gives its own.");
        }
        if (scenario.Chargers.Values.All(charger => charger.Bays == 0))
            sentences.Add("The file plans no charger: nothing is charged, by day or by night.");
        if (!PlansSwaps(scenario))
            sentences.Add($"The file plans no swaps: a battery is swapped when it is down to {UsualReserve.Percent:0} % (common practice, no source), but not while the camera rolls.");
        else if (scenario.Swaps is { WarningVoltage: null, Reserve: null, AtBlockEnds: false })
            sentences.Add("The file does not say when a swap is wanted: each battery stays on until the rig stops.");
        return sentences;
    }

    private static bool PlansSwaps(Scenario scenario) => scenario.Swaps != new SwapPolicy();

    private static int CountOf(Scenario scenario, Build build) => scenario.Kit.TryGetValue(build.Battery.Item, out var item) ? item.Count : 1;

    private static OrderedMap<BatteryAtStart> Own(Scenario scenario, Build build)
    {
        var own = new BatteryAtStart
        {
            Item = build.Battery.Item, Charge = build.Battery.Charge, CapacityLeft = build.Battery.CapacityLeft,
            ResistanceGrowth = build.Battery.ResistanceGrowth, StartTemperature = build.Battery.StartTemperature,
        };
        var count = CountOf(scenario, build);
        return new(Enumerable.Range(1, count).Select(i => KeyValuePair.Create(count == 1 ? own.Item : $"{own.Item}-{i}", own)));
    }

    private static KitBattery BatteryOf(Scenario scenario, BatteryAtStart battery) => new(scenario.PartOf(battery.Item)!)
    {
        Charge = battery.Charge ?? Ratio.FromDecimalFractions(1),
        CapacityLeft = battery.CapacityLeft,
        ResistanceGrowth = battery.ResistanceGrowth,
        StartTemperature = battery.StartTemperature,
        Rests = new RestingPlace(battery.RestsAt, battery.HeatFactor),
        MaximumChargeCurrent = battery.MaximumChargeCurrent,
    };
}

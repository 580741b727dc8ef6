using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>What is usual of kit, batteries, charger and swaps where nobody says. Common practice, no source; docs/own-rig.md
/// gives the reasons.</summary>
internal static class UsualFigures
{
    /// <summary>The charge at which a battery is swapped.</summary>
    public static readonly Ratio Reserve = Ratio.FromPercent(15);

    /// <summary>The charging current of a bay.</summary>
    public static readonly ElectricCurrent ChargingCurrent = ElectricCurrent.FromAmperes(3);

    /// <summary>The scenario with what is usual in it.</summary>
    /// <param name="given">What is given.</param>
    /// <param name="scenario">The scenario so far.</param>
    /// <param name="marks">The marks of the build; those of what is added come to them.</param>
    /// <param name="filled">The paths of what is added come here.</param>
    public static Scenario In(GivenRig given, Scenario scenario, List<string> marks, HashSet<string> filled)
    {
        void Marked(string path)
        {
            marks.Add(path);
            filled.Add(path);
        }

        var (frame, build) = (given.Frame, scenario.Builds[given.Frame.Build]);
        var marked = frame.Before is { } file && file.Builds.TryGetValue(frame.Build, out var old) ? old.Assumed : [];
        foreach (var (name, device) in build.Devices)
        {
            if (scenario.Kit.TryGetValue(name, out var item) && item.Count < device.Count)
            {
                scenario = scenario with { Kit = scenario.Kit.With(name, item with { Count = device.Count }) };
                Marked($"kit.{name}.count");
            }
        }
        if (build.Assumed.Contains(BuildAssumptions.Batteries))
            scenario = scenario with { Batteries = new(scenario.Batteries.Select(battery => KeyValuePair.Create(battery.Key,
                battery.Value.Item == build.Battery.Item ? Like(battery.Value, build.Battery) : battery.Value))) };
        if (scenario.Batteries.Count > 0 && scenario.Swaps == new SwapPolicy()
            && (frame.Before is not { Batteries.Count: > 0 } || marked.Contains("swaps.reserve")))
        {
            scenario = scenario with { Swaps = scenario.Swaps with { Reserve = Reserve } };
            Marked("swaps.reserve");
        }
        foreach (var (name, charger) in scenario.Chargers)
        {
            var at = $"chargers.{name}";
            var isNew = frame.Before is not { } before || !before.Chargers.ContainsKey(name);
            var now = charger;
            if (!given.Has($"{at}.current"))
            {
                now = now with { Current = ChargingCurrent };
                Marked($"{at}.current");
            }
            if (now.Ambient is null && ChargerPlaces.Air(now.Stands) is { } air && (isNew || marked.Contains($"{at}.ambient")))
            {
                now = now with { Ambient = air };
                Marked($"{at}.ambient");
            }
            scenario = scenario with { Chargers = scenario.Chargers.With(name, now) };
        }
        return scenario;
    }

    /// <summary>A battery with the state of another where none is given.</summary>
    private static BatteryAtStart Like(BatteryAtStart battery, BatteryInUse other) => battery with
    {
        Charge = battery.Charge ?? other.Charge,
        CapacityLeft = battery.CapacityLeft ?? other.CapacityLeft,
        ResistanceGrowth = battery.ResistanceGrowth ?? other.ResistanceGrowth,
        Life = battery.Life ?? (battery.CapacityLeft is null ? other.Life : null),
        StartTemperature = battery.StartTemperature ?? other.StartTemperature,
    };
}

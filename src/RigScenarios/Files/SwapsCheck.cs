using RigScenarios.Days;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What must hold between the batteries that are swapped and the rest of a scenario.</summary>
internal static class SwapsCheck
{
    /// <summary>Checks a scenario; every problem goes to the log.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="devices">The devices of all its builds.</param>
    /// <param name="log">Where problems go.</param>
    public static void Run(Scenario scenario, HashSet<string> devices, ReadLog log)
    {
        foreach (var (name, battery) in scenario.Batteries)
            Battery(scenario, battery, $"batteries.{name}", log);
        foreach (var used in scenario.Batteries.Values.GroupBy(battery => battery.Item))
        {
            if (scenario.Kit.TryGetValue(used.Key, out var item) && used.Count() > item.Count)
                log.Error("batteries", $"There are {used.Count()} of \"{used.Key}\" among the batteries, the kit has only "
                    + $"{item.Count}.",
                    $"\"count: {used.Count()}\" at kit.{used.Key}");
        }
        if (scenario.HotSwap is { } reserve)
        {
            Battery(scenario, reserve.Pack, "hot-swap.pack", log);
            if (reserve.ChargePower is { Watts: <= 0 })
                log.Error("hot-swap.charge-power", "Without power the small pack is never charged.", "such as \"10 W\"");
        }
        foreach (var (name, battery) in scenario.InternalBatteries)
        {
            Battery(scenario, battery, $"internal-batteries.{name}", log);
            if (!devices.Contains(name) && scenario.PartOf(name)?.Power is null)
                log.Error($"internal-batteries.{name}", $"No build has a device \"{name}\".",
                    devices.Count == 0 ? null : string.Join(", ", devices.Take(30)), log.Nearest(name, devices));
        }
        foreach (var (name, charger) in scenario.Chargers)
        {
            if (charger.Lowest >= charger.Highest)
                log.Error($"chargers.{name}.lowest",
                    $"The battery would have to be above {charger.Lowest.DegreesCelsius:G4} °C and below "
                        + $"{charger.Highest.DegreesCelsius:G4} °C.", "a lower temperature than \"highest\"");
        }
        PlanBoundsCheck.Run(scenario, log);
        SwapPolicyCheck.Run(scenario, log);
        DaysInOrder(scenario, log);
        AirPoints(scenario, log);
    }

    private static void Battery(Scenario scenario, BatteryAtStart battery, string path, ReadLog log)
    {
        ScenarioCheck.KitName(scenario, battery.Item, $"{path}.item", part => part.Battery is not null, "a battery", log);
        LifeFormat.Check(battery.Life, battery.CapacityLeft is not null, path, log);
    }

    private static void DaysInOrder(Scenario scenario, ReadLog log)
    {
        foreach (var ((_, before), (name, day)) in scenario.Days.Zip(scenario.Days.Skip(1)))
        {
            if (!DaySchedule.BeginsTooEarly(before, day))
                continue;
            var over = TimeSpan.FromSeconds(DaySchedule.StartOf(before)) + before.Length.ToTimeSpan() - TimeSpan.FromDays(1);
            log.Error(
                $"days.{name}{(day.Starts is null ? "" : ".starts")}",
                $"The day begins at {TimeSpan.FromSeconds(DaySchedule.StartOf(day)):hh\\:mm}, before the day before it is over.",
                over < TimeSpan.FromDays(1)
                    ? $"\"starts\" at {Later(over):hh\\:mm} or later, or shorter blocks on the day before"
                    : "shorter blocks on the day before, or its blocks from midnight on as this day's own");
        }
    }

    // Up to the next minute, because a file's clock has no seconds.
    private static TimeSpan Later(TimeSpan time) => TimeSpan.FromMinutes(Math.Ceiling(time.TotalMinutes - 1e-6));

    private static void AirPoints(Scenario scenario, ReadLog log)
    {
        foreach (var (name, day) in scenario.Days)
        {
            var end = DaySchedule.StartOf(day) + day.Length.Seconds;
            var times = day.AmbientPointTimes().ToList();
            // A point past the end is usual: it says where the air is going. One half a day past it is a slip in the order.
            var late = times.FindIndex(time => time >= 86400 && time > end + (12 * 3600));
            if (late > 0)
                log.Warning(
                    $"days.{name}.ambient-points.{late + 1}.time",
                    "This time is not later than the one before it, so it is taken for the next day, long after the last block.");
        }
    }
}

using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>A change that would make a build run longer.</summary>
/// <param name="Words">What to do, in plain words.</param>
/// <param name="Gain">How much longer it then runs.</param>
/// <param name="ReachesEnd">Whether the day is then reached.</param>
public sealed record Help(string Words, Duration Gain, bool ReachesEnd);

/// <summary>Tries what a crew can do about a short day, one change at a time, and ranks it by what it brings.</summary>
public static class WhatHelps
{
    private static readonly Temperature Pocket = Temperature.FromDegreesCelsius(20);

    /// <summary>The changes that bring most, best first. Every one is run through the model; none is a rule of thumb.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build.</param>
    /// <param name="day">The day.</param>
    /// <param name="most">How many are wanted.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static IReadOnlyList<Help> Find(Scenario scenario, string build, string day, int most = 3, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var now = ScenarioRun.Run(scenario, build, day, DayRunOptions.EndOnly, cancellation);
        var helps = new List<Help>();
        foreach (var (words, changed) in Changes(scenario, build, day))
        {
            var log = new ReadLog("");
            ScenarioCheck.Run(changed, log);
            if (log.HasErrors)
                continue;
            var then = ScenarioRun.Run(changed, build, day, DayRunOptions.EndOnly, cancellation);
            if (then.Runtime.Minutes - now.Runtime.Minutes >= 1)
                helps.Add(new Help(words, then.Runtime - now.Runtime, then.ReachesEnd));
        }
        return [.. helps.OrderByDescending(help => help.Gain.Seconds).Take(most)];
    }

    private static IEnumerable<(string Words, Scenario Changed)> Changes(Scenario scenario, string buildName, string dayName)
    {
        var build = scenario.Builds[buildName];
        var day = scenario.Days[dayName];
        Scenario With(Build changed) => scenario with { Builds = scenario.Builds.With(buildName, changed) };
        return LargerBattery(scenario, build)
            .Concat(BetterBattery(build, scenario.AmbientOn(day)).Select(change => (change.Words, With(build with { Battery = change.Battery }))))
            .Concat(build.Devices.Where(device => !device.Value.Essential && build.Devices.Count > 1)
                .Select(device => ($"Leave {scenario.PartOf(device.Key)!.Name} off", With(build with { Devices = build.Devices.Without(device.Key) }))))
            .Concat(build.Devices.Keys.Select(device => (device, waiting: Waiting(day, device))).Where(item => item.waiting.Minutes >= 10)
                .Select(item => ($"Switch the {scenario.PartOf(item.device)!.Name} off while it waits ({DayWords.Length(item.waiting)} on standby in the day)",
                    scenario with { Days = scenario.Days.With(dayName, OffInsteadOfStandby(day, item.device)) })));
    }

    private static IEnumerable<(string Words, Scenario Changed)> LargerBattery(Scenario scenario, Build build)
    {
        if (scenario.PartOf(build.Battery.Item) is not { Battery: { } now } part)
            yield break;
        var larger = scenario.PartIds.Select(id => (id, part: scenario.FindPart(id)!))
            .Where(other => other.part.Battery is { } battery && battery.Energy.WattHours > now.Energy.WattHours * 1.02
                && Math.Abs(battery.Voltage.Volts - now.Voltage.Volts) < 0.5)
            .OrderBy(other => other.part.Battery!.Energy.WattHours).FirstOrDefault();
        if (larger.part is null)
            yield break;
        var heavier = larger.part.Mass is { } mass && part.Mass is { } mine ? $", {mass.Grams - mine.Grams:0} g heavier" : "";
        yield return ($"Take the next larger battery ({larger.part.Name}, {larger.part.Battery!.Energy.WattHours:0} Wh{heavier})",
            scenario with { Kit = scenario.Kit.With(build.Battery.Item, scenario.Kit[build.Battery.Item] with { Part = larger.id }) });
    }

    private static IEnumerable<(string Words, BatteryInUse Battery)> BetterBattery(Build build, Temperature ambient)
    {
        var battery = build.Battery;
        if (battery.Charge is { Percent: < 99 })
            yield return ("Charge the battery fully before the day", battery with { Charge = Ratio.FromPercent(100) });
        if ((battery.StartTemperature ?? ambient).DegreesCelsius < Pocket.DegreesCelsius - 2)
            yield return ("Keep the battery warm (20 °C, in an inner pocket) until it goes on the rig", battery with { StartTemperature = Pocket });
        if (battery.CapacityLeft is { Percent: < 98 } || battery.ResistanceGrowth > 1.05)
            yield return ("Use a new battery of the same size", battery with { CapacityLeft = Ratio.FromPercent(100), ResistanceGrowth = 1 });
    }

    private static Duration Waiting(ShootingDay day, string device) =>
        Duration.FromSeconds(day.Blocks.Values.Where(block => block.StateOf(device) == PowerState.Standby).Sum(block => block.Length.Seconds));

    private static ShootingDay OffInsteadOfStandby(ShootingDay day, string device) => day with
    {
        Blocks = new OrderedMap<DayBlock>(day.Blocks.Select(item => KeyValuePair.Create(item.Key,
            item.Value.StateOf(device) == PowerState.Standby ? item.Value with { States = item.Value.States.With(device, PowerState.Off) } : item.Value))),
    };
}

using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What must hold between the fields of a scenario: names that refer to something, draws that are known, voltages that
/// fit.</summary>
internal static class ScenarioCheck
{
    /// <summary>Checks a scenario; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, ReadLog log)
    {
        if (scenario.Builds.Count == 0 && !log.HasErrorIn("builds"))
            log.Error("builds", "There is no build.");
        if (scenario.Days.Count == 0 && !log.HasErrorIn("days"))
            log.Error("days", "There is no day.");
        foreach (var (name, item) in scenario.Kit)
        {
            if (item.Part.Length > 0 && scenario.FindPart(item.Part) is null)
                log.Error($"kit.{name}.part", $"There is no part \"{item.Part}\" in this file or its parts files.", null,
                    log.Nearest(item.Part, scenario.PartIds));
        }
        foreach (var (name, build) in scenario.Builds)
            CheckBuild(scenario, build, $"builds.{name}", log);
        var devices = scenario.Builds.Values.SelectMany(build => build.Devices.Keys).ToHashSet();
        var unknown = UnknownDraws(scenario);
        foreach (var (name, day) in scenario.Days)
            CheckDay(scenario, day, $"days.{name}", devices, unknown, log);
        JourneyCheck.Run(scenario, log);
        BestRigCheck.Run(scenario, log);
        SwapsCheck.Run(scenario, devices, log);
        CurrencyCheck.Run(scenario, log);
    }

    private static void CheckBuild(Scenario scenario, Build build, string at, ReadLog log)
    {
        KitName(scenario, build.Battery.Item, $"{at}.battery.item", part => part.Battery is not null, "a battery", log);
        LifeFormat.Check(build.Battery.Life, build.Battery.CapacityLeft is not null, $"{at}.battery", log);
        if (build.Plate is { } plate)
            KitName(scenario, plate, $"{at}.plate", part => part.Plate is not null, "a battery plate", log);
        foreach (var (name, group) in build.Regulators.Keys.Select(name => (name, "regulators"))
            .Concat(build.Devices.Keys.Select(name => (name, "devices"))))
        {
            if (name == Build.BatteryFeed)
                log.Error($"{at}.{group}.{name}",
                    $"\"{name}\" means the build's battery itself in \"fed-by\", so nothing else of a build can have that name.",
                    "another name in the kit");
            else if (group == "devices" && build.Regulators.ContainsKey(name))
                log.Error($"{at}.{group}.{name}", $"\"{name}\" stands among the regulators of this build too.",
                    "one place for each thing");
        }
        foreach (var name in build.Regulators.Keys)
            KitName(scenario, name, $"{at}.regulators.{name}", part => part.Regulator is not null, "a regulator", log);
        foreach (var (name, device) in build.Devices)
        {
            var path = $"{at}.devices.{name}";
            KitName(scenario, name, path, part => part.Power is not null || device.Power is not null,
                "a device with a known draw (a group \"power\")", log);
            if (scenario.Kit.TryGetValue(name, out var item) && device.Count > item.Count)
                log.Error($"{path}.count", $"The build has {device.Count} of \"{name}\", the kit only {item.Count}.");
        }
        for (var index = 0; index < build.Carries.Count; index++)
            KitName(scenario, build.Carries[index], $"{at}.carries.{index + 1}", _ => true, "", log);
        if (build.Devices.Count > 0 && !build.Devices.Values.Any(device => device.Essential))
            log.Warning($"{at}.devices", "No device is marked \"essential: yes\", so only the battery's own end stops the day.");
        WiringCheck.Run(scenario, build, at, log);
        VoltageCheck.Run(scenario, build, at, log);
        PlaceCheck.Run(scenario, build, at, log);
        BuildAssumptions.Check(scenario, build, at, log);
    }

    internal static void KitName(Scenario scenario, string name, string path, Func<Part, bool> fits, string what, ReadLog log)
    {
        if (name.Length == 0)
            return;
        if (!scenario.Kit.ContainsKey(name))
            log.Error(path, $"There is nothing named \"{name}\" in the kit.", scenario.Kit.Count == 0 ? null
                : string.Join(", ", scenario.Kit.Keys.Take(30)), log.Nearest(name, scenario.Kit.Keys));
        else if (scenario.PartOf(name) is { } part && !fits(part))
            log.Error(path, $"\"{name}\" ({part.Name}) is not {what}.");
    }

    /// <summary>The devices with a draw that is not known, so that each block looks only at them.</summary>
    private static List<(string Build, string Device, Part Part, PowerDraw Draw)> UnknownDraws(Scenario scenario) =>
    [
        .. from build in scenario.Builds
           from device in build.Value.Devices
           let part = scenario.PartOf(device.Key)
           where part is not null
           let draw = (part.Power ?? new PowerDraw()).With(device.Value.Power)
           where draw.Standby is null || draw.Record is null
           select (build.Key, device.Key, part, draw),
    ];

    private static void CheckDay(
        Scenario scenario, ShootingDay day, string at, HashSet<string> devices,
        List<(string Build, string Device, Part Part, PowerDraw Draw)> unknown, ReadLog log)
    {
        if (day.Ambient is null && day.AmbientPoints.Count == 0 && scenario.Conditions.Ambient is null)
            log.Error($"{at}.ambient", "No air temperature is given, neither here nor in \"conditions\".",
                "such as \"ambient: -8 °C\"");
        if (day.Blocks.Count == 0 && !log.HasErrorIn($"{at}.blocks"))
            log.Error($"{at}.blocks", "The day has no block.");
        foreach (var (name, block) in day.Blocks)
        {
            var path = $"{at}.blocks.{name}";
            // A device that lies in the kit but is on no build keeps its states: leaving it off is a what-if, not a mistake.
            foreach (var device in block.States.Keys.Concat(block.Cycle?.ResetStates.Keys ?? []).Distinct()
                .Where(device => !devices.Contains(device) && scenario.PartOf(device)?.Power is null))
                log.Error($"{path}.states.{device}", $"No build has a device \"{device}\".",
                    devices.Count == 0 ? null : string.Join(", ", devices.Take(30)), log.Nearest(device, devices));
            foreach (var (buildName, device, part, draw) in unknown)
            {
                var state = block.StateOf(device);
                if (IsKnown(state, draw) && block.Cycle is not null)
                    state = block.StateInReset(device);
                if (!IsKnown(state, draw))
                    log.Error($"{path}.states.{device}",
                        $"What {part.Name} draws in the state {ChoiceFormat<PowerState>.Word(state)} is not known.",
                        $"a draw in its parts file, or \"power: {{{ChoiceFormat<PowerState>.Word(state)}: 8 W}}\" at "
                            + $"builds.{buildName}.devices.{device}");
            }
        }
    }

    private static bool IsKnown(PowerState state, PowerDraw draw) => state switch
    {
        PowerState.Standby => draw.Standby is not null,
        PowerState.Record => draw.Record is not null,
        _ => true,
    };
}

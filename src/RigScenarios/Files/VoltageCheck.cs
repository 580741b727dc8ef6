using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>
/// Finds what would get a wrong voltage before anything is plugged in: a full battery straight into a device made for
/// less, a regulator that gives too much or too little.
/// </summary>
internal static class VoltageCheck
{
    /// <summary>Checks one build; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, Build build, string at, ReadLog log)
    {
        if (scenario.PartOf(build.Battery.Item) is not { Battery: { } battery } batteryPart)
            return;
        // A label without its two figures was told of where it stands.
        if (battery.Energy.Joules <= 0 || battery.Voltage.Volts <= 0)
            return;
        if (!FullVoltage.TryOf(batteryPart, out _, out var full, out var problem))
        {
            log.Error($"{at}.battery.item", $"The battery \"{build.Battery.Item}\" does not add up: {problem}");
            return;
        }
        foreach (var (name, use) in build.Regulators)
        {
            if (scenario.PartOf(name) is { Regulator: { } regulator } part)
                Check($"{at}.regulators.{name}", part.Name, Inlet(use.FedBy, use.Outlet), regulator.InputMinimum.Volts,
                    regulator.InputMaximum.Volts);
        }
        foreach (var (name, use) in build.Devices)
        {
            if (scenario.PartOf(name) is { Voltage: { } window } part)
                Check($"{at}.devices.{name}", part.Name, Inlet(use.FedBy, use.Outlet), window.Minimum?.Volts,
                    window.Maximum?.Volts);
        }

        (double Volts, string From) Inlet(string? fedBy, string? outlet)
        {
            // Splitters pass on what they get. One that hangs in a circle is told of elsewhere.
            for (var steps = 0; steps <= build.Splitters.Count; steps++)
            {
                var feed = fedBy ?? build.StandardFeed;
                if (outlet is not null && LinkLookup.Outlets(build, feed, scenario.PartOf).TryGetValue(outlet, out var data)
                    && data.Voltage is { } held)
                    return (held.Volts, $"the outlet \"{outlet}\" of \"{feed}\"");
                if (build.Regulators.ContainsKey(feed) && scenario.PartOf(feed)?.Regulator is { } regulator)
                    return (regulator.OutputVoltage.Volts, $"the regulator \"{feed}\"");
                if (feed == Build.BatteryFeed || feed == build.Plate)
                    return (full, $"the full battery \"{build.Battery.Item}\"");
                if (!build.Splitters.TryGetValue(feed, out var splitter))
                    break;
                (fedBy, outlet) = (splitter.FedBy, splitter.Outlet);
            }
            // A feed that doesn't exist is told of elsewhere; no voltage can be said of it.
            return (double.NaN, "");
        }

        void Check(string path, string name, (double Volts, string From) inlet, double? minimum, double? maximum)
        {
            if (inlet.Volts > maximum + 1e-9)
                log.Error(path, $"WRONG VOLTAGE: {name} takes {maximum:0.##} V at most, but {inlet.From} puts "
                    + $"{inlet.Volts:0.##} V on it. It can be destroyed, or catch fire. Feed it through a regulator made for "
                        + "it.");
            else if (inlet.Volts < minimum - 1e-9)
                log.Error(path, $"{name} needs at least {minimum:0.##} V, but {inlet.From} gives {inlet.Volts:0.##} V.");
        }
    }
}

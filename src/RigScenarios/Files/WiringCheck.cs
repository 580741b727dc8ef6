using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What must hold between the outlets, cables and feeds of a build.</summary>
internal static class WiringCheck
{
    /// <summary>Checks one build; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, Build build, string at, ReadLog log)
    {
        foreach (var name in build.Splitters.Keys)
        {
            var path = $"{at}.splitters.{name}";
            ScenarioCheck.KitName(scenario, name, path, part => part.Splitter is not null, "a splitter", log);
            if (name == Build.BatteryFeed || build.Regulators.ContainsKey(name) || build.Devices.ContainsKey(name))
                log.Error(path, $"\"{name}\" stands for something else in this build too.", "one place for each thing");
        }
        List<string> feeds = [Build.BatteryFeed, .. build.Plate is { } plate ? [plate] : Array.Empty<string>(),
            .. build.Splitters.Keys, .. build.Regulators.Keys];
        foreach (var (path, _, fedBy, outlet, cable) in Fed(build, at))
        {
            if (fedBy is not null && !feeds.Contains(fedBy))
                log.Error($"{path}.fed-by", NoFeed(scenario, build, fedBy), string.Join(", ", feeds.Take(30)),
                    log.Nearest(fedBy, feeds));
            else if (outlet is not null)
                CheckOutlet(scenario, build, outlet, fedBy ?? build.StandardFeed, $"{path}.outlet", log);
            if (cable is not null)
                ScenarioCheck.KitName(scenario, cable, $"{path}.cable", part => part.Cable is not null,
                    "a power cable with a known gauge and length (a group \"cable\")", log);
        }
        Circles(build, at, log);
        Sockets(scenario, build, at, log);
        Cables(scenario, build, at, log);
    }

    private static string NoFeed(Scenario scenario, Build build, string fedBy) =>
        !build.Devices.ContainsKey(fedBy) ? $"Nothing named \"{fedBy}\" gives power in this build."
        : scenario.PartOf(fedBy)?.Splitter is null
            ? $"\"{fedBy}\" is a device: nothing is known of an outlet on it, so what it should feed gets no power."
        : $"\"{fedBy}\" stands among the devices, where it feeds nothing; among the \"splitters\" of the build it passes "
            + "power on to what hangs on its outlets.";

    private static void CheckOutlet(Scenario scenario, Build build, string outlet, string feed, string path, ReadLog log)
    {
        var outlets = LinkLookup.Outlets(build, feed, scenario.PartOf);
        if (outlets.ContainsKey(outlet) || (feed != Build.BatteryFeed && scenario.PartOf(feed) is null))
            return;
        log.Error(path, outlets.Count == 0 ? $"\"{feed}\" has no named outlets." : $"\"{feed}\" has no outlet \"{outlet}\".",
            outlets.Count == 0 ? "no \"outlet\" here, or outlets in the part of what feeds it" : string.Join(", ", outlets.Keys),
            log.Nearest(outlet, outlets.Keys));
    }

    private static IEnumerable<(string Path, string Name, string? FedBy, string? Outlet,
        string? Cable)> Fed(Build build, string at) =>
        LinkLookup.Fed(build)
            .Select(item => ($"{at}.{Group(build, item.Name)}.{item.Name}", item.Name, item.FedBy, item.Outlet, item.Cable));

    private static string Group(Build build, string name) =>
        build.Regulators.ContainsKey(name) ? "regulators" : build.Splitters.ContainsKey(name) ? "splitters" : "devices";

    private static void Circles(Build build, string at, ReadLog log)
    {
        var feeders = LinkLookup.Fed(build).Where(item => !build.Devices.ContainsKey(item.Name)).DistinctBy(item => item.Name)
            .ToDictionary(item => item.Name, item => item.FedBy ?? build.StandardFeed, StringComparer.Ordinal);
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in feeders.Keys.Where(name => !told.Contains(name)))
        {
            var chain = new List<string> { name };
            while (feeders.TryGetValue(chain[^1], out var feed) && chain.Count <= feeders.Count)
            {
                chain.Add(feed);
                if (feed != name)
                    continue;
                told.UnionWith(chain);
                var what = chain.Any(build.Splitters.ContainsKey) ? "These" : "The regulators";
                log.Error($"{at}.{Group(build, name)}.{name}.fed-by",
                    $"{what} feed each other in a circle: {string.Join(" <- ", chain)}. Nothing feeds them from the battery.");
                break;
            }
        }
    }

    private static void Sockets(Scenario scenario, Build build, string at, ReadLog log)
    {
        foreach (var users in Fed(build, at).Where(item => item.Outlet is not null)
            .GroupBy(item => (Feed: item.FedBy ?? build.StandardFeed, item.Outlet)))
        {
            if (!LinkLookup.Outlets(build, users.Key.Feed, scenario.PartOf).TryGetValue(users.Key.Outlet!, out var outlet))
                continue;
            var plugs = users.Sum(item => build.Devices.TryGetValue(item.Name, out var device) ? device.Count : 1);
            if (plugs > outlet.Sockets)
            {
                var used = LinkLookup.Fed(build).Where(item => (item.FedBy ?? build.StandardFeed) == users.Key.Feed)
                    .Select(item => item.Outlet).ToHashSet();
                var free = LinkLookup.Outlets(build, users.Key.Feed, scenario.PartOf).Keys.Where(name => !used.Contains(name))
                    .ToList();
                log.Error($"{users.Last().Path}.outlet",
                    $"The outlet \"{users.Key.Outlet}\" of \"{users.Key.Feed}\" has {Words(outlet.Sockets, "socket")}, but "
                        + $"{Words(plugs, "plug")} shall go in: {string.Join(", ", users.Select(item => item.Name))}.",
                    free.Count == 0 ? "a splitter, or another part with more outlets"
                        : $"another outlet, such as {string.Join(", ", free.Take(5))}");
            }
        }
    }

    private static void Cables(Scenario scenario, Build build, string at, ReadLog log)
    {
        foreach (var users in Fed(build, at).Where(item => item.Cable is not null).GroupBy(item => item.Cable!))
        {
            var needed = users.Sum(item => build.Devices.TryGetValue(item.Name, out var device) ? device.Count : 1);
            if (scenario.Kit.TryGetValue(users.Key, out var item) && needed > item.Count)
                log.Error($"{users.Last().Path}.cable",
                    $"The build needs {needed} of \"{users.Key}\" ({string.Join(", ", users.Select(user => user.Name))}), the "
                        + $"kit has {item.Count}.", $"\"count: {needed}\" in the kit, or another cable");
        }
    }

    private static string Words(int count, string thing) => count == 1 ? $"one {thing}" : $"{count} {thing}s";
}

using RigScenarios.Parts;

namespace RigScenarios.Builds;

/// <summary>How a regulator, splitter or device is joined to what feeds it.</summary>
/// <param name="Outlet">Name of the outlet on the part that feeds it; null for none in particular.</param>
/// <param name="OutletData">What is known of that outlet; null for none in particular.</param>
/// <param name="CableName">The cable's name in the kit; null for a lead without resistance.</param>
/// <param name="Cable">The cable; null for a lead without resistance.</param>
public sealed record PoweredLink(string? Outlet, OutletData? OutletData, string? CableName, CableData? Cable);

/// <summary>A splitter of a build, with its data.</summary>
/// <param name="Name">Its name for people.</param>
/// <param name="FedBy">What feeds it.</param>
/// <param name="Data">Its data.</param>
public sealed record PoweredSplitter(string Name, string FedBy, SplitterData Data);

/// <summary>Looks up how the things of a build are joined.</summary>
internal static class LinkLookup
{
    /// <summary>The links of all regulators, splitters and devices that name an outlet or a cable.</summary>
    /// <exception cref="ArgumentException">An outlet or a cable is not there.</exception>
    public static OrderedMap<PoweredLink> Of(Build build, Func<string, Part?> partOf)
    {
        var links = new List<KeyValuePair<string, PoweredLink>>();
        foreach (var (name, fedBy, outlet, cable) in Fed(build))
        {
            if (outlet is null && cable is null)
                continue;
            var data = outlet is null ? null : Outlets(build, fedBy ?? build.StandardFeed, partOf)
                .TryGetValue(outlet, out var found)
                ? found
                : throw new ArgumentException($"\"{fedBy ?? build.StandardFeed}\" has no outlet \"{outlet}\".", nameof(build));
            var lead = cable is null ? null : partOf(cable)?.Cable
                ?? throw new ArgumentException($"\"{cable}\" is no power cable.", nameof(build));
            links.Add(new(name, new PoweredLink(outlet, data, cable, lead)));
        }
        return new(links);
    }

    /// <summary>Everything that is fed, with what feeds it.</summary>
    public static IEnumerable<(string Name, string? FedBy, string? Outlet, string? Cable)> Fed(Build build) =>
        build.Regulators.Select(item => (item.Key, item.Value.FedBy, item.Value.Outlet, item.Value.Cable))
            .Concat(build.Splitters.Select(item => (item.Key, item.Value.FedBy, item.Value.Outlet, item.Value.Cable)))
            .Concat(build.Devices.Select(item => (item.Key, item.Value.FedBy, item.Value.Outlet, item.Value.Cable)));

    /// <summary>The outlets of what feeds something; none where it has none or isn't there.</summary>
    public static OrderedMap<OutletData> Outlets(Build build, string feed, Func<string, Part?> partOf) =>
        feed == build.Plate ? partOf(feed)?.Plate?.Outlets ?? OrderedMap<OutletData>.Empty
        : build.Splitters.ContainsKey(feed) ? partOf(feed)?.Splitter?.Outlets ?? OrderedMap<OutletData>.Empty
        : OrderedMap<OutletData>.Empty;
}

using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Wiring;

namespace RigScenarios.Answers;

/// <summary>What stands behind an element of a build's network: the parts of the files that it is made of.</summary>
internal sealed class WiringPlace
{
    /// <param name="powered">The build.</param>
    /// <param name="element">Name of the element.</param>
    public WiringPlace(PoweredBuild powered, string element)
    {
        foreach (var (thing, fedBy, outlet, _) in LinkLookup.Fed(powered.Build))
        {
            var link = powered.Links.TryGetValue(thing, out var found) ? found : null;
            if (element == BuildWiring.CableName(thing))
                (Thing, Cable, Fuse) = (thing, link?.Cable, Times(link?.Cable?.Fuse, powered.Devices.TryGetValue(thing, out var device) ? device.Count : 1));
            var feed = fedBy ?? powered.Build.StandardFeed;
            if (outlet is not null && element == BuildWiring.OutletName(outlet, feed))
                (Outlet, Feed, Fuse) = (outlet, feed, link?.OutletData?.Fuse);
        }
        if (element == powered.Build.Plate)
            Fuse = powered.Plate?.Plate?.Fuse;
        if (powered.Splitters.TryGetValue(element, out var splitter))
            Fuse = splitter.Data.Fuse;
    }

    /// <summary>The thing behind a cable; null for other elements.</summary>
    public string? Thing { get; }

    /// <summary>The cable; null for other elements.</summary>
    public CableData? Cable { get; }

    /// <summary>The outlet's name on its part; null for other elements.</summary>
    public string? Outlet { get; }

    /// <summary>The plate or splitter that has the outlet; null for other elements.</summary>
    public string? Feed { get; }

    /// <summary>The fuse; null where there is none.</summary>
    public FuseData? Fuse { get; }

    private static FuseData? Times(FuseData? fuse, int count) => fuse is null ? null : fuse with { Rating = count * fuse.Rating };
}

using RigScenarios.Builds;
using RigScenarios.Parts;

namespace RigScenarios.Drafts.Edits;

/// <summary>Puts a thing of the kit into a build and takes it out again.</summary>
internal static class Placing
{
    /// <summary>The build with a thing in one of its groups.</summary>
    public static Build With(Build build, string name, ThingGroup group, bool essential) => group switch
    {
        ThingGroup.Battery => build with { Battery = build.Battery with { Item = name } },
        ThingGroup.Plate => build with { Plate = name },
        ThingGroup.Regulator => build with { Regulators = build.Regulators.With(name, new RegulatorInUse()) },
        ThingGroup.Splitter => build with { Splitters = build.Splitters.With(name, new SplitterInUse()) },
        ThingGroup.Device => build with { Devices = build.Devices.With(name, new DeviceInUse { Essential = essential }) },
        _ => build with { Carries = [.. build.Carries, name] },
    };

    /// <summary>The build without a thing, its place, and what hung or sat on it: that gets a proposed feed and the usual
    /// place.</summary>
    public static Build Without(Build build, string name) => Unplugged(build, name) with
    {
        Battery = build.Battery.Item == name ? build.Battery with { Item = "" } : build.Battery,
        Plate = build.Plate == name ? null : build.Plate,
        Carries = build.Carries.Contains(name) ? [.. build.Carries.Where(other => other != name)] : build.Carries,
        Beside = build.Beside.Contains(name) ? [.. build.Beside.Where(other => other != name)] : build.Beside,
        Places = build.Places.Any(place => place.Key == name || place.Value.On == name)
            ? new(build.Places.Where(place => place.Key != name && place.Value.On != name)) : build.Places,
    };

    /// <summary>The build with another name for a thing, wherever it stands.</summary>
    public static Build Renamed(Build build, string name, string now)
    {
        string? Now(string? other) => other == name ? now : other;
        OrderedMap<T> Map<T>(OrderedMap<T> map, Func<T, T> change)
            where T : notnull =>
            new(map.Select(item => KeyValuePair.Create(Now(item.Key)!, change(item.Value))));
        return build with
        {
            Battery = build.Battery with { Item = Now(build.Battery.Item)! },
            Plate = Now(build.Plate),
            Regulators = Map(build.Regulators, item => item with { FedBy = Now(item.FedBy), Cable = Now(item.Cable) }),
            Splitters = Map(build.Splitters, item => item with { FedBy = Now(item.FedBy), Cable = Now(item.Cable) }),
            Devices = Map(build.Devices, item => item with { FedBy = Now(item.FedBy), Cable = Now(item.Cable) }),
            Carries = [.. build.Carries.Select(other => Now(other)!)],
            Beside = [.. build.Beside.Select(other => Now(other)!)],
            Places = Map(build.Places, place => place with { On = Now(place.On) }),
        };
    }

    /// <summary>The build with outlets forgotten that the part of a feed doesn't have.</summary>
    public static Build WithoutLostOutlets(Build build, string feed, OrderedMap<OutletData> outlets)
    {
        bool IsLost(string? fedBy, string? outlet) => (fedBy ?? build.StandardFeed) == feed && outlet is not null
            && !outlets.ContainsKey(outlet);
        return Fed(build, (fedBy, outlet, cable) => (fedBy, IsLost(fedBy, outlet) ? null : outlet, cable));
    }

    /// <summary>The build with what feeds each of its things changed.</summary>
    public static Build Fed(Build build, Func<string?, string?, string?, (string? FedBy, string? Outlet, string? Cable)> change)
    {
        OrderedMap<T> Map<T>(OrderedMap<T> map, Func<T, T> each)
            where T : notnull =>
            new(map.Select(item => KeyValuePair.Create(item.Key, each(item.Value))));
        return build with
        {
            Devices = Map(build.Devices, item => change(item.FedBy, item.Outlet, item.Cable) is var now
                ? item with { FedBy = now.FedBy, Outlet = now.Outlet, Cable = now.Cable } : item),
            Regulators = Map(build.Regulators, item => change(item.FedBy, item.Outlet, item.Cable) is var now
                ? item with { FedBy = now.FedBy, Outlet = now.Outlet, Cable = now.Cable } : item),
            Splitters = Map(build.Splitters, item => change(item.FedBy, item.Outlet, item.Cable) is var now
                ? item with { FedBy = now.FedBy, Outlet = now.Outlet, Cable = now.Cable } : item),
        };
    }

    private static Build Unplugged(Build build, string name)
    {
        var without = build with
        {
            Devices = build.Devices.Without(name),
            Regulators = build.Regulators.Without(name),
            Splitters = build.Splitters.Without(name),
        };
        return Fed(without, (fedBy, outlet, cable) => fedBy == name ? (null, null, cable)
            : (fedBy, outlet, cable == name ? null : cable));
    }
}

using RigScenarios.Builds;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>Says what feeds a thing, and by which outlet.</summary>
public static class Feeding
{
    /// <summary>The rig with a thing fed by something.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">A device, splitter or regulator, also one that was only proposed.</param>
    /// <param name="from"><c>battery</c>, the plate's, a splitter's or a regulator's name, or the id of a listed regulator, which
    /// is put on the rig; empty to have it proposed.</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing or feed.</exception>
    public static EditedRig By(GivenRig given, string thing, string from)
    {
        given = Proposed(given, thing);
        var feed = from.Length == 0 ? null : from;
        if (feed is not null && !IsFeed(given, feed))
            (given, feed) = OnRig(given, feed);
        if (feed == thing)
            throw Refused.Because("from", "Nothing feeds itself.");
        return new EditedRig(Change(given, thing, (_, _, cable) => (feed, null, cable)), thing);
    }

    /// <summary>The rig with a thing plugged into an outlet of what feeds it.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">A device, splitter or regulator, also one that was only proposed.</param>
    /// <param name="outlet">The outlet's name on the part; empty for none in particular.</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing or outlet.</exception>
    public static EditedRig Outlet(GivenRig given, string thing, string outlet)
    {
        given = Proposed(given, thing);
        var wiring = Completion.Of(given).Wiring;
        var feed = wiring.Feeds.GetValueOrDefault(thing, given.Build.StandardFeed);
        var outlets = LinkLookup.Outlets(wiring.Build, feed, wiring.Part);
        if (outlet.Length > 0 && !outlets.ContainsKey(outlet))
            throw Refused.Because("outlet", $"\"{feed}\" has no outlet \"{outlet}\".", outlets.Count == 0 ? null
                : string.Join(", ", outlets.Keys), NearestName.To(outlet, outlets.Keys));
        // An outlet is one of a certain feed, so that is given with it.
        return new EditedRig(Change(given, thing, (fedBy, _, cable) => outlet.Length == 0 ? (fedBy, null, cable)
            : (feed, outlet, cable)), thing);
    }

    /// <summary>The rig with what feeds a thing changed.</summary>
    internal static GivenRig Change(GivenRig given, string thing,
        Func<string?, string?, string?, (string? FedBy, string? Outlet, string? Cable)> change)
    {
        var build = given.Build;
        if (build.Devices.TryGetValue(thing, out var device))
        {
            var now = change(device.FedBy, device.Outlet, device.Cable);
            build = build with { Devices = build.Devices.With(thing,
                device with { FedBy = now.FedBy, Outlet = now.Outlet, Cable = now.Cable }) };
        }
        else if (build.Splitters.TryGetValue(thing, out var splitter))
        {
            var now = change(splitter.FedBy, splitter.Outlet, splitter.Cable);
            build = build with { Splitters = build.Splitters.With(thing, new SplitterInUse(now.FedBy, now.Outlet, now.Cable)) };
        }
        else if (build.Regulators.TryGetValue(thing, out var regulator))
        {
            var now = change(regulator.FedBy, regulator.Outlet, regulator.Cable);
            build = build with { Regulators = build.Regulators.With(thing,
                new RegulatorInUse(now.FedBy, now.Outlet, now.Cable)) };
        }
        return given.With(given.Scenario with { Builds = given.Scenario.Builds.With(given.Frame.Build, build) });
    }

    /// <summary>The rig in which a regulator that was only proposed is given; the same for whatever is on the rig.</summary>
    internal static GivenRig Proposed(GivenRig given, string thing)
    {
        ArgumentNullException.ThrowIfNull(given);
        if (LinkLookup.Fed(given.Build).Any(item => item.Name == thing))
            return given;
        var wiring = Completion.Of(given).Wiring;
        if (!wiring.Added.Contains(thing))
        {
            TakingAway.Find(given, thing);
            throw Refused.Because("thing", $"Nothing feeds \"{thing}\".", "a device, a splitter or a regulator");
        }
        return With(given, thing, wiring.Scenario.Kit[thing].Part);
    }

    private static bool IsFeed(GivenRig given, string name) => name == Build.BatteryFeed || name == given.Build.Plate
        || given.Build.Splitters.ContainsKey(name) || given.Build.Regulators.ContainsKey(name);

    /// <summary>The rig with a feed on it that was proposed or is listed.</summary>
    private static (GivenRig Given, string Name) OnRig(GivenRig given, string feed)
    {
        var wiring = Completion.Of(given).Wiring;
        if (wiring.Added.Contains(feed))
            return (With(given, feed, wiring.Scenario.Kit[feed].Part), feed);
        if (given.FindPart(feed) is not { Regulator: not null })
            throw Refused.Because("from", $"There is nothing \"{feed}\" that could feed it.",
                string.Join(", ", wiring.Build.Regulators.Keys.Concat(wiring.Build.Splitters.Keys).Append(Build.BatteryFeed)
                    .Concat(given.Build.Plate is { } plate ? (string[])[plate] : [])));
        var name = KitNames.Free(given.Scenario, feed);
        return (With(given, name, feed), name);
    }

    private static GivenRig With(GivenRig given, string name, string part) => given.With(given.Scenario with
    {
        Kit = given.Scenario.Kit.ContainsKey(name) ? given.Scenario.Kit : given.Scenario.Kit.With(name, new KitItem(part)),
        Builds = given.Scenario.Builds.With(given.Frame.Build,
            Placing.With(given.Build, name, ThingGroup.Regulator, essential: false)),
    });
}

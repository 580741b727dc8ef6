using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Compare;

/// <summary>
/// A rig between two: the base with some of the changed groups made. What a device needs to be fed comes along with it, a place
/// on something that is not there becomes one on what took its place, or the usual one.
/// </summary>
internal sealed class MixedRig
{
    private readonly RigAnswer from;
    private readonly RigAnswer to;
    private readonly IReadOnlyList<ChangedGroup> groups;
    private readonly int set;
    private readonly IReadOnlyDictionary<string, string> replaced;

    private MixedRig(RigAnswer from, RigAnswer to, IReadOnlyList<ChangedGroup> groups, int set) =>
        (this.from, this.to, this.groups, this.set, replaced) = (from, to, groups, set, RigChanges.Replaced(from, to));

    /// <summary>The answer of a mix; null where it makes no rig that can be run.</summary>
    /// <param name="from">The base.</param>
    /// <param name="to">The other rig.</param>
    /// <param name="groups">What changed.</param>
    /// <param name="set">Bit i says that group i is as in the other rig.</param>
    /// <param name="cancellation">Stops it.</param>
    public static RigAnswer? Answer(RigAnswer from, RigAnswer to, IReadOnlyList<ChangedGroup> groups, int set,
        CancellationToken cancellation)
    {
        var mix = new MixedRig(from, to, groups, set);
        var scenario = mix.Scenario();
        var log = new ReadLog("");
        try
        {
            ScenarioCheck.Run(scenario, log);
            return log.HasErrors ? null : RigAnswer.Of(scenario, from.Build, mix.Plan.Days,
                from.Options with { SeriesPoints = 0, FollowsUp = false }, cancellation: cancellation);
        }
        catch (Exception problem) when (problem is ScenarioProblemsException or ArgumentException)
        {
            // A plate of one rig under a battery of the other may see a voltage that would destroy it.
            return null;
        }
    }

    private RigAnswer Plan => Side(ChangeKind.Days);

    private RigAnswer Wiring => Side(ChangeKind.Wiring);

    private RigAnswer Places => Side(ChangeKind.Places);

    private RigAnswer Side(ChangeKind kind) => groups.Index().Any(group => group.Item.Kind == kind && IsMade(group.Index))
        ? to : from;

    private bool IsMade(int group) => (set & (1 << group)) != 0;

    // Whose a thing is: that of the other rig where its group is made.
    private RigAnswer OwnerOf(string thing) =>
        groups.Index().Any(group => group.Item.Things.Contains(thing) && IsMade(group.Index)) ? to : from;

    private Scenario Scenario()
    {
        var owners = new ThingOwners();
        var build = Fed(Assembled(owners), owners);
        build = build with { Places = PlacesOf(build, owners), Beside = BesideOf(build, owners), Assumed = [] };
        var plan = Plan.Scenario;
        if (ReferenceEquals(from.Scenario.Kit, to.Scenario.Kit) && ReferenceEquals(from.Scenario.Parts, to.Scenario.Parts)
            && ReferenceEquals(from.Scenario.Library, to.Scenario.Library))
            return plan with { Builds = new([KeyValuePair.Create(from.Build, build)]), BestRig = null };
        // Two files may call two things alike: every thing of the mix then brings its part under its own name.
        var kit = plan.Kit.ToDictionary(item => item.Key, item => (item.Value, Part: plan.FindPart(item.Value.Part)),
            StringComparer.Ordinal);
        foreach (var (name, owner) in owners.All.Where(item => item.Owner.Scenario.Kit.ContainsKey(item.Name)))
            kit[name] = (owner.Scenario.Kit[name], owner.Scenario.PartOf(name));
        return plan with
        {
            Builds = new([KeyValuePair.Create(from.Build, build)]), BestRig = null, PartsFrom = [],
            Library = OrderedMap<Part>.Empty,
            Kit = new(kit.Select(item => KeyValuePair.Create(item.Key, item.Value.Item1 with { Part = item.Key }))),
            Parts = new(kit.Where(item => item.Value.Part is not null)
                .Select(item => KeyValuePair.Create(item.Key, item.Value.Part!))),
        };
    }

    private Build Assembled(ThingOwners owners)
    {
        var (battery, wiring, places) = (Side(ChangeKind.Battery).TheBuild, Wiring.TheBuild, Places.TheBuild);
        var devices = Entries(build => build.Devices, owners, OwnerOf);
        var regulators = Entries(build => build.Regulators, owners, WiredBy);
        var splitters = Entries(build => build.Splitters, owners, WiredBy);
        var carries = Names(build => build.Carries).ToList();
        foreach (var thing in carries)
            owners.Set(thing, OwnerOf(thing));
        foreach (var thing in wiring.Plate is { } plate ? wiring.Cables.Append(plate) : wiring.Cables)
            owners.Set(thing, Wiring);
        owners.Set(battery.Battery.Item, Side(ChangeKind.Battery));
        return places with
        {
            Title = from.TheBuild.Title, Battery = battery.Battery, Plate = wiring.Plate, Regulators = regulators,
            Splitters = splitters, Carries = carries, Devices = devices,
        };
    }

    private OrderedMap<T> Entries<T>(Func<Build, OrderedMap<T>> of, ThingOwners owners, Func<string, RigAnswer> owner)
        where T : notnull
    {
        var names = Names(build => of(build).Keys).ToList();
        foreach (var name in names)
            owners.Set(name, owner(name));
        return new(names.Select(name => KeyValuePair.Create(name, of(owner(name).TheBuild)[name])));
    }

    // What both rigs have is fed as the wiring says; what only one has as there.
    private RigAnswer WiredBy(string thing) => IsInBoth(thing) ? Wiring : OwnerOf(thing);

    // In the order of the base, then what only the other rig has.
    private IEnumerable<string> Names(Func<Build, IEnumerable<string>> of) => of(from.TheBuild).Union(of(to.TheBuild))
        .Where(name => of(OwnerOf(name).TheBuild).Contains(name));

    private Build Fed(Build build, ThingOwners owners)
    {
        var wiring = Wiring;
        foreach (var (name, regulator) in build.Regulators)
            build = Regulated(build, name, regulator, WiredBy(name), owners);
        foreach (var (name, splitter) in build.Splitters)
            build = Split(build, name, splitter, WiredBy(name), owners);
        foreach (var name in build.Devices.Keys.ToList())
        {
            var owner = wiring.TheBuild.Devices.ContainsKey(name) ? wiring : OwnerOf(name);
            var feed = owner.TheBuild.Devices[name];
            (build, var fedBy, var outlet) = Linked(build, (feed.FedBy, feed.Outlet, feed.Cable), owner, owners);
            build = build with
            {
                Devices = build.Devices.With(name, build.Devices[name] with
                {
                    FedBy = fedBy, Cable = feed.Cable, Outlet = outlet,
                }),
            };
        }
        return build;
    }

    private static Build Regulated(Build build, string name, RegulatorInUse regulator, RigAnswer owner, ThingOwners owners)
    {
        (build, var fedBy, var outlet) = Linked(build, (regulator.FedBy, regulator.Outlet, regulator.Cable), owner, owners);
        return build with { Regulators = build.Regulators.With(name, regulator with { FedBy = fedBy, Outlet = outlet }) };
    }

    private static Build Split(Build build, string name, SplitterInUse splitter, RigAnswer owner, ThingOwners owners)
    {
        (build, var fedBy, var outlet) = Linked(build, (splitter.FedBy, splitter.Outlet, splitter.Cable), owner, owners);
        return build with { Splitters = build.Splitters.With(name, splitter with { FedBy = fedBy, Outlet = outlet }) };
    }

    // How something of a rig is fed in the mix: by what, from which of its outlets; its cable comes along.
    private static (Build Build, string? FedBy, string? Outlet) Linked(Build build,
        (string? FedBy, string? Outlet, string? Cable) link, RigAnswer owner, ThingOwners owners)
    {
        (build, var fedBy) = Reached(build, link.FedBy, owner, owners);
        if (link.Cable is { } cable)
            owners.Set(cable, owner);
        return (build, fedBy, OutletOn(build, fedBy, link.Outlet, owners));
    }

    // What feeds something, by its name in the mix; regulators and splitters that are not there come along.
    private static (Build Build, string? FedBy) Reached(Build build, string? feed, RigAnswer owner, ThingOwners owners)
    {
        var own = owner.TheBuild;
        if (feed is null or Build.BatteryFeed || build.Regulators.ContainsKey(feed) || build.Splitters.ContainsKey(feed)
            || feed == build.Plate)
            return (build, feed);
        if (feed == own.Plate)
            return (build, null);
        owners.Set(feed, owner);
        return own.Regulators.TryGetValue(feed, out var regulator) ? (Regulated(build, feed, regulator, owner, owners), feed)
            : own.Splitters.TryGetValue(feed, out var splitter) ? (Split(build, feed, splitter, owner, owners), feed)
            : (build, null);
    }

    private static string? OutletOn(Build build, string? fedBy, string? outlet, ThingOwners owners) => outlet is not null
        && LinkLookup.Outlets(build, fedBy ?? build.StandardFeed, owners.PartOf).ContainsKey(outlet) ? outlet : null;

    private OrderedMap<PlaceInUse> PlacesOf(Build build, ThingOwners owners)
    {
        var things = build.Things.Distinct().ToHashSet(StringComparer.Ordinal);
        List<KeyValuePair<string, PlaceInUse>> places = [];
        foreach (var thing in things)
        {
            var owner = IsInBoth(thing) ? Places : owners.Of(thing) ?? Places;
            if (!owner.TheBuild.Places.TryGetValue(thing, out var place))
                continue;
            if (place.On is { } on && !things.Contains(on))
            {
                if (InPlaceOf(on) is not { } other || !things.Contains(other) || other == thing)
                    continue;
                place = place with { On = other };
            }
            places.Add(new(thing, place));
        }
        return new(places);
    }

    private string? InPlaceOf(string thing) => replaced.TryGetValue(thing, out var next) ? next
        : replaced.FirstOrDefault(pair => pair.Value == thing).Key;

    private List<string> BesideOf(Build build, ThingOwners owners) => [.. build.Things.Distinct()
        .Where(thing => (IsInBoth(thing) ? Places : owners.Of(thing) ?? Places).TheBuild.Beside.Contains(thing))];

    private bool IsInBoth(string thing) => from.TheBuild.Things.Contains(thing) && to.TheBuild.Things.Contains(thing);

    /// <summary>Whose each thing of the mix is.</summary>
    private sealed class ThingOwners
    {
        private readonly Dictionary<string, RigAnswer> owners = new(StringComparer.Ordinal);

        public IEnumerable<(string Name, RigAnswer Owner)> All => owners.Select(item => (item.Key, item.Value));

        public void Set(string thing, RigAnswer owner) => owners[thing] = owner;

        public RigAnswer? Of(string thing) => owners.GetValueOrDefault(thing);

        public Part? PartOf(string thing) => Of(thing)?.Scenario.PartOf(thing);
    }
}

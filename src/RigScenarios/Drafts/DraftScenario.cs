using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>Puts a draft into a scenario. What the draft doesn't speak of stays as it was, down to what was left out.</summary>
internal sealed class DraftScenario
{
    private readonly DraftRig rig;
    private readonly ProposedWiring wiring;
    private readonly Scenario before;
    private readonly string buildName;
    private readonly string dayName;
    private readonly HashSet<string> usedElsewhere;
    private readonly Dictionary<string, string> renamed = new(StringComparer.Ordinal);

    private DraftScenario(DraftRig rig, ProposedWiring wiring, string buildName, string dayName)
    {
        (this.rig, this.wiring, this.buildName, this.dayName) = (rig, wiring, buildName, dayName);
        before = rig.Before ?? new Scenario();
        usedElsewhere = [.. before.Builds.Where(build => build.Key != buildName).SelectMany(build => NamesIn(build.Value))];
        // Another build uses the same thing of the kit: it keeps its own, and this build gets a thing of a new name.
        foreach (var thing in rig.Things.Where(thing => usedElsewhere.Contains(thing.Name) && IsAnotherPart(thing)))
        {
            var name = thing.Name;
            for (var number = 2; before.Kit.ContainsKey(name) || rig.Draft.Things.ContainsKey(name)
                || renamed.ContainsValue(name); number++)
                name = $"{thing.Name}-{number}";
            renamed[thing.Name] = name;
        }
    }

    /// <summary>The scenario, and the names in it of things that had to be given a new one.</summary>
    public static (Scenario Scenario, IReadOnlyDictionary<string, string> Renamed) Of(DraftRig rig, ProposedWiring wiring,
        string buildName, string dayName)
    {
        var making = new DraftScenario(rig, wiring, buildName, dayName);
        return (making.Make(), making.renamed);
    }

    private Scenario Make()
    {
        var parts = before.Parts;
        var kit = before.Kit;
        foreach (var thing in rig.Things)
        {
            var (name, id) = (NameOf(thing.Name), IdOf(thing));
            if (thing.Thing.Own is not null && !(parts.TryGetValue(id, out var was) && was == thing.Part))
                parts = parts.With(id, thing.Part);
            else if (thing.Thing.Own is null && before.FindPart(id) is null)
                parts = parts.With(id, thing.Part);
            if (!kit.TryGetValue(name, out var item))
                kit = kit.With(name, new KitItem(id, thing.Thing.Count));
            else if (item.Part != id || (thing.IsDevice && item.Count < thing.Thing.Count))
                kit = kit.With(name, new KitItem(id, thing.IsDevice ? Math.Max(item.Count, thing.Thing.Count) : item.Count));
        }
        foreach (var cable in rig.Cables.All)
        {
            if (before.FindPart(cable.PartId) != cable.Part)
                parts = parts.With(cable.PartId, cable.Part);
            var needed = rig.Cables.CountOf(cable.Name);
            if (!kit.TryGetValue(cable.Name, out var item))
                kit = kit.With(cable.Name, new KitItem(cable.PartId, needed));
            else if (item.Count < needed)
                kit = kit.With(cable.Name, item with { Count = needed });
        }
        foreach (var name in Removed())
        {
            var id = kit[name].Part;
            kit = kit.Without(name);
            if (before.Parts.ContainsKey(id) && kit.Values.All(item => item.Part != id))
                parts = parts.Without(id);
        }
        return DraftBatteries.Apply(rig, buildName, rig.Battery is { } battery ? NameOf(battery.Name) : null, before with
        {
            Title = rig.Draft.Title ?? (rig.Before is null ? "My rig" : before.Title),
            Parts = parts,
            Kit = kit,
            Builds = before.Builds.With(buildName, MakeBuild()),
            Days = before.Days.With(dayName, MakeDay(kit)),
        });
    }

    private Build MakeBuild()
    {
        var old = rig.BuildBefore ?? new Build();
        var battery = rig.Battery;
        var standard = rig.Plate is { } plate ? NameOf(plate.Name) : Build.BatteryFeed;
        string? Feed(string name, string? oldFeed, bool isOld)
        {
            var feed = NameOf(wiring.Feeds[name]);
            return isOld && oldFeed is null && feed == standard ? null : feed;
        }

        var devices = rig.Devices.Where(device => wiring.Feeds.ContainsKey(device.Name)).ToList();
        var noneEssential = rig.BuildBefore is null && devices.TrueForAll(device => !device.Thing.Essential);
        return old with
        {
            Stance = rig.Draft.Stance,
            Battery = old.Battery with
            {
                Item = battery is null ? "" : NameOf(battery.Name),
                Charge = rig.Draft.Charge,
                CapacityLeft = rig.Draft.CapacityLeft,
                ResistanceGrowth = rig.Draft.ResistanceGrowth,
                StartTemperature = rig.Draft.StartTemperature,
            },
            Plate = rig.Plate is null ? null : standard,
            Regulators = InOldOrder(old.Regulators, rig.Regulators, (regulator, was) => (was ?? new RegulatorInUse()) with
            {
                FedBy = Feed(regulator.Name, was?.FedBy, was is not null), Outlet = wiring.OutletOf(regulator.Name),
                Cable = rig.Cables.Of(regulator.Name)?.Name,
            }),
            Splitters = InOldOrder(old.Splitters, rig.Splitters, (splitter, was) => (was ?? new SplitterInUse()) with
            {
                FedBy = Feed(splitter.Name, was?.FedBy, was is not null), Outlet = wiring.OutletOf(splitter.Name),
                Cable = rig.Cables.Of(splitter.Name)?.Name,
            }),
            Devices = InOldOrder(old.Devices, devices, (device, was) => (was ?? new DeviceInUse()) with
            {
                FedBy = Feed(device.Name, was?.FedBy, was is not null),
                Outlet = wiring.OutletOf(device.Name),
                Cable = rig.Cables.Of(device.Name)?.Name,
                Essential = device.Thing.Essential || (noneEssential && device.Thing.Role == RigRole.Camera),
                Count = device.Thing.Count,
            }),
            Carries = Carries(old.Carries),
            Places = Places(old),
            OnHead = OnHead(old.OnHead),
        };
    }

    private OrderedMap<PlaceInUse> Places(Build old) => DraftPlaces.Kept(
        old.Places, old.Things.ToHashSet(StringComparer.Ordinal),
        rig.Things.ToDictionary(thing => thing.Name, thing => NameOf(thing.Name), StringComparer.Ordinal));

    private HeadInUse? OnHead(HeadInUse? old)
    {
        if (rig.Draft.SlideMiddle is null && old is null)
            return null;
        var now = (old ?? new HeadInUse()) with { SlideMiddle = rig.Draft.SlideMiddle };
        return now == new HeadInUse() && now != old ? null : now;
    }

    /// <summary>Those that stood there before keep their order; new ones come after them.</summary>
    private OrderedMap<T> InOldOrder<T>(OrderedMap<T> old, IEnumerable<RigThing> things, Func<RigThing, T?, T> make)
        where T : class
    {
        var now = things.ToDictionary(thing => NameOf(thing.Name));
        var names = old.Keys.Where(now.ContainsKey).Concat(now.Keys.Where(name => !old.ContainsKey(name)));
        return new OrderedMap<T>(names.Select(name => KeyValuePair.Create(name,
            make(now[name], old.TryGetValue(now[name].Name, out var was) ? was : null))));
    }

    private IReadOnlyList<string> Carries(IReadOnlyList<string> old)
    {
        var carried = new List<string>();
        foreach (var name in old)
        {
            // A battery or device that is also named among the carried things stays there as often as it was.
            if (rig.Find(name) is { } thing
                && (!IsCarried(thing) || carried.Count(other => other == NameOf(name)) < thing.Thing.Count))
                carried.Add(NameOf(name));
        }
        foreach (var thing in rig.Things.Where(IsCarried))
        {
            while (carried.Count(name => name == NameOf(thing.Name)) < thing.Thing.Count)
                carried.Add(NameOf(thing.Name));
        }
        return carried.SequenceEqual(old) ? old : carried;
    }

    private ShootingDay MakeDay(OrderedMap<KitItem> kit)
    {
        var old = before.Days.TryGetValue(dayName, out var was) ? was : new ShootingDay();
        var inherited = old.Ambient is null && rig.Draft.Ambient is { } air && air.Equals(before.Conditions.Ambient);
        return old with
        {
            Title = rig.Draft.DayTitle,
            Starts = rig.Draft.Starts,
            Ambient = inherited ? null : rig.Draft.Ambient,
            Blocks = new OrderedMap<DayBlock>(rig.Draft.Blocks
                .Select(block => KeyValuePair.Create(block.Key, block.Value with { States = States(block.Value.States, kit) }))),
        };
    }

    private OrderedMap<PowerState> States(OrderedMap<PowerState> states, OrderedMap<KitItem> kit)
    {
        // A thing that was only a word in the form is dropped; a name of the kit may be a device of another build.
        var kept = states.All(state => kit.ContainsKey(state.Key))
            ? states : new OrderedMap<PowerState>(states.Where(state => kit.ContainsKey(state.Key)));
        return renamed.Where(name => states.ContainsKey(name.Key))
            .Aggregate(kept, (all, name) => all.With(name.Value, states[name.Key]));
    }

    /// <summary>Things of the kit that the form took off this build, and that nothing else speaks of.</summary>
    private List<string> Removed()
    {
        if (rig.BuildBefore is not { } old)
            return [];
        var otherDays = before.Days.Where(day => day.Key != dayName).SelectMany(day => day.Value.Blocks.Values)
            .SelectMany(block => block.States.Keys).ToHashSet();
        var onJourneys = before.Journeys.Values.SelectMany(journey => journey.Batteries.Concat(journey.Packed.Keys)).ToHashSet();
        // Batteries of another kind may be swapped although they start on no build.
        var swapped = before.Batteries.Values.Select(battery => battery.Item)
            .Where(name => name != old.Battery.Item).ToHashSet();
        return [.. NamesIn(old).Distinct().Where(name => before.Kit.ContainsKey(name) && !rig.Draft.Things.ContainsKey(name)
            && rig.Find(name) is null
            && !usedElsewhere.Contains(name) && !swapped.Contains(name) && rig.Cables.All.All(cable => cable.Name != name)
                && !otherDays.Contains(name) && !onJourneys.Contains(name))];
    }

    private bool IsAnotherPart(RigThing thing) => before.Kit.TryGetValue(thing.Name, out var item)
        && (item.Part != thing.PartId || before.FindPart(item.Part) != thing.Part);

    private string NameOf(string name) => renamed.GetValueOrDefault(name, name);

    private string IdOf(RigThing thing) => thing.Thing.Own is not null && renamed.TryGetValue(thing.Name, out var name)
        ? OwnPart.IdStart + name : thing.PartId;

    private static bool IsCarried(RigThing thing) => !thing.IsDevice && !thing.IsSplitter
        && (thing.Thing.Role is RigRole.Lens or RigRole.Head or RigRole.Legs or RigRole.Other);

    private static IEnumerable<string> NamesIn(Build build) =>
        [build.Battery.Item, .. build.Plate is { } plate ? (string[])[plate] : [], .. build.Regulators.Keys,
            .. build.Splitters.Keys, .. build.Devices.Keys, .. build.Carries, .. build.Cables];
}

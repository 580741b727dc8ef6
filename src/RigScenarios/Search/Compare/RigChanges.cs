using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Numerics;
using RigScenarios.Parts;

namespace RigScenarios.Search.Compare;

/// <summary>What changed from one rig to another, in groups: every thing by itself where they are few, else by their kinds, so
/// that there are never more than <see cref="OrderFreeMean.MostChanges"/>.</summary>
internal static class RigChanges
{
    /// <summary>The groups; empty where nothing changed.</summary>
    /// <param name="from">The base.</param>
    /// <param name="to">The other.</param>
    public static IReadOnlyList<ChangedGroup> Between(RigAnswer from, RigAnswer to)
    {
        var (one, other) = (new Side(from), new Side(to));
        var all = one.Things.Union(other.Things, StringComparer.Ordinal).Where(name => IsChanged(one, other, name)).ToList();
        var riders = Riders(one, other).Concat(Riders(other, one)).ToDictionary(StringComparer.Ordinal);
        var changed = all.Where(name => !riders.ContainsKey(name)).ToLookup(name => KindOf(one, other, name));
        // A rig that goes onto the shoulder leaves head and tripod behind, or neither makes sense.
        var supports = from.TheBuild.Stance == to.TheBuild.Stance ? [] : changed[ChangeKind.Carried].Where(name =>
            (one.PartKindOf(name) ?? other.PartKindOf(name)) is PartKind.Head or PartKind.Tripod).ToList();
        List<ChangedGroup> always = [];
        if (changed[ChangeKind.Battery].Any() || !from.TheBuild.Battery.Equals(to.TheBuild.Battery))
            always.Add(new(ChangeKind.Battery, [.. changed[ChangeKind.Battery]], "the battery"));
        if (changed[ChangeKind.Wiring].Any() || !IsFedAlike(from.TheBuild, to.TheBuild, riders))
            always.Add(new(ChangeKind.Wiring, [.. changed[ChangeKind.Wiring]], "plate, regulators and cables"));
        if (!IsPlacedAlike(one, other))
            always.Add(new(ChangeKind.Places, supports, from.TheBuild.Stance == to.TheBuild.Stance ? "where things sit"
                : "where things sit, and how it is carried"));
        if (!IsPlannedAlike(from, to))
            always.Add(new(ChangeKind.Days, [], "the days, their air and their batteries"));
        var devices = Single(one, other, ChangeKind.Devices, changed[ChangeKind.Devices])
            .ConvertAll(group => With(group, riders));
        var carried = Single(one, other, ChangeKind.Carried, changed[ChangeKind.Carried].Except(supports));
        if (always.Count + devices.Count + carried.Count > OrderFreeMean.MostChanges)
            carried = Merged(carried, ChangeKind.Carried, "what else is carried");
        if (always.Count + devices.Count + carried.Count > OrderFreeMean.MostChanges)
            devices = Merged(devices, ChangeKind.Devices, "the devices");
        return [.. always.Where(group => group.Kind <= ChangeKind.Wiring), .. devices, .. carried,
            .. always.Where(group => group.Kind > ChangeKind.Wiring)];
    }

    /// <summary>Pairs of things of which one takes the place of the other: the only one of its kind that comes off, and the only
    /// one that goes on.</summary>
    public static IReadOnlyDictionary<string, string> Replaced(RigAnswer from, RigAnswer to) =>
        Replaced(new Side(from), new Side(to));

    /// <summary>The words for a changed thing.</summary>
    /// <param name="from">The base.</param>
    /// <param name="to">The other.</param>
    /// <param name="thing">Its name; of a pair the one that goes on.</param>
    public static string Words(RigAnswer from, RigAnswer to, string thing)
    {
        var (one, other) = (new Side(from), new Side(to));
        return Words(one, other, thing, Replaced(one, other).FirstOrDefault(pair => pair.Value == thing).Key);
    }

    private static string Words(Side one, Side other, string thing, string? instead)
    {
        var name = LimitSentences.Element(thing);
        return instead is not null ? $"{name} instead of {LimitSentences.Element(instead)}"
            : !one.Has(thing) && !other.Has(thing) ? name
            : !other.Has(thing) ? $"{name} left out" : !one.Has(thing) ? name
            : SharedInputs.IsSame(one.PartOf(thing), other.PartOf(thing)) ? name : $"{name} changed";
    }

    private static Dictionary<string, string> Replaced(Side one, Side other)
    {
        var off = one.Things.Where(name => !other.Has(name)).ToLookup(one.PartKindOf);
        var on = other.Things.Where(name => !one.Has(name)).ToLookup(other.PartKindOf);
        return off.Where(kind => kind.Key is not null && kind.Count() == 1 && on[kind.Key].Count() == 1)
            .ToDictionary(kind => kind.Single(), kind => on[kind.Key].Single(), StringComparer.Ordinal);
    }

    private static List<ChangedGroup> Single(Side one, Side other, ChangeKind kind, IEnumerable<string> things)
    {
        var all = things.ToList();
        var pairs = Replaced(one, other).Where(pair => all.Contains(pair.Key) && all.Contains(pair.Value)).ToList();
        return [.. all.Where(thing => pairs.TrueForAll(pair => pair.Key != thing)).Select(thing =>
        {
            var instead = pairs.Find(pair => pair.Value == thing).Key;
            var words = Words(one, other, thing, instead);
            // The same part in another number, or with another draw.
            if (instead is null && words == LimitSentences.Element(thing) && one.Has(thing))
                words = $"{words} changed";
            return new ChangedGroup(kind, instead is null ? [thing] : [instead, thing], words);
        })];
    }

    private static List<ChangedGroup> Merged(List<ChangedGroup> groups, ChangeKind kind, string name) => groups.Count < 2
        ? groups : [new(kind, [.. groups.SelectMany(group => group.Things)], name)];

    private static ChangeKind KindOf(Side one, Side other, string name)
    {
        var kinds = new[] { one, other }.Where(side => side.Has(name)).Select(side => side.KindOf(name)).ToList();
        return kinds.Contains(ChangeKind.Devices) ? ChangeKind.Devices : kinds.Min();
    }

    private static bool IsChanged(Side one, Side other, string name) => one.Has(name) != other.Has(name)
        || !SharedInputs.IsSame(one.PartOf(name), other.PartOf(name))
        || (one.Build.Devices.TryGetValue(name, out var device) && other.Build.Devices.TryGetValue(name, out var same)
            && (device.Count != same.Count || device.Essential != same.Essential || !Equals(device.Power, same.Power)))
        || one.Build.Devices.ContainsKey(name) != other.Build.Devices.ContainsKey(name);

    private static bool IsFedAlike(Build one, Build other, Dictionary<string, string> riders)
    {
        OrderedMap<T> Rest<T>(OrderedMap<T> things)
            where T : notnull => new(things.Where(thing => !riders.ContainsKey(thing.Key)));
        return one.Plate == other.Plate && Rest(one.Regulators).Equals(Rest(other.Regulators))
            && Rest(one.Splitters).Equals(Rest(other.Splitters))
            && one.Devices.Where(device => other.Devices.ContainsKey(device.Key)).All(device =>
                other.Devices[device.Key] is var same && device.Value.FedBy == same.FedBy && device.Value.Outlet == same.Outlet
                && device.Value.Cable == same.Cable);
    }

    // What one rig has to feed one device that the other has not, and nothing else: it comes and goes with that device.
    private static IEnumerable<KeyValuePair<string, string>> Riders(Side side, Side other)
    {
        foreach (var thing in side.Things.Where(name => !other.Has(name) && side.KindOf(name) == ChangeKind.Wiring
            && name != side.Build.Plate))
        {
            var fed = side.FedThrough(thing);
            if (fed.Count == 1 && !other.Has(fed[0]))
                yield return new(thing, fed[0]);
        }
    }

    private static ChangedGroup With(ChangedGroup group, Dictionary<string, string> riders)
    {
        var along = riders.Where(rider => group.Things.Contains(rider.Value)).Select(rider => rider.Key).ToList();
        return along.Count == 0 ? group : group with
        {
            Things = [.. group.Things, .. along],
            Name = $"{group.Name} with its {string.Join(", ", along.Select(LimitSentences.Element))}",
        };
    }

    private static bool IsPlacedAlike(Side one, Side other) => one.Build.Stance == other.Build.Stance
        && Equals(one.Build.OnHead, other.Build.OnHead) && Equals(one.Build.OnLegs, other.Build.OnLegs)
        && Equals(one.Build.OnShoulder, other.Build.OnShoulder) && Equals(one.Build.InHands, other.Build.InHands)
        && one.Things.Where(other.Has).All(name => one.Build.Beside.Contains(name) == other.Build.Beside.Contains(name)
            && one.Build.Places.TryGetValue(name, out var place) == other.Build.Places.TryGetValue(name, out var same)
            && Equals(place, same));

    private static bool IsPlannedAlike(RigAnswer from, RigAnswer to)
    {
        var (one, other) = (from.Scenario, to.Scenario);
        return from.Plan.Days.SequenceEqual(to.Plan.Days) && one.Conditions.Equals(other.Conditions)
            && one.Batteries.Equals(other.Batteries) && one.Chargers.Equals(other.Chargers) && one.Swaps.Equals(other.Swaps)
            && Equals(one.HotSwap, other.HotSwap) && one.InternalBatteries.Equals(other.InternalBatteries)
            && one.Journeys.Equals(other.Journeys)
            && one.Batteries.Values.All(battery => SharedInputs.IsSame(one.PartOf(battery.Item), other.PartOf(battery.Item)));
    }

    /// <summary>One rig with its things.</summary>
    private sealed class Side(RigAnswer answer)
    {
        private readonly HashSet<string> names = answer.TheBuild.Things.ToHashSet(StringComparer.Ordinal);

        public Build Build => answer.TheBuild;

        public IReadOnlyList<string> Things { get; } = [.. answer.TheBuild.Things.Distinct(StringComparer.Ordinal)];

        public bool Has(string name) => names.Contains(name);

        public Part? PartOf(string name) => answer.Scenario.PartOf(name);

        public PartKind? PartKindOf(string name) => PartOf(name)?.Kind;

        /// <summary>The devices that draw through a regulator, a splitter or a cable.</summary>
        public IReadOnlyList<string> FedThrough(string thing)
        {
            var links = LinkLookup.Fed(Build).ToDictionary(link => link.Name, StringComparer.Ordinal);
            bool Passes(string device)
            {
                // As long as there are links, and no longer: a circle is an error that is told elsewhere.
                var at = device;
                for (var step = 0; step <= links.Count && links.TryGetValue(at, out var link); step++)
                {
                    if (link.Cable == thing || link.FedBy == thing)
                        return true;
                    if (link.FedBy is null)
                        return false;
                    at = link.FedBy;
                }
                return false;
            }
            return [.. Build.Devices.Keys.Where(Passes)];
        }

        public ChangeKind KindOf(string name) => Build.Devices.ContainsKey(name) ? ChangeKind.Devices
            : name == Build.Battery.Item ? ChangeKind.Battery
            : name == Build.Plate || Build.Regulators.ContainsKey(name) || Build.Splitters.ContainsKey(name)
                || Build.Cables.Contains(name) ? ChangeKind.Wiring : ChangeKind.Carried;
    }
}

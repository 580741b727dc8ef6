using System.Globalization;
using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>A power cable of a draft: its name in the kit and the part that it is.</summary>
internal sealed record RigCable(string Name, string PartId, Part Part);

/// <summary>The power cables of a draft. A cable of the kit keeps its name there; a listed one is called as its part; one of own
/// figures by what it feeds.</summary>
internal sealed class DraftCables
{
    private readonly DraftRig rig;
    private readonly OrderedDictionary<string, RigCable> cables = new(StringComparer.Ordinal);
    private readonly HashSet<string> usedElsewhere;

    private DraftCables(DraftRig rig, string build)
    {
        this.rig = rig;
        usedElsewhere = [.. rig.Before?.Builds.Where(other => other.Key != build).SelectMany(other => other.Value.Cables) ?? []];
        foreach (var thing in rig.Things)
        {
            if (thing.Thing.OwnCable is { IsWhole: true } own)
                cables[thing.Name] = OfOwn(thing, own);
            else if (thing.Thing.OwnCable is null && thing.Thing.Cable is { } wanted && OfName(thing, wanted) is { } cable)
                cables[thing.Name] = cable;
        }
    }

    /// <summary>The cables that can be chosen: those of the kit by their names there, then listed ones by their parts'
    /// ids.</summary>
    public IEnumerable<(string Value, Part Part)> Choices
    {
        get
        {
            var inKit = rig.Before is { } before
                ? before.Kit.Where(item => before.FindPart(item.Value.Part)?.Cable is not null && !IsOwn(before, item.Key))
                    .Select(item => (item.Key, before.FindPart(item.Value.Part)!)).ToList()
                : [];
            var shown = inKit.SelectMany(item => (string[])[item.Key, rig.Before!.Kit[item.Key].Part])
                .ToHashSet(StringComparer.Ordinal);
            return inKit.Concat(rig.AllParts.Where(item => item.Value.Cable is not null && !item.Key.StartsWith(OwnPart.IdStart,
                StringComparison.Ordinal) && !shown.Contains(item.Key)).Select(item => (item.Key, item.Value)));
        }
    }

    /// <summary>The cables in use, each once.</summary>
    public IEnumerable<RigCable> All => cables.Values.DistinctBy(cable => cable.Name);

    /// <summary>The cable in front of a thing; null where none is given.</summary>
    public RigCable? Of(string thing) => cables.TryGetValue(thing, out var cable) ? cable : null;

    /// <summary>How many of a cable the build needs.</summary>
    public int CountOf(string name) => cables.Where(item => item.Value.Name == name)
        .Sum(item => rig.Find(item.Key) is { IsDevice: true } device ? device.Thing.Count : 1);

    public static DraftCables In(DraftRig rig, string build) => new(rig, build);

    /// <summary>The figures of a cable of the kit that was made from own figures; null for any other.</summary>
    public static OwnCable? FiguresOf(Scenario scenario, string kitName) =>
        IsOwn(scenario, kitName) && scenario.PartOf(kitName) is { Cable: { } cable }
            ? new OwnCable(cable.Gauge, cable.Length) : null;

    /// <summary>A cable in a few words: "0.9 m of 0.5 mm²".</summary>
    public static string InWords(CableData cable) =>
        string.Create(CultureInfo.InvariantCulture, $"{cable.Length.Meters:0.##} m of {cable.Gauge}");

    private static bool IsOwn(Scenario scenario, string kitName) =>
        scenario.Kit.TryGetValue(kitName, out var item) && item.Part.StartsWith(OwnPart.IdStart, StringComparison.Ordinal)
            && scenario.Parts.ContainsKey(item.Part);

    private RigCable? OfName(RigThing thing, string wanted)
    {
        if (rig.Before is { } before && before.Kit.TryGetValue(wanted, out var item)
            && before.FindPart(item.Part) is { Cable: not null } inKit)
            return new RigCable(wanted, item.Part, inKit);
        if (rig.FindPart(wanted) is { Cable: not null } listed)
            return cables.Values.FirstOrDefault(cable => cable.PartId == wanted)
                ?? new RigCable(Free(wanted, wanted), wanted, listed);
        rig.Log.Error($"things.{thing.Name}.cable", $"There is no power cable \"{wanted}\".",
            "a power cable of the list, or length and gauge of your own",
            rig.Log.Nearest(wanted, Choices.Select(choice => choice.Value)));
        return null;
    }

    private RigCable OfOwn(RigThing thing, OwnCable own)
    {
        var data = new CableData(own.Gauge, own.Length);
        if (rig.Before is { } before && WasOn(thing.Name) is { } was && IsOwn(before, was))
        {
            var (id, old) = (before.Kit[was].Part, before.PartOf(was)!);
            if (new OwnCable(old.Cable!.Gauge, old.Cable.Length) == own)
                return new RigCable(was, id, old);
            // A cable that something else hangs on too stays as it is, and this thing gets one of its own.
            var isShared = usedElsewhere.Contains(was) || rig.BuildBefore!.Carries.Contains(was)
                || LinkLookup.Fed(rig.BuildBefore!).Count(item => item.Cable == was) > 1;
            if (!isShared)
                return new RigCable(was, id, old with { Name = old.Name == NameOf(old.Cable) ? NameOf(data) : old.Name,
                    Cable = old.Cable with { Gauge = own.Gauge, Length = own.Length } });
        }
        var name = Free($"{thing.Name}-cable", null);
        return new RigCable(name, OwnPart.IdStart + name, new Part { Kind = PartKind.Cable, Name = NameOf(data), Cable = data });
    }

    private string? WasOn(string thing) => rig.BuildBefore is { } build
        ? LinkLookup.Fed(build).FirstOrDefault(item => item.Name == thing).Cable : null;

    /// <summary>A name that nothing else of kit or draft has.</summary>
    private string Free(string wish, string? partId)
    {
        var name = wish;
        for (var number = 2; IsTaken(name); number++)
            name = $"{wish}-{number}";
        return name;

        bool IsTaken(string candidate) =>
            (rig.Draft.Things.TryGetValue(candidate, out var thing) && (partId is null || thing.Part != partId))
            || (rig.Before is { } before && ((before.Kit.TryGetValue(candidate, out var item) && item.Part != partId)
                || (partId is null && before.FindPart(OwnPart.IdStart + candidate) is not null)))
            || cables.Values.Any(cable => cable.Name == candidate && cable.PartId != partId);
    }

    private static string NameOf(CableData cable) => $"Power cable, {InWords(cable)}";
}

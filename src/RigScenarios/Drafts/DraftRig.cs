using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>A thing of a draft with the part that it is.</summary>
internal sealed record RigThing(string Name, DraftThing Thing, string PartId, Part Part)
{
    /// <summary>Whether it draws power in this build: a device, not something that is carried.</summary>
    public bool IsDevice { get; init; }

    /// <summary>Whether it gives the power of one inlet on to several outlets in this build, and is not only carried.</summary>
    public bool IsSplitter { get; init; }
}

/// <summary>
/// The things of a draft that are complete, each with its part. What is not complete is told and left out, so that an answer can
/// build up while a form is filled in.
/// </summary>
internal sealed class DraftRig
{
    private readonly OrderedDictionary<string, RigThing> things = new(StringComparer.Ordinal);

    private DraftRig(RigDraft draft, Scenario? before, Build? build, OrderedMap<Part> library)
    {
        Draft = draft;
        Before = before;
        BuildBefore = build;
        Library = library;
    }

    public RigDraft Draft { get; }

    public Scenario? Before { get; }

    /// <summary>The build as it was; null for a new one.</summary>
    public Build? BuildBefore { get; }

    public OrderedMap<Part> Library { get; }

    public ReadLog Log { get; } = new("");

    public IReadOnlyCollection<RigThing> Things => things.Values;

    public RigThing? Battery => things.Values.FirstOrDefault(thing => thing.Thing.Role == RigRole.Battery);

    public RigThing? Plate => things.Values.FirstOrDefault(thing => thing.Thing.Role == RigRole.Plate);

    public IEnumerable<RigThing> Regulators => things.Values.Where(thing => thing.Thing.Role == RigRole.Regulator);

    public IEnumerable<RigThing> Splitters => things.Values.Where(thing => thing.IsSplitter);

    public IEnumerable<RigThing> Devices => things.Values.Where(thing => thing.IsDevice);

    /// <summary>The power cables.</summary>
    public DraftCables Cables { get; private set; } = null!;

    /// <summary>What feeds things without a regulator between: the plate, or the battery itself.</summary>
    public string StandardFeed => Plate?.Name ?? Build.BatteryFeed;

    public RigThing? Find(string name) => things.TryGetValue(name, out var thing) ? thing : null;

    /// <summary>The part of that id: the scenario's own or one it refers to, else the library's.</summary>
    public Part? FindPart(string id) => Before?.FindPart(id) ?? (Library.TryGetValue(id, out var part) ? part : null);

    /// <summary>All parts to choose from; those of the scenario go before the library's.</summary>
    public IEnumerable<KeyValuePair<string, Part>> AllParts => Before is null
        ? Library
        : Before.Parts.Concat(Before.Library).Concat(Library).DistinctBy(item => item.Key);

    /// <summary>Adds a regulator that the wiring asked for.</summary>
    public RigThing Add(string name, string partId, Part part)
    {
        var thing = new RigThing(name, new DraftThing { Role = RigRole.Regulator, Part = partId }, partId, part);
        things.Add(name, thing);
        return thing;
    }

    public static DraftRig Of(RigDraft draft, Scenario? before, OrderedMap<Part> library, string build)
    {
        var rig = new DraftRig(draft, before, before is not null && before.Builds.TryGetValue(build, out var old) ? old : null,
            library);
        foreach (var role in (RigRole[])[RigRole.Camera, RigRole.Battery, RigRole.Plate])
        {
            // A second body can be a device of an existing scenario; a second battery or plate can't be.
            foreach (var (name, _) in draft.Things.Where(thing => thing.Value.Role == role && role != RigRole.Camera).Skip(1))
                rig.Log.Error($"things.{name}",
                    $"There is another {RigQuestions.For(role).Label.ToLowerInvariant()} on the rig already; one is counted.",
                    "one of the two taken off");
        }
        foreach (var (name, thing) in draft.Things)
        {
            if (!rig.Log.HasErrorIn($"things.{name}") && rig.Resolve(name, thing) is { } found)
                rig.things.Add(name, found);
        }
        rig.Cables = DraftCables.In(rig, build);
        return rig;
    }

    private RigThing? Resolve(string name, DraftThing thing)
    {
        var at = $"things.{name}";
        if (thing.Own is { } own)
        {
            if (!OwnPart.Check(thing.Role, own, $"{at}.own", Log))
                return null;
            var id = OwnId(name);
            var part = Before is not null && Before.Parts.TryGetValue(id, out var old)
                ? OwnPart.Changed(thing.Role, old, own) : OwnPart.From(thing.Role, own);
            return new RigThing(name, thing, id, part) { IsDevice = IsDevice(name, thing.Role, part) };
        }
        if (thing.Part is not { } chosen)
        {
            Log.Error($"{at}.part", "Nothing is chosen here yet.", "a part of the list, or its own figures if it is not listed");
            return null;
        }
        if (FindPart(chosen) is not { } listed)
        {
            Log.Error($"{at}.part", $"There is no part \"{chosen}\" in the list.", "a part of the list",
                Log.Nearest(chosen, Library.Keys.Concat(Before?.PartIds ?? [])));
            return null;
        }
        if (!Fits(name, thing.Role, listed))
        {
            Log.Error($"{at}.part",
                $"{listed.Name} is a {ChoiceFormat<PartKind>.Word(listed.Kind).Replace('-', ' ')}; it can't stand here.",
                string.Join(", ",
                    RigQuestions.For(thing.Role).PartKinds.Select(kind => ChoiceFormat<PartKind>.Word(kind).Replace('-', ' '))));
            return null;
        }
        // A motor controller passes power on only where the build says so; else it is a device like any other.
        var isSplitter = thing.Role == RigRole.Other && listed.Splitter is not null
            && (BuildBefore?.Splitters.ContainsKey(name) == true
                || (listed.Power is null && BuildBefore?.Carries.Contains(name) != true));
        return new RigThing(name, thing, chosen, listed) { IsDevice = !isSplitter && IsDevice(name, thing.Role, listed),
            IsSplitter = isSplitter };
    }

    private string OwnId(string name)
    {
        if (Before is null)
            return OwnPart.IdStart + name;
        if (Before.Kit.TryGetValue(name, out var item) && item.Part.StartsWith(OwnPart.IdStart, StringComparison.Ordinal)
            && Before.Parts.ContainsKey(item.Part))
            return item.Part;
        var id = OwnPart.IdStart + name;
        for (var number = 2; Before.FindPart(id) is not null; number++)
            id = $"{OwnPart.IdStart}{name}-{number}";
        return id;
    }

    private bool Fits(string name, RigRole role, Part part) => role switch
    {
        RigRole.Battery => part.Battery is not null,
        RigRole.Plate => part.Plate is not null,
        RigRole.Regulator => part.Regulator is not null,
        RigRole.Head or RigRole.Legs => RigQuestions.For(role).PartKinds.Contains(part.Kind),
        RigRole.Camera or RigRole.Monitor or RigRole.Transmitter or RigRole.Motor or RigRole.MotorController =>
            RigQuestions.For(role).PartKinds.Contains(part.Kind)
                && (part.Power is not null || (BuildBefore is { } build && build.Devices.TryGetValue(name, out var device)
                && device.Power is not null)),
        _ => true,
    };

    /// <summary>What stood among the devices or the carried things of a build stays there; else a thing with a draw is a
    /// device.</summary>
    private bool IsDevice(string name, RigRole role, Part part) => role switch
    {
        RigRole.Battery or RigRole.Plate or RigRole.Regulator or RigRole.Head or RigRole.Legs => false,
        RigRole.Lens or RigRole.Other => BuildBefore?.Devices.ContainsKey(name) == true
            || (part.Power is not null && BuildBefore?.Carries.Contains(name) != true),
        _ => true,
    };
}

using RigScenarios.Scenarios;
using System.Text.Json.Nodes;
using System.Text.Json;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>How a draft stands in a form: every value as text the way people write it, with its unit.</summary>
public static class RigDraftFormat
{
    private const int DeepestNesting = 8;

    private static readonly RecordFormat<OwnFigures> Own = new(
        () => new OwnFigures(), "What the label of a thing says that is not listed.",
        new Field<OwnFigures, string>("name", PartFormat.Title, own => own.Name.Length > 0, own => own.Name,
            (own, value) => own with { Name = value }, false, "What to call it."),
        Fields<OwnFigures>.Optional("power", PartFormat.Watts, own => own.Power, (own, value) => own with { Power = value },
            "Draw in record."),
        Fields<OwnFigures>.Optional("standby", PartFormat.Watts, own => own.Standby, (own, value) => own with { Standby = value },
            "Draw on standby."),
        Fields<OwnFigures>.Optional("voltage", PartFormat.Volts, own => own.Voltage, (own, value) => own with { Voltage = value },
            "Voltage on the label."),
        Fields<OwnFigures>.Optional("current", PartFormat.Amperes, own => own.Current,
            (own, value) => own with { Current = value }, "Current on the label."),
        Fields<OwnFigures>.Optional("energy", BatteryFormat.LabelEnergy, own => own.Energy,
            (own, value) => own with { Energy = value }, "Energy on a battery's label."),
        Fields<OwnFigures>.Optional("mass", PartFormat.Masses, own => own.Mass,
            (own, value) => own with { Mass = value }, "Mass."),
        Fields<OwnFigures>.Optional("minimum-voltage", PartFormat.Volts, own => own.MinimumVoltage,
            (own, value) => own with { MinimumVoltage = value }, "Least voltage it works at."),
        Fields<OwnFigures>.Optional("maximum-voltage", PartFormat.Volts, own => own.MaximumVoltage,
            (own, value) => own with { MaximumVoltage = value }, "Greatest voltage it takes."),
        Fields<OwnFigures>.Optional("output-voltage", PartFormat.Volts, own => own.OutputVoltage,
            (own, value) => own with { OutputVoltage = value }, "What a regulator gives."),
        Fields<OwnFigures>.Optional("rated-load", PartFormat.Masses, own => own.RatedLoad,
            (own, value) => own with { RatedLoad = value }, "The load that a head is rated for."),
        Fields<OwnFigures>.Optional("drag", SupportFormat.Moments, own => own.Drag, (own, value) => own with { Drag = value },
            "The moment of a head's tilt drag at 10 °/s; it slows and holds nothing."),
        Fields<OwnFigures>.Optional("counterbalance", SupportFormat.Moments, own => own.Counterbalance,
            (own, value) => own with { Counterbalance = value }, "The most that a head's counterbalance gives."),
        Fields<OwnFigures>.Optional("height", SupportFormat.Heights, own => own.Height,
            (own, value) => own with { Height = value }, "From the ground to where the head sits."),
        Fields<OwnFigures>.Optional("foot-radius", SupportFormat.FootRadii, own => own.FootRadius,
            (own, value) => own with { FootRadius = value }, "From the middle between the feet to a foot."));

    private static readonly RecordFormat<OwnCable> Cable = new(
        () => new OwnCable(default, Length.Zero), "A power cable that is not listed.",
        Fields<OwnCable>.Required("gauge", new GaugeFormat(), cable => cable.Gauge,
            (cable, value) => cable with { Gauge = value }, "The gauge of each conductor."),
        Fields<OwnCable>.Required("length", WiringFormat.CableLengths, cable => cable.Length,
            (cable, value) => cable with { Length = value }, "From plug to plug, one way."));

    private static readonly RecordFormat<DraftThing> Thing = new(
        () => new DraftThing(), "One thing of the rig.",
        Fields<DraftThing>.Required("role", new ChoiceFormat<RigRole>(), thing => thing.Role,
            (thing, value) => thing with { Role = value }, "What it is on the rig."),
        Fields<DraftThing>.OptionalGroup("part", ScenarioFormat.KitName, thing => thing.Part,
            (thing, value) => thing with { Part = value }, "The id of a listed part."),
        Fields<DraftThing>.OptionalGroup("own", Own, thing => thing.Own, (thing, value) => thing with { Own = value },
            "The figures of its label, if it is not listed."),
        Fields<DraftThing>.OptionalGroup("fed-by", ScenarioFormat.KitName, thing => thing.FedBy,
            (thing, value) => thing with { FedBy = value }, "What feeds it."),
        Fields<DraftThing>.OptionalGroup("outlet", ScenarioFormat.KitName, thing => thing.Outlet,
            (thing, value) => thing with { Outlet = value }, "The outlet of that."),
        Fields<DraftThing>.OptionalGroup("cable", ScenarioFormat.KitName, thing => thing.Cable,
            (thing, value) => thing with { Cable = value }, "The power cable in front of it: one of the kit or a listed one."),
        Fields<DraftThing>.OptionalGroup("own-cable", Cable, thing => thing.OwnCable,
            (thing, value) => thing with { OwnCable = value }, "Length and gauge of a cable that is not listed."),
        Fields<DraftThing>.WithDefault("essential", new YesNoFormat(), false, thing => thing.Essential,
            (thing, value) => thing with { Essential = value }, "Whether the rig is of no use without it."),
        Fields<DraftThing>.WithDefault("count", new CountFormat(1, 20), 1, thing => thing.Count,
            (thing, value) => thing with { Count = value }, "How many there are."));

    private static readonly RecordFormat<RigDraft> Draft = new(
        () => new RigDraft(), "One's own rig while it is being described.",
        Fields<RigDraft>.OptionalGroup("title", PartFormat.Title, draft => draft.Title,
            (draft, value) => draft with { Title = value }, "What to call it."),
        new Field<RigDraft, Stance>("stance", new ChoiceFormat<Stance>(), _ => true, draft => draft.Stance,
            (draft, value) => draft with { Stance = value }, false, "How the rig is carried."),
        Fields<RigDraft>.Optional("charge", PartFormat.Shares, draft => draft.Charge,
            (draft, value) => draft with { Charge = value }, "Charge of the battery at the start."),
        Fields<RigDraft>.Optional("capacity-left", PartFormat.Shares, draft => draft.CapacityLeft,
            (draft, value) => draft with { CapacityLeft = value }, "Share of the capacity that age has left."),
        Fields<RigDraft>.Optional("resistance-growth", new NumberFormat(1, 20), draft => draft.ResistanceGrowth,
            (draft, value) => draft with { ResistanceGrowth = value }, "Resistance as a multiple of a new battery's."),
        Fields<RigDraft>.Optional("start-temperature", ScenarioFormat.Air, draft => draft.StartTemperature,
            (draft, value) => draft with { StartTemperature = value }, "The battery's own temperature at the start."),
        Fields<RigDraft>.Optional("battery-count", new CountFormat(1, 20), draft => draft.BatteryCount,
            (draft, value) => draft with { BatteryCount = value }, "How many batteries like that of the rig there are."),
        Fields<RigDraft>.Optional("charger-bays", new CountFormat(1, 16), draft => draft.ChargerBays,
            (draft, value) => draft with { ChargerBays = value }, "How many batteries the charger takes at once."),
        Fields<RigDraft>.Optional("charger-current", PartFormat.Amperes, draft => draft.ChargerCurrent,
            (draft, value) => draft with { ChargerCurrent = value }, "Charging current of each bay."),
        Fields<RigDraft>.OptionalGroup("power-hours", SwapsFormat.Hours, draft => draft.PowerHours,
            (draft, value) => draft with { PowerHours = value }, "The hours of every day in which the charger has power."),
        Fields<RigDraft>.Optional("swap-at", PartFormat.Shares, draft => draft.SwapAt,
            (draft, value) => draft with { SwapAt = value }, "The charge at which a battery is swapped."),
        Fields<RigDraft>.Optional("ambient", ScenarioFormat.Air, draft => draft.Ambient,
            (draft, value) => draft with { Ambient = value }, "Temperature of the air."),
        Fields<RigDraft>.Optional("starts", new ClockFormat(), draft => draft.Starts,
            (draft, value) => draft with { Starts = value }, "When the first block begins."),
        Fields<RigDraft>.OptionalGroup("day-title", PartFormat.Title, draft => draft.DayTitle,
            (draft, value) => draft with { DayTitle = value }, "What the day is called."),
        Fields<RigDraft>.Optional("slide-middle", SupportFormat.Distances, draft => draft.SlideMiddle,
            (draft, value) => draft with { SlideMiddle = value },
            "How far ahead of the body's tripod socket the head's plate is screwed on."),
        Fields<RigDraft>.WithDefault("places", new MapFormat<Length>(SupportFormat.Distances, "thing"), OrderedMap<Length>.Empty,
            draft => draft.Places, (draft, value) =>
            draft with { Places = value }, "How far forward the things sit that were moved along their mounts."),
        Fields<RigDraft>.WithDefault("things", new MapFormat<DraftThing>(Thing, "thing"), OrderedMap<DraftThing>.Empty,
            draft => draft.Things, (draft, value) => draft with { Things = value }, "The things on the rig."),
        Fields<RigDraft>.WithDefault("blocks", new MapFormat<DayBlock>(ScenarioFormat.Block, "block"), OrderedMap<DayBlock>.Empty,
            draft => draft.Blocks, (draft, value) => draft with { Blocks = value }, "The blocks of the day."));

    /// <summary>Reads a draft. All problems are given at once; what could be read is there beside them, so that an answer can
    /// build up.</summary>
    /// <param name="node">The draft.</param>
    /// <returns>The draft, null only if the node is no group of fields; and what is wrong, by the paths of the draft.</returns>
    public static (RigDraft? Draft, IReadOnlyList<Diagnostic> Problems) TryRead(FileNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        var log = new ReadLog("");
        Draft.TryRead(node, "", log, out var draft);
        if (node is not MapNode || draft is null)
            return (null, log.Problems);
        // What has no usable name was told of; in a file it could not stand.
        return (draft with { Things = Named(draft.Things), Blocks = Named(draft.Blocks), Places = Named(draft.Places) },
            log.Problems);
    }

    /// <summary>Reads a draft from JSON. Empty text and null count as left out.</summary>
    /// <param name="json">The draft.</param>
    /// <returns>As <see cref="TryRead(FileNode)"/>.</returns>
    public static (RigDraft? Draft, IReadOnlyList<Diagnostic> Problems) TryRead(JsonElement json)
    {
        try
        {
            return TryRead(Node(json, 0) ?? new MapNode([], TextPlace.None));
        }
        catch (InvalidOperationException)
        {
            return (null, [new Diagnostic(Severity.Error, "", TextPlace.None, "", "The text holds half a character (a \\u "
                + "escape whose other half is missing).")]);
        }
    }

    /// <summary>The draft as a tree of texts, from which <see cref="TryRead(FileNode)"/> makes the same draft.</summary>
    public static FileNode Write(RigDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return Draft.Write(draft);
    }

    /// <summary>The draft as JSON.</summary>
    public static JsonObject WriteJson(RigDraft draft) => (JsonObject)Json(Write(draft));

    /// <summary>Blocks of a day as JSON, as they stand in a draft.</summary>
    public static JsonObject WriteJson(OrderedMap<DayBlock> blocks) =>
        WriteJson(new RigDraft { Blocks = blocks })["blocks"]?.DeepClone() as JsonObject ?? [];

    private static OrderedMap<T> Named<T>(OrderedMap<T> items)
        where T : notnull =>
        items.Keys.All(MapFormat<T>.IsName) ? items : new OrderedMap<T>(items.Where(item => MapFormat<T>.IsName(item.Key)));

    private static FileNode? Node(JsonElement json, int depth) => json.ValueKind switch
    {
        // Deeper than any draft: a plain text there is refused with its path, and nothing is walked without end.
        _ when depth > DeepestNesting => new TextNode("…", TextPlace.None),
        JsonValueKind.Object => new MapNode(
            [
                .. json.EnumerateObject().GroupBy(field => field.Name, StringComparer.Ordinal)
                    .Select(field => (field.Key, Value: Node(field.Last().Value, depth + 1)))
                    .Where(field => field.Value is not null)
                        .Select(field => new MapEntry(field.Key, TextPlace.None, field.Value!)),
            ], TextPlace.None),
        JsonValueKind.Array =>
            new ListNode([.. json.EnumerateArray().Select(item => Node(item, depth + 1) ?? new TextNode("", TextPlace.None))],
            TextPlace.None),
        JsonValueKind.String => json.GetString() is { Length: > 0 } text && text.Trim().Length > 0
            ? new TextNode(text.Trim(), TextPlace.None) : null,
        JsonValueKind.True => new TextNode("yes", TextPlace.None),
        JsonValueKind.False => new TextNode("no", TextPlace.None),
        JsonValueKind.Number => new TextNode(json.GetRawText(), TextPlace.None),
        _ => null,
    };

    private static JsonNode Json(FileNode node) => node switch
    {
        MapNode map => new JsonObject(map.Entries.Select(entry => KeyValuePair.Create(entry.Key, (JsonNode?)Json(entry.Value)))),
        ListNode list => new JsonArray([.. list.Items.Select(Json)]),
        TextNode text => text.Text,
        _ => throw new ArgumentException($"{node} is no kind of node.", nameof(node)),
    };
}

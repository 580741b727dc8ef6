using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Travel;

namespace RigScenarios.Files;

/// <summary>How a scenario's journeys stand in a file.</summary>
internal static class JourneyFormat
{
    /// <summary>Most people of one journey: a large crew.</summary>
    private const int MostTravellers = 50;

    private static readonly Format<BatteryPacking> Packing = new RecordFormat<BatteryPacking>(
        () => new BatteryPacking(), "How one thing of the kit is packed.",
        Fields<BatteryPacking>.WithDefault("installed", new CountFormat(0, 100), 0, packing => packing.Installed,
            (packing, value) => packing with { Installed = value },
            "How many of them are in equipment; the others are spare. 0 if left out."),
        Fields<BatteryPacking>.WithDefault("contacts-covered", new YesNoFormat(), true, packing => packing.ContactsCovered,
            (packing, value) => packing with { ContactsCovered = value },
            "Whether the contacts of the spare ones are covered: cap, tape, or a bag each. Yes if left out."),
        Fields<BatteryPacking>.WithDefault("power-bank", new YesNoFormat(), false, packing => packing.PowerBank,
            (packing, value) => packing with { PowerBank = value }, "Whether they count as power banks. No if left out."),
        Fields<BatteryPacking>.WithDefault("with-equipment", new YesNoFormat(), false, packing => packing.WithEquipment,
            (packing, value) => packing with { WithEquipment = value },
            "Whether, as cargo, the spare ones lie in one package with the equipment that they power. No if left out."),
        Fields<BatteryPacking>.Optional("charge", PartFormat.Shares, packing => packing.Charge,
            (packing, value) => packing with { Charge = value }, "State of charge when handed over as cargo."));

    private static readonly Format<JourneyPlan> Journey = new RecordFormat<JourneyPlan>(
        () => new JourneyPlan(), "A journey that batteries of the kit make.",
        Fields<JourneyPlan>.OptionalGroup("title", PartFormat.Title, journey => journey.Title,
            (journey, value) => journey with { Title = value }, "Its name for people."),
        Fields<JourneyPlan>.Optional("date", new DateFormat(), journey => journey.Date,
            (journey, value) => journey with { Date = value },
            "The day of travel: rules change. The day on which it is asked if left out."),
        new Field<JourneyPlan, IReadOnlyList<Leg>>("by", new OneOrMoreFormat<Leg>(new ChoiceFormat<Leg>(), 10),
            journey => !journey.By.SequenceEqual([Leg.Flight]), journey => journey.By, (journey, value) =>
            journey with { By = value }, false,
            "How the batteries travel: with people on a passenger flight, as air cargo, by road. Flight if left out."),
        new Field<JourneyPlan, Travellers>("travellers", new TravellersFormat(),
            journey => journey.Travellers.Named || journey.Travellers.Count != 1, journey =>
            journey.Travellers, (journey, value) => journey with { Travellers = value }, false,
            "Who flies: how many, or their names. 1 if left out."),
        Fields<JourneyPlan>.WithDefault("after-days", new YesNoFormat(), false, journey => journey.AfterDays,
            (journey, value) => journey with { AfterDays = value },
            "Whether it comes after the days, as a flight home does. No if left out: what stays behind is missed on the days."),
        new Field<JourneyPlan, IReadOnlyList<string>>("batteries", new ListFormat<string>(new TextFormat(60), 200),
            journey => journey.Batteries.Count > 0, journey => journey.Batteries, (journey, value) =>
            journey with { Batteries = value }, false,
            "The batteries that come along, by names in the kit. All of the kit if left out."),
        Fields<JourneyPlan>.WithDefault("packed", new MapFormat<BatteryPacking>(Packing, "battery"),
            OrderedMap<BatteryPacking>.Empty, journey => journey.Packed, (journey, value) => journey with { Packed = value },
            "How they are packed, by names in the kit. What is not named is spare, with covered contacts."));

    /// <summary>The journeys of a scenario.</summary>
    public static readonly Field<Scenario> Field = Fields<Scenario>.WithDefault(
        "journeys", new MapFormat<JourneyPlan>(Journey, "journey", 50), OrderedMap<JourneyPlan>.Empty, scenario =>
            scenario.Journeys, (scenario, value) => scenario with { Journeys = value }, "Journeys with batteries.");

    /// <summary>A number of people, or their names.</summary>
    private sealed class TravellersFormat : Format<Travellers>, IAcceptedText
    {
        private static readonly CountFormat Number = new(1, MostTravellers);

        private static readonly ListFormat<string> Names = new(new TextFormat(60), MostTravellers);

        public string Accepted => $"a whole number, 1 to {MostTravellers}, or names in square brackets, such as [Ada, Ben]";

        public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out Travellers value)
        {
            value = null;
            if (node is TextNode { Text: var text }
                && int.TryParse(WrittenDigits.Plain(text), NumberStyles.None, CultureInfo.InvariantCulture, out var count)
                    && count is >= 1 and <= MostTravellers)
            {
                value = Travellers.Of(count);
                return true;
            }
            if (node is ListNode { Items.Count: > 0 })
            {
                if (!Names.TryRead(node, path, log, out var names))
                    return false;
                value = new Travellers(names, true);
                return true;
            }
            log.Error(node.At, path, $"Found {node.Describe()}.", Accepted);
            return false;
        }

        public override FileNode Write(Travellers value) => value.Named ? Names.Write(value.Names) : Number.Write(value.Count);

        public override JsonObject Schema()
        {
            var names = Names.Schema();
            names["minItems"] = 1;
            return new JsonObject { ["anyOf"] = new JsonArray(Number.Schema(), names) };
        }

        public override IEnumerable<(string Path, string Text)> NumericFields(Travellers value, string path) =>
            value.Named ? [] : Number.NumericFields(value.Count, path);

        internal override FormatOutline Outline() => Names.Outline() with { Accepted = Accepted };
    }
}

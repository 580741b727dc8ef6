using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files.Formats;

namespace RigScenarios.Drafts;

/// <summary>One field of the form beside the things: a path of the scenario's file.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Path">Its path, with {build}, {day}, {charger} and {journey} for their names.</param>
/// <param name="Label">What is asked for, in a few words.</param>
/// <param name="Help">One line for someone who is tired.</param>
/// <param name="Example">How an answer is written.</param>
/// <param name="Unit">The unit of a number that is written without one; empty for words.</param>
public sealed record RigField(string Key, string Path, string Label, string Help, string Example, string Unit = "")
{
    /// <summary>Answers to pick from; none where anything can be written.</summary>
    public IReadOnlyList<FieldChoice> Choices { get; init; } = [];

    /// <summary>Whether there is no full answer without it.</summary>
    public bool Required { get; init; }

    /// <summary>The path for a rig.</summary>
    public string PathIn(RigFrame frame, string charger = RigFields.NewCharger, string journey = RigFields.NewJourney)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return Path.Replace("{build}", frame.Build, StringComparison.Ordinal)
            .Replace("{day}", frame.Day, StringComparison.Ordinal).Replace("{charger}", charger, StringComparison.Ordinal)
            .Replace("{journey}", journey, StringComparison.Ordinal);
    }
}

/// <summary>What is asked beside the things: how it is carried, the battery's state, the day, the cold, the charger.</summary>
public static class RigFields
{
    /// <summary>The name of a charger that the form adds.</summary>
    public const string NewCharger = "charger";

    /// <summary>The name of a journey that the form adds.</summary>
    public const string NewJourney = "journey";

    /// <summary>The fields.</summary>
    public static IReadOnlyList<RigField> All { get; } =
    [
        new("title", "title", "What to call it", "A name you will know again next week.", "My rig"),
        new("stance", "builds.{build}.stance", "How it is carried", "On a tripod, on the shoulder or in the hand.", "tripod")
        {
            Choices = [.. Enum.GetValues<Stance>().Select(stance => ChoiceFormat<Stance>.Word(stance))
                .Select(word => new FieldChoice(word, word))],
        },
        new("charge", "builds.{build}.battery.charge", "Charge in the morning",
            "How full the battery is when the day begins. Full if left open.", "100 %", "%"),
        new("age-bought", "builds.{build}.battery.age.bought", "Bought new",
            "The month is enough. Leave it open if nobody knows: then the battery is taken as new, and the answer says so.",
            "2023-03"),
        new("age-second-hand", "builds.{build}.battery.age.second-hand", "Second-hand",
            "Of what somebody else did with it nothing is known: only what was measured counts then. No if left open.", "no")
        {
            Choices = [new("no", "no"), new("yes", "yes, somebody else had it before")],
        },
        new("age-kept", "builds.{build}.battery.age.kept", "Kept between shoots",
            "A full battery ages faster than one at half charge. Full if left open.", "60 %", "%")
        {
            Choices = [new("full", "full"), new("half", "at about half charge"), new("as it came back", "as it came back")],
        },
        new("age-place", "builds.{build}.battery.age.place", "Where it is kept",
            "Warmth ages it most of all. A room if left open.", "25 °C", "°C")
        {
            Choices = [new("fridge", "in a fridge (8 °C)"), new("room", "in a room (20 °C)"),
                new("warm store", "in a warm store (30 °C)"), new("hot van", "in a hot van (45 °C)")],
        },
        new("age-shoots", "builds.{build}.battery.age.shoots-per-month", "Shoots a month",
            "On how many days of a month it is used. 2 if left open.", "4"),
        new("age-emptied", "builds.{build}.battery.age.emptied", "How far a shoot empties it",
            "As a rule, over the time that you have it. Half if left open.", "70 %", "%")
        {
            Choices = [new("a little", "a little (a fifth)"), new("half", "half"), new("mostly", "mostly (four fifths)"),
                new("to the end", "to the end")],
        },
        new("capacity-left", "builds.{build}.battery.capacity-left", "What it still holds, if measured",
            "Run it down once at a load that you know: the watt-hours that it gave over those on its label. It outweighs all "
                + "that is said above.", "90 %", "%"),
        new("resistance-growth", "builds.{build}.battery.resistance-growth", "Growth of its resistance, if measured",
            "How many times the resistance of a new battery. Leave it open if nobody measured it.", "1.3"),
        new("age-until", "builds.{build}.battery.age.until", "On which day",
            "What was measured holds on this day, and so does the age. Today's date is filled in; without one it is the day on "
                + "which somebody asks.", "2026-11-30"),
        new("start-temperature", "builds.{build}.battery.start-temperature", "How warm the battery starts",
            "Out of a warm bag it starts warmer than the air. That of the air if left open.", "15 °C", "°C"),
        new("slide-middle", "builds.{build}.on-head.slide-middle", "Where the camera plate is screwed on",
            "How far ahead of the camera's own tripod socket, with the plate in the middle of its slide; below zero: behind "
                + "it. Under the socket if left open.", "25 mm", "mm"),
        new("blocks", "days.{day}.blocks", "The day", "What the rig does, hour by hour. Start from a typical day and change it.",
            "") { Required = true },
        new("day-title", "days.{day}.title", "What to call the day", "A name for the answer. Leave it open if you like.",
            "Night at the harbour"),
        new("starts", "days.{day}.starts", "Call time", "When the first block begins. Leave it open if clock times don't matter.",
            "06:30"),
        new("ambient", "days.{day}.ambient", "How cold", "The air around the rig at its coldest.", "-8 °C", "°C")
        {
            Required = true,
        },
        new("swap-at", "swaps.reserve", "Swap at",
            "A battery is swapped when its charge is down to this, but not while the camera rolls. 15 % if left open (common "
                + "practice, no source).", "20 %", "%"),
        new("charger-current", "chargers.{charger}.current", "Charging current",
            "Of each bay, from the charger's label. 3 A is taken if left open (common practice, no source).", "2.5 A", "A"),
        new("charger-stands", "chargers.{charger}.stands", "Where the charger stands",
            "A cold battery can't be charged. In a room of 20 °C if left open.", ChargerPlaces.Indoors)
        {
            Choices = ChargerPlaces.Choices,
        },
        new("charger-power-from", "chargers.{charger}.power-from", "What the charger has its power from",
            "A generator brings cautions. Leave it open if you don't know.", "mains")
        {
            Choices = [.. Enum.GetValues<PowerSource>().Select(source => ChoiceFormat<PowerSource>.Word(source))
                .Select(word => new FieldChoice(word, word))],
        },
        new("power-hours", "chargers.{charger}.power-hours", "When the charger has power",
            "From when to when on every day: a generator's hours, a lunch break. All hours if left open.", "12:00-14:00"),
        new("budget", "costs.budget", "What it may cost",
            "The most that you would pay for all of it, with the currency's three letters. With it the answer asks what it "
                + "costs.",
            "2500 EUR"),
        new("others-are", "costs.others-are", "How you have it",
            "What is owned costs nothing more. Bought if left open; a thing of which the file says it itself keeps that.",
            "bought")
        {
            Choices = [new("owned", "all is owned"), new("bought", "it is to be bought"), new("rented", "it is to be rented")],
        },
        new("rented-days", "costs.rented-days", "Days of rent",
            "A week costs as much as three days and a month as ten where the file says nothing else (common practice, no "
                + "source). As many as the shooting days if left open.", "5"),
        new("journey-by", "journeys.{journey}.by", "How the batteries travel",
            "What the rules say of them is then part of the answer. Leave it open if they stay at home.", "flight")
        {
            Choices = [new("flight", "in a passenger flight, with people"), new("cargo", "as air cargo"), new("road", "by road")],
        },
        new("journey-travellers", "journeys.{journey}.travellers", "How many people carry them",
            "The rules count batteries for each passenger. One if left open.", "2"),
    ];

    /// <summary>The field of a key.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static RigField Of(string key) => All.First(field => field.Key == key);
}

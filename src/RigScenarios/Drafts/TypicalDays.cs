using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>A day to start from. Invented.</summary>
/// <param name="Key">Its short name.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Sentence">What kind of day it is.</param>
/// <param name="Starts">When the first block begins.</param>
/// <param name="Ambient">Temperature of the air.</param>
/// <param name="Blocks">The blocks; they name no device but the camera, so that they fit any rig.</param>
public sealed record TypicalDay(string Key, string Title, string Sentence, TimeOnly Starts, Temperature Ambient,
    OrderedMap<DayBlock> Blocks)
{
    /// <summary>A day with these hours in place of its own.</summary>
    /// <param name="day">The day before; what the hours don't speak of stays.</param>
    /// <param name="camera">The name of the camera in the kit.</param>
    internal ShootingDay On(ShootingDay day, string camera) => day with
    {
        Title = Title,
        Starts = Starts,
        Ambient = Ambient,
        AmbientPoints = [],
        Blocks = new OrderedMap<DayBlock>(Blocks.Select(block => KeyValuePair.Create(block.Key, block.Value with
        {
            States = new OrderedMap<PowerState>(block.Value.States.Select(state => KeyValuePair.Create(camera, state.Value))),
        }))),
    };
}

/// <summary>Five invented days to start from and then change.</summary>
public static class TypicalDays
{
    /// <summary>The days.</summary>
    public static IReadOnlyList<TypicalDay> All { get; } =
    [
        Day("long-day-outdoors", "A long day outdoors",
            "Documentary, ten hours outside: short takes, long waits with the rig ready, one meal.", new(6, 30), 5,
            ("rigging", "Rigging and picture check", 45, PowerState.Standby, PowerState.Standby),
            ("early-takes", "Early takes", 60, PowerState.Record, PowerState.Record),
            ("morning-wait", "Waiting for the light", 75, PowerState.Standby, PowerState.Off),
            ("morning-takes", "Morning takes", 70, PowerState.Record, PowerState.Record),
            ("meal", "Meal", 60, PowerState.Off, PowerState.Off),
            ("move", "Move to the next place", 45, PowerState.Off, PowerState.Off),
            ("second-rigging", "Rigging again", 30, PowerState.Standby, PowerState.Standby),
            ("afternoon-takes", "Afternoon takes", 75, PowerState.Record, PowerState.Record),
            ("afternoon-wait", "Waiting, rig ready", 60, PowerState.Standby, PowerState.Standby),
            ("last-takes", "Last takes", 50, PowerState.Record, PowerState.Record),
            ("wrap", "Packing up", 30, PowerState.Off, PowerState.Off)),
        Day("interviews-indoors", "Interviews indoors",
            "Three sit-down interviews in a room: the camera runs through each one, everything stays on while chairs are moved.",
            new(9, 0), 21,
            ("setting-up", "Light, sound and picture check", 75, PowerState.Standby, PowerState.Standby),
            ("first-interview", "First interview", 60, PowerState.Record, PowerState.Record),
            ("change-over", "Next guest sits down", 25, PowerState.Standby, PowerState.Standby),
            ("second-interview", "Second interview", 70, PowerState.Record, PowerState.Record),
            ("meal", "Meal", 60, PowerState.Off, PowerState.Off),
            ("setting-again", "Turning the room round", 40, PowerState.Standby, PowerState.Standby),
            ("third-interview", "Third interview", 90, PowerState.Record, PowerState.Record),
            ("hands-and-details", "Hands, faces, details", 35, PowerState.Record, PowerState.Record),
            ("wrap", "Packing up", 25, PowerState.Off, PowerState.Off)),
        Day("moves-through-town", "Short moves through town",
            "Six places in one day: switched off on the way, quickly on again, twenty to thirty minutes of takes at each.",
            new(8, 0), 12,
            ("rigging", "Rigging at the van", 30, PowerState.Standby, PowerState.Standby),
            ("market", "The market", 30, PowerState.Record, PowerState.Record),
            ("way-one", "On the way", 20, PowerState.Off, PowerState.Off),
            ("bridge", "The bridge", 25, PowerState.Record, PowerState.Record),
            ("way-two", "On the way, camera ready", 25, PowerState.Standby, PowerState.Off),
            ("workshop", "The workshop", 30, PowerState.Record, PowerState.Record),
            ("meal", "Meal", 50, PowerState.Off, PowerState.Off),
            ("tram", "In the tram", 20, PowerState.Record, PowerState.Record),
            ("way-three", "On the way", 25, PowerState.Off, PowerState.Off),
            ("school-yard", "The school yard", 30, PowerState.Record, PowerState.Record),
            ("waiting", "Waiting for dusk", 40, PowerState.Standby, PowerState.Standby),
            ("lights", "The lights come on", 25, PowerState.Record, PowerState.Record),
            ("wrap", "Packing up", 20, PowerState.Off, PowerState.Off)),
        Day("night-in-the-cold", "A night in the cold",
            "Night exterior in frost, past midnight: long waits for lamps, the rig kept ready, a warm meal indoors.",
            new(19, 0), -6,
            ("rigging", "Rigging and picture check", 45, PowerState.Standby, PowerState.Standby),
            ("first-takes", "First takes", 55, PowerState.Record, PowerState.Record),
            ("lamps", "Waiting for the lamps", 50, PowerState.Standby, PowerState.Off),
            ("late-takes", "Takes before midnight", 60, PowerState.Record, PowerState.Record),
            ("meal", "Meal", 45, PowerState.Off, PowerState.Off),
            ("move", "Across the street", 30, PowerState.Standby, PowerState.Standby),
            ("night-takes", "Takes after midnight", 70, PowerState.Record, PowerState.Record),
            ("cold-wait", "Waiting, rig ready", 35, PowerState.Standby, PowerState.Standby),
            ("last-takes", "Last takes", 45, PowerState.Record, PowerState.Record),
            ("wrap", "Packing up", 30, PowerState.Off, PowerState.Off)),
        Day("rainy-day", "A rainy day",
            "Eight hours outside between showers: short takes under cover, many waits with everything switched on.",
            new(7, 30), 9,
            ("cover", "Rain cover and rigging", 50, PowerState.Standby, PowerState.Standby),
            ("dry-spell", "Takes in a dry spell", 40, PowerState.Record, PowerState.Record),
            ("shower", "Waiting out a shower", 45, PowerState.Standby, PowerState.Standby),
            ("under-roof", "Takes under a roof", 65, PowerState.Record, PowerState.Record),
            ("drying", "Drying lens and rig", 25, PowerState.Off, PowerState.Off),
            ("meal", "Meal", 55, PowerState.Off, PowerState.Off),
            ("long-rain", "Waiting, rig ready", 60, PowerState.Standby, PowerState.Standby),
            ("wet-street", "Takes in the wet street", 70, PowerState.Record, PowerState.Record),
            ("second-shower", "Waiting out a shower", 30, PowerState.Standby, PowerState.Standby),
            ("last-takes", "Last takes", 35, PowerState.Record, PowerState.Record),
            ("wrap", "Packing up", 25, PowerState.Off, PowerState.Off)),
    ];

    private static TypicalDay Day(string key, string title, string sentence, TimeOnly starts, double celsius,
        params (string Name, string Title, int Minutes, PowerState Camera, PowerState Others)[] blocks) =>
        new(key, title, sentence, starts, Temperature.FromDegreesCelsius(celsius),
            new OrderedMap<DayBlock>(blocks.Select(block => KeyValuePair.Create(block.Name, new DayBlock
        {
            Title = block.Title,
            Length = Duration.FromMinutes(block.Minutes),
            Others = block.Others,
            States = block.Camera == block.Others ? OrderedMap<PowerState>.Empty
                : OrderedMap<PowerState>.Empty.With("camera", block.Camera),
        }))));
}

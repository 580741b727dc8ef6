using RigScenarios.Files.Formats;
using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>One question about a rig, in the words that the form and the terminal share.</summary>
/// <param name="Key">Its key: for a thing on the rig the word of its role, else the field of the draft.</param>
/// <param name="Label">What is asked for, in a few words.</param>
/// <param name="Help">One line for someone who is tired.</param>
/// <param name="PartKinds">The kinds of part to choose from; empty where no part is asked for.</param>
/// <param name="Required">Whether there is no full answer without it.</param>
/// <param name="Many">Whether there can be more than one.</param>
/// <param name="Example">How an answer is written, for questions that ask for a figure.</param>
public sealed record RigQuestion(string Key, string Label, string Help, IReadOnlyList<PartKind> PartKinds, bool Required,
    bool Many, string Example = "")
{
    /// <summary>The role of the things that it asks for; null where it asks for a figure.</summary>
    public RigRole? Role => PartKinds.Count == 0
        ? null : Enum.GetValues<RigRole>().Single(role => ChoiceFormat<RigRole>.Word(role) == Key);
}

/// <summary>One figure of a label, for what is not listed.</summary>
/// <param name="Key">Its key in the draft.</param>
/// <param name="Label">What is asked for.</param>
/// <param name="Help">Where to find it and what happens if it is left open.</param>
/// <param name="Example">How it is written.</param>
/// <param name="Roles">The things that have it.</param>
/// <param name="Needed">The things for which it can't be left open (a device's watts can where volts and amperes are
/// given).</param>
public sealed record LabelQuestion(string Key, string Label, string Help, string Example,
    IReadOnlyList<RigRole> Roles, IReadOnlyList<RigRole> Needed);

/// <summary>The questions that make a rig, in the order in which they are asked.</summary>
public static class RigQuestions
{
    private static readonly RigRole[] Devices = [RigRole.Camera, RigRole.Monitor, RigRole.Transmitter, RigRole.Motor,
        RigRole.MotorController];

    /// <summary>The things on the rig.</summary>
    public static IReadOnlyList<RigQuestion> Things { get; } =
    [
        new("camera", "Camera body",
            "The body you shoot with. The rig is of no use without it, so its stop is the end of the day.",
            [PartKind.Body], true, false),
        new("battery", "Battery", "The one battery that feeds the rig. How many of them you have is asked after the day.",
            [PartKind.Battery], true, false),
        new("plate", "Battery plate",
            "What the battery clicks onto. Leave it open if the battery feeds things by its own outlets.",
            [PartKind.Plate], false, false),
        new("lens", "Lens", "For the weight; a lens draws nothing here.", [PartKind.Lens, PartKind.LensAdapter], false, true),
        new("monitor", "Monitor", "On-board monitor, recorder or eyepiece.", [PartKind.Monitor], false, true),
        new("transmitter", "Wireless video", "Transmitter on the rig, if there is one.", [PartKind.Transmitter], false, true),
        new("motor", "Lens motors", "Motors for focus, iris or zoom that run from the rig's battery.",
            [PartKind.Motor], false, true),
        new("motor-controller", "Motor control", "The receiver or controller of the lens motors.",
            [PartKind.MotorController], false, true),
        new("regulator", "Regulator or dummy battery",
            "Leave it open: where something can't take the battery's voltage, a fitting one is proposed.",
            [PartKind.Regulator], false, true),
        new("head", "Head", "What the rig sits on, for whether it balances. Leave it open if there is none or you don't know.",
            [PartKind.Head], false, false),
        new("legs", "Tripod", "What the head stands on, for when it tips over. Leave it open if there is none or you don't know.",
            [PartKind.Tripod], false, false),
        new("other", "Everything else on the rig",
            "Cage, rods, handles, arms: for the weight and for where things sit. A splitter also feeds things.",
            [PartKind.Cage, PartKind.Rods, PartKind.Handle, PartKind.Arm, PartKind.Support, PartKind.ShoulderPad,
                PartKind.FollowFocus, PartKind.Cable, PartKind.Splitter], false, true),
    ];

    /// <summary>What is asked beside the things: how it is carried, the battery's state, the day, the cold.</summary>
    public static IReadOnlyList<RigQuestion> Circumstances { get; } =
    [
        new("title", "What to call it", "A name you will know again next week.", [], false, false, "My rig"),
        new("stance", "How it is carried", "On a tripod, on the shoulder or in the hand.", [], false, false, "tripod"),
        new("charge", "Charge in the morning", "How full the battery is when the day begins. Full if left open.", [], false,
            false, "100 %"),
        new("capacity-left", "What age has left",
            "A battery used for two or three years often holds less than new. Taken as new if left open, and the answer says so.",
            [], false, false, "90 %"),
        new("resistance-growth", "Growth of its resistance",
            "How many times the resistance of a new battery, if somebody measured it. Leave it open if not.", [],
            false, false, "1.3"),
        new("start-temperature", "How warm the battery starts",
            "Out of a warm bag it starts warmer than the air. That of the air if left open.", [], false, false, "15 °C"),
        new("slide-middle", "Where the camera plate is screwed on",
            "How far ahead of the camera's own tripod socket, with the plate in the middle of its slide; below zero: behind "
                + "it. Under the socket if left open.", [], false, false, "25 mm"),
        new("blocks", "The day", "What the rig does, hour by hour. Start from a typical day and change it.", [], true, false),
        new("battery-count", "How many batteries",
            "All of the kind on the rig, charged as it is. Leave it open if one is all you want to know about.", [],
            false, false, "3"),
        new("swap-at", "Swap at",
            "A battery is swapped when its charge is down to this, but not while the camera rolls. 15 % if left open (common "
                + "practice, no source).", [], false, false, "20 %"),
        new("charger-bays", "Bays of the charger",
            "How many batteries it takes at once. Leave it open if nothing is charged during the day.", [], false, false, "2"),
        new("charger-current", "Charging current",
            "Of each bay, from the charger's label. 3 A is taken if left open (common practice, no source).", [], false,
            false, "2.5 A"),
        new("power-hours", "When the charger has power",
            "From when to when on every day: a generator's hours, a lunch break. All hours if left open.", [], false,
            false, "12:00-14:00"),
        new("starts", "First call", "When the first block begins. Leave it open if clock times don't matter.", [], false,
            false, "06:30"),
        new("ambient", "How cold", "The air around the rig at its coldest.", [], true, false, "-8 °C"),
    ];

    /// <summary>Every question, things first.</summary>
    public static IReadOnlyList<RigQuestion> All { get; } = [.. Things, .. Circumstances];

    /// <summary>What is asked of a thing that is not listed.</summary>
    public static IReadOnlyList<LabelQuestion> Label { get; } =
    [
        new("name", "Name", "What you call it.", "My monitor", Enum.GetValues<RigRole>(), []),
        new("energy", "Watt-hours", "On every battery's label, as Wh.", "98 Wh", [RigRole.Battery], [RigRole.Battery]),
        new("power", "Watts", "What it draws when it works. No watts on the label? Give volts and amperes instead.", "9 W",
            [.. Devices, RigRole.Plate, RigRole.Regulator, RigRole.Other], Devices),
        new("voltage", "Volts", "The voltage on the label. A battery without one is taken as 14.4 V.", "12 V",
            [.. Devices, RigRole.Battery], []),
        new("current", "Amperes", "The current on the label. It is the most that it takes or gives.", "0.8 A",
            [.. Devices, RigRole.Battery, RigRole.Plate, RigRole.Regulator], []),
        new("output-voltage", "Volts it gives", "What comes out of the regulator.", "7.6 V", [RigRole.Regulator],
            [RigRole.Regulator]),
        new("standby", "Watts on standby",
            "Switched on, not recording. As when it works if left open, which is on the cautious side.", "5 W", Devices, []),
        new("minimum-voltage", "Least volts", "Below it, it stops. From the data sheet; leave it open if you don't know.", "7 V",
            [.. Devices, RigRole.Plate, RigRole.Regulator], []),
        new("maximum-voltage", "Most volts",
            "Above it, it may be destroyed. From the data sheet; leave it open if you don't know.", "17 V",
            [.. Devices, RigRole.Regulator], []),
        new("rated-load", "Rated load", "The load that its maker rates the head for. Without it nothing is said about the load.",
            "8 kg", [RigRole.Head], []),
        new("drag", "Tilt drag",
            "Its moment at 10 °/s, at the setting that you use; it slows and holds nothing. 2 N·m is assumed if left open.",
            "2.5 N·m", [RigRole.Head], []),
        new("counterbalance", "Most counterbalance",
            "The most that its counterbalance gives. What holds the rated load with its centre 100 mm up is taken if left open.",
            "10 N·m", [RigRole.Head], []),
        new("height", "Height", "From the ground to where the head sits, as you set them. 1400 mm is taken if left open.",
            "1400 mm", [RigRole.Legs], []),
        new("foot-radius", "Middle to a foot", "From the middle between the feet to a foot. 600 mm is taken if left open.",
            "620 mm", [RigRole.Legs], []),
        new("mass", "Mass", "Put it on a kitchen scale. A usual one is taken if left open.", "310 g",
            Enum.GetValues<RigRole>(), []),
    ];

    /// <summary>What must still be said of a thing that is not listed before it can be counted; paths are <c>own.power</c> and
    /// the like.</summary>
    public static IReadOnlyList<Scenarios.Diagnostic> StillNeeded(RigRole role, OwnFigures own)
    {
        ArgumentNullException.ThrowIfNull(own);
        var log = new ReadLog("");
        OwnPart.Check(role, own, "own", log);
        return log.Problems;
    }

    /// <summary>The question that asks for things of a role.</summary>
    public static RigQuestion For(RigRole role) => Things[role switch
    {
        RigRole.Camera => 0,
        RigRole.Battery => 1,
        RigRole.Plate => 2,
        RigRole.Lens => 3,
        _ => (int)role,
    }];
}

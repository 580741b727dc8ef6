using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>One question about a thing on the rig, in the words that the form and the terminal share.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Label">What is asked for, in a few words.</param>
/// <param name="Help">One line for someone who is tired.</param>
/// <param name="PartKinds">The kinds of part to choose from; empty where only own figures can be given.</param>
/// <param name="Required">Whether there is no full answer without it.</param>
/// <param name="Many">Whether there can be more than one.</param>
public sealed record RigQuestion(string Key, string Label, string Help, IReadOnlyList<PartKind> PartKinds, bool Required,
    bool Many)
{
    /// <summary>The kind of a part of one's own figures.</summary>
    internal PartKind OwnKind => Key is "other" or RigQuestions.Device ? PartKind.Support : PartKinds[0];
}

/// <summary>The questions on the things of a rig, in the order in which they are asked.</summary>
public static class RigQuestions
{
    /// <summary>The key of the question for the camera body.</summary>
    public const string Camera = "camera";

    /// <summary>The key of the question for whatever else draws power.</summary>
    public const string Device = "device";

    /// <summary>The questions.</summary>
    public static IReadOnlyList<RigQuestion> All { get; } =
    [
        new(Camera, "Camera body",
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
        new(Device, "Anything else that draws power", "A small light, a sound receiver, a fan: what its label says.", [],
            false, true),
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

    /// <summary>The question of a key; null if there is none.</summary>
    public static RigQuestion? Find(string key) => All.FirstOrDefault(question => question.Key == key);

    internal static RigQuestion For(PartKind kind) => All.First(question => question.PartKinds.Contains(kind));

    internal static int IndexOf(string key) => All.TakeWhile(question => question.Key != key).Count();
}

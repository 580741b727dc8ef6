namespace RigScenarios.Answers.Exercises;

/// <summary>What can be wrong with a rig of an exercise: what a student may suspect. A new kind is a line here and one of
/// words.</summary>
public enum CauseKind
{
    /// <summary>A battery that has lost capacity.</summary>
    WornBattery,

    /// <summary>A battery that was not charged.</summary>
    ChargeForgotten,

    /// <summary>A battery that begins the day cold.</summary>
    ColdBattery,

    /// <summary>A device on standby while nothing is shot.</summary>
    LeftOn,

    /// <summary>A device that draws more than one of its kind has to.</summary>
    HungryDevice,

    /// <summary>A regulator that stops at a higher voltage.</summary>
    EarlyRegulator,

    /// <summary>A cable for less current.</summary>
    WeakCable,

    /// <summary>An outlet for less current.</summary>
    WrongOutlet,

    /// <summary>The camera plate set wrong on the head.</summary>
    CameraPlate,

    /// <summary>The counterbalance set wrong.</summary>
    Counterbalance,

    /// <summary>A part that sits elsewhere on its mount.</summary>
    PartOutOfPlace,

    /// <summary>A head rated for less.</summary>
    SmallHead,

    /// <summary>A tripod drawn out too far, or not spread.</summary>
    TripodStance,
}

/// <summary>The words of the kinds of causes.</summary>
public static class CauseKinds
{
    /// <summary>The kind in words that a student chooses from: "a worn battery".</summary>
    /// <param name="kind">The kind.</param>
    public static string InWords(this CauseKind kind) => kind switch
    {
        CauseKind.WornBattery => "a worn battery",
        CauseKind.ChargeForgotten => "a battery not charged",
        CauseKind.ColdBattery => "a cold battery",
        CauseKind.LeftOn => "something left on in the pauses",
        CauseKind.HungryDevice => "a device that draws too much",
        CauseKind.EarlyRegulator => "a regulator that stops too early",
        CauseKind.WeakCable => "a cable that is too thin",
        CauseKind.WrongOutlet => "an outlet that allows too little",
        CauseKind.CameraPlate => "the camera plate on the head",
        CauseKind.Counterbalance => "the counterbalance",
        CauseKind.PartOutOfPlace => "a part that sits in the wrong place",
        CauseKind.SmallHead => "a head for less load",
        _ => "how the tripod stands",
    };
}

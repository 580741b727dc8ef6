namespace RigScenarios.Limits;

/// <summary>Every kind of limit that a model looks at. A new one is a line here, a line in <c>Answers/LimitSentences</c>, and
/// what the model finds.</summary>
public enum LimitKind
{
    /// <summary>Current that a cable is rated for.</summary>
    RatedCurrent,

    /// <summary>Current through an outlet, a plate, a splitter, or out of the battery.</summary>
    Current,

    /// <summary>Current out of a regulator.</summary>
    OutputCurrent,

    /// <summary>Current that a fuse carries for hours at the temperature of the air.</summary>
    Fuse,

    /// <summary>Lowest voltage at which a device works.</summary>
    LowestVoltage,

    /// <summary>Lowest voltage of a regulator's input.</summary>
    Input,

    /// <summary>Voltage below which a plate switches off.</summary>
    SwitchOff,

    /// <summary>Voltage at which the battery's own protection ends the discharge.</summary>
    CutOff,

    /// <summary>Temperature of the battery.</summary>
    Temperature,

    /// <summary>Load of a head, an arm, a tripod, by mass.</summary>
    Load,

    /// <summary>Moment that a joint holds.</summary>
    Moment,

    /// <summary>Bending stress.</summary>
    Stress,

    /// <summary>Pull on a screw, against the force that it clamps with.</summary>
    Clamping,

    /// <summary>How far the centre of gravity is from the middle of the camera plate's travel, against half of the
    /// travel.</summary>
    Travel,

    /// <summary>Moment that is left over at the worst tilt, against the friction that holds the head at rest.</summary>
    TiltAtRest,

    /// <summary>Moment that is left over at the worst tilt, against that under which a head that is let go falls.</summary>
    Creep,

    /// <summary>Moment when something comes off, against the tilt lock.</summary>
    TiltLock,

    /// <summary>Angle by which the tripod may lean until it tips.</summary>
    TipAngle,

    /// <summary>Gust at which the tripod tips, against the gust that is expected.</summary>
    Gust,

    /// <summary>Mass that one person lifts.</summary>
    Lifting,

    /// <summary>Moment that a hand or shoulder holds.</summary>
    Holding,
}

/// <summary>What each kind of limit is like.</summary>
public static class LimitKinds
{
    /// <summary>On which side of the limit the value must stay.</summary>
    /// <param name="kind">The kind.</param>
    public static LimitSide Side(this LimitKind kind) => kind switch
    {
        LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff or LimitKind.CutOff or LimitKind.TipAngle
            or LimitKind.Gust => LimitSide.StaysOver,
        _ => LimitSide.StaysUnder,
    };
}

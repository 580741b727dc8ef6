namespace RigScenarios.Parts;

/// <summary>Where on its box a part is held: the middle of a face, or the middle of the box.</summary>
public enum MountingFace
{
    /// <summary>The middle of the under side; where most things are screwed on.</summary>
    Underside,

    /// <summary>The middle of the top.</summary>
    Top,

    /// <summary>The middle of the rear face, such as a lens's flange or the foot of an arm that runs forward.</summary>
    Rear,

    /// <summary>The middle of the front face, such as a battery that hangs behind its plate.</summary>
    Front,

    /// <summary>The middle of the left side.</summary>
    LeftSide,

    /// <summary>The middle of the right side.</summary>
    RightSide,

    /// <summary>The middle of the box.</summary>
    Middle,
}

/// <summary>What holds for kinds of parts where a part itself says nothing.</summary>
public static class MountingFaces
{
    /// <summary>Where parts of a kind are usually held (common practice, no source).</summary>
    public static MountingFace Usual(this PartKind kind) => kind switch
    {
        PartKind.Lens or PartKind.LensAdapter or PartKind.Arm => MountingFace.Rear,
        PartKind.Battery => MountingFace.Front,
        PartKind.Rods or PartKind.Cage or PartKind.Cable or PartKind.Regulator => MountingFace.Middle,
        PartKind.ShoulderPad => MountingFace.Top,
        _ => MountingFace.Underside,
    };
}

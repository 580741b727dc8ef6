namespace RigScenarios.Balance;

/// <summary>A figure of a placed part that can be varied.</summary>
public enum PlacementField
{
    /// <summary>Offset along the carrier's x axis.</summary>
    OffsetX,

    /// <summary>Offset along the carrier's y axis.</summary>
    OffsetY,

    /// <summary>Offset along the carrier's z axis.</summary>
    OffsetZ,

    /// <summary>The part's mass.</summary>
    Mass,

    /// <summary>Turn to the left against the carrier.</summary>
    Yaw,

    /// <summary>Turn nose down against the carrier.</summary>
    Pitch,

    /// <summary>Turn left side up against the carrier.</summary>
    Roll,
}

using UnitsNet;

namespace RigScenarios.Builds;

/// <summary>What holds a part where it sits.</summary>
public enum Fixing
{
    /// <summary>A 1/4-20 screw.</summary>
    QuarterInchScrew,

    /// <summary>A 3/8-16 screw.</summary>
    ThreeEighthsScrew,

    /// <summary>An accessory shoe.</summary>
    Shoe,

    /// <summary>A clamp on rods.</summary>
    RodClamp,

    /// <summary>A lens mount.</summary>
    LensMount,

    /// <summary>The end of an arm.</summary>
    ArmEnd,

    /// <summary>A battery plate.</summary>
    BatteryPlate,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>
/// Where a thing of a build sits: on what, and how far its own mounting point lies from that thing's mounting point, along that
/// thing's axes. Below zero:
/// backward, right, down.
/// </summary>
public sealed record PlaceInUse
{
    /// <summary>What carries it, by its name in the kit; null for the rig's own origin, the middle of the body's tripod
    /// socket.</summary>
    public string? On { get; init; }

    /// <summary>Whether it sits at the far end of the arm that carries it; distances then count from that end.</summary>
    public bool AtEnd { get; init; }

    /// <summary>Forward; null means 0.</summary>
    public Length? Forward { get; init; }

    /// <summary>To the left; null means 0.</summary>
    public Length? Left { get; init; }

    /// <summary>Up; null means 0.</summary>
    public Length? Up { get; init; }

    /// <summary>Turned to the left about the upright axis; null means 0.</summary>
    public Angle? TurnedLeft { get; init; }

    /// <summary>Then tipped nose down; null means 0.</summary>
    public Angle? NoseDown { get; init; }

    /// <summary>Then rolled, left side up; null means 0.</summary>
    public Angle? LeftSideUp { get; init; }

    /// <summary>The least <see cref="Forward"/> that its mount allows; null if it can't be moved.</summary>
    public Length? SlidesFrom { get; init; }

    /// <summary>The greatest <see cref="Forward"/> that its mount allows; null if it can't be moved.</summary>
    public Length? SlidesTo { get; init; }

    /// <summary>How far its true place may be from the one given, either way along each axis; null if nobody said.</summary>
    public Length? Within { get; init; }

    /// <summary>What holds it; null for what is usual there.</summary>
    public Fixing? HeldBy { get; init; }
}

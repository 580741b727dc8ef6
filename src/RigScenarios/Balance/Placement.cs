using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>Where a part sits: on what, how far from it and how turned. Distances run along the axes of the carrier.</summary>
public sealed record Placement
{
    /// <summary>The part that carries it, by name; null for the rig frame itself.</summary>
    public string? Carrier { get; init; }

    /// <summary>From the carrier's mounting point to this part's mounting point, along the carrier's axes.</summary>
    public RigPoint Offset { get; init; } = RigPoint.Origin;

    /// <summary>How it is turned against its carrier.</summary>
    public Orientation Orientation { get; init; } = Orientation.Straight;

    /// <summary>How far the offset along the carrier's x axis can be set; null if it is fixed.</summary>
    public LengthRange? OffsetXRange { get; init; }

    /// <summary>At a point in the rig frame.</summary>
    public static Placement At(RigPoint point) => new() { Offset = point };

    /// <summary>On another part, such as a hole of a cage.</summary>
    /// <param name="carrier">The part that carries it.</param>
    /// <param name="offset">From the carrier's mounting point, along its axes.</param>
    public static Placement On(string carrier, RigPoint offset) => new() { Carrier = carrier, Offset = offset };

    /// <summary>On rods, which run along the x axis of the part that holds them.</summary>
    /// <param name="rods">The part that the rods are, or that holds them.</param>
    /// <param name="distance">Along the rods, forward from the mounting point of <paramref name="rods"/>.</param>
    /// <param name="range">What the rods allow; null if not known.</param>
    /// <param name="height">Of the part's mounting point over that of the rods.</param>
    public static Placement OnRods(string rods, Length distance, LengthRange? range = null, Length height = default) => new()
    {
        Carrier = rods,
        Offset = new(distance, Length.Zero, height),
        OffsetXRange = range,
    };

    /// <summary>At the end of an arm, which runs along its own x axis.</summary>
    /// <param name="arm">The part that the arm is; its own placement gives the direction.</param>
    /// <param name="armLength">From the arm's mounting point to its end.</param>
    /// <param name="orientation">How the part is turned against the arm.</param>
    public static Placement AtEndOf(string arm, Length armLength, Orientation orientation = default) => new()
    {
        Carrier = arm,
        Offset = new(armLength, Length.Zero, Length.Zero),
        Orientation = orientation,
    };
}

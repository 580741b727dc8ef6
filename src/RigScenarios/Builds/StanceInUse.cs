using UnitsNet;

namespace RigScenarios.Builds;

/// <summary>How a build sits on its head.</summary>
public sealed record HeadInUse
{
    /// <summary>The rig's x that stands over the head's centre when the plate is in the middle of its slide; null means
    /// 0.</summary>
    public Length? SlideMiddle { get; init; }

    /// <summary>From the rig's z = 0 down to the top of the camera plate: base plates and what else lies between; null if not
    /// known.</summary>
    public Length? BaseDepth { get; init; }

    /// <summary>The rig's x over the head's centre as the plate is set now; null if that is asked for.</summary>
    public Length? PlateAt { get; init; }

    /// <summary>The counterbalance as it is set now; null if that is asked for.</summary>
    public Torque? CounterbalanceAt { get; init; }

    /// <summary>The weight of a hand that turns the focus by the lens; null for <see cref="UsualFocusHand"/>.</summary>
    public Force? FocusHand { get; init; }

    /// <summary>A hand that rests lightly: 5 N (common practice, no source).</summary>
    public static Force UsualFocusHand { get; } = Force.FromNewtons(5);
}

/// <summary>What the wind comes over, by the classes of the gust table that is used.</summary>
public enum Surroundings
{
    /// <summary>Land: fields, hedges, houses here and there.</summary>
    Inland,

    /// <summary>Near a coast, the wind off the land.</summary>
    Coast,

    /// <summary>On the shore, the wind off the sea.</summary>
    Shore,

    /// <summary>At sea, far from land.</summary>
    Sea,
}

/// <summary>How the legs stand, where that differs from the part, and what may push them over.</summary>
public sealed record LegsInUse
{
    /// <summary>From the ground to where the head sits.</summary>
    public Length? Height { get; init; }

    /// <summary>From the middle between the feet to a foot.</summary>
    public Length? FootRadius { get; init; }

    /// <summary>Height of the legs' own centre of gravity.</summary>
    public Length? CentreHeight { get; init; }

    /// <summary>How the ground slopes; null means level.</summary>
    public Angle? Slope { get; init; }

    /// <summary>Mean wind over ten minutes that is expected; null if none is asked about.</summary>
    public Speed? Wind { get; init; }

    /// <summary>The height over the ground that <see cref="Wind"/> is for: 10 m of a forecast; null for that of the
    /// rig.</summary>
    public Length? WindHeight { get; init; }

    /// <summary>What lies around, which says how gusts run above the mean; null if not known.</summary>
    public Surroundings? Surroundings { get; init; }

    /// <summary>The lean that it is wished to stand; null for 10°, which is asked of audio and video equipment.</summary>
    public Angle? WantedLean { get; init; }

    /// <summary>Ballast that hangs on the axis of the legs; null for none.</summary>
    public Mass? Ballast { get; init; }

    /// <summary>Height of the hook that a ballast bag hangs from; null for a third of the height of the legs.</summary>
    public Length? BallastHeight { get; init; }
}

/// <summary>Where the rig rests on the shoulder; what is left out follows from the places of pad and handles.</summary>
/// <param name="Pad">x of the pad's contact.</param>
/// <param name="Hands">x of the hands.</param>
public sealed record ShoulderInUse(Length? Pad = null, Length? Hands = null);

/// <summary>How the rig is held in the hands.</summary>
public sealed record HandsInUse
{
    /// <summary>x of the hands on the rig; null for the handle or the body's middle.</summary>
    public Length? Hands { get; init; }

    /// <summary>How far the shoulder joint lies behind the hands; null for an upper arm at the side and a forearm held
    /// forward.</summary>
    public Length? ShoulderBehind { get; init; }

    /// <summary>The part of the weight that this arm carries; null for half.</summary>
    public Ratio? Share { get; init; }

    /// <summary>The greatest moment that this operator's shoulder gives, measured; null if not known.</summary>
    public Torque? GreatestEffort { get; init; }
}

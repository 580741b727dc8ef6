using RigScenarios.Balance;
using RigScenarios.Batteries;
using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Whether a build balances, what the hands and the stand have to hold, and what its joints carry: all answers of one build.</summary>
public sealed record BuildBalance
{
    /// <summary>The build's short name.</summary>
    public required string Name { get; init; }

    /// <summary>The build with its things at their places.</summary>
    public required BuildInPlace Rig { get; init; }

    /// <summary>Mass, centre, inertia.</summary>
    public MassProperties Mass => Rig.Placed.MassProperties;

    /// <summary>Boxes in each other's way, things outside the range of their mount.</summary>
    public required PlacementCheck Check { get; init; }

    /// <summary>Head, legs, shoulder.</summary>
    public required BuildSupports Supports { get; init; }

    /// <summary>The build on its head with the best plate and counterbalance; null without a head whose figures are known.</summary>
    public HeadBalance? Best { get; init; }

    /// <summary>The build on its head as plate and counterbalance are set; null where the build doesn't say how.</summary>
    public HeadBalance? AsSet { get; init; }

    /// <summary>What can happen to it: battery off, lens off, monitor swung aside, zoomed, a hand on the focus.</summary>
    public IReadOnlyList<HeadCase> Cases { get; init; } = [];

    /// <summary>On the stand with the head level; null without legs whose figures are known.</summary>
    public StandStability? Level { get; init; }

    /// <summary>On the stand at the tilt that is worst for it; null without head and legs.</summary>
    public StandStability? WorstTilt { get; init; }

    /// <summary>What the wind meets, from the boxes of rig and legs; null without legs.</summary>
    public Wind? Wind { get; init; }

    /// <summary>On the shoulder; null for other stances.</summary>
    public ShoulderBalance? Shoulder { get; init; }

    /// <summary>In the hands; null for other stances.</summary>
    public HandHold? Hands { get; init; }

    /// <summary>What part of the operator's greatest effort the hold takes, with the time that a published fit gives for it; null where that effort isn't known.</summary>
    public (Ratio Part, HoldingTime Time)? Holding { get; init; }

    /// <summary>The lift from the ground to where the rig is used, as the revised NIOSH equation judges it.</summary>
    public required Lifting Lift { get; init; }

    /// <summary>The joints, the weakest first.</summary>
    public required IReadOnlyList<JointFinding> Joints { get; init; }

    /// <summary>Parts with a rated load.</summary>
    public required IReadOnlyList<CarrierFinding> Carriers { get; init; }

    /// <summary>Rods.</summary>
    public required IReadOnlyList<RodFinding> Rods { get; init; }

    /// <summary>Lens mounts.</summary>
    public required IReadOnlyList<LensMountFinding> LensMounts { get; init; }

    /// <summary>What was taken because nobody gave it.</summary>
    public required IReadOnlyList<AssumedValue> Assumed { get; init; }

    /// <summary>The head as it is set, or else as it is best.</summary>
    public HeadBalance? Present => AsSet ?? Best;
}

using RigScenarios.Balance;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Limits;
using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Whether a build balances, what the hands and the stand have to hold, and what its joints carry: all answers of one
/// build.</summary>
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

    /// <summary>The build on its head with the best plate and counterbalance; null without a head whose figures are
    /// known.</summary>
    public HeadBalance? Best { get; init; }

    /// <summary>The build on its head as plate and counterbalance are set; null where the build doesn't say how.</summary>
    public HeadBalance? AsSet { get; init; }

    /// <summary>What can happen to it: battery off, lens off, monitor swung aside, zoomed, a hand on the focus.</summary>
    public IReadOnlyList<HeadCase> Cases { get; init; } = [];

    /// <summary>On the tripod with the head level; null without one whose figures are known.</summary>
    public StandStability? Level { get; init; }

    /// <summary>On the tripod at the tilt that is worst for it; null without head and tripod.</summary>
    public StandStability? WorstTilt { get; init; }

    /// <summary>On the tripod, at the worst tilt where that is known.</summary>
    public StandStability? Stand => WorstTilt ?? Level;

    /// <summary>The slope of the ground that the build is told; level if none.</summary>
    public Angle Slope => Rig.Build.OnLegs?.Slope ?? Angle.Zero;

    /// <summary>What the wind meets, from the boxes of rig and tripod; null without a tripod.</summary>
    public Wind? Wind { get; init; }

    /// <summary>The gust that tips it over on the slope that it stands on; null without a tripod, or where it tips by
    /// itself.</summary>
    public Speed? TippingGust => Wind is { } wind ? Stand?.TippingWind(wind, Slope) : null;

    /// <summary>The wind that is expected; null where the build is told none.</summary>
    public ExpectedWind? ExpectedWind => Wind is { } wind ? ExpectedWind.Of(Rig.Build.OnLegs, wind.Height) : null;

    /// <summary>The mean wind of a forecast, at the height that it is for, whose gusts tip it over on a slope; null without a
    /// tripod, or
    /// where it tips by itself.</summary>
    /// <param name="stand">The tripod with its rig, at the tilt that is asked about.</param>
    /// <param name="slope">The slope; 0 up to below 90°.</param>
    public Speed? TippingMean(StandStability stand, Angle slope)
    {
        ArgumentNullException.ThrowIfNull(stand);
        // Gusts are a fixed share of the mean, so that one of 1 m/s tells it.
        var one = (Rig.Build.OnLegs ?? new()) with { Wind = Speed.FromMetersPerSecond(1) };
        return Wind is { } wind && stand.TippingWind(wind, slope) is { } gust
            ? gust / ExpectedWind.Of(one, wind.Height)!.Gust.MetersPerSecond : null;
    }

    /// <summary>On the shoulder; null for other stances.</summary>
    public ShoulderBalance? Shoulder { get; init; }

    /// <summary>In the hands; null for other stances.</summary>
    public HandHold? Hands { get; init; }

    /// <summary>What part of the operator's greatest effort the hold takes, with the time that a published fit gives for it; null
    /// where that effort isn't known.</summary>
    public (Ratio Part, HoldingTime Time)? Holding { get; init; }

    /// <summary>The lift of the whole from the ground to where it is used, as the revised NIOSH equation judges it.</summary>
    public required WholeLift Lift { get; init; }

    /// <summary>The joints, the weakest first.</summary>
    public required IReadOnlyList<JointFinding> Joints { get; init; }

    /// <summary>Parts with a rated load.</summary>
    public required IReadOnlyList<CarrierFinding> Carriers { get; init; }

    /// <summary>Rods.</summary>
    public required IReadOnlyList<RodFinding> Rods { get; init; }

    /// <summary>Lens mounts.</summary>
    public required IReadOnlyList<LensMountFinding> LensMounts { get; init; }

    /// <summary>The sizes without which nobody can say where the centre of gravity is; empty where none is missing.</summary>
    public IReadOnlyList<MissingSize> SizesMissing { get; init; } = [];

    /// <summary>What was taken because nobody gave it.</summary>
    public required IReadOnlyList<AssumedValue> Assumed { get; init; }

    /// <summary>The head as it is set, or else as it is best.</summary>
    public HeadBalance? Present => AsSet ?? Best;

    /// <summary>The limits of head, shoulder or hands, and of the lift: least left first.</summary>
    public IReadOnlyList<Limit> BalanceLimits => Limit.LeastLeftFirst(
    [
        .. Present is { } head ? HeadLimits.Of(head, Supports.HeadName!, Supports.IsFrictionKnown, Cases).Where(IsKnown) : [],
        .. SizesMissing.Count == 0 && Hands is { } hands
            ? [hands.AsLimit(Mass, Rig.Build.InHands?.GreatestEffort)] : Array.Empty<Limit>(),
        Lift.AsLimit(),
    ]);

    /// <summary>The limits of the tripod and of the joints: least left first, those without a rating at the end.</summary>
    public IReadOnlyList<Limit> StandLimits => Limit.LeastLeftFirst(
    [
        .. Stand is { } stand ? Balance.StandLimits.Of(stand, Supports.LegsName!, Rig.Build.OnLegs, Wind, ExpectedWind) : [],
        .. Supports.LegsLoad is { } load ? [load] : Array.Empty<Limit>(),
        .. JointLimits.Of(Joints, Carriers, Rods, LensMounts),
    ]);

    /// <summary>The verdict on head, shoulder or hand.</summary>
    public Verdict BalanceVerdict => BalanceQuestions.Balance(this).Verdict;

    /// <summary>The verdict on tripod and joints.</summary>
    public Verdict StandVerdict => BalanceQuestions.Stand(this).Verdict;

    /// <summary>What is missing for the verdict on head, shoulder or hand, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> BalanceMissing =>
    [
        .. SizesMissing.Select(size => size.Words),
        .. Hands is not null && Rig.Build.InHands?.GreatestEffort is null ? [BalanceWords.NoEffort] : Supports.MissingForBalance,
    ];

    /// <summary>What is missing for the verdict on tripod and joints, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> StandMissing => Supports.MissingForStand;

    /// <summary>The battery taken off its plate, the head left as it is; null without a head whose figures are known, or where
    /// the battery is beside the rig.</summary>
    public HeadCase? BatteryOff => Cases.FirstOrDefault(happening => happening.IsOff && happening.Part == Rig.Build.Battery.Item);

    /// <summary>
    /// Whether the tilt lock must be tight before the battery comes off, at every swap: friction at rest does not hold what is
    /// left. Null where the build stands on a
    /// tripod and nothing is known of its head, no mass of the battery, or not how far something reaches.
    /// </summary>
    public bool? LocksBeforeSwap => Rig.Build.Stance != Stance.Tripod || Rig.Build.Beside.Contains(Rig.Build.Battery.Item)
        ? false : SizesMissing.Count > 0 ? null : BatteryOff?.NeedsLock;

    /// <summary>Whether the centre of gravity is known: every mass and every size that reaches far is given.</summary>
    internal bool IsCentreKnown => SizesMissing.Count == 0 && Rig.WithoutMass.Count == 0;

    // Without a size only what follows from the mass alone is known.
    private bool IsKnown(Limit limit) => SizesMissing.Count == 0 || limit.Kind == LimitKind.Load;
}

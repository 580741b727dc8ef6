using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>How long lifting goes on in a shift.</summary>
public enum LiftingDuration
{
    /// <summary>Up to one hour.</summary>
    UpToOneHour,

    /// <summary>More than one, up to two hours.</summary>
    UpToTwoHours,

    /// <summary>More than two, up to eight hours.</summary>
    UpToEightHours,
}

/// <summary>How well the hands hold the load.</summary>
public enum LiftingGrip
{
    /// <summary>Good handles or cut-outs.</summary>
    Good,

    /// <summary>Less than good handles; fingers bent at right angles under the load.</summary>
    Fair,

    /// <summary>Bulky, slippery, sagging, or no handles at all.</summary>
    Poor,
}

/// <summary>
/// Picking a rig up or putting it down with both hands, by the revised lifting equation: T. R. Waters, V. Putz-Anderson, A. Garg,
/// <i>Applications Manual for the
/// Revised NIOSH Lifting Equation</i>, DHHS (NIOSH) 94-110, 1994, revised 2021, metric form: <c>RWL = 23 kg · HM · VM · DM · AM ·
/// FM · CM</c> (second-hand,
/// located by page). Information, not a permission: local rules come first. By its own text it does not judge one-handed lifts,
/// holding for
/// more than a few seconds, carrying, or a rig on the shoulder.
/// </summary>
public sealed record Lifting
{
    /// <summary>H: from between the ankles to the hands, level; 0 or more. Below 25 cm counts as 25 cm.</summary>
    public required Length Horizontal { get; init; }

    /// <summary>V: height of the hands over the floor.</summary>
    public required Length Vertical { get; init; }

    /// <summary>D: how far up or down it goes; below 25 cm counts as 25 cm.</summary>
    public required Length Distance { get; init; }

    /// <summary>A: how far the load is to one side.</summary>
    public Angle Asymmetry { get; init; } = Angle.Zero;

    /// <summary>Lifts a minute; below 0.2 counts as 0.2.</summary>
    public Frequency LiftsPerMinute { get; init; } = Frequency.FromCyclesPerMinute(0.2);

    /// <summary>How long it goes on.</summary>
    public LiftingDuration Duration { get; init; }

    /// <summary>How well the hands hold it.</summary>
    public LiftingGrip Grip { get; init; }

    /// <summary>HM = 25 cm/H; 0 beyond 63 cm.</summary>
    public double HorizontalMultiplier => Horizontal.Centimeters > 63 ? 0 : 25 / Math.Max(25, Horizontal.Centimeters);

    /// <summary>VM = 1 - 0.003 |V - 75 cm|; 0 above 175 cm.</summary>
    public double VerticalMultiplier => Vertical.Centimeters is < 0 or > 175
        ? 0 : 1 - (0.003 * Math.Abs(Vertical.Centimeters - 75));

    /// <summary>DM = 0.82 + 4.5 cm/D; 0 beyond 175 cm.</summary>
    public double DistanceMultiplier => Distance.Centimeters > 175
        ? 0 : Math.Min(1, 0.82 + (4.5 / Math.Max(25, Distance.Centimeters)));

    /// <summary>AM = 1 - 0.0032 A; 0 beyond 135°.</summary>
    public double AsymmetryMultiplier => Math.Abs(Asymmetry.Degrees) > 135 ? 0 : 1 - (0.0032 * Math.Abs(Asymmetry.Degrees));

    /// <summary>FM: table 5 of the manual, straight lines between its rows.</summary>
    public double FrequencyMultiplier =>
        LiftingFrequencyTable.Of(LiftsPerMinute.CyclesPerMinute, Duration, Vertical.Centimeters >= 75);

    /// <summary>CM: 1, 0.95 and 0.90; fair counts as good from 75 cm up.</summary>
    public double GripMultiplier => Grip switch
    {
        LiftingGrip.Good => 1,
        LiftingGrip.Fair => Vertical.Centimeters >= 75 ? 1 : 0.95,
        _ => 0.9,
    };

    /// <summary>The recommended weight limit at this end of the lift.</summary>
    public Mass RecommendedLimit => Mass.FromKilograms(23 * HorizontalMultiplier * VerticalMultiplier * DistanceMultiplier
        * AsymmetryMultiplier * FrequencyMultiplier * GripMultiplier);

    /// <summary>Load over limit: the manual's goal is 1 or less; infinite where the limit is 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The load is below 0.</exception>
    public double Index(Mass load)
    {
        Require.NotNegative(load.Kilograms, "kg", nameof(load));
        return load.Kilograms == 0 ? 0 : load.Kilograms / RecommendedLimit.Kilograms;
    }
}

using RigScenarios.Builds;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>What a rig on its tripod is held against.</summary>
public static class StandLimits
{
    /// <summary>The speed of a gust that tips a rig is known to about this share: area and drag of a heap of boxes to 30 %, their
    /// root to 15 % (from memory).</summary>
    public static Ratio GustWithin { get; } = Ratio.FromPercent(15);

    /// <summary>All limits of a rig on its tripod, in no order.</summary>
    /// <param name="stability">At the tilt that is worst for it.</param>
    /// <param name="name">The tripod's name in the kit.</param>
    /// <param name="legs">How it stands; null for nothing given.</param>
    /// <param name="wind">What the wind meets; null where that is not known.</param>
    /// <param name="expected">The wind that is expected; null where none is asked about.</param>
    public static IEnumerable<Limit> Of(StandStability stability, string name, LegsInUse? legs, Wind? wind,
        ExpectedWind? expected)
    {
        ArgumentNullException.ThrowIfNull(stability);
        var stick = TiltYardstick.NearestInKind;
        var wished = legs?.WantedLean is null
            ? $"{stick.Source.Authors} {stick.Source.Title}, {stick.What}; no rule for camera tripods"
            : "wished for in the scenario";
        yield return new Limit(name, LimitKind.TipAngle, stability.TipAngle, legs?.WantedLean ?? stick.Tilt,
            new(LimitForce.Yardstick, wished));
        if (legs?.Slope is { Degrees: > 0 } || stability.TipsOnLevel)
            yield return new Limit(name, LimitKind.TipAngle, stability.TipAngle, legs?.Slope ?? Angle.Zero,
                new(LimitForce.Default, "slope of the ground in the scenario, feet not re-levelled")) { Situation = "by itself" };
        if (wind is not null && expected is not null && stability.TippingWind(wind, legs?.Slope ?? Angle.Zero) is { } tips)
            yield return new Limit(name, LimitKind.Gust, tips, expected.Gust,
                new(LimitForce.Default,
                $"mean wind of the scenario, gusts by {Gusts.Source.Where} ({Gusts.Source.StandingInWords})"));
    }
}

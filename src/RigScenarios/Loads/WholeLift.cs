using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// All that is lifted at once, judged where the lift begins and where it ends: the lower of the two limits counts (as the manual
/// says where the load is put
/// down with care, NIOSH 94-110, 1994).
/// </summary>
/// <param name="Lifted">The mass of the whole: a rig that stands on a tripod is lifted with it.</param>
/// <param name="What">What that is, by names in the kit; empty for the rig alone.</param>
/// <param name="Origin">Where the lift begins.</param>
/// <param name="Destination">Where it ends.</param>
public sealed record WholeLift(Mass Lifted, IReadOnlyList<string> What, Lifting Origin, Lifting Destination)
{
    /// <summary>The lower of both recommended limits.</summary>
    public Mass RecommendedLimit => Origin.RecommendedLimit < Destination.RecommendedLimit
        ? Origin.RecommendedLimit : Destination.RecommendedLimit;

    /// <summary>What is lifted over the lower limit: the manual's goal is 1 or less. Null where the equation recommends no lift
    /// at
    /// all, such as from above 1.75 m.</summary>
    public double? Index => RecommendedLimit > Mass.Zero ? Lifted / RecommendedLimit : null;

    /// <summary>The lift as a limit. It informs and forbids nothing: local rules come first.</summary>
    public Limit AsLimit() => new("lift", LimitKind.Lifting, Lifted, RecommendedLimit,
        new(LimitForce.Yardstick, "revised NIOSH equation (NIOSH 94-110, second-hand)"));
}

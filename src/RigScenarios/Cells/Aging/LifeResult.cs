using RigScenarios.Numerics;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>A battery's state at the end of one phase of its life.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Age">What is left of the capacity, and how the resistance has grown.</param>
/// <param name="LossCalendar">Loss by standing, a share of the new capacity.</param>
/// <param name="LossCycle">Loss by cycles.</param>
/// <param name="GrowthCalendar">Growth of the resistance by standing, a share of the new one; null: the set knows none.</param>
/// <param name="GrowthCycle">Growth by cycles.</param>
/// <param name="Pace">How many times as fast as by the set this battery loses; 1 unless measured.</param>
/// <param name="ResistancePace">The same of its resistance; null: the set knows none.</param>
/// <param name="Day">One shooting day, where the phase gives its course.</param>
/// <param name="Warnings">What the phase's figures rest on that is not as it should be, by name.</param>
public sealed record AgedPhase(LifePhase Phase, Age Age, Ratio LossCalendar, Ratio LossCycle, double? GrowthCalendar,
    double? GrowthCycle, double Pace, double? ResistancePace, AgedDay? Day, IReadOnlyList<AgingWarning> Warnings)
{
    internal static AgedPhase Of(LifePhase phase, LifeState state, AgedDay? day, IReadOnlyList<AgingWarning> warnings) => new(
        phase, LifeResult.AgeOf(state), Ratio.FromDecimalFractions(state.LossByStanding),
        Ratio.FromDecimalFractions(state.LossByCycles), state.GrowthByStanding, state.GrowthByCycles, state.Pace,
        state.Set.KnowsResistance ? state.GrowthPace : null, day, warnings);
}

/// <summary>What became of a battery, phase by phase, and what becomes of it if the pattern goes on.</summary>
public sealed class LifeResult
{
    // Nothing is said of a time that lies further ahead.
    private const double FurthestDays = 40 * 365.25;

    // Of the root of a time, in days: a second.
    private const double Tolerance = 1e-5;

    private readonly LifeState state;
    private readonly Exposure exposure;

    internal LifeResult(AgingSet set, IReadOnlyList<AgedPhase> phases, LifeState state, LifePhase? pattern)
    {
        (Set, Phases, this.state) = (set, phases, state);
        exposure = pattern is null ? new([], []) : Exposure.Of(pattern);
    }

    /// <summary>The capacity at which a battery is replaced by convention: 80 % of the new one. The fits know no knee.</summary>
    public static Ratio Replaced { get; } = Ratio.FromDecimalFractions(0.8);

    /// <summary>The furthest that a time is told: 40 years.</summary>
    public static Duration Furthest { get; } = Duration.FromDays(FurthestDays);

    /// <summary>The laws.</summary>
    public AgingSet Set { get; }

    /// <summary>The state after each phase.</summary>
    public IReadOnlyList<AgedPhase> Phases { get; }

    /// <summary>The age at the end.</summary>
    public Age Age => AgeOf(state);

    /// <summary>All warnings of the phases, each once, by name.</summary>
    public IReadOnlyList<AgingWarning> Warnings =>
        [.. Phases.SelectMany(phase => phase.Warnings).Distinct().OrderBy(one => one.Name(), StringComparer.Ordinal)];

    /// <summary>The age after a further time in which the pattern goes on; now if there is no pattern with a length.</summary>
    /// <param name="further">How much further; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="further"/> is below 0.</exception>
    public Age After(Duration further)
    {
        Require.NotNegative(further.Days, "days", nameof(further));
        return AgeOf(Further(further.Days));
    }

    /// <summary>
    /// The further time until only so much of the capacity is left, if the pattern goes on; zero if it has come so far already,
    /// null if it doesn't within <see cref="Furthest"/>.
    /// </summary>
    /// <param name="capacityLeft">Part of the new capacity.</param>
    public Duration? TimeTo(Ratio capacityLeft)
    {
        var wanted = capacityLeft.DecimalFractions;
        if (state.CapacityLeft <= wanted)
            return Duration.Zero;
        if (Further(FurthestDays).CapacityLeft > wanted)
            return null;
        return Duration.FromDays(
            RootBracket.Root(days => Further(days).CapacityLeft - wanted, 0, FurthestDays, Tolerance));
    }

    internal static Age AgeOf(LifeState state) =>
        new(Ratio.FromDecimalFractions(state.CapacityLeft), Math.Min(1000, state.ResistanceFactor));

    private LifeState Further(double days) =>
        exposure.Days > 0 ? state.After(exposure, days / exposure.Days) : state;
}

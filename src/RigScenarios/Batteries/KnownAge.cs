using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// What is known of how far a battery has aged: the one place in which measured figures, a life in words and the chemistry
/// become an age. Measured figures win; a life fills in what nobody measured; with neither nothing is known.
/// </summary>
/// <remarks>docs/battery-age.md.</remarks>
public sealed record KnownAge
{
    /// <summary>How far a capacity that was measured by one run may be off: common practice, no source.</summary>
    public static readonly Ratio MeasuredWithin = Ratio.FromPercent(2);

    // A capacity below this is none that a run can find.
    private const double LeastMeasured = 0.05;

    private readonly Ratio? measuredCapacity;
    private readonly double? measuredResistance;

    /// <param name="chemistry">The battery's chemistry; null where nobody knows.</param>
    /// <param name="life">Its life in words; null where nobody told it.</param>
    /// <param name="capacityLeft">Part of the new capacity that was measured; null if it was not.</param>
    /// <param name="resistanceFactor">Resistance over that of the new battery that was measured; null if it was not.</param>
    /// <exception cref="ArgumentException">The life is impossible: bought after the day for which it is asked, or with more
    /// shoots than there are days.</exception>
    public KnownAge(string? chemistry, LifeInWords? life, Ratio? capacityLeft, double? resistanceFactor)
    {
        (measuredCapacity, measuredResistance) =
            (capacityLeft ?? life?.MeasuredCapacity, resistanceFactor ?? life?.MeasuredResistance);
        (Set, IsSetAssumed) = AgingSets.For(chemistry);
        Life = life is null ? null : life with { MeasuredCapacity = measuredCapacity, MeasuredResistance = measuredResistance };
        Past = Life?.Phases() ?? [];
        if (Past.Count > 0)
            History = BatteryLife.After(Set, IsSetAssumed, Past);
        CapacityLeft = measuredCapacity ?? History?.Age.CapacityLeft;
        ResistanceFactor = measuredResistance ?? History?.Age.ResistanceFactor;
    }

    /// <summary>Its life in words, with what was measured in it; null where nobody told it.</summary>
    public LifeInWords? Life { get; }

    /// <summary>The set of aging laws that speaks for it.</summary>
    public AgingSet Set { get; }

    /// <summary>Whether the chemistry behind <see cref="Set"/> was assumed.</summary>
    public bool IsSetAssumed { get; }

    /// <summary>The phases of its life so far; empty where none is told.</summary>
    public IReadOnlyList<LifePhase> Past { get; }

    /// <summary>What <see cref="Past"/> did to it by the set; null where none is told.</summary>
    public LifeResult? History { get; }

    /// <summary>Part of the new capacity that is left; null where nothing is known of it.</summary>
    public Ratio? CapacityLeft { get; }

    /// <summary>Resistance over that of the new battery; null where nothing is known of it (with a capacity it then goes by
    /// <see cref="Wear"/>).</summary>
    public double? ResistanceFactor { get; }

    /// <summary>Whether nobody said anything from which its capacity follows: it is taken as new.</summary>
    public bool IsUnknown => CapacityLeft is null;

    /// <summary>Whether its capacity was measured.</summary>
    public bool IsMeasured => measuredCapacity is not null;

    /// <summary>Whether its resistance was measured.</summary>
    public bool IsResistanceMeasured => measuredResistance is not null;

    /// <summary>The age that is reckoned with: as new where nothing is known.</summary>
    public Age Age => new(CapacityLeft ?? Ratio.FromDecimalFractions(1), ResistanceFactor
        ?? (CapacityLeft is { } left ? Wear.ResistanceFactor(left, Set.Chemistry.GrowthPerLoss.Value) : 1));

    /// <summary>
    /// The ends of its band: the least and the greatest age by the published sets, where a capacity was measured with that off by
    /// <see cref="MeasuredWithin"/> either way. Null where no life is told: then there is nothing to spread.
    /// </summary>
    public AgeEnds? Ends
    {
        get
        {
            if (History is null)
                return null;
            var ages = Lives().Select(life => Of(life.Set, life.Past)).Append(Age)
                .OrderBy(age => age.CapacityLeft.DecimalFractions).ToList();
            return new AgeEnds(ages[0], ages[^1]);
        }
    }

    /// <summary>
    /// The lives that make the band: each set of the band with the phases as they are, or with each end of what was measured.
    /// </summary>
    public IEnumerable<(AgingSet Set, IReadOnlyList<LifePhase> Past)> Lives()
    {
        foreach (var set in AgingSets.BandFor(Set))
        {
            if (Life is null || measuredCapacity is not { } measured)
            {
                yield return (set, Past);
                continue;
            }
            foreach (var off in (double[])[-MeasuredWithin.DecimalFractions, MeasuredWithin.DecimalFractions])
            {
                var other = Math.Max(LeastMeasured, measured.DecimalFractions + off);
                yield return (set,
                    (Life with { MeasuredCapacity = Ratio.FromDecimalFractions(other) }).Phases());
            }
        }
    }

    // What was measured of the resistance stands at both ends: a band of the capacity is no doubt about it.
    private Age Of(AgingSet set, IReadOnlyList<LifePhase> past)
    {
        var age = BatteryLife.After(set, IsSetAssumed, past).Age;
        return measuredResistance is { } resistance ? age with { ResistanceFactor = resistance } : age;
    }
}

/// <summary>The ends of what a battery's age may be.</summary>
/// <param name="Least">With the least capacity left.</param>
/// <param name="Greatest">With the most capacity left.</param>
public sealed record AgeEnds(Age Least, Age Greatest);

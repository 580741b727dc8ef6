namespace RigScenarios.Sweeps.Sampling;

/// <summary>
/// Which scenarios a sweep runs: every combination of the values of its axes, and for each of them the same samples of what is
/// uncertain. Any scenario of the plan is made by its number alone: the same on every machine, in any order, and nothing is kept,
/// however many there are.
/// </summary>
/// <remarks>
/// The order is that of the combinations, the last axis fastest; all samples of a combination follow one another. Because every
/// combination gets the same samples, what differs between two combinations is what the axes do, not chance.
/// </remarks>
public sealed record SweepPlan
{
    /// <summary>More scenarios than this are refused.</summary>
    public const long MostScenarios = 1_000_000_000;

    private PlanSampler? sampler;

    /// <summary>A plan of nothing: the scenario as it is.</summary>
    public SweepPlan()
    {
    }

    // A copy may get other axes or another seed: it makes its own sampler.
    private SweepPlan(SweepPlan other) => (Axes, Uncertain, Correlations, Method, Samples, Seed) =
        (other.Axes, other.Uncertain, other.Correlations, other.Method, other.Samples, other.Seed);

    /// <summary>The fields that take every value of a list, combined with each other; the last one changes fastest.</summary>
    public IReadOnlyList<SweepAxis> Axes { get; init; } = [];

    /// <summary>The fields that aren't known exactly.</summary>
    public IReadOnlyList<UncertainField> Uncertain { get; init; } = [];

    /// <summary>Which of them go together.</summary>
    public IReadOnlyList<Correlation> Correlations { get; init; } = [];

    /// <summary>How the samples are spread.</summary>
    public SamplingMethod Method { get; init; } = SamplingMethod.Sobol;

    /// <summary>How many samples of the uncertain fields there are for each combination of the axes; 1 or more. Without uncertain
    /// fields it means nothing.</summary>
    public int Samples { get; init; } = 1;

    /// <summary>Where the samples begin: the same seed gives the same samples.</summary>
    public long Seed { get; init; } = 1;

    /// <summary>How many scenarios there are: the combinations of the axes times the samples.</summary>
    /// <exception cref="OverflowException">More than a <see cref="long"/> can count.</exception>
    public long Count => checked(Combinations * SamplesEach);

    /// <summary>How many combinations of the axes there are; 1 without axes.</summary>
    /// <exception cref="OverflowException">More than a <see cref="long"/> can count.</exception>
    public long Combinations => Axes.Aggregate(1L, (count, axis) => checked(count * axis.Values.Count));

    /// <summary>How many scenarios each combination of the axes has: the samples; 1 where nothing is uncertain.</summary>
    public int SamplesEach => Uncertain.Count == 0 ? 1 : Samples;

    /// <summary>The fields, in the order of <see cref="SweepPoint.Values"/>: the axes, then what is uncertain.</summary>
    public IReadOnlyList<string> Paths => [.. Axes.Select(axis => axis.Path), .. Uncertain.Select(unsure => unsure.Path)];

    /// <summary>The scenario of a number.</summary>
    /// <param name="number">The number, 0 to one less than <see cref="Count"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such number.</exception>
    /// <exception cref="ArgumentException">The plan is not sound; <see cref="PlanCheck"/> says all that is wrong with
    /// it.</exception>
    public SweepPoint At(long number) => FromUnit(Unit(number), number);

    /// <summary>Where the sample of a number lies between 0 and 1 in each uncertain field, before the fields that go together are
    /// joined: shares for <see cref="FromUnit"/>.</summary>
    /// <param name="number">The number, 0 to one less than <see cref="Count"/>.</param>
    /// <returns>A share for each of <see cref="Uncertain"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such number.</exception>
    /// <exception cref="ArgumentException">The plan is not sound.</exception>
    public double[] Unit(long number)
    {
        Refuse(number);
        return Sampler.Unit(number % SamplesEach);
    }

    /// <summary>The scenario at a point of one's own choice: a design for the sensitivity of results.</summary>
    /// <param name="unit">A share, 0 to 1, for each of <see cref="Uncertain"/>; 0.5 is the median.</param>
    /// <param name="number">The number that the scenario gets; it says the combination of the axes too.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such number, or a share is outside 0…1.</exception>
    /// <exception cref="ArgumentException">There are more or fewer shares than uncertain fields, or the plan is not
    /// sound.</exception>
    public SweepPoint FromUnit(double[] unit, long number)
    {
        ArgumentNullException.ThrowIfNull(unit);
        Refuse(number);
        if (unit.Length != Uncertain.Count)
            throw new ArgumentException($"Found {unit.Length} shares for {Uncertain.Count} uncertain fields.", nameof(unit));
        var values = new string[Axes.Count + unit.Length];
        var combination = number / SamplesEach;
        for (var axis = Axes.Count - 1; axis >= 0; axis--)
        {
            var (rest, place) = Math.DivRem(combination, Axes[axis].Values.Count);
            values[axis] = Axes[axis].Values[(int)place];
            combination = rest;
        }
        var shares = Sampler.Joined(unit);
        for (var field = 0; field < shares.Length; field++)
            values[Axes.Count + field] = Uncertain[field].Spread.TextAt(shares[field]);
        return new SweepPoint(number, values);
    }

    /// <summary>Whether two plans run the same scenarios in the same order.</summary>
    /// <param name="other">The other plan.</param>
    public bool Equals(SweepPlan? other) => other is not null && Method == other.Method && Samples == other.Samples
        && Seed == other.Seed && Uncertain.SequenceEqual(other.Uncertain) && Correlations.SequenceEqual(other.Correlations)
        && Axes.Count == other.Axes.Count && Axes.Zip(other.Axes).All(pair => pair.First.Path == pair.Second.Path
            && pair.First.Values.SequenceEqual(pair.Second.Values));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Method, Samples, Seed, Uncertain.Count, Axes.Count);

    private PlanSampler Sampler => sampler ??= new PlanSampler(this);

    private void Refuse(long number)
    {
        if (number < 0 || number >= Sampler.Count)
            throw new ArgumentOutOfRangeException(nameof(number), number, $"The plan has the numbers 0 to {Sampler.Count - 1}.");
    }
}

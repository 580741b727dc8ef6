using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>Makes the samples of a plan: what is the same for all of them is worked out once.</summary>
internal sealed class PlanSampler
{
    private readonly IPointSource source;
    private readonly NormalCopula? copula;

    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentException">Fields that go together contradict each other, or are not in the plan.</exception>
    public PlanSampler(SweepPlan plan)
    {
        Count = plan.Count;
        var fields = plan.Uncertain.Count;
        source = plan.Method switch
        {
            SamplingMethod.Random => new RandomPoints(fields, plan.Seed),
            SamplingMethod.LatinHypercube => new LatinHypercube(fields, plan.SamplesEach, plan.Seed),
            SamplingMethod.Sobol => new SobolSequence(fields, plan.Seed),
            _ => throw new ArgumentOutOfRangeException(nameof(plan), plan.Method, "no method of sampling"),
        };
        copula = NormalCopula.Of([.. plan.Uncertain.Select(field => field.Path)], plan.Correlations);
    }

    /// <summary>How many scenarios the plan has.</summary>
    public long Count { get; }

    /// <summary>The point of a sample, in the unit cube.</summary>
    public double[] Unit(long sample)
    {
        var point = new double[source.Dimensions];
        source.Fill(sample, point);
        return point;
    }

    /// <summary>The point with the fields joined that go together.</summary>
    public double[] Joined(double[] unit) => copula is null ? unit : copula.Joined(unit);
}

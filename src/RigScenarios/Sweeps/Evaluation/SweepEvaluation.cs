using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>One of the ways through a sweep: what it makes of points.</summary>
internal abstract class SweepEvaluation
{
    /// <summary>The way.</summary>
    public abstract SweepWay Way { get; }

    /// <summary>How many points are worked on together: enough for all cores, few enough to be soon told of.</summary>
    public abstract int ChunkLength { get; }

    /// <summary>Works on points, on all cores; what a point gives does not depend on the others.</summary>
    /// <param name="count">How many points.</param>
    /// <param name="pointOf">The point of a number below the count; called from several threads.</param>
    /// <param name="cancellation">Stops it.</param>
    public abstract SweepRecord[] Run(int count, Func<int, SweepPoint> pointOf, CancellationToken cancellation);
}

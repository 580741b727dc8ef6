using System.Collections.Concurrent;
using RigScenarios.Cells;

namespace RigScenarios.Batteries.Batch;

/// <summary>The curves and demands of many scenarios in the form of the kernel, each made once. Safe to use from several
/// threads.</summary>
internal sealed class SharedCurves
{
    private readonly ConcurrentDictionary<(OpenCircuitVoltage, UsableCapacity), BatchCurves> curves = new();
    private readonly ConcurrentDictionary<Demand, BatchDemand> demands = new(ReferenceEqualityComparer.Instance);

    /// <summary>The curves of a pack.</summary>
    public BatchCurves Of(Pack pack) => curves.GetOrAdd((pack.OpenCircuitVoltage, pack.UsableCapacity),
        static key => new BatchCurves(key.Item1, key.Item2));

    /// <summary>A demand.</summary>
    public BatchDemand Of(Demand demand) => demands.GetOrAdd(demand, static key => new BatchDemand(key));
}

using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using RigScenarios.Cells;

namespace RigScenarios.Batteries.Batch;

/// <summary>
/// The curves and demands of many scenarios in the form of the kernel, each made once: also where scenarios hold equal tables
/// in objects of their own, since the kernel is quick as long as its tables lie near the processor. Safe to use from several
/// threads.
/// </summary>
internal sealed class SharedCurves
{
    private readonly ConcurrentDictionary<(OpenCircuitVoltage, UsableCapacity), BatchCurves> known = new();
    private readonly ConcurrentDictionary<(OpenCircuitVoltage, UsableCapacity), BatchCurves> curves = new(new SameTables());
    private readonly ConcurrentDictionary<Demand, BatchDemand> demands = new(ReferenceEqualityComparer.Instance);

    /// <summary>The curves of a pack.</summary>
    public BatchCurves Of(Pack pack) => known.GetOrAdd((pack.OpenCircuitVoltage, pack.UsableCapacity),
        static (key, curves) => curves.GetOrAdd(key, static key => new BatchCurves(key.Item1, key.Item2)), curves);

    /// <summary>A demand.</summary>
    public BatchDemand Of(Demand demand) => demands.GetOrAdd(demand, static key => new BatchDemand(key));

    private sealed class SameTables : IEqualityComparer<(OpenCircuitVoltage Voltage, UsableCapacity Usable)>
    {
        public bool Equals((OpenCircuitVoltage Voltage, UsableCapacity Usable) one,
            (OpenCircuitVoltage Voltage, UsableCapacity Usable) other) =>
            one.Voltage.Points.SequenceEqual(other.Voltage.Points) && one.Usable.Kelvins.SequenceEqual(other.Usable.Kelvins)
                && one.Usable.Fractions.SequenceEqual(other.Usable.Fractions);

        public int GetHashCode([DisallowNull] (OpenCircuitVoltage Voltage, UsableCapacity Usable) tables) => HashCode.Combine(
            tables.Voltage.Points.Count, tables.Voltage.Points[tables.Voltage.Points.Count / 2].Voltage.Volts,
            tables.Usable.Kelvins.Length, tables.Usable.Fractions[0]);
    }
}

using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Cells;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>The curves of the batteries of a sweep in the form of the batch, each made once: a pack that is made anew for every
/// scenario has the same ones, mostly. Safe to use from several threads.</summary>
internal sealed class CurvesInUse
{
    // A sweep may move the curves themselves: then those of long ago are of no use.
    private const int Most = 64;

    private readonly Lock gate = new();
    private readonly List<(OpenCircuitVoltage OpenCircuit, UsableCapacity Usable, BatchCurves Curves)> known = [];

    /// <summary>The curves of a pack.</summary>
    /// <param name="pack">The pack.</param>
    public BatchCurves Of(Pack pack)
    {
        lock (gate)
        {
            foreach (var (openCircuit, usable, curves) in known)
            {
                if (Same(openCircuit, pack.OpenCircuitVoltage) && Same(usable, pack.UsableCapacity))
                    return curves;
            }
        }
        var made = new BatchCurves(pack.OpenCircuitVoltage, pack.UsableCapacity);
        lock (gate)
        {
            if (known.Count >= Most)
                known.RemoveAt(0);
            known.Add((pack.OpenCircuitVoltage, pack.UsableCapacity, made));
        }
        return made;
    }

    private static bool Same(OpenCircuitVoltage one, OpenCircuitVoltage other) =>
        ReferenceEquals(one, other) || one.Points.SequenceEqual(other.Points);

    private static bool Same(UsableCapacity one, UsableCapacity other) =>
        ReferenceEquals(one, other) || one.Points.SequenceEqual(other.Points);
}

using RigScenarios.Cells;

namespace RigScenarios.Batteries.Batch;

/// <summary>The curves of a kind of pack, which many cases of a batch share: open-circuit voltage and usable capacity.</summary>
/// <param name="openCircuit">U(z) of one group.</param>
/// <param name="usable">kappa(T).</param>
internal sealed class BatchCurves(OpenCircuitVoltage openCircuit, UsableCapacity usable)
{
    /// <summary>U(z) of one group.</summary>
    public OpenCircuitVoltage OpenCircuit { get; } = openCircuit;

    /// <summary>kappa(T).</summary>
    public UsableCapacity Usable { get; } = usable;
}

using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Fits.Bench;

/// <summary>A battery's own open-circuit table from a slow discharge.</summary>
/// <param name="Capacity">What this discharge gave from its begin to the cut-off. State of charge counts from it, so that the
/// table goes with this capacity only.</param>
/// <param name="Table">Open-circuit voltage of a group, from empty to full.</param>
/// <param name="Pooled">How many points fell below the one before and became their common mean.</param>
public sealed record BenchTable(ElectricCharge Capacity, OpenCircuitVoltage Table, int Pooled);

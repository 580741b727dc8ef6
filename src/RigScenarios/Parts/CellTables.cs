using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>One point of a battery's open-circuit table: the rest voltage of one group at a state of charge.</summary>
/// <param name="StateOfCharge">From 0 (empty) to 1 (full).</param>
/// <param name="Voltage">Open-circuit voltage of one group.</param>
public sealed record OpenCircuitPoint(Ratio StateOfCharge, ElectricPotential Voltage);

/// <summary>One point of a battery's cold table: the part of the capacity that can be used at a cell temperature.</summary>
/// <param name="Temperature">Temperature of the cell, not of the air.</param>
/// <param name="Fraction">Usable part of the capacity at 25 °C; above 0.</param>
public sealed record UsableCapacityPoint(Temperature Temperature, Ratio Fraction);

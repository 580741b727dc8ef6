using System.Runtime.InteropServices;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>One moment of a discharge, at the pack's terminals.</summary>
/// <param name="Time">From the start of the run.</param>
/// <param name="Voltage">Terminal voltage.</param>
/// <param name="Current">Terminal current, positive on discharge.</param>
/// <param name="Power">Power delivered at the terminals.</param>
/// <param name="StateOfCharge">1 full … 0 empty.</param>
/// <param name="Temperature">Temperature of the pack.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct DischargePoint(
    Duration Time, ElectricPotential Voltage, ElectricCurrent Current, Power Power, Ratio StateOfCharge, Temperature Temperature);

/// <summary>
/// Where the energy of a discharge went. Chemical energy and delivered energy are integrals of the circuit; the heat is what the
/// pack took up and gave to the air, from its temperature, so that the balance is a check of the integration and no identity.
/// </summary>
/// <param name="Chemical">Energy that the cells gave at their open-circuit voltage.</param>
/// <param name="Delivered">Energy that reached the terminals.</param>
/// <param name="Heat">Energy that became heat in the pack, whether it stayed there or went to the air.</param>
/// <param name="HeatToAmbient">The part of the heat that went to the air; negative where the air warmed the pack.</param>
/// <param name="ChargeDrawn">Charge through the terminals.</param>
public sealed record EnergyAccount(Energy Chemical, Energy Delivered, Energy Heat, Energy HeatToAmbient,
    ElectricCharge ChargeDrawn)
{
    /// <summary>Chemical energy that is neither delivered nor heat: the error of the integration.</summary>
    public Energy Imbalance => Energy.FromJoules(Chemical.Joules - Delivered.Joules - Heat.Joules);
}

/// <summary>How a discharge went and what ended it.</summary>
/// <param name="EndTime">From the start of the run to its end.</param>
/// <param name="Cause">What ended it.</param>
/// <param name="AtStep">True where the cause held right after a step of the demand, or at the start.</param>
/// <param name="SegmentsFinished">Demand segments that were finished before the end, in this run; one that was begun inside
/// counts when it ends, one that ends with the time limit doesn't.</param>
/// <param name="FinalState">The state at the end, from which another run can go on.</param>
/// <param name="EndVoltage">Terminal voltage at the end; null for a power limit right after a step, where none exists.</param>
/// <param name="EndCurrent">Terminal current at the end; null for a power limit right after a step.</param>
/// <param name="Series">Points over time, as many as the options allow; two at each step of the demand. Empty if the options ask
/// for none.</param>
/// <param name="Energies">Where the energy went.</param>
public sealed record DischargeResult(
    Duration EndTime,
    EndCause Cause,
    bool AtStep,
    int SegmentsFinished,
    DischargeStart FinalState,
    ElectricPotential? EndVoltage,
    ElectricCurrent? EndCurrent,
    IReadOnlyList<DischargePoint> Series,
    EnergyAccount Energies)
{
    /// <summary>State of charge at the end: what is left behind, and comes back with rest or warmth.</summary>
    public Ratio EndStateOfCharge => FinalState.StateOfCharge;

    /// <summary>State of charge of the near well at the end: what the terminals see.</summary>
    public Ratio EndNearCharge => FinalState.NearCharge;

    /// <summary>Pack temperature at the end.</summary>
    public Temperature EndTemperature => FinalState.Temperature!.Value;
}

using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>
/// What a battery's label and data sheet say of it. The label's energy and voltage are enough; each further value that is
/// given replaces an assumption of the discharge model (the model lists the assumptions that it used).
/// </summary>
/// <remarks>A group is the set of cells in parallel; a pack is a number of equal groups in series.</remarks>
public sealed record Battery
{
    /// <summary>Energy on the label; above 0.</summary>
    public required Energy Energy { get; init; }

    /// <summary>Nominal voltage on the label; above 0.</summary>
    public required ElectricPotential Voltage { get; init; }

    /// <summary>Largest continuous discharge current by the maker.</summary>
    public ElectricCurrent? MaximumCurrent { get; init; }

    /// <summary>Cell chemistry by name: "nmc" or "lfp".</summary>
    public string? Chemistry { get; init; }

    /// <summary>Number of groups in series; 1 or more.</summary>
    public int? SeriesGroups { get; init; }

    /// <summary>Capacity when new, at 25 °C.</summary>
    public ElectricCharge? Capacity { get; init; }

    /// <summary>Voltage of the whole pack at which its protection ends the discharge.</summary>
    public ElectricPotential? CutoffVoltage { get; init; }

    /// <summary>Temperature at which the pack's protection ends the discharge.</summary>
    public Temperature? MaximumTemperature { get; init; }

    /// <summary>Resistance of one group that acts at once; at 25 °C, new.</summary>
    public ElectricResistance? Resistance0 { get; init; }

    /// <summary>Resistance of one group that builds up with <see cref="TimeConstant1"/>; at 25 °C, new.</summary>
    public ElectricResistance? Resistance1 { get; init; }

    /// <summary>Resistance of one group that builds up with <see cref="TimeConstant2"/>; at 25 °C, new.</summary>
    public ElectricResistance? Resistance2 { get; init; }

    /// <summary>Time constant of the first resistor-capacitor pair.</summary>
    public Duration? TimeConstant1 { get; init; }

    /// <summary>Time constant of the second resistor-capacitor pair.</summary>
    public Duration? TimeConstant2 { get; init; }

    /// <summary>Resistance of the pack's own leads, protection switch and plate contacts; does not age or change with
    /// temperature.</summary>
    public ElectricResistance? LeadResistance { get; init; }

    /// <summary>Activation energy of the group's resistances: how fast they grow in the cold.</summary>
    public MolarEnergy? ActivationEnergy { get; init; }

    /// <summary>Heat capacity of the whole pack.</summary>
    public Entropy? HeatCapacity { get; init; }

    /// <summary>Heat conductance from the whole pack to the air around it.</summary>
    public ThermalConductance? HeatConductance { get; init; }

    /// <summary>Least value that the resistance factor takes in the warm, 0…1.</summary>
    public double? ResistanceFloor { get; init; }

    /// <summary>Usable part of the capacity over cell temperature, rising in temperature; linear between points, flat
    /// outside.</summary>
    public IReadOnlyList<UsableCapacityPoint>? UsableCapacity { get; init; }

    /// <summary>Share of the charge that lies near the surface of the electrodes, above 0, up to 1: the terminals see this part
    /// alone. 1 for a battery whose charge can all be had at once.</summary>
    public double? NearShare { get; init; }

    /// <summary>Time constant with which charge moves from the far part to the near one, at 25 °C.</summary>
    public Duration? ExchangeTime { get; init; }

    /// <summary>Activation energy of that exchange: how much slower it is in the cold.</summary>
    public MolarEnergy? ExchangeActivationEnergy { get; init; }

    /// <summary>Voltage of the pack to which its charger charges it; null if not known. Above 0.</summary>
    public ElectricPotential? ChargeVoltage { get; init; }

    /// <summary>Open-circuit voltage of one group over state of charge, from exactly 0 to exactly 1.</summary>
    public IReadOnlyList<OpenCircuitPoint>? OpenCircuitVoltage { get; init; }
}

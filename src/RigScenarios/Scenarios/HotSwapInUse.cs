using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>A small pack in the battery plate that carries the rig while the battery is swapped, as it stands in a
/// file.</summary>
public sealed record HotSwapInUse
{
    /// <summary>The pack and the state it is in at the start.</summary>
    public BatteryAtStart Pack { get; init; } = new();

    /// <summary>Power with which it is charged while a battery is on the rig; null for <see cref="UsualChargePower"/>.</summary>
    public Power? ChargePower { get; init; }

    /// <summary>Voltage over its diode; null for <see cref="UsualForwardDrop"/>.</summary>
    public ElectricPotential? ForwardDrop { get; init; }

    /// <summary>10 W (common practice, no source).</summary>
    public static Power UsualChargePower { get; } = Power.FromWatts(10);

    /// <summary>A Schottky diode: 0.4 V (common practice, no source).</summary>
    public static ElectricPotential UsualForwardDrop { get; } = ElectricPotential.FromVolts(0.4);

    /// <summary>Diode and leads: 30 mΩ (common practice, no source).</summary>
    public static ElectricResistance UsualResistance { get; } = ElectricResistance.FromMilliohms(30);
}

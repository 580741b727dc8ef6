using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>
/// What the label of a thing that is not listed says. Whatever is left open gets the default of docs/own-rig.md and is marked as
/// assumed.
/// </summary>
public sealed record OwnFigures
{
    /// <summary>What to call it; its role's word if empty.</summary>
    public string Name { get; init; } = "";

    /// <summary>What it draws in record, or doing its work; a plate's or regulator's own draw. Volts times amperes if left
    /// open.</summary>
    public Power? Power { get; init; }

    /// <summary>What it draws when on, not recording.</summary>
    public Power? Standby { get; init; }

    /// <summary>The voltage on the label: of a battery its nominal voltage, of a device that of its inlet.</summary>
    public ElectricPotential? Voltage { get; init; }

    /// <summary>The current on the label: the greatest that it takes or, of a battery, plate or regulator, gives.</summary>
    public ElectricCurrent? Current { get; init; }

    /// <summary>Energy on a battery's label.</summary>
    public Energy? Energy { get; init; }

    /// <summary>Mass.</summary>
    public Mass? Mass { get; init; }

    /// <summary>The least voltage it works at; of a plate the one at which it switches off; of a regulator at its
    /// input.</summary>
    public ElectricPotential? MinimumVoltage { get; init; }

    /// <summary>The greatest voltage it takes; of a regulator at its input.</summary>
    public ElectricPotential? MaximumVoltage { get; init; }

    /// <summary>What a regulator gives.</summary>
    public ElectricPotential? OutputVoltage { get; init; }

    /// <summary>The load that a head is rated for.</summary>
    public Mass? RatedLoad { get; init; }

    /// <summary>The moment of a head's tilt drag at 10 °/s.</summary>
    public Torque? Drag { get; init; }

    /// <summary>The most that a head's counterbalance gives.</summary>
    public Torque? Counterbalance { get; init; }

    /// <summary>Of legs: from the ground to where the head sits.</summary>
    public Length? Height { get; init; }

    /// <summary>Of legs: from the middle between the feet to a foot.</summary>
    public Length? FootRadius { get; init; }
}

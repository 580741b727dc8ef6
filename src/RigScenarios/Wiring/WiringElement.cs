using RigScenarios.Limits;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>
/// One element of the wiring between the pack's terminals and the devices: a <see cref="Wire"/>, a
/// <see cref="LowVoltageSwitch"/>, a
/// <see cref="Regulator"/> or a <see cref="Device"/>. Each is fed by one other and feeds any number (docs/wiring.md).
/// </summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public abstract record WiringElement
{
    private protected WiringElement(string name, string? fedBy)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name;
        FedBy = fedBy;
    }

    /// <summary>Its name; no other element of the network has it.</summary>
    public string Name { get; init; }

    /// <summary>The name of the element that feeds it; null for the pack's terminals.</summary>
    public string? FedBy { get; init; }

    /// <summary>
    /// The greatest current that may flow into it: what is printed on an outlet, a cable, a connector; null if not known; above
    /// 0. It stops
    /// nothing, results are held against it.
    /// </summary>
    public ElectricCurrent? MaximumCurrent
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Amperes, "A");
            field = value;
        }
    }

    /// <summary>Which limit <see cref="MaximumCurrent"/> is; for a regulator that of
    /// <see cref="Regulator.MaximumOutput"/>.</summary>
    public LimitKind CurrentKind { get; init; } = LimitKind.Current;

    /// <summary>The fuse at its inlet, at the output of an outlet that holds a voltage; null if it has none. It stops nothing,
    /// results are held against it.</summary>
    public FuseData? Fuse { get; init; }
}

/// <summary>
/// Something with a resistance and nothing else: a cable (both conductors), a contact, a plug, an outlet. Outlet voltage = inlet
/// voltage - R·I.
/// </summary>
public sealed record Wire : WiringElement
{
    /// <param name="name">Its name.</param>
    /// <param name="fedBy">What feeds it; null for the pack's terminals.</param>
    /// <param name="resistance">Both conductors and all contacts of it; 0 or more. 0 is a perfect wire.</param>
    public Wire(string name, string? fedBy, ElectricResistance resistance)
        : base(name, fedBy) => Resistance = resistance;

    /// <summary>Copper in it at 20 °C, which comes to <see cref="Resistance"/> and grows with the temperature of the air; 0 or
    /// more. None if not given.</summary>
    public ElectricResistance Copper
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    } = ElectricResistance.Zero;

    /// <summary>What of it does not go with the temperature: contacts, or all of it where nothing is known of the copper; 0 or
    /// more.</summary>
    public ElectricResistance Resistance
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    }
}

/// <summary>
/// A switch that opens when the voltage at its inlet falls below a threshold, and stays open: the low-voltage guard of a plate.
/// Closed
/// it drops nothing; what the plate draws itself is a <see cref="Device"/> that is not essential.
/// </summary>
public sealed record LowVoltageSwitch : WiringElement
{
    /// <param name="name">Its name.</param>
    /// <param name="fedBy">What feeds it; null for the pack's terminals.</param>
    /// <param name="opensBelow">The threshold, above 0; null if it never opens.</param>
    public LowVoltageSwitch(string name, string? fedBy, ElectricPotential? opensBelow = null)
        : base(name, fedBy) => OpensBelow = opensBelow;

    /// <summary>It opens below this voltage at its inlet; null if never; above 0.</summary>
    public ElectricPotential? OpensBelow
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }
}

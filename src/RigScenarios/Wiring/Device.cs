using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>What a device draws in one of its states, at its own inlet: I = Ic + g·V + P/V.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record DeviceDraw
{
    /// <summary>Part that draws the same power at any voltage, as regulated loads do; 0 or more.</summary>
    public Power ConstantPower
    {
        get;
        init
        {
            Require.NotNegative((double)value.Watts, "W");
            field = value;
        }
    } = Power.Zero;

    /// <summary>Part that draws the same current at any voltage; 0 or more.</summary>
    public ElectricCurrent ConstantCurrent
    {
        get;
        init
        {
            Require.NotNegative(value.Amperes, "A");
            field = value;
        }
    } = ElectricCurrent.Zero;

    /// <summary>Part that draws as a resistor does; 0 or more.</summary>
    public ElectricConductance Conductance
    {
        get;
        init
        {
            Require.NotNegative(value.Siemens, "S");
            field = value;
        }
    } = ElectricConductance.Zero;

    /// <summary>Whether it draws anything at all.</summary>
    internal bool DrawsAnything => (double)ConstantPower.Watts > 0 || ConstantCurrent.Amperes > 0 || Conductance.Siemens > 0;

    /// <summary>What it draws at a voltage, W.</summary>
    internal double WattsAt(double volts) =>
        (double)ConstantPower.Watts + (ConstantCurrent.Amperes * volts) + (Conductance.Siemens * volts * volts);

    /// <summary>A draw of constant power alone.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or no number.</exception>
    public static DeviceDraw OfPower(Power power) => new() { ConstantPower = power };
}

/// <summary>
/// A device at the end of the wiring. It stops, and stays stopped, when its inlet falls below its minimum while it draws
/// anything.
/// </summary>
public sealed record Device : WiringElement
{
    /// <summary>The state that every device has without saying so, in which it draws nothing.</summary>
    public const string Off = "off";

    /// <param name="name">Its name.</param>
    /// <param name="fedBy">What feeds it; null for the pack's terminals.</param>
    /// <param name="states">What it draws in each state; <see cref="Off"/> need not be among them.</param>
    public Device(string name, string? fedBy, OrderedMap<DeviceDraw> states)
        : base(name, fedBy) => States = states;

    /// <summary>What it draws in each state.</summary>
    public OrderedMap<DeviceDraw> States { get; init; }

    /// <summary>Below this voltage at its inlet it stops; null if not known; above 0.</summary>
    public ElectricPotential? MinimumVoltage
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>More than this at its inlet may destroy it; null if not known; above 0.</summary>
    public ElectricPotential? MaximumVoltage
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>Whether the build is of no use without it.</summary>
    public bool Essential { get; init; }

    /// <summary>What it draws in a state; nothing when off.</summary>
    /// <exception cref="ArgumentException">It has no state of that name.</exception>
    public DeviceDraw DrawIn(string state)
    {
        if (States.TryGetValue(state, out var draw))
            return draw;
        return state == Off
            ? new DeviceDraw()
            : throw new ArgumentException(
                $"{Name} has no state \"{state}\"; it has: {string.Join(", ", States.Keys.Append(Off).Distinct())}.",
                nameof(state));
    }
}

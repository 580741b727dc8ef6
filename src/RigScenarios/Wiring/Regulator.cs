using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>
/// A regulator: gives one voltage as long as it runs, takes P = V_out·I_out/efficiency + own draw + a·I_out + b·I_out² at its
/// inlet. It
/// stops, and stays stopped, when its inlet falls below its window. With nothing running behind it, it still takes its own draw.
/// </summary>
/// <remarks>
/// A maker's loss curve is either an efficiency (then a = b = 0), or the loss form own draw + a·I + b·I² with the efficiency at
/// 1: switching
/// losses go with I, losses in resistances with I². Each value is checked when it is set.
/// </remarks>
public sealed record Regulator : WiringElement
{
    /// <param name="name">Its name.</param>
    /// <param name="fedBy">What feeds it; null for the pack's terminals.</param>
    /// <param name="output">The voltage that it gives; above 0.</param>
    public Regulator(string name, string? fedBy, ElectricPotential output)
        : base(name, fedBy) => Output = output;

    /// <summary>The voltage that it gives; above 0.</summary>
    public ElectricPotential Output
    {
        get;
        init
        {
            Require.Positive(value.Volts, "V");
            field = value;
        }
    }

    /// <summary>Power out over power in without the losses below; above 0, up to 1. 1 if not given.</summary>
    public Ratio Efficiency
    {
        get;
        init
        {
            Require.AboveUpTo(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromDecimalFractions(1);

    /// <summary>What it takes itself, also with nothing behind it, Pq; 0 or more.</summary>
    public Power OwnDraw
    {
        get;
        init
        {
            Require.NotNegative((double)value.Watts, "W");
            field = value;
        }
    } = Power.Zero;

    /// <summary>Loss per ampere of output, a, in W/A = V; 0 or more.</summary>
    public ElectricPotential LossPerAmpere
    {
        get;
        init
        {
            Require.NotNegative(value.Volts, "V");
            field = value;
        }
    } = ElectricPotential.Zero;

    /// <summary>Loss that goes with the square of the output current, b, in W/A² = Ω; 0 or more.</summary>
    public ElectricResistance LossResistance
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    } = ElectricResistance.Zero;

    /// <summary>It stops below this voltage at its inlet; null if not known; above 0.</summary>
    public ElectricPotential? InputMinimum
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
    public ElectricPotential? InputMaximum
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>The greatest current that it gives; null if not known; above 0. It stops nothing, results are held against
    /// it.</summary>
    public ElectricCurrent? MaximumOutput
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Amperes, "A");
            field = value;
        }
    }
}

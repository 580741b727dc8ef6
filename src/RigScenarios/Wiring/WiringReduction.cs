using RigScenarios.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Wiring;

/// <summary>
/// A wiring in one combination of states as a formula at the battery's terminals, I = Ic + g·V + P/V, for computations of very
/// many discharges. Method and limits: docs/wiring.md, "Reduced demand".
/// </summary>
/// <remarks>The three parts are those that fit best over the battery's voltages, by the least squares of the relative error at
/// eight of them; where cables take their share, Ic or g may come out below zero.</remarks>
public sealed record WiringReduction
{
    private WiringReduction()
    {
    }

    /// <summary>Ic: the part that does not hang on the voltage.</summary>
    public required ElectricCurrent ConstantCurrent { get; init; }

    /// <summary>g: the part that goes with the voltage.</summary>
    public required ElectricConductance Conductance { get; init; }

    /// <summary>P: the part that goes with one over the voltage.</summary>
    public required Power ConstantPower { get; init; }

    /// <summary>By how much the current of the formula differs from that of the network at most, as a share of it, at the
    /// voltages of the fit and between them. The formula holds above <see cref="StopsAt"/>.</summary>
    public required Ratio Error { get; init; }

    /// <summary>The voltage of the terminals at which the first element runs short; null where none does.</summary>
    public required ElectricPotential? StopsAt { get; init; }

    /// <summary>The name of that element; null for none.</summary>
    public required string? StopsFirst { get; init; }

    /// <summary>The current at a voltage of the terminals.</summary>
    /// <param name="terminals">The voltage; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not above 0.</exception>
    public ElectricCurrent CurrentAt(ElectricPotential terminals)
    {
        Require.Positive(terminals.Volts, "V", nameof(terminals));
        return ElectricCurrent.FromAmperes(ConstantCurrent.Amperes + (Conductance.Siemens * terminals.Volts)
            + ((double)ConstantPower.As(PowerUnit.Watt) / terminals.Volts));
    }

    /// <summary>Reduces a wiring.</summary>
    /// <param name="network">The wiring.</param>
    /// <param name="states">The state of each device by its name; one that isn't named is off.</param>
    /// <param name="lowest">The lowest voltage of the terminals that matters, as that at which the battery ends; above 0.</param>
    /// <param name="highest">The highest, as that of the full battery without load; above the lowest.</param>
    /// <param name="air">Temperature of the air, which is that of the copper; above 0 K.</param>
    /// <returns>The formula; null where there is none: what is asked can't be delivered at some voltage of the range, or
    /// something is short of voltage at all of them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A voltage or the temperature is out of its range.</exception>
    /// <exception cref="ArgumentException">A name is no device here, or the device has no such state.</exception>
    public static WiringReduction? Of(WiringNetwork network, OrderedMap<string> states, ElectricPotential lowest,
        ElectricPotential highest, Temperature air)
    {
        ArgumentNullException.ThrowIfNull(network);
        Require.Positive(lowest.Volts, "V", nameof(lowest));
        Require.Positive((highest - lowest).Volts, "V above the lowest", nameof(highest));
        Require.Positive(air.Kelvins, "K", nameof(air));
        var draw = new WiringDraw(network, network.StateOf(states), new bool[network.Count]);
        return ReducedDraw.Of(draw, network, lowest.Volts, highest.Volts, air.Kelvins) is not { } reduced ? null : new()
        {
            ConstantCurrent = ElectricCurrent.FromAmperes(reduced.Amperes),
            Conductance = ElectricConductance.FromSiemens(reduced.Siemens),
            ConstantPower = Power.FromWatts(reduced.Watts),
            Error = Ratio.FromDecimalFractions(reduced.Error),
            StopsAt = reduced.Stops < 0 ? null : ElectricPotential.FromVolts(reduced.StopVolts),
            StopsFirst = reduced.Stops < 0 ? null : network[reduced.Stops].Name,
        };
    }
}

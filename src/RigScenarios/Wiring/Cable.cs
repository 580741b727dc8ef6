using System.Runtime.Intrinsics;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>A cable of two equal conductors with its connectors: what a <see cref="Wire"/> of the network is made of.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record Cable
{
    /// <summary>Temperature coefficient of the resistance of copper at 20 °C, 1/K (IEC 60028:1925 [second-hand]).</summary>
    internal const double CopperPerKelvin = 0.00393;

    /// <summary>20 °C in K.</summary>
    internal const double ReferenceKelvin = 293.15;

    /// <param name="conductor">Each of its two conductors.</param>
    /// <param name="length">From plug to plug, one way; 0 or more.</param>
    public Cable(Conductor conductor, Length length)
    {
        ArgumentNullException.ThrowIfNull(conductor);
        Conductor = conductor;
        Length = length;
    }

    /// <summary>Each of its two conductors.</summary>
    public Conductor Conductor { get; init; }

    /// <summary>From plug to plug, one way; 0 or more.</summary>
    public Length Length
    {
        get;
        init
        {
            Require.NotNegative(value.Meters, "m");
            field = value;
        }
    }

    /// <summary>Temperature of the copper, -100…200 °C; 20 °C if not given.</summary>
    public Temperature CopperTemperature
    {
        get;
        init
        {
            Require.Within(value.DegreesCelsius, -100, 200, "°C");
            field = value;
        }
    } = Temperature.FromDegreesCelsius(20);

    /// <summary>All mated contacts together, those of both conductors at both ends; 0 or more. None if not given.</summary>
    public ElectricResistance Contacts
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    } = ElectricResistance.Zero;

    /// <summary>Resistance there and back: 2·length of conductor, and all contacts.</summary>
    public ElectricResistance LoopResistance =>
        ElectricResistance.FromOhms((2 * Conductor.Of(Length, CopperTemperature).Ohms) + Contacts.Ohms);

    /// <summary>Copper there and back, at 20 °C and without contacts.</summary>
    internal ElectricResistance CopperAt20 => 2 * Conductor.Of(Length, Temperature.FromDegreesCelsius(20));

    /// <summary>The cable as an element of a network, at its temperature.</summary>
    /// <param name="name">Its name there.</param>
    /// <param name="fedBy">What feeds it; null for the pack's terminals.</param>
    public Wire AsWire(string name, string? fedBy) => new(name, fedBy, LoopResistance);

    /// <summary>The same at temperatures in K, without a range.</summary>
    internal static Vector512<double> CopperFactor(Vector512<double> kelvin) =>
        ((kelvin - Vector512.Create(ReferenceKelvin)) * CopperPerKelvin) + Vector512<double>.One;

    /// <summary>How many times its resistance at 20 °C copper has: 1 + 0.00393/K·(T - 20 °C).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside -100…200 °C.</exception>
    internal static double CopperFactor(Temperature temperature)
    {
        Require.Within(temperature.DegreesCelsius, -100, 200, "°C", nameof(temperature));
        return 1 + (CopperPerKelvin * (temperature.DegreesCelsius - 20));
    }
}

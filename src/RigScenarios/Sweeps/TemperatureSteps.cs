using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Sweeps;

/// <summary>How large the degrees of the temperature scales are.</summary>
internal static class TemperatureSteps
{
    /// <summary>One degree of a scale, in kelvin: 1 for Celsius, 5/9 for Fahrenheit.</summary>
    /// <param name="unit">A unit of temperature.</param>
    public static double Kelvins(Enum unit)
    {
        var scale = (TemperatureUnit)unit;
        // Far enough apart that the zero of the scale costs no digits.
        return (double)(Temperature.From(1e6, scale).Kelvins - Temperature.From(0, scale).Kelvins) / 1e6;
    }
}

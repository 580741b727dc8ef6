using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>Density of dry air: <c>ρ = p/(287.05 J/(kg K) · T)</c> (ideal gas; any textbook, from memory).</summary>
public static class AirDensity
{
    private const double GasConstant = 287.05;

    private const double SeaLevelPascals = 101_325;

    /// <summary>The density at a temperature and a height above sea level.</summary>
    /// <param name="air">Temperature of the air, above absolute zero.</param>
    /// <param name="altitude">Height; null for sea level. Pressure by the standard atmosphere, <c>p0 (1 - 2.25577e-5
    /// h/m)^5.25588</c> (ISO 2533, from memory; a printed table agrees within 0.05 % up to 4 km).</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above absolute zero.</exception>
    public static Density At(Temperature air, Length? altitude = null)
    {
        Parts.Require.Positive(air.Kelvins, "K", nameof(air));
        var pressure = SeaLevelPascals * Math.Pow(1 - (2.25577e-5 * (altitude ?? Length.Zero).Meters), 5.25588);
        return Density.FromKilogramsPerCubicMeter(pressure / (GasConstant * air.Kelvins));
    }
}

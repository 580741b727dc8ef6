using UnitsNet;

namespace RigScenarios.Files.Formats;

/// <summary>
/// The units that nearly every file uses, looked up without the units library's own parser: that one first builds the
/// abbreviations of all its quantities, which alone takes half of a cold start. Everything else still goes through it.
/// </summary>
internal static class UsualUnits
{
    private static readonly Dictionary<(Type, string), Func<double, IQuantity>> Units = new()
    {
        [(typeof(Mass), "g")] = value => Mass.FromGrams(value),
        [(typeof(Mass), "kg")] = value => Mass.FromKilograms(value),
        [(typeof(Length), "mm")] = value => Length.FromMillimeters(value),
        [(typeof(Length), "cm")] = value => Length.FromCentimeters(value),
        [(typeof(Length), "m")] = value => Length.FromMeters(value),
        [(typeof(Power), "W")] = value => Power.FromWatts(value),
        [(typeof(ElectricApparentPower), "VA")] = value => ElectricApparentPower.FromVoltamperes(value),
        [(typeof(Energy), "Wh")] = value => Energy.FromWattHours(value),
        [(typeof(ElectricPotential), "V")] = value => ElectricPotential.FromVolts(value),
        [(typeof(ElectricCurrent), "A")] = value => ElectricCurrent.FromAmperes(value),
        [(typeof(ElectricCharge), "Ah")] = value => ElectricCharge.FromAmpereHours(value),
        [(typeof(ElectricResistance), "mΩ")] = value => ElectricResistance.FromMilliohms(value),
        [(typeof(Temperature), "°C")] = value => Temperature.FromDegreesCelsius(value),
        [(typeof(Torque), "N·m")] = value => Torque.FromNewtonMeters(value),
        [(typeof(Angle), "°")] = value => Angle.FromDegrees(value),
        [(typeof(Speed), "m/s")] = value => Speed.FromMetersPerSecond(value),
        [(typeof(Ratio), "%")] = value => Ratio.FromPercent(value),
        [(typeof(Duration), "h")] = value => Duration.FromHours(value),
        [(typeof(Duration), "min")] = value => Duration.FromMinutes(value),
        [(typeof(Duration), "s")] = value => Duration.FromSeconds(value),
    };

    /// <summary>The quantity, or null if the unit is not among the common ones.</summary>
    public static IQuantity? Find(Type quantity, string unit, double value) =>
        Units.TryGetValue((quantity, unit), out var make) ? make(value) : null;
}

using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Files.Formats;

/// <summary>
/// The units that nearly every file uses, looked up without the units library's own parser: that one first builds the
/// tables of all its quantities, which takes a quarter of a cold start. Everything else still goes through it.
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
        [(typeof(Temperature), "°F")] = value => Temperature.FromDegreesFahrenheit(value),
        [(typeof(Torque), "N·m")] = value => Torque.FromNewtonMeters(value),
        [(typeof(Angle), "°")] = value => Angle.FromDegrees(value),
        [(typeof(Speed), "m/s")] = value => Speed.FromMetersPerSecond(value),
        [(typeof(Ratio), "%")] = value => Ratio.FromPercent(value),
        [(typeof(Duration), "h")] = value => Duration.FromHours(value),
        [(typeof(Duration), "min")] = value => Duration.FromMinutes(value),
        [(typeof(Duration), "s")] = value => Duration.FromSeconds(value),
        [(typeof(Duration), "ms")] = value => Duration.FromMilliseconds(value),
        [(typeof(Duration), "d")] = value => Duration.FromDays(value),
        [(typeof(Mass), "lb")] = value => Mass.FromPounds(value),
        [(typeof(Mass), "oz")] = value => Mass.FromOunces(value),
        [(typeof(Length), "in")] = value => Length.FromInches(value),
        [(typeof(Length), "ft")] = value => Length.FromFeet(value),
        [(typeof(Force), "N")] = value => Force.FromNewtons(value),
        [(typeof(Power), "mW")] = value => Power.FromMilliwatts(value),
        [(typeof(Power), "kW")] = value => Power.FromKilowatts(value),
        [(typeof(ElectricPotential), "mV")] = value => ElectricPotential.FromMillivolts(value),
        [(typeof(ElectricCurrent), "mA")] = value => ElectricCurrent.FromMilliamperes(value),
        [(typeof(ElectricResistance), "Ω")] = value => ElectricResistance.FromOhms(value),
        [(typeof(Speed), "km/h")] = value => Speed.FromKilometersPerHour(value),
        [(typeof(Entropy), "J/K")] = value => Entropy.FromJoulesPerKelvin(value),
    };

    /// <summary>What can be looked up here.</summary>
    public static IReadOnlyCollection<(Type Quantity, string Unit)> All => Units.Keys;

    /// <summary>A zero of each quantity that can be looked up here.</summary>
    public static IEnumerable<IQuantity> Zeros => Units.DistinctBy(unit => unit.Key.Item1).Select(unit => unit.Value(0));

    /// <summary>The quantity, or null if the unit is not among the common ones.</summary>
    public static IQuantity? Find(Type quantity, string unit, double value) =>
        Units.TryGetValue((quantity, unit), out var make) ? make(value) : null;

    /// <summary>The sign of a unit as the units library writes it, or null if the unit is not among the common ones.</summary>
    public static string? Sign(Enum unit) => unit switch
    {
        MassUnit.Gram => "g",
        MassUnit.Kilogram => "kg",
        LengthUnit.Millimeter => "mm",
        LengthUnit.Centimeter => "cm",
        LengthUnit.Meter => "m",
        PowerUnit.Watt => "W",
        EnergyUnit.WattHour => "Wh",
        ElectricPotentialUnit.Volt => "V",
        ElectricCurrentUnit.Ampere => "A",
        ElectricResistanceUnit.Milliohm => "mΩ",
        TemperatureUnit.DegreeCelsius => "°C",
        TemperatureUnit.DegreeFahrenheit => "°F",
        TorqueUnit.NewtonMeter => "N·m",
        AngleUnit.Degree => "°",
        SpeedUnit.MeterPerSecond => "m/s",
        RatioUnit.Percent => "%",
        DurationUnit.Hour => "h",
        DurationUnit.Second => "s",
        DurationUnit.Millisecond => "ms",
        _ => null,
    };
}

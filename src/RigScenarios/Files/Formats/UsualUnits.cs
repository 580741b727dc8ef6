using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Files.Formats;

/// <summary>
/// The units that nearly every file and answer uses, looked up without the units library's own tables: those are first built for
/// all its quantities, which takes a quarter of a cold start. Everything else still goes through them.
/// </summary>
public static class UsualUnits
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
    internal static IReadOnlyCollection<(Type Quantity, string Unit)> All => Units.Keys;

    /// <summary>A zero of each quantity that can be looked up here.</summary>
    internal static IEnumerable<IQuantity> Zeros => Units.DistinctBy(unit => unit.Key.Item1).Select(unit => unit.Value(0));

    /// <summary>The quantity, or null if the unit is not among the common ones.</summary>
    internal static IQuantity? Find(Type quantity, string unit, double value) =>
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
        ElectricResistanceUnit.Ohm => "Ω",
        ForceUnit.Newton => "N",
        PressureUnit.Megapascal => "MPa",
        TemperatureDeltaUnit.Kelvin => "∆K",
        _ => null,
    };

    /// <summary>A number in a unit, as a quantity.</summary>
    /// <param name="number">The number.</param>
    /// <param name="unit">The unit.</param>
    /// <exception cref="UnitNotFoundException">It is no unit.</exception>
    public static IQuantity From(double number, Enum unit) => unit switch
    {
        MassUnit mass => Mass.From(number, mass),
        LengthUnit length => Length.From(number, length),
        AngleUnit angle => Angle.From(number, angle),
        TorqueUnit torque => Torque.From(number, torque),
        ForceUnit force => Force.From(number, force),
        PressureUnit pressure => Pressure.From(number, pressure),
        SpeedUnit speed => Speed.From(number, speed),
        ElectricCurrentUnit current => ElectricCurrent.From(number, current),
        ElectricPotentialUnit potential => ElectricPotential.From(number, potential),
        TemperatureUnit temperature => Temperature.From(number, temperature),
        PowerUnit power => Power.From(number, power),
        RatioUnit ratio => Ratio.From(number, ratio),
        _ => Quantity.From(number, unit),
    };
}

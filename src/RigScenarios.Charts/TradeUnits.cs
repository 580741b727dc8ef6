using System.Globalization;
using RigScenarios.Files.Formats;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts;

/// <summary>
/// Writes quantities in the units that the trade uses (W, Wh, V, A, mΩ, g or kg, mm, N·m, °C, hours and minutes), in plain
/// text and independent of the machine's language. For display only: scenario files have their own, exact writing.
/// </summary>
public static class TradeUnits
{
    private const int SignificantDigits = 4;

    /// <summary>The quantity with four significant digits in its trade unit: "14.4 V", "7 h 40 min", "−8 °C".</summary>
    public static string Text(IQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return quantity switch
        {
            Duration time => TimeText(time),
            Mass mass when Math.Abs(mass.Grams) < 1000 => Text(mass.Grams, MassUnit.Gram),
            Mass mass => Text(mass.Kilograms, MassUnit.Kilogram),
            Length length when Math.Abs(length.Meters) < 10 => Text(length.Millimeters, LengthUnit.Millimeter),
            Length length => Text(length.Meters, LengthUnit.Meter),
            ElectricResistance resistance when Math.Abs(resistance.Ohms) < 1 =>
                Text(resistance.Milliohms, ElectricResistanceUnit.Milliohm),
            _ when TradeUnit(quantity) is { } unit => Text((double)quantity.As(unit), unit),
            _ => Text((double)quantity.Value, quantity.Unit),
        };
    }

    /// <summary>The short sign of a unit: "V", "N·m", "Ah".</summary>
    public static string Abbreviation(Enum unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit switch
        {
            // The trade writes battery charge without the hyphen that UnitsNet puts in.
            ElectricChargeUnit.AmpereHour => "Ah",
            ElectricChargeUnit.MilliampereHour => "mAh",
            DurationUnit.Minute => "min",
            _ => UsualUnits.Sign(unit) ?? UnitsNetSetup.Default.UnitAbbreviations.GetDefaultAbbreviation(
                unit.GetType(), Convert.ToInt32(unit, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
        };
    }

    private static Enum? TradeUnit(IQuantity quantity) => quantity switch
    {
        // Spelled out: RigScenarios.Power is a namespace of the library.
        Power => PowerUnit.Watt,
        Energy => EnergyUnit.WattHour,
        ElectricPotential => ElectricPotentialUnit.Volt,
        ElectricCurrent => ElectricCurrentUnit.Ampere,
        ElectricResistance => ElectricResistanceUnit.Ohm,
        ElectricCharge => ElectricChargeUnit.AmpereHour,
        Torque => TorqueUnit.NewtonMeter,
        Force => ForceUnit.Newton,
        Pressure => PressureUnit.Megapascal,
        Temperature => TemperatureUnit.DegreeCelsius,
        TemperatureDelta => TemperatureDeltaUnit.Kelvin,
        Angle => AngleUnit.Degree,
        Ratio => RatioUnit.Percent,
        _ => null,
    };

    private static string Text(double value, Enum unit)
    {
        var number = Rounding.Text(value, SignificantDigits);
        return unit is AngleUnit.Degree ? $"{number}°" : $"{number} {Abbreviation(unit)}".TrimEnd();
    }

    // "7 h 40 min" reads faster than 7.667 h; under ten minutes seconds matter, over two days they do not.
    private static string TimeText(Duration time)
    {
        var seconds = Math.Abs(time.Seconds);
        var sign = time.Seconds < 0 ? Rounding.Minus : "";
        if (double.IsInfinity(seconds))
            return $"{sign}without end";
        if (seconds < 59.5)
            return $"{sign}{Rounding.Text(seconds, 3)} s";
        if (seconds < 599.5)
        {
            var whole = (int)Math.Round(seconds);
            return $"{sign}{whole / 60} min {whole % 60:00} s";
        }

        var minutes = (long)Math.Round(seconds / 60);
        return minutes < 60 ? $"{sign}{minutes} min" : $"{sign}{minutes / 60} h {minutes % 60:00} min";
    }
}

using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace RigScenarios.Files.Formats;

/// <summary>Reads a quantity the ways people write it, and says what is wrong where it can't.</summary>
public static partial class QuantityText
{
    /// <summary>Spellings of the trade that the units library doesn't know, with the one that it does.</summary>
    private static readonly Dictionary<string, string> Spellings = new(StringComparer.Ordinal)
    {
        ["C"] = "°C", ["degC"] = "°C", ["deg C"] = "°C", ["ohm"] = "Ω", ["Ohm"] = "Ω", ["mohm"] = "mΩ", ["mOhm"] = "mΩ",
        ["hours"] = "h", ["hour"] = "h", ["minutes"] = "min", ["minute"] = "min", ["seconds"] = "s",
        ["days"] = "d", ["day"] = "d",
        ["watt"] = "W", ["watts"] = "W", ["volt"] = "V", ["volts"] = "V", ["amps"] = "A", ["amp"] = "A",
        ["wh"] = "Wh", ["WH"] = "Wh",
        ["ah"] = "Ah", ["AH"] = "Ah", ["A·h"] = "Ah", ["W·h"] = "Wh", ["w"] = "W", ["v"] = "V", ["a"] = "A", ["Min"] = "min",
        ["Nm"] = "N·m", ["N m"] = "N·m", ["deg"] = "°", ["F"] = "°F", ["degF"] = "°F", ["deg F"] = "°F", ["degrees"] = "°",
        ["degree"] = "°", ["c"] = "°C", ["celsius"] = "°C", ["Celsius"] = "°C", ["f"] = "°F", ["fahrenheit"] = "°F",
        ["Fahrenheit"] = "°F", ["°c"] = "°C", ["°f"] = "°F",
        ["Kg"] = "kg", ["KG"] = "kg", ["kilo"] = "kg", ["kilos"] = "kg", ["kilograms"] = "kg", ["G"] = "g", ["gr"] = "g",
        ["gram"] = "g", ["grams"] = "g", ["lbs"] = "lb", ["pounds"] = "lb", ["ounces"] = "oz", ["ounce"] = "oz",
        ["MM"] = "mm", ["CM"] = "cm", ["millimetres"] = "mm", ["millimeters"] = "mm", ["centimetres"] = "cm",
        ["centimeters"] = "cm", ["metres"] = "m", ["meters"] = "m", ["inch"] = "in", ["inches"] = "in", ["\""] = "in",
        ["″"] = "in", ["”"] = "in", ["foot"] = "ft", ["feet"] = "ft", ["'"] = "ft", ["′"] = "ft",
    };

    /// <summary>The least number that is read besides 0.</summary>
    internal const double Least = 1e-15;

    /// <summary>Reads text as a quantity.</summary>
    /// <param name="text">For example <c>150 Wh</c>, <c>150Wh</c> or <c>−8 °C</c>.</param>
    /// <param name="quantity">The name of the quantity in the units library, and its unit of use, from a zero value.</param>
    /// <param name="example">An example for the message.</param>
    /// <param name="value">What was read.</param>
    /// <param name="problem">What is wrong, in one sentence.</param>
    public static bool TryRead(string text, IQuantity quantity, string example, [NotNullWhen(true)] out IQuantity? value,
        [NotNullWhen(false)] out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(quantity);
        ArgumentNullException.ThrowIfNull(example);
        value = null;
        problem = null;
        var plain = WrittenDigits.Plain(text);
        if (plain.Length > 80)
        {
            problem = "The text is too long for a quantity.";
            return false;
        }
        if (!TrySplit(plain, out var figure, out var unitText))
        {
            problem = Comma().Match(plain) is { Success: true } comma
                ? $"Found \"{text}\": a comma is not read, because it means different things in different countries. For a "
                    + $"decimal mark write a point: \"{plain.Replace(',', '.')}\"."
                    + (comma.Groups["tail"].Length == 3 ? $" For a thousand leave it out: \"{plain.Replace(",", "")}\"." : "")
                : $"Found \"{text}\", which is not a number with a unit.";
            return false;
        }
        var number = double.Parse(figure, NumberStyles.Float, CultureInfo.InvariantCulture);
        // Some quantities of the units library are decimal numbers, which end at 8e28.
        if (!(Math.Abs(number) < 1e15))
        {
            problem = $"Found \"{text}\", which is too large for a number.";
            return false;
        }
        // What is divided by a number near the least there is ends in no number at all.
        if (number != 0 && Math.Abs(number) < Least)
        {
            problem = $"Found \"{text}\", which is too small for a number: nothing is 0.";
            return false;
        }
        if (unitText.Length == 0)
        {
            var exampleUnit = example[(example.IndexOf(' ') + 1)..];
            problem = $"Found \"{text}\", a number without a unit. Probably \"{plain} {exampleUnit}\" was meant.";
            return false;
        }
        if (quantity is Temperature && unitText is "°" or "deg" or "degrees" or "degree")
        {
            problem = $"Found \"{text}\", which is Celsius or Fahrenheit: write \"{figure} °C\" or \"{figure} °F\".";
            return false;
        }
        var known = Known(unitText, quantity);
        value = UsualUnits.Find(quantity.GetType(), known, number);
        if (value is not null)
            return true;
        if (!UnitParser.Default.TryParse(known, quantity.Unit.GetType(), CultureInfo.InvariantCulture, out var unit))
        {
            problem = $"Found \"{text}\", but \"{unitText}\" is not a unit of {Words(quantity)}.";
            return false;
        }
        value = Quantity.From(number, unit);
        return true;
    }

    /// <summary>Whether the unit of a text is one that this quantity usually has: those are read without the tables of the units
    /// library.</summary>
    internal static bool HasUsualUnit(string text, IQuantity quantity) =>
        TrySplit(text, out _, out var unit) && UsualUnits.Find(quantity.GetType(), Known(unit, quantity), 0) is not null;

    /// <summary>Writes a quantity in the unit it was given in, so that reading it again gives exactly the same value.</summary>
    public static string Write(IQuantity value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var number = (double)value.Value;
        // The units library writes minutes as "m", which a reader takes for metres.
        if (value.Unit is UnitsNet.Units.DurationUnit.Minute)
            return $"{number.ToString("R", CultureInfo.InvariantCulture)} min";
        // And ampere-hours as "A-h", which no label does.
        if (value.Unit is UnitsNet.Units.ElectricChargeUnit.AmpereHour)
            return $"{number.ToString("R", CultureInfo.InvariantCulture)} Ah";
        return $"{number.ToString("R", CultureInfo.InvariantCulture)} "
            + (UsualUnits.Sign(value.Unit) ?? UnitAbbreviationsCache.Default.GetDefaultAbbreviation(value.Unit.GetType(),
                Convert.ToInt32(value.Unit, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
    }

    /// <summary>The unit in a spelling that the units library knows. Only a temperature is in "C" or "F": elsewhere they are
    /// coulombs and farads.</summary>
    private static string Known(string text, IQuantity quantity) =>
        text is "C" or "c" or "F" or "f" && quantity is not (Temperature or TemperatureDelta)
            ? text : Spellings.GetValueOrDefault(text, text);

    private static string Words(IQuantity quantity) => quantity.QuantityInfo.Name switch
    {
        nameof(ElectricPotential) => "voltage",
        nameof(ElectricCurrent) => "current",
        nameof(ElectricCharge) => "charge",
        nameof(ElectricResistance) => "resistance",
        nameof(MolarEnergy) => "molar energy",
        nameof(Entropy) => "heat capacity",
        nameof(Ratio) => "a share (%)",
        nameof(Duration) => "time",
        nameof(Torque) => "a moment (N·m)",
        nameof(Angle) => "an angle (°)",
        var name => name.ToLowerInvariant(),
    };

    private static bool TrySplit(string text, out string figure, out string unit)
    {
        if (PlainQuantity.TrySplit(text, out figure, out unit))
            return true;
        var match = NumberThenUnit().Match(text);
        if (!match.Success)
            return false;
        figure = match.Groups["number"].Value.Replace(" ", "", StringComparison.Ordinal);
        unit = match.Groups["unit"].Value.Trim();
        return true;
    }

    [GeneratedRegex(@"^(?<number>[+-]? ?([0-9]+(\.[0-9]*)?|\.[0-9]+)([eE][+-]?[0-9]+)?)\s*(?<unit>[^0-9\s,.+-].*)?$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NumberThenUnit();

    [GeneratedRegex(@"^[+-]?[0-9]+,(?<tail>[0-9]+)[^0-9]*$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Comma();
}

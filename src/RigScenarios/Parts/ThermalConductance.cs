using System.Globalization;

namespace RigScenarios.Parts;

/// <summary>
/// Heat that passes from a body to its surroundings for each kelvin between them, in W/K.
/// Unlike a heat-transfer coefficient (W/(m²·K)) it is for the body as a whole. The units library has no such quantity.
/// </summary>
/// <param name="WattsPerKelvin">The value, W/K. Any finite number; the models ask for 0 or more.</param>
public readonly record struct ThermalConductance(double WattsPerKelvin) : IFormattable
{
    private const string Unit = "W/K";

    /// <summary>Makes a conductance from a value in W/K.</summary>
    public static ThermalConductance FromWattsPerKelvin(double value) => new(value);

    /// <summary>Reads a value with its unit, such as "0.37 W/K".</summary>
    /// <exception cref="FormatException">The text is no number followed by W/K.</exception>
    public static ThermalConductance Parse(string text) => TryParse(text, out var value)
        ? value
        : throw new FormatException(
            $"'{text}' is no thermal conductance; accepted: a number with the unit W/K, such as \"0.37 W/K\".");

    /// <summary>Reads a value with its unit, such as "0.37 W/K"; false where the text is something else.</summary>
    public static bool TryParse(string? text, out ThermalConductance value)
    {
        value = default;
        var trimmed = text?.Trim() ?? "";
        if (!trimmed.EndsWith(Unit, StringComparison.OrdinalIgnoreCase))
            return false;
        if (!double.TryParse(trimmed[..^Unit.Length], NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            || !double.IsFinite(number))
            return false;
        value = new ThermalConductance(number);
        return true;
    }

    /// <summary>The value with its unit, such as "0.37 W/K".</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>The value in the given number format, with its unit.</summary>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        WattsPerKelvin.ToString(format ?? "G6", formatProvider ?? CultureInfo.InvariantCulture) + " " + Unit;
}

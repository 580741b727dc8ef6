using System.Globalization;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>A value of a file with the digits that people read: the values of a spread have ten.</summary>
internal static class ShortNumber
{
    private const int Digits = 3;

    /// <summary>The number in front of a text to three digits, its unit as it is; a text that begins with none as it
    /// stands.</summary>
    /// <param name="text">The text, such as "16.96311668 W".</param>
    public static string Of(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        var (number, unit) = space < 0 ? (text, "") : (text[..space], text[space..]);
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            return text;
        var places = value == 0 ? 0 : Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return places is < -3 or > 9 ? string.Create(CultureInfo.InvariantCulture, $"{value:G3}{unit}")
            : Math.Round(value, Math.Max(0, places)).ToString("0.#########", CultureInfo.InvariantCulture) + unit;
    }
}

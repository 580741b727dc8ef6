using System.Globalization;

namespace RigScenarios.Charts;

/// <summary>Numbers as they go into charts and tables: rounded, so that 16.740000000000002 never shows.</summary>
public static class Rounding
{
    /// <summary>The typographic minus sign, as wide as the plus sign and never broken at a line's end.</summary>
    public const string Minus = "−";

    // Five digits draw a curve without visible steps at any print size.
    private const int ChartDigits = 5;

    /// <summary>The value with five significant digits, as charts take it; not-a-number and infinities stay what they
    /// are.</summary>
    public static double ForChart(double value) => Significant(value, ChartDigits);

    /// <summary>The value rounded to a number of significant digits.</summary>
    /// <param name="value">Any number.</param>
    /// <param name="digits">From 1 to 15.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of digits lies outside 1 to 15.</exception>
    public static double Significant(double value, int digits)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(digits, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(digits, 15);
        if (value == 0)
            return 0;
        if (!double.IsFinite(value))
            return value;
        // Through the decimal text: scaling by powers of ten would bring back the very digits that are to go.
        return double.Parse(value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    /// <summary>The value as text with at most the given significant digits, without an exponent between 0.0001 and a
    /// million.</summary>
    public static string Text(double value, int digits = 4)
    {
        if (double.IsNaN(value))
            return "–";
        if (double.IsInfinity(value))
            return value > 0 ? "∞" : Minus + "∞";
        var rounded = Significant(value, digits);
        var size = Math.Abs(rounded);
        var text = size == 0 || size is >= 1e-4 and < 1e6
            ? size.ToString("0.###########", CultureInfo.InvariantCulture)
            : size.ToString("0.###E+0", CultureInfo.InvariantCulture);
        return rounded < 0 ? Minus + text : text;
    }
}

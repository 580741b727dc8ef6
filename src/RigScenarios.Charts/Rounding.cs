using System.Globalization;

namespace RigScenarios.Charts;

/// <summary>Numbers as they go into charts and tables: rounded, so that 16.740000000000002 never shows.</summary>
public static class Rounding
{
    /// <summary>The typographic minus sign, as wide as the plus sign and never broken at a line's end.</summary>
    public const string Minus = "−";

    // Whole numbers below it, and the powers of ten, are exact; scaling them stays so near that 1e-6 is far from an error.
    private const double LargestWhole = 1e9;
    private const double Least = 1e-9;

    private static readonly double[] Exact = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14,
        1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22];

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
        if (TrySignificant(value, digits, out var rounded))
            return rounded;
        // Through the decimal text: scaling by powers of ten would bring back the very digits that are to go.
        return double.Parse(value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    // The same without a text, for charts have thousands of numbers. A whole number over a power of ten that is exact is as near
    // to the decimal as a parser comes; where the scaled value lies so near the middle of two that its own rounding might decide,
    // the text does.
    private static bool TrySignificant(double value, int digits, out double rounded)
    {
        rounded = 0;
        var size = Math.Abs(value);
        if (!(size >= Least && size < Exact[^1]))
            return false;
        // One too many or too few, where the value is a power of ten to the last bit, rounds to that power all the same.
        var shift = digits - 1;
        for (var power = 1; size >= Exact[power]; power++)
            shift--;
        for (var power = 0; size * Exact[power] < 1; power++)
            shift++;
        if (shift >= Exact.Length)
            return false;
        var scaled = shift >= 0 ? size * Exact[shift] : size / Exact[-shift];
        var number = Math.Round(scaled);
        if (Math.Abs(Math.Abs(scaled - number) - 0.5) < 1e-6 || number >= LargestWhole)
            return false;
        rounded = Math.CopySign(shift >= 0 ? number / Exact[shift] : number * Exact[-shift], value);
        return true;
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

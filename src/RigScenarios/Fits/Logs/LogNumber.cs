using System.Globalization;

namespace RigScenarios.Fits.Logs;

/// <summary>Reads a cell of a power log.</summary>
internal static class LogNumber
{
    private static readonly string[] DayFirst = ["d.M.yyyy H:m:s.FFFFFFF", "d.M.yyyy H:m", "d.M.yy H:m:s.FFFFFFF"];

    /// <summary>Reads a number, with a unit behind it perhaps ("16.5 V"), or a clock time; false if it is neither, or not
    /// finite.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="decimalMark">Point or comma.</param>
    /// <param name="value">The number, or the seconds of a clock time.</param>
    /// <param name="clock">Whether it was a clock time.</param>
    public static bool TryRead(ReadOnlySpan<char> cell, char decimalMark, out double value, out bool clock)
    {
        cell = cell.Trim();
        clock = cell.Contains(':');
        if (cell.IsEmpty || cell.Length > 64)
        {
            value = 0;
            return false;
        }
        Span<char> plain = stackalloc char[cell.Length];
        cell.CopyTo(plain);
        if (decimalMark != '.')
            plain.Replace(decimalMark, '.');
        if (clock)
            return TryReadClock(plain, out value);
        return TryReadPlain(plain, out value) || (IsUnit(plain, out var number) && TryReadPlain(number, out value));
    }

    private static bool TryReadPlain(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    /// <summary>A number, a blank perhaps, and letters.</summary>
    private static bool IsUnit(ReadOnlySpan<char> text, out ReadOnlySpan<char> number)
    {
        var end = text.Length;
        while (end > 0 && char.IsLetter(text[end - 1]))
            end--;
        number = text[..end].TrimEnd();
        return end < text.Length && number.Length > 0 && char.IsAsciiDigit(number[^1]);
    }

    /// <summary>Hours, minutes and seconds, with a date before them perhaps. Days are counted where the date can be
    /// read.</summary>
    private static bool TryReadClock(ReadOnlySpan<char> text, out double seconds)
    {
        if (TryReadHours(text, out seconds))
            return true;
        const DateTimeStyles styles = DateTimeStyles.NoCurrentDateDefault | DateTimeStyles.AllowWhiteSpaces
            | DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal;
        var read = DateTime.TryParseExact(text, DayFirst, CultureInfo.InvariantCulture, styles, out var moment)
            || DateTime.TryParse(text, CultureInfo.InvariantCulture, styles, out moment);
        seconds = moment.Ticks / (double)TimeSpan.TicksPerSecond;
        return read;
    }

    /// <summary>h:mm or h:mm:ss; more than 24 hours are no mistake.</summary>
    private static bool TryReadHours(ReadOnlySpan<char> text, out double seconds)
    {
        seconds = 0;
        var first = text.IndexOf(':');
        var rest = text[(first + 1)..];
        var second = rest.IndexOf(':');
        var minutes = second < 0 ? rest : rest[..second];
        var last = second < 0 ? "0" : rest[(second + 1)..];
        if (!int.TryParse(text[..first], NumberStyles.None, CultureInfo.InvariantCulture, out var h)
            || !int.TryParse(minutes, NumberStyles.None, CultureInfo.InvariantCulture, out var m) || m >= 60
            || !double.TryParse(last, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var s))
            return false;
        seconds = (h * 3600.0) + (m * 60) + s;
        return true;
    }
}

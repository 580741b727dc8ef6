using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace RigScenarios.Cells.Aging;

/// <summary>A date as somebody remembers it: a month ("2023-03"), or a day ("2023-03-17").</summary>
public readonly record struct MonthOrDay
{
    private const int MiddleOfMonth = 15;

    /// <param name="year">Year, 1 to 9999.</param>
    /// <param name="month">Month, 1 to 12.</param>
    /// <param name="day">Day of the month; null if only the month is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such date.</exception>
    public MonthOrDay(int year, int month, int? day = null)
    {
        Date = new DateOnly(year, month, day ?? MiddleOfMonth);
        OnlyMonth = day is null;
    }

    /// <summary>The day; the 15th where only the month is known.</summary>
    public DateOnly Date { get; }

    /// <summary>Whether only the month is known.</summary>
    public bool OnlyMonth { get; }

    /// <summary>Reads "2023-03" or "2023-03-17".</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out MonthOrDay? date)
    {
        date = null;
        var trimmed = text?.Trim();
        if (DateOnly.TryParseExact(trimmed, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            date = new MonthOrDay(day.Year, day.Month, day.Day);
        else if (DateOnly.TryParseExact(trimmed, "yyyy-MM", CultureInfo.InvariantCulture, DateTimeStyles.None, out var month))
            date = new MonthOrDay(month.Year, month.Month);
        return date is not null;
    }

    /// <summary>The text that <see cref="TryParse"/> reads.</summary>
    public override string ToString() =>
        Date.ToString(OnlyMonth ? "yyyy-MM" : "yyyy-MM-dd", CultureInfo.InvariantCulture);
}

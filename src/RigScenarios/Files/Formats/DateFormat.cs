using System.Globalization;
using System.Text.Json.Nodes;

namespace RigScenarios.Files.Formats;

/// <summary>A day of the calendar.</summary>
public sealed class DateFormat : PlainFormat<DateOnly>
{
    /// <summary>How a day is written: year-month-day.</summary>
    internal const string Pattern = "yyyy-MM-dd";

    /// <inheritdoc/>
    public override string Accepted => "a day as year-month-day, such as \"2026-12-03\"";

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" };

    /// <inheritdoc/>
    protected override bool TryParse(string text, out DateOnly value) =>
        DateOnly.TryParseExact(WrittenDigits.Plain(text), Pattern, CultureInfo.InvariantCulture,
            DateTimeStyles.None, out value);

    /// <inheritdoc/>
    protected override string Text(DateOnly value) => value.ToString(Pattern, CultureInfo.InvariantCulture);
}

using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace RigScenarios.Files.Formats;

/// <summary>The form of a length of time, which people also write in parts: <c>1 h 30 min</c>, <c>1h30</c>,
/// <c>1:30 h</c>.</summary>
/// <param name="low">The least accepted value.</param>
/// <param name="high">The greatest accepted value.</param>
/// <param name="example">An example as it stands in a file.</param>
public sealed partial class DurationFormat(Duration low, Duration high, string example)
    : QuantityFormat<Duration>(low, high, example)
{
    private const int LongestText = 80;

    /// <inheritdoc/>
    protected override bool TryParse(string text, [NotNullWhen(true)] out IQuantity? value,
        [NotNullWhen(false)] out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = text.Length > LongestText ? "" : WrittenDigits.Plain(text);
        // As nearly all are written: one number, one unit.
        if (PlainQuantity.TrySplit(plain, out _, out var unit) && unit is "h" or "min" or "s")
            return QuantityText.TryRead(text, Duration.Zero, Example, out value, out problem);
        if (HoursAndMinutes().Match(plain) is { Success: true } both)
        {
            problem = null;
            value = Duration.FromMinutes((60 * Whole(both, "hours")) + Whole(both, "minutes"));
            return true;
        }
        // Half past one, or a minute and a half? Only the unit tells.
        if (WithoutUnit().IsMatch(plain))
        {
            value = null;
            problem = $"Found \"{text}\", which says neither hours nor minutes. Probably \"{plain} h\" was meant.";
            return false;
        }
        // Two parts are looked for first: as one quantity "h 30 min" would be a unit for the units library to search all its
        // tables for.
        if (TwoParts().Match(plain) is not { Success: true } parts)
            return QuantityText.TryRead(text, Duration.Zero, Example, out value, out problem);
        if (!QuantityText.TryRead(parts.Groups["first"].Value, Duration.Zero, Example, out var hours, out problem))
        {
            value = null;
            return false;
        }
        if (!QuantityText.TryRead(parts.Groups["second"].Value, Duration.Zero, Example, out var minutes, out problem))
        {
            value = null;
            if (double.TryParse(parts.Groups["second"].Value, CultureInfo.InvariantCulture, out _))
                problem = $"Found \"{text}\": the last number has no unit. Probably \"{text.Trim()} min\" was meant.";
            return false;
        }
        value = Duration.FromMinutes((double)hours.As(UnitsNet.Units.DurationUnit.Minute)
            + (double)minutes.As(UnitsNet.Units.DurationUnit.Minute));
        problem = null;
        return true;
    }

    private static int Whole(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    // Minutes have two digits behind hours, or nobody could tell 1h5 from a slip.
    [GeneratedRegex(@"^(?<hours>[0-9]{1,4})(\s?h\s?(?<minutes>[0-5][0-9])|:(?<minutes>[0-5][0-9])\s?h)\z",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex HoursAndMinutes();

    [GeneratedRegex(@"^[0-9]{1,4}:[0-5][0-9]\z", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex WithoutUnit();

    [GeneratedRegex(@"^(?<first>\s*[0-9.]+\s*[a-z]+)\s*(?<second>[0-9.].*)$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex TwoParts();
}

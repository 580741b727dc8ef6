using System.Globalization;

namespace RigScenarios.Parts;

/// <summary>An amount of money. Amounts of different currencies are never added.</summary>
/// <param name="Amount">The amount, 0 or more.</param>
/// <param name="Currency">The currency's three letters (ISO 4217).</param>
public readonly record struct Money(decimal Amount, string Currency)
{
    /// <summary>Reads text such as <c>2400 EUR</c>.</summary>
    public static bool TryParse(string? text, out Money value)
    {
        value = default;
        var trimmed = text?.Trim() ?? "";
        if (trimmed.Length < 4 || !trimmed[^3..].All(char.IsAsciiLetterUpper)
            || !decimal.TryParse(trimmed[..^3].TrimEnd(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
                out var amount) || amount > 100_000_000)
            return false;
        value = new Money(amount, trimmed[^3..]);
        return true;
    }

    /// <summary>The amount and the currency, as files write it.</summary>
    public override string ToString() => $"{Amount.ToString(CultureInfo.InvariantCulture)} {Currency}";
}

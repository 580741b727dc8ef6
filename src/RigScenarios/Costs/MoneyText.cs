using System.Globalization;
using RigScenarios.Parts;

namespace RigScenarios.Costs;

/// <summary>Amounts as people read them. Only here are they rounded, half to even, to the smallest unit that the currency
/// has.</summary>
public static class MoneyText
{
    // ISO 4217:2015, list one, column "minor unit": those that have not two digits (from memory).
    private static readonly Dictionary<string, int> Digits = new(StringComparer.Ordinal)
    {
        ["BIF"] = 0, ["CLP"] = 0, ["DJF"] = 0, ["GNF"] = 0, ["ISK"] = 0, ["JPY"] = 0, ["KMF"] = 0, ["KRW"] = 0, ["PYG"] = 0,
        ["RWF"] = 0, ["UGX"] = 0, ["UYI"] = 0, ["VND"] = 0, ["VUV"] = 0, ["XAF"] = 0, ["XOF"] = 0, ["XPF"] = 0,
        ["BHD"] = 3, ["IQD"] = 3, ["JOD"] = 3, ["KWD"] = 3, ["LYD"] = 3, ["OMR"] = 3, ["TND"] = 3,
    };

    /// <summary>How many digits behind the point a currency has; 2 for one that is not on the list.</summary>
    /// <param name="currency">Its three letters.</param>
    public static int MinorDigits(string currency) => Digits.GetValueOrDefault(currency, 2);

    /// <summary>An amount rounded half to even to its currency's smallest unit.</summary>
    /// <param name="money">The amount; of either sign.</param>
    public static Money Rounded(Money money) => money with { Amount = Round(money.Amount, money.Currency) };

    /// <summary>An amount as people read it: "2,340 EUR", "12.50 EUR", "1,204 JPY". Whole amounts have no digits behind the
    /// point.</summary>
    /// <param name="money">The amount; of either sign.</param>
    public static string Of(Money money)
    {
        var rounded = Round(money.Amount, money.Currency);
        var digits = rounded == decimal.Truncate(rounded) ? 0 : MinorDigits(money.Currency);
        return $"{rounded.ToString($"N{digits}", CultureInfo.InvariantCulture)} {money.Currency}";
    }

    private static decimal Round(decimal amount, string currency) =>
        Math.Round(amount, MinorDigits(currency), MidpointRounding.ToEven);
}

using System.Globalization;
using RigScenarios.Costs;
using RigScenarios.Parts;

namespace RigScenarios.Tests.Costs;

public sealed class MoneyTextTests
{
    [Theory]
    [InlineData("2340", "EUR", "2,340 EUR")]
    [InlineData("12.5", "EUR", "12.50 EUR")]
    [InlineData("0.125", "EUR", "0.12 EUR")]
    [InlineData("0.135", "EUR", "0.14 EUR")]
    [InlineData("0.004", "EUR", "0 EUR")]
    [InlineData("-310.5", "EUR", "-310.50 EUR")]
    // The smallest units of ISO 4217: the yen has none, the Kuwaiti dinar a thousandth.
    [InlineData("1204.5", "JPY", "1,204 JPY")]
    [InlineData("1205.5", "JPY", "1,206 JPY")]
    [InlineData("1.2345", "KWD", "1.234 KWD")]
    public void An_amount_is_rounded_half_to_even_to_the_smallest_unit(string amount, string currency, string shown) =>
        Assert.Equal(shown, MoneyText.Of(new Money(decimal.Parse(amount, CultureInfo.InvariantCulture), currency)));
}

using RigScenarios.Sweeps.Sensitivity;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Sensitivity;

public class InTensTests
{
    [Theory]
    [InlineData(0.78, "8 times in 10")]
    [InlineData(0.5, "5 times in 10")]
    [InlineData(0.06, "once in 10")]
    [InlineData(0.04, "4 times in 100")]
    [InlineData(0.97, "97 times in 100")]
    [InlineData(0.0123, "once in 100")]
    [InlineData(0.002, "2 times in 1000")]
    [InlineData(0.0002, "less than once in 1000")]
    [InlineData(0.9999, "more than 999 times in 1000")]
    [InlineData(0.95, "95 times in 100")]
    [InlineData(0, "never")]
    [InlineData(1, "always")]
    public void A_share_is_said_as_people_say_it(double share, string words) =>
        Assert.Equal(words, InTens.Of(Ratio.FromDecimalFractions(share)));

    [Fact]
    public void Where_all_runs_agree_it_is_told_of_how_many()
    {
        Assert.Equal("in all 512 runs", InTens.Of(new Chance(512, 0)));
        Assert.Equal("in none of 512 runs", InTens.Of(new Chance(0, 512)));
    }

    [Theory]
    [InlineData(0.8, "8 of 10")]
    [InlineData(0.95, "95 of 100")]
    public void A_part_of_days(double share, string words) => Assert.Equal(words, InTens.Days(share));

    [Theory]
    [InlineData("16.96311668 W", "17 W")]
    [InlineData("-8.61 °C", "-8.61 °C")]
    [InlineData("9.7523 Ah", "9.75 Ah")]
    [InlineData("1450.4 g", "1450 g")]
    [InlineData("0.9673204684", "0.967")]
    [InlineData("record", "record")]
    [InlineData("0 m/s", "0 m/s")]
    public void A_value_of_a_spread_is_shown_with_the_digits_that_people_read(string text, string shown) =>
        Assert.Equal(shown, ShortNumber.Of(text));
}

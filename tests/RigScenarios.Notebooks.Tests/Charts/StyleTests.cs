using System.Globalization;
using RigScenarios.Charts;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Style;

namespace RigScenarios.Notebooks.Tests.Charts;

public sealed class StyleTests
{
    // Source: Okabe and Ito, "Color Universal Design", 2002/2008, table of the eight colours (RGB 0-255); the same values stand
    // in the documentation of R's palette.colors(palette = "Okabe-Ito").
    private static readonly (int Red, int Green, int Blue)[] OkabeIto =
        [(0, 0, 0), (230, 159, 0), (86, 180, 233), (0, 158, 115), (240, 228, 66), (0, 114, 178), (213, 94, 0), (204, 121, 167)];

    [Fact]
    public void Line_colours_are_those_of_Okabe_and_Ito()
    {
        for (var i = 0; i < 7; i++)
            Assert.Contains(Channels(SeriesStyle.Number(i).Colour), OkabeIto);
    }

    [Fact]
    public void Texts_have_the_contrast_that_the_web_guidelines_ask()
    {
        // Source: W3C, Web Content Accessibility Guidelines 2.1, success criterion 1.4.3: 4.5 to 1; definition of contrast ratio.
        for (var i = 0; i < 7; i++)
            Assert.True(ContrastOnWhite(SeriesStyle.Number(i).TextColour) >= 4.5, SeriesStyle.Number(i).TextColour);
        Assert.True(ContrastOnWhite(ChartStyle.LimitInk) >= 4.5);
    }

    [Fact]
    public void No_two_lines_look_the_same_without_colour_among_the_first_six() =>
        Assert.Equal(6, Enumerable.Range(0, 6).Select(i => SeriesStyle.Number(i).Dash).Distinct().Count());

    [Fact]
    public void The_look_repeats_only_after_42_lines() => Assert.Equal(
        42, Enumerable.Range(0, 42).Select(i => (SeriesStyle.Number(i).Colour, SeriesStyle.Number(i).Dash)).Distinct().Count());

    [Theory]
    [InlineData(16.740000000000002, 16.74)]
    [InlineData(-0.000123456, -0.00012346)]
    [InlineData(0, 0)]
    [InlineData(123456.7, 123460)]
    public void Numbers_are_rounded_before_they_are_drawn(double value, double expected) =>
        Assert.Equal(expected, Rounding.ForChart(value));

    [Theory]
    [InlineData(-8, "−8")]
    [InlineData(0.30000000000000004, "0.3")]
    [InlineData(1234567, "1.235E+6")]
    [InlineData(double.NaN, "–")]
    public void Numbers_are_written_for_people(double value, string expected) => Assert.Equal(expected, Rounding.Text(value));

    [Fact]
    public void A_rounded_number_is_the_one_that_its_decimal_text_says() =>
        Drawn.Cases(firstSeed: 91, cases: 400, random =>
        {
            var digits = random.Next(1, 10);
            var power = Math.Pow(10, random.Next(-12, 24));
            // Of any length; with few digits, near the middle of two roundings; and on both sides of a power of ten.
            double[] values = [random.NextDouble() * power, random.Next(1, 100_000) * power / 20_000,
                Math.BitIncrement(power), Math.BitDecrement(power), power];
            foreach (var value in values)
            {
                foreach (var signed in (double[])[value, -value])
                    Assert.Equal(double.Parse(signed.ToString($"E{digits - 1}", CultureInfo.InvariantCulture),
                        CultureInfo.InvariantCulture), Rounding.Significant(signed, digits), 0.0);
            }
        });

    [Fact]
    public void A_place_in_a_drawing_is_written_as_its_format_would() =>
        Drawn.Cases(firstSeed: 17, cases: 2000, random =>
        {
            var value = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-3, 8));
            foreach (var place in (double[])[value, Math.Round(value), Math.Round(value, 1), -0.0, 0, value / 1e4])
                Assert.Equal(Math.Round(place, 2).ToString("0.##", CultureInfo.InvariantCulture), SvgSheet.Number(place));
        });

    private static (int, int, int) Channels(string colour) =>
        (Convert.ToInt32(colour[1..3], 16), Convert.ToInt32(colour[3..5], 16), Convert.ToInt32(colour[5..7], 16));

    private static double ContrastOnWhite(string colour)
    {
        var (red, green, blue) = Channels(colour);
        return 1.05 / (0.2126 * Linear(red) + 0.7152 * Linear(green) + 0.0722 * Linear(blue) + 0.05);
    }

    private static double Linear(int channel)
    {
        var share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}

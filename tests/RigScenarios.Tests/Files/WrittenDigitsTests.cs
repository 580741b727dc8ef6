using System.Globalization;
using System.Text;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Files;

/// <summary>Digits of any script mean their value, and none of them stops a reader. The values of the digits: Unicode Character
/// Database, property Numeric_Value of the category Nd, as the runtime carries it.</summary>
public class WrittenDigitsTests
{
    [Theory]
    [InlineData("１ °C", 1)]
    [InlineData("１２．５　℃", 12.5)]
    [InlineData("٥ °C", 5)]
    [InlineData("−٥٫٥ C", -5.5)]
    [InlineData("-5 C", -5)]
    [InlineData("–5 °C", -5)]
    [InlineData("\u20115 C", -5)]
    [InlineData("२३ °C", 23)]
    [InlineData("𝟚𝟛 °C", 23)]
    [InlineData("7 ˚C", 7)]
    [InlineData("7 ºC", 7)]
    [InlineData("23F", -5)]
    [InlineData("23 ℉", -5)]
    [InlineData("２３Ｆ", -5)]
    [InlineData("\u202f8\u00a0°C", 8)]
    public void A_temperature_is_read_in_the_digits_that_somebody_wrote(string text, double celsius)
    {
        Assert.True(QuantityText.TryRead(text, Temperature.Zero, "-8 °C", out var value, out var problem), problem);
        Assert.Equal(celsius, value.As(UnitsNet.Units.TemperatureUnit.DegreeCelsius), 9);
    }

    [Fact]
    public void Every_decimal_digit_of_Unicode_is_read_as_its_value()
    {
        var seen = 0;
        for (var code = 0; code <= 0x10FFFF; code++)
        {
            if (!Rune.IsValid(code) || Rune.GetUnicodeCategory(new Rune(code)) != UnicodeCategory.DecimalDigitNumber)
                continue;
            seen++;
            var digit = new Rune(code);
            Assert.True(QuantityText.TryRead($"{digit}.{digit} kg", Mass.Zero, "5 kg", out var value, out _));
            Assert.Equal(1.1 * Rune.GetNumericValue(digit), value.As(UnitsNet.Units.MassUnit.Kilogram), 12);
        }
        // Unicode 15 has 680 of them; a runtime may know more.
        Assert.InRange(seen, 600, 2000);
    }

    [Theory]
    [InlineData("① kg")]
    [InlineData("½ kg")]
    [InlineData("Ⅳ kg")]
    [InlineData("五 kg")]
    [InlineData("1\u202E2 kg")]
    [InlineData("1\u200B2 kg")]
    [InlineData("1٬000 kg")]
    [InlineData("1e-320 kg")]
    [InlineData("1e400 kg")]
    [InlineData("٥")]
    public void What_is_no_digit_or_no_number_is_refused_in_words(string text)
    {
        Assert.False(QuantityText.TryRead(text, Mass.Zero, "5 kg", out _, out var problem));
        Assert.StartsWith("Found ", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("length: 2 h", "length: １ h ３０ min")]
    [InlineData("length: 2 h", "length: ٢ h")]
    [InlineData("count: 3", "count: ３")]
    [InlineData("resistance-floor: 0", "resistance-floor: ０．５")]
    [InlineData("heat-conductance: 0.5 W/K", "heat-conductance: ０.５ W/K")]
    public void Every_kind_of_field_reads_them(string from, string to)
    {
        var text = SmallScenario.Text();
        Assert.Contains(from, text, StringComparison.Ordinal);
        Assert.NotNull(SmallScenario.Read(text.Replace(from, to, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("parts.camera.power.record", "１２ W")]
    [InlineData("kit.light.count", "２")]
    [InlineData("days.day.starts", "０６：３０")]
    [InlineData("parts.camera.buy", "２４００ EUR")]
    [InlineData("parts.camera.mass", "٥ kg")]
    public void Paths_read_them_too(string path, string value) =>
        Assert.NotNull(ScenarioPath.Set(SmallScenario.Read(SmallScenario.Text()), path, value));

    [Fact]
    public void What_somebody_wrote_stays_in_the_file_where_another_field_is_changed()
    {
        var text = SmallScenario.Text().Replace("ambient: 25 °C", "ambient: ２５ °C", StringComparison.Ordinal);
        var before = SmallScenario.Read(text);
        var after = ScenarioPath.Set(before, "kit.light.count", "2");
        Assert.Contains("ambient: ２５ °C", ScenarioFile.Edited(text, before, after), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_nobody_can_read_is_told_and_never_thrown()
    {
        // One character at a time, each of a kind that readers stumble over, in the place of each figure of a file.
        string[] odd = ["１", "٥", "𝟚", "\u202E", "\uFEFF", "½", "e", "∞", "NaN", "-", "--1", "1e9999", "0x10", "1_000", "\u0000"];
        var lines = SmallScenario.Text().Split('\n');
        var tried = 0;
        foreach (var (at, line) in lines.Index().Where(item => item.Item.Any(char.IsAsciiDigit)))
        {
            var digit = line.AsSpan().IndexOfAnyInRange('0', '9');
            foreach (var instead in odd)
            {
                var changed = string.Join('\n', lines.Select((other, index) => index == at
                    ? line[..digit] + instead + line[(digit + 1)..] : other));
                var (scenario, problems) = ScenarioFile.TryReadText(changed, "odd.yaml");
                Assert.True(scenario is not null || problems.Any(problem => problem.Severity == Severity.Error));
                tried++;
            }
        }
        Assert.InRange(tried, 100, 1000);
    }
}

using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Files;

public sealed class QuantityTextTests
{
    private static readonly QuantityFormat<Energy> Energies = new(Energy.FromWattHours(0.1),
        Energy.FromWattHours(5000), "150 Wh");
    private static readonly QuantityFormat<Temperature> Temperatures = new(Temperature.FromDegreesCelsius(-50),
        Temperature.FromDegreesCelsius(60), "-8 °C");
    private static readonly DurationFormat Durations = new(Duration.FromMinutes(0.1), Duration.FromHours(48), "45 min");
    private static readonly QuantityFormat<Mass> Masses = new(Mass.FromGrams(1), Mass.FromGrams(100_000), "655 g");
    private static readonly QuantityFormat<Length> Lengths = new(Length.Zero, Length.FromMeters(10), "120 mm");
    private static readonly QuantityFormat<ElectricPotential> Voltages = new(ElectricPotential.FromVolts(0.5),
        ElectricPotential.FromVolts(60), "14.4 V");
    private static readonly QuantityFormat<Power> Powers = new(Power.Zero, Power.FromWatts(2000), "15 W");

    [Theory]
    [InlineData("150Wh", 150)]
    [InlineData("150 Wh", 150)]
    [InlineData("  150 Wh ", 150)]
    [InlineData("0.15 kWh", 150)]
    [InlineData("0.15kWh", 150)]
    [InlineData("150 wh", 150)]
    [InlineData("1.5e2 Wh", 150)]
    [InlineData("150\u00a0Wh", 150)]
    [InlineData(".5 Wh", 0.5)]
    public void Energies_are_read_as_people_write_them(string text, double wattHours) =>
        Assert.Equal(wattHours, Read(Energies, text).WattHours, 1e-9);

    [Theory]
    [InlineData("−8 °C", -8)]
    [InlineData("-8 C", -8)]
    [InlineData("-8°C", -8)]
    [InlineData("-8 ℃", -8)]
    [InlineData("+4 degC", 4)]
    [InlineData("17.6 °F", -8)]
    [InlineData("- 8 °C", -8)]
    [InlineData("8 celsius", 8)]
    [InlineData("17.6 fahrenheit", -8)]
    [InlineData("8 c", 8)]
    [InlineData("17.6 f", -8)]
    public void Temperatures_are_read_as_people_write_them(string text, double celsius) =>
        Assert.Equal(celsius, Read(Temperatures, text).DegreesCelsius, 1e-9);

    [Theory]
    [InlineData("1 h 30 min", 90)]
    [InlineData("1h30min", 90)]
    [InlineData("1 h 30min", 90)]
    [InlineData("1 hour 30 minutes", 90)]
    [InlineData("90 min", 90)]
    [InlineData("1.5 h", 90)]
    [InlineData("90 minutes", 90)]
    [InlineData("30 s", 0.5)]
    [InlineData("2h30", 150)]
    [InlineData("2 h 30", 150)]
    [InlineData("２ｈ３０", 150)]
    [InlineData("1:30 h", 90)]
    [InlineData("0:45h", 45)]
    public void Times_are_read_as_people_write_them(string text, double minutes) =>
        Assert.Equal(minutes, Read(Durations, text).Minutes, 1e-9);

    [Theory]
    [InlineData("1.5 Kg", 1500)]
    [InlineData("1.5 KG", 1500)]
    [InlineData("655 G", 655)]
    [InlineData("655 grams", 655)]
    [InlineData("655 gr", 655)]
    [InlineData("2 lbs", 907.18474)]
    [InlineData("8 ounces", 226.796185)]
    [InlineData("1.5 kilograms", 1500)]
    [InlineData("1.5 kilos", 1500)]
    public void Masses_are_read_in_the_spellings_of_the_trade(string text, double grams) =>
        Assert.Equal(grams, Read(Masses, text).Grams, 1e-6);

    [Theory]
    [InlineData("120 mm", 120)]
    [InlineData("12 cm", 120)]
    [InlineData("120 MM", 120)]
    [InlineData("12 CM", 120)]
    [InlineData("120 millimetres", 120)]
    [InlineData("5 inches", 127)]
    [InlineData("5 inch", 127)]
    [InlineData("5\"", 127)]
    [InlineData("5″", 127)]
    [InlineData("1 ft", 304.8)]
    [InlineData("1 foot", 304.8)]
    public void Lengths_are_read_in_the_spellings_of_the_trade(string text, double millimetres) =>
        Assert.Equal(millimetres, Read(Lengths, text).Millimeters, 1e-6);

    [Theory]
    [InlineData("8 deg")]
    [InlineData("-8°")]
    public void A_degree_says_of_which_scale(string text) =>
        Assert.Contains("Celsius or Fahrenheit", Problem(Temperatures, text), StringComparison.Ordinal);

    [Theory]
    [InlineData("1:30", "Probably \"1:30 h\" was meant")]
    [InlineData("2h5", "Probably \"2h5 min\" was meant")]
    [InlineData("1:75 h", "is not a unit of time")]
    [InlineData("1h75", "Probably \"1h75 min\" was meant")]
    public void A_time_that_could_mean_two_things_is_refused(string text, string why) =>
        Assert.Contains(why, Problem(Durations, text), StringComparison.Ordinal);

    [Fact]
    public void A_decimal_comma_is_refused_with_the_way_to_write_it()
    {
        var problem = Problem(Voltages, "14,4 V");
        Assert.Contains("a comma is not read", problem, StringComparison.Ordinal);
        Assert.Contains("\"14.4 V\"", problem, StringComparison.Ordinal);
        Assert.DoesNotContain("thousand", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comma_that_could_be_either_is_refused_with_both_ways_to_write_it()
    {
        var problem = Problem(Masses, "1,500 g");
        Assert.Contains("\"1.500 g\"", problem, StringComparison.Ordinal);
        Assert.Contains("\"1500 g\"", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_number_names_the_unit_that_was_probably_meant()
    {
        Assert.Contains("Probably \"150 Wh\" was meant", Problem(Energies, "150"), StringComparison.Ordinal);
        Assert.Contains("Probably \"-8 °C\" was meant", Problem(Temperatures, "-8"), StringComparison.Ordinal);
        Assert.Contains("Probably \"30 min\" was meant", Problem(Durations, "30"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_of_another_quantity_is_refused_by_name()
    {
        Assert.Contains("\"Wh\" is not a unit of power", Problem(Powers, "15 Wh"), StringComparison.Ordinal);
        Assert.Contains("\"V\" is not a unit of energy", Problem(Energies, "15 V"), StringComparison.Ordinal);
        Assert.Contains("\"F\" is not a unit of energy", Problem(Energies, "15 F"), StringComparison.Ordinal);
        Assert.Contains("\"C\" is not a unit of length", Problem(Lengths, "15 C"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Wh")]
    [InlineData("150 Wh 3")]
    [InlineData("1 500 Wh")]
    [InlineData("1.2.3 Wh")]
    [InlineData("NaN Wh")]
    [InlineData(".inf")]
    [InlineData("1e308 Wh")]
    [InlineData("1e999 Wh")]
    [InlineData("-5 Wh")]
    [InlineData("5001 Wh")]
    [InlineData("0x10 Wh")]
    public void What_is_no_quantity_or_out_of_range_is_refused_with_an_example(string text)
    {
        Problem(Energies, text);
        Problem(Powers, text);
    }

    [Theory]
    [InlineData("150 Wh")]
    [InlineData("0.15 kWh")]
    [InlineData("0.1 Wh")]
    [InlineData("123.456789012345 Wh")]
    public void What_is_written_reads_back_to_exactly_the_same_value(string text)
    {
        var value = Read(Energies, text);
        var written = Assert.IsType<TextNode>(Energies.Write(value)).Text;
        Assert.Equal(text, written);
        Assert.Equal(value, Read(Energies, written));
    }

    [Fact]
    public void A_time_is_written_with_min_and_reads_back()
    {
        var written = Assert.IsType<TextNode>(Durations.Write(Read(Durations, "1 h 30 min"))).Text;
        Assert.Equal("90 min", written);
        Assert.Contains("0.1 min to 48 h, such as \"45 min\"", Durations.Accepted, StringComparison.Ordinal);
    }

    private static T Read<T>(QuantityFormat<T> form, string text)
        where T : struct, IQuantity
    {
        var log = new ReadLog("");
        var good = form.TryRead(new TextNode(text, new TextPlace(1, 1)), "field", log, out var value);
        Assert.True(good, string.Join('\n', log.Problems));
        return value;
    }

    private static string Problem<T>(QuantityFormat<T> form, string text)
        where T : struct, IQuantity
    {
        var log = new ReadLog("");
        Assert.False(form.TryRead(new TextNode(text, new TextPlace(1, 1)), "field", log, out _));
        var problem = Assert.Single(log.Problems);
        Assert.Contains("such as", problem.Accepted, StringComparison.Ordinal);
        return problem.Problem;
    }
}

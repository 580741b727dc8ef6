using RigScenarios.Benchmarks.MeasuredCells;

namespace RigScenarios.Checks.Batteries;

/// <summary>
/// The NMC defaults for cells of other types than those they come from, each with the capacity that its slowest discharge asks
/// for, in still air, to 2.5 V. The figures stand in <see cref="OtherDischarge"/>, all of them in docs/measured-cells.md.
/// </summary>
public class OtherCellChecks
{
    // Curves digitised by others: neighbouring rates scatter by 2 %. Held to the digit of the page.
    [Theory]
    [Source(SourceKind.DataSheet,
        "data sheet of cell INR-21700-P50B, discharge rate and temperature characteristics, as digitised "
        + "in a public repository; second-hand")]
    [InlineData("C/2", 23, 2.3)]
    [InlineData("1C", 23, 2.9)]
    [InlineData("2C", 23, 2.0)]
    [InlineData("1C", 60, -0.7)]
    [InlineData("1C", 45, -0.2)]
    [InlineData("1C", 10, 3.2)]
    [InlineData("1C", 0, 3.0)]
    public void Charge_of_a_5_Ah_cell_over_rate_and_temperature(string rate, double celsius, double percent) =>
        ChargeIsOff("5 Ah", rate, celsius, percent);

    // At -20 °C the cell heats itself by 18 K in still air.
    [Theory]
    [Source(SourceKind.DataSheet,
        "marketing sheet of cell NCR18650B, pages 2 and 3, read from its graphs by an annotator of a public "
        + "data set; second-hand")]
    [InlineData("C/2", 25, 2.0)]
    [InlineData("1C", 25, 0.5)]
    [InlineData("2C", 25, -0.3)]
    [InlineData("1C", 40, -1.2)]
    [InlineData("1C", 0, 2.7)]
    [InlineData("1C", -10, 4.6)]
    [InlineData("1C", -20, 12.9)]
    public void Charge_of_a_3_3_Ah_cell_over_rate_and_temperature(string rate, double celsius, double percent) =>
        ChargeIsOff("3.3 Ah", rate, celsius, percent);

    // How the sheet's cell was cooled is not said: still air and the fan chamber of the first cell (0.54 W/K) enclose it.
    [Theory]
    [Source(SourceKind.DataSheet,
        "marketing sheet of cell NCR18650B, page 3, read from its graph by an annotator of a public data set; "
        + "second-hand")]
    [InlineData(0)]
    [InlineData(-10)]
    [InlineData(-20)]
    public void In_the_cold_the_published_charge_lies_between_still_air_and_a_fan(double celsius)
    {
        var one = OtherDischarge.Of("3.3 Ah", "1C", celsius);
        var fan = one.Cell.Run(one.Amperes, celsius, MeasuredCellModel.WattsPerKelvin).Energies.ChargeDrawn.AmpereHours;
        Assert.InRange(one.AmpereHours, fan, Charge(one));
    }

    [Theory]
    [Source(SourceKind.OpenData,
        "ARTS-Laboratory, data set of cell 30Q, commit 4e9effdf, CC BY-SA 4.0; means of two cells; read in the "
        + "source")]
    [InlineData("1C", 1.0, 3.8)]
    [InlineData("2C", 1.1, 4.6)]
    [InlineData("3C", 1.3, 5.3)]
    public void Charge_and_energy_of_a_measured_3_Ah_cell_over_the_rate(string rate, double charge, double energy)
    {
        ChargeIsOff("3 Ah", rate, 22.5, charge);
        var one = OtherDischarge.Of("3 Ah", rate, 22.5);
        StatedError.Holds(one.Cell.Run(one.Amperes, one.Celsius).Energies.Delivered.WattHours,
            one.WattHours!.Value, energy, 0.15);
    }

    // Of the case, which is cooler than the cell's mean. Reaction heat, which the model leaves out, adds most where the current
    // is small. Kelvins; one kelvin.
    [Theory]
    [Source(SourceKind.OpenData,
        "ARTS-Laboratory, data set of cell 30Q, commit 4e9effdf, CC BY-SA 4.0; rise of the case at the end, still "
        + "air; read in the source")]
    [InlineData("1C", 10.8, -5.0)]
    [InlineData("2C", 21, -1.0)]
    [InlineData("3C", 31, 5.2)]
    public void Rise_of_temperature_in_still_air_is_off_by_what_is_stated(string rate, double kelvins, double off)
    {
        var one = OtherDischarge.Of("3 Ah", rate, 22.5);
        Assert.Equal(kelvins + off, one.Cell.Run(one.Amperes, one.Celsius).EndTemperature.DegreesCelsius - 22.5, 1.0);
    }

    [Fact]
    [Source(SourceKind.DataSheet,
        "specification of cell INR21700-50E, V1.0, 2018, page 3, standard and rated capacity, as entered in a "
        + "public data base; second-hand")]
    public void Charge_at_1C_of_a_4_9_Ah_cell() => ChargeIsOff("4.9 Ah", "1C", 25, 2.6);

    // The maker guarantees a part of the charge; a prediction below it would be wrong.
    [Fact]
    [Source(SourceKind.DataSheet,
        "specification of cell INR21700-50E, V1.0, 2018, 7.5: at -10 °C 70 %, at 23 °C 97 % at 1C, as quoted in "
        + "a public repository; second-hand")]
    public void Charge_at_1C_and_minus_ten_degrees_is_no_less_than_guaranteed()
    {
        var one = OtherDischarge.Of("4.9 Ah", "1C", 25);
        Assert.InRange(one.Cell.Run(one.Amperes, -10).Energies.ChargeDrawn.AmpereHours / Charge(one), 0.70 / 0.97, 1);
    }

    [Fact]
    [Guard]
    public void No_published_row_is_without_a_statement() => Assert.Equal(4 + 7 + 7 + 3 + 1, OtherDischarge.All.Count);

    private static void ChargeIsOff(string cell, string rate, double celsius, double percent)
    {
        var one = OtherDischarge.Of(cell, rate, celsius);
        StatedError.Holds(Charge(one), one.AmpereHours, percent, 0.15);
    }

    private static double Charge(OtherDischarge one) =>
        one.Cell.Run(one.Amperes, one.Celsius).Energies.ChargeDrawn.AmpereHours;
}

using System.Globalization;
using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>The stated error of a runtime is that of the rows of docs/measured-cells.md around it.</summary>
public sealed class ExpectedErrorTests
{
    [Fact]
    public void The_rows_are_those_of_the_page()
    {
        var page = Page();
        Assert.True(page.Count > 20);
        Assert.Equal(page,
            MeasuredDeviation.All.Select(row => (row.Temperature.DegreesCelsius, row.Rate, row.Charge.Percent,
            row.Energy.Percent)), (a, b) =>
            Math.Abs(a.Item1 - b.Item1) < 1e-9 && a.Item2 == b.Item2 && Math.Abs(a.Item3 - b.Item3) < 1e-9
                && Math.Abs(a.Item4 - b.Item4) < 1e-9);
    }

    // A run in one row's own temperature and rate has that row's error, whichever of charge and energy is larger.
    [Fact]
    public void Each_row_states_its_own_deviation()
    {
        foreach (var (celsius, rate, charge, energy) in Page())
        {
            var error = ExpectedError.At(Celsius(celsius), Celsius(celsius), rate);
            Assert.Equal(Math.Max(Math.Abs(charge), Math.Abs(energy)), error.Share!.Value.Percent, 1e-9);
            Assert.Single(error.Rows);
        }
    }

    // Read from the page: 25 and 40 °C, C/20 to C/2: 40 °C C/2, +4.4 %; 10 and 25 °C: 10 °C C/20, -2.0 %; -10 and 0 °C: -10 °C
    // C/20, -6.9 %;
    // -20 to -10 °C, 1C to 2C: -20 °C 2C, +25.8 %; -10 to 25 °C, C/2 alone: the energy at 25 °C, +1.5 %.
    [Theory]
    [InlineData(33, 33, 0.2, 4.4, "25 to 40 °C and C/20 to C/2 (C/2 at 40 °C)")]
    [InlineData(21, 24, 0.2, 2.0, "10 to 25 °C and C/20 to C/2 (C/20 at 10 °C)")]
    [InlineData(-6, -3, 0.2, 6.9, "-10 to 0 °C and C/20 to C/2 (C/20 at -10 °C)")]
    [InlineData(-15, -12, 1.5, 25.8, "-20 to -10 °C and 1C to 2C (2C at -20 °C)")]
    [InlineData(-6, 21, 0.5, 1.5, "-10 to 25 °C and C/2 (C/2 at 25 °C)")]
    public void Between_rows_the_largest_around_it_holds(double coldest, double warmest, double rate,
        double percent, string where)
    {
        var error = ExpectedError.At(Celsius(coldest), Celsius(warmest), rate);
        var around = Page().Where(row => row.Rate >= Low(rate) && row.Rate <= High(rate) && row.Celsius >= LowC(coldest)
            && row.Celsius <= HighC(warmest)).ToList();
        Assert.Equal(around.Max(row => Math.Max(Math.Abs(row.Charge), Math.Abs(row.Energy))), error.Share!.Value.Percent, 1e-9);
        Assert.Equal(percent, error.Share!.Value.Percent, 1e-9);
        Assert.Contains(where, error.Why, StringComparison.Ordinal);
        Assert.Equal(around.Count, error.Rows.Count);
    }

    [Theory]
    [InlineData(-24, -10, 0.3, "at -24 °C, only -20 to 40 °C and C/20 to 2C")]
    [InlineData(20, 47, 0.3, "at 47 °C")]
    [InlineData(20, 22, 0.01, "at C/100")]
    [InlineData(20, 22, 2.5, "at 2.5C")]
    [InlineData(20, 22, 0, "at no current")]
    public void Outside_of_them_it_is_not_measured(double coldest, double warmest, double rate, string said)
    {
        var error = ExpectedError.At(Celsius(coldest), Celsius(warmest), rate);
        Assert.Null(error.Share);
        Assert.Empty(error.Rows);
        Assert.Contains(said, error.Why, StringComparison.Ordinal);
    }

    private static double Low(double rate) => new[] { 0.05, 0.5, 1, 2 }.Last(one => one <= rate);

    private static double High(double rate) => new[] { 0.05, 0.5, 1, 2 }.First(one => one >= rate);

    private static double LowC(double celsius) => new double[] { -20, -10, 0, 10, 25, 40 }.Last(one => one <= celsius);

    private static double HighC(double celsius) => new double[] { -20, -10, 0, 10, 25, 40 }.First(one => one >= celsius);

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    // The rows with eleven columns: chamber, rate, current, charge measured, predicted, error, claimed, energy measured,
    // predicted, error, end.
    private static List<(double Celsius, double Rate, double Charge, double Energy)> Page() =>
    [
        .. File.ReadLines(Path.Combine(Repository.Root, "docs", "measured-cells.md"))
            .Select(line => line.Trim('|', ' ').Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length == 11 && double.TryParse(cells[0], CultureInfo.InvariantCulture, out _))
            .Select(cells => (Number(cells[0]), Rate(cells[1].TrimEnd('*', '†', '‡', ' ')), Number(cells[5]), Number(cells[9]))),
    ];

    private static double Rate(string text) =>
        text.StartsWith("C/", StringComparison.Ordinal) ? 1 / Number(text[2..]) : Number(text.TrimEnd('C'));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

using System.Globalization;
using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>The stated error of a runtime is the claim of docs/measured-cells.md, never less than the rows around it.</summary>
public sealed class ExpectedErrorTests
{
    // The rows of the first table: chamber, rate, current, charge measured, predicted, error, energy measured, predicted, error,
    // claim, end measured, predicted.
    private static readonly List<string[]> Rows = Table(12);

    // Those of the table before and after: chamber, rate, and charge and energy of four models; the first is one well.
    private static readonly List<string[]> Compared = Table(6);

    [Fact]
    public void The_rows_are_those_of_the_page()
    {
        Assert.Equal(23, Rows.Count);
        Same(Rows.Select(cells => (cells[0], cells[1], cells[5], cells[8])), MeasuredDeviation.All);
    }

    [Fact]
    public void The_rows_of_one_well_are_those_before()
    {
        Assert.Equal(23, Compared.Count);
        Same(Compared.Select(cells => (cells[0], cells[1], cells[2].Split(',')[0], cells[2].Split(',')[1])),
            MeasuredDeviation.OneWell);
    }

    // A run in one row's own temperature and rate: its claim stands in the page's column, and it is kept there.
    [Fact]
    public void Each_row_states_its_claim_and_keeps_it()
    {
        foreach (var cells in Rows)
        {
            var error = ExpectedError.At(Celsius(cells[0]), Celsius(cells[0]), Rate(cells[1]));
            var largest = Math.Max(Math.Abs(Number(cells[5])), Math.Abs(Number(cells[8])));
            Assert.Equal(Number(cells[9]), error.Share!.Value.Percent, 1e-9);
            Assert.True(largest <= Number(cells[9]));
            Assert.Equal(largest, Assert.Single(error.Rows).Largest.Percent, 1e-9);
        }
    }

    [Theory]
    [InlineData(33, 33, 0.2, 5, "C/20 to 1C from -20 to 40 °C", "C/20 at 40 °C")]
    [InlineData(-15, -12, 0.2, 5, "C/20 to 1C from -20 to 40 °C", "C/2 at -20 °C")]
    [InlineData(-20, 30, 1, 5, "C/20 to 1C from -20 to 40 °C", "1C at -20 °C")]
    [InlineData(2, 8, 1.5, 5, "up to 2C from 0 °C up", "1C at 10 °C")]
    [InlineData(-0.04, 8, 2, 5, "up to 2C from 0 °C up", "2C at 10 °C")]
    [InlineData(-3, 8, 1.5, 10, "more than 1C below 0 °C", "2C at -10 °C")]
    [InlineData(-19, -12, 1.01, 10, "more than 1C below 0 °C", "2C at -20 °C")]
    public void Between_rows_the_claim_holds_and_the_worst_row_is_named(
        double coldest, double warmest, double rate, double percent, string where, string worst)
    {
        var error = ExpectedError.At(At(coldest), At(warmest), rate);
        Assert.Equal(percent, error.Share!.Value.Percent, 1e-9);
        Assert.Contains(where, error.Why, StringComparison.Ordinal);
        Assert.Contains($"({worst})", error.Why, StringComparison.Ordinal);
    }

    // Read from the page, column "before": 25 and 40 °C, C/20 to C/2: 40 °C C/2, 4.4 %; -20 to -10 °C, 1C to 2C: -20 °C 2C,
    // 25.8 %; -10 and 0 °C, C/20 to C/2: -10 °C C/20, -6.9 %.
    [Theory]
    [InlineData(33, 33, 0.2, 4.4, "25 to 40 °C and C/20 to C/2 (C/2 at 40 °C)")]
    [InlineData(-15, -12, 1.5, 25.8, "-20 to -10 °C and 1C to 2C (2C at -20 °C)")]
    [InlineData(-6, -3, 0.2, 6.9, "-10 to 0 °C and C/20 to C/2 (C/20 at -10 °C)")]
    public void One_well_keeps_the_largest_of_its_own_rows(
        double coldest, double warmest, double rate, double percent, string where)
    {
        var error = ExpectedError.At(At(coldest), At(warmest), rate, oneWell: true);
        Assert.Equal(percent, error.Share!.Value.Percent, 1e-9);
        Assert.Contains(where, error.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-24, -10, 0.3, "at -24 °C, only -20 to 40 °C and C/20 to 2C")]
    [InlineData(20, 47, 0.3, "at 47 °C")]
    [InlineData(20, 22, 0.01, "at C/100")]
    [InlineData(20, 22, 2.5, "at 2.5C")]
    [InlineData(20, 22, 0, "at no current")]
    public void Outside_of_them_it_is_not_measured(double coldest, double warmest, double rate, string said)
    {
        foreach (var oneWell in new[] { false, true })
        {
            var error = ExpectedError.At(At(coldest), At(warmest), rate, oneWell);
            Assert.Null(error.Share);
            Assert.Empty(error.Rows);
            Assert.Contains(said, error.Why, StringComparison.Ordinal);
        }
    }

    // Nothing that is claimed somewhere may be wider than what a verdict allows for where nobody knows.
    [Fact]
    public void Where_nobody_has_measured_a_verdict_allows_for_more_than_anywhere_else() =>
        Assert.True(ExpectedError.WhereNotMeasured.Percent > Rows.Max(cells => Number(cells[9])));

    private static void Same(
        IEnumerable<(string Celsius, string Rate, string Charge, string Energy)> page, IReadOnlyList<MeasuredDeviation> rows) =>
        Assert.Equal(
            page.Select(row => (Number(row.Celsius), Rate(row.Rate), Number(row.Charge), Number(row.Energy))),
            rows.Select(row => (Math.Round(row.Temperature.DegreesCelsius, 9), row.Rate, Math.Round(row.Charge.Percent, 9),
                Math.Round(row.Energy.Percent, 9))));

    private static List<string[]> Table(int columns) =>
    [
        .. File.ReadLines(Path.Combine(Repository.Root, "docs", "measured-cells.md"))
            .Select(line => line.Trim('|', ' ').Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length == columns && double.TryParse(cells[0], CultureInfo.InvariantCulture, out _)
                && cells[1].Contains('C', StringComparison.Ordinal)),
    ];

    private static double Rate(string text) =>
        text.StartsWith("C/", StringComparison.Ordinal) ? 1 / Number(text[2..]) : Number(text.TrimEnd('C'));

    private static Temperature Celsius(string text) => At(Number(text));

    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

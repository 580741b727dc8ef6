using System.Runtime.CompilerServices;
using RigScenarios.Benchmarks.MeasuredCells;

namespace RigScenarios.Checks.Batteries;

/// <summary>
/// The NMC defaults against measured discharges of one cell. What a row gave to the model, and what is claimed of it, stands in
/// docs/measured-cells.md; none is left out.
/// </summary>
[Source(SourceKind.OpenData, MeasuredCell.Citation)]
public class MeasuredCellChecks
{
    // All but the one whose charge is met by construction.
    public static TheoryData<double, string> Claimed => Rows(row => row is { ClaimedTolerance: not null, Use: not RowUse.Set });

    public static TheoryData<double, string> ClaimedUpTo1CAndMinusTen => Rows(row => row.ClaimedTolerance <= 0.03);

    [Theory]
    [MemberData(nameof(Claimed))]
    public void Runtime_is_within_the_claimed_tolerance(double chamber, string rate)
    {
        var row = Row(chamber, rate);
        Assert.True(Math.Abs(row.ChargeError) <= row.ClaimedTolerance, $"{100 * row.ChargeError:F1} %");
    }

    [Theory]
    [MemberData(nameof(ClaimedUpTo1CAndMinusTen))]
    public void Energy_is_within_three_percent_down_to_minus_ten_degrees_up_to_1C(double chamber, string rate) =>
        Assert.InRange(Row(chamber, rate).EnergyError, -0.03, 0.03);

    // The errors as they are, where nothing is claimed: a smaller one is news too. 0.15 points: the digit of the page and a bit.
    [Theory]
    [InlineData(40, "C/20", 4.0, 4.3)]
    [InlineData(40, "C/2", 4.3, 4.4)]
    [InlineData(40, "2C", 4.6, 4.7)]
    [InlineData(25, "2C", 2.1, 3.4)]
    [InlineData(10, "2C", 2.0, 2.4)]
    [InlineData(0, "2C", 0.7, 1.0)]
    [InlineData(-10, "C/20", -6.9, -6.8)]
    [InlineData(-10, "2C", 12.7, 11.3)]
    [InlineData(-20, "2C", 25.8, 22.8)]
    public void What_is_not_claimed_is_off_by_what_the_page_says(double chamber, string rate, double charge, double energy)
    {
        var row = Row(chamber, rate);
        Assert.Null(row.ClaimedTolerance);
        StatedError.Holds(row.AmpereHours, row.Measured.AmpereHours, charge, 0.15);
        StatedError.Holds(row.WattHours, row.Measured.WattHours, energy, 0.15);
    }

    [Fact]
    [Guard]
    public void Every_row_is_claimed_or_named_as_not_claimed()
    {
        Assert.Equal(23, MeasuredCell.Compared.Count);
        Assert.Equal(14, MeasuredCell.Compared.Count(row => row.ClaimedTolerance is not null));
        Assert.Single(MeasuredCell.Compared, row => row.Use == RowUse.Set);
        Assert.Equal(5, MeasuredCell.Compared.Count(row => row.Use == RowUse.Fitted));
        Assert.Equal(5, MeasuredCell.Compared.Count(row => row.Use == RowUse.VoltageUsed));
        Assert.Equal(12, MeasuredCell.Compared.Count(row => row.Use == RowUse.HeldOut));
    }

    // The heat conductance was chosen on the rise at 25 °C (24.2 to 27.9 °C, met within 0.2 K); the others are predictions.
    // At -10 and -20 °C the prediction runs on long after the cell has stopped, and gets warmer: not claimed.
    [Theory]
    [InlineData(40, 41.3)]
    [InlineData(10, 14.0)]
    [InlineData(0, 6.0)]
    public void Temperature_at_the_end_of_2C_is_met_within_a_kelvin_and_a_quarter(double chamber, double celsius) =>
        Assert.Equal(celsius, Row(chamber, "2C").EndCelsius, 1.25);

    [Fact]
    [Guard]
    public void The_page_is_what_its_command_writes()
    {
        var page = File.ReadAllText(Path.Combine(Root(), "docs", "measured-cells.md"));
        Assert.Equal(page, MeasuredCellsPage.Of(MeasuredCell.Folder), ignoreLineEndingDifferences: true);
    }

    private static string Root([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", ".."));

    private static CellComparison Row(double chamber, string rate) => MeasuredCell.Compared.Single(row =>
        row.Measured.ChamberCelsius == chamber && row.Measured.Rate == rate);

    private static TheoryData<double, string> Rows(Func<CellComparison, bool> wanted)
    {
        var rows = new TheoryData<double, string>();
        foreach (var row in MeasuredCell.Compared.Where(wanted))
            rows.Add(row.Measured.ChamberCelsius, row.Measured.Rate);
        return rows;
    }
}

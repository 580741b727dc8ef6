using RigScenarios.Benchmarks.MeasuredCells;

namespace RigScenarios.Checks.Batteries;

/// <summary>
/// The NMC defaults against measured discharges of one cell: P. Kollmeyer, C. Vidal, M. Naguib, M. Skells (2020),
/// doi:10.17632/cp3473x7xv.3, CC BY 4.0. The data stay in the reference folder beside the project.
/// All of the table, also what is not claimed: docs/measured-cells.md.
/// </summary>
public class MeasuredCellChecks
{
    [Fact]
    public void Runtime_is_within_the_claimed_tolerance()
    {
        var claimed = Compare().Where(row => row.ClaimedTolerance is not null).ToList();

        Assert.Equal(14, claimed.Count);
        Assert.All(claimed, row => Assert.True(
            Math.Abs(row.ChargeError) <= row.ClaimedTolerance,
            $"{row.Measured.Rate} at {row.Measured.ChamberCelsius} °C: {100 * row.ChargeError:F1} %"));
    }

    [Fact]
    public void Energy_is_within_three_percent_down_to_minus_ten_degrees_up_to_1C()
    {
        Assert.All(Compare().Where(row => row.ClaimedTolerance <= 0.03), row => Assert.InRange(row.EnergyError, -0.03, 0.03));
    }

    [Fact]
    public void Temperature_rise_at_2C_and_25_degrees_is_met()
    {
        // Measured: 24.2 to 27.9 °C.
        var row = Compare().Single(one => one.Measured is { ChamberCelsius: 25, Rate: "2C" });

        Assert.Equal(27.9, row.EndCelsius, 0.5);
    }

    private static IReadOnlyList<CellComparison> Compare()
    {
        var folder = MeasuredDischarge.FindFolder(AppContext.BaseDirectory);
        Assert.SkipWhen(folder is null,
            $"The measured data ({MeasuredDischarge.FileName}) is not in the reference folder beside the project.");
        return new MeasuredCellModel(MeasuredDischarge.Read(folder!)).CompareAll();
    }
}

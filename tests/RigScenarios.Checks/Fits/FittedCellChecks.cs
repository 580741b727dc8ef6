using System.Runtime.CompilerServices;
using RigScenarios.Benchmarks.MeasuredCells.Fitted;
using RigScenarios.Checks.Batteries;
using RigScenarios.Fits;

namespace RigScenarios.Checks.Fits;

/// <summary>
/// The measured cell, fitted at 25 °C only: how far off its run-times at other temperatures are then. All figures stand in
/// docs/fitted-cells.md.
/// </summary>
[Source(SourceKind.OpenData, MeasuredCell.Citation)]
[Source(SourceKind.IndependentProgram,
    "written from the equations of docs/calibration.md, run on the same data in full; errors with one digit, second-hand")]
public class FittedCellChecks
{
    /// <summary>A digit of theirs, and courses that are thinned here and were not there.</summary>
    private const double Points = 0.3;

    private static readonly Lazy<IReadOnlyList<FittedCellErrors>> All = new(() =>
        [.. FittedCell.All(MeasuredCell.Folder).Select(cell => FittedCellErrors.Of(cell, MeasuredCell.Folder))]);

    [Theory]
    [InlineData(0, 8.2, 17.2)]
    [InlineData(1, 3.7, 9.4)]
    [InlineData(2, 1.8, -3.2)]
    [InlineData(3, 3.1, -9.4)]
    [InlineData(4, 2.4, -4.5)]
    public void Run_times_elsewhere_are_missed_as_an_independent_program_says(int way, double rms, double worst)
    {
        Assert.Equal(rms, 100 * All.Value[way].RmsElsewhere, Points);
        Assert.Equal(worst, 100 * All.Value[way].WorstElsewhere, 3 * Points);
        Assert.Equal(rms, FittedCellsPage.Elsewhere[way]);
    }

    [Theory]
    [InlineData(0, 6.2, 9.6, 6.7, 6.0, 7.6, 10.7)]
    [InlineData(1, 1.9, 5.1, 2.4, 1.7, 3.2, 5.1)]
    [InlineData(2, 0.7, 2.7, 0.7, 1.8, 1.8, 1.6)]
    [InlineData(3, 1.3, 2.0, 1.3, 2.8, 2.6, 5.1)]
    [InlineData(4, 0.3, 3.6, 1.0, 2.4, 2.0, 2.7)]
    public void So_are_those_of_each_chamber(int way, params double[] rms)
    {
        double[] chambers = [25, 40, 10, 0, -10, -20];
        Each.Pair(chambers, rms, (chamber, expected) =>
            Assert.Equal(expected, 100 * All.Value[way].Rms(chamber), 1.5 * Points), atLeast: 6);
    }

    // The sustained resistance of this cell is 1.0 to 1.1 times the project's: tests/RigScenarios.Checks/data/measured.
    [Fact]
    public void Two_logs_tell_the_resistance_with_an_interval_that_holds_it()
    {
        var resistance = All.Value[2].Cell.Fit![UnknownKind.Resistance];
        Assert.Equal(1.13, resistance.Value, 0.02);
        Assert.Equal(0.89, resistance.Low, 0.02);
        Assert.Equal(1.43, resistance.High, 0.02);
    }

    [Fact]
    [Guard]
    public void A_discharge_logged_at_25_degrees_halves_the_error_and_two_halve_it_again()
    {
        var errors = All.Value.Select(way => way.RmsElsewhere).ToList();
        Assert.True(errors[1] < 0.5 * errors[0] && errors[2] < 0.6 * errors[1]);
    }

    [Fact]
    [Guard]
    public void The_page_is_what_its_command_writes()
    {
        var page = File.ReadAllText(Path.Combine(Root(), "docs", "fitted-cells.md"));
        Assert.Equal(page, FittedCellsPage.Of(MeasuredCell.Folder), ignoreLineEndingDifferences: true);
    }

    private static string Root([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", ".."));
}

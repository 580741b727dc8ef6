using System.Runtime.CompilerServices;
using RigScenarios.Benchmarks.AgedCells;
using RigScenarios.Cells.Aging;

namespace RigScenarios.Checks.Cells.Aging;

/// <summary>
/// Eleven measured cells beside every set, and the page that tells of them. The data are read where they lie beside the
/// repository (shared/reference/data); elsewhere what needs them is skipped.
/// </summary>
[Source(SourceKind.OpenData, "Measured capacities behind K. Smith et al., American Control Conference 2017, 4062-4068, from the "
    + "validation files of NREL's ssc, BSD-3-Clause, © Alliance for Sustainable Energy; read in the source")]
public class AgedCellChecks
{
    private static readonly string? Folder = AgedCell.FindFolder(Root());

    private static readonly IReadOnlyList<AgedCell> Cells = Folder is null ? [] : AgedCell.Read(Folder);

    /// <summary>Model minus measured at the end in points, by nmc, lfp, lfp-throughput, nca, nmc811si: how far each is off, and
    /// no nearer. The figures beside are those of an independent program.</summary>
    [Theory]
    [InlineData(1, -36.9, -7.3, -4.8, -4.7, -18.2)]
    [InlineData(2, -36.7, -7.1, -4.4, -4.6, -18.3)]
    [InlineData(3, -30.5, 6.1, 7.3, 8.6, -1.9)]
    [InlineData(4, -23.1, -2.2, -0.9, 0.1, -8.3)]
    [InlineData(5, -4.4, -5.0, 2.1, -5.6, -7.7)]
    [InlineData(6, -11.3, 18.2, 25.5, 21.1, -4.5)]
    [InlineData(7, -16.8, 12.8, 20.1, 15.6, -10.5)]
    [InlineData(8, -3.7, -0.7, 4.3, -2.2, -3.9)]
    [InlineData(9, -23.8, 5.2, -1.6, 6.7, 2.2)]
    [InlineData(10, 2.5, 6.5, 14.2, 4.8, 5.5)]
    [InlineData(11, 3.4, 21.9, 32.8, 18.2, 21.3)]
    public void Each_set_is_off_by_as_much_as_is_told(int number, params double[] points)
    {
        var cell = Cell(number);
        Each.Pair(AgingSets.All, points, (set, expected) => Assert.Equal(expected, cell.Error(set, cell.End), 0.051));
    }

    [Fact]
    public void Storage_is_within_five_points_at_the_end_and_further_off_on_the_way()
    {
        Needed();
        var stored = Cells.Where(cell => cell.IsStored).ToList();
        Each.Of(stored, cell => Assert.InRange(cell.Error(AgingSets.Nmc, cell.End), -5, 5), atLeast: 4);
        // The full cell at 55 °C loses a seventh of its capacity in three weeks, which no law of this form has.
        var hottest = Cell(11);
        Assert.Equal(10.4, hottest.Points.Max(point => hottest.Error(AgingSets.Nmc, point)), 0.051);
        Assert.Equal(5.8, stored.Where(cell => cell.Number != 11)
            .Max(cell => cell.Points.Max(point => Math.Abs(cell.Error(AgingSets.Nmc, point)))), 0.051);
    }

    [Fact]
    public void Cycles_are_6_to_13_points_too_low_at_200()
    {
        Needed();
        Each.Of(Cells.Where(cell => !cell.IsStored), cell =>
        {
            var point = cell.Points.MinBy(one => Math.Abs(cell.FullCycles(one) - 200))!;
            Assert.InRange(cell.Error(AgingSets.Nmc, point), -13.05, -5.5);
        }, atLeast: 7);
    }

    /// <summary>The end points that the library carries are those of the data.</summary>
    [Fact]
    [Guard]
    public void The_librarys_end_points_are_those_of_the_data()
    {
        Needed();
        Each.Pair(AgedTestCells.All, Cells, (ours, cell) => Assert.Equal(
            (cell.Number, cell.IsStored, cell.Celsius, cell.Charge, cell.End.Days, cell.End.Left, cell.FullCycles(cell.End)),
            (ours.Number, ours.IsStored, Math.Round(ours.Temperature.DegreesCelsius, 6), ours.MeanCharge.DecimalFractions,
                ours.Time.Days, ours.Measured.DecimalFractions, ours.FullCycles)));
    }

    [Fact]
    [Guard]
    public void The_page_is_what_its_command_writes()
    {
        Needed();
        Assert.Equal(Page(), AgedCellsPage.Of(Cells), ignoreLineEndingDifferences: true);
    }

    [Fact]
    [Guard]
    public void The_page_up_to_the_measured_cells_is_what_its_command_writes()
    {
        var page = Page();
        Assert.Equal(page[..(page.IndexOf(MeasuredSection.Title, StringComparison.Ordinal) - 1)], AgedCellsPage.WithoutCells(),
            ignoreLineEndingDifferences: true);
    }

    private static AgedCell Cell(int number)
    {
        Needed();
        return Cells.Single(cell => cell.Number == number);
    }

    private static void Needed() => Assert.SkipWhen(Folder is null, "the measured aging data are not beside this repository");

    private static string Page() => File.ReadAllText(Path.Combine(Root(), "docs", "aging.md"));

    private static string Root([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", "..", ".."));
}

using RigScenarios.Cells.Aging;

namespace RigScenarios.Tests.Cells;

public sealed class AgedTestCellTests
{
    // Source: docs/aging.md, table of the eleven cells, points at the end (an independent program on the same end points).
    [Theory]
    [InlineData("nmc", 21.7, 3.6, 27.1)]
    [InlineData("nca", 10.6, 9.9, 11.0)]
    [InlineData("nmc811si", 11.4, 11.8, 11.2)]
    [InlineData(null, 18.1, 18.0, 18.2)]
    public void The_sets_err_as_the_page_says(string? set, double all, double stored, double cycled)
    {
        var laws = set is null ? null : AgingSets.Find(set)!;
        Assert.Equal(all, AgedTestCells.Error(laws).Percent, 0.051);
        Assert.Equal(stored, AgedTestCells.Error(laws, stored: true).Percent, 0.051);
        Assert.Equal(cycled, AgedTestCells.Error(laws, stored: false).Percent, 0.051);
    }

    [Fact]
    public void A_cell_says_what_was_done_with_it()
    {
        Assert.Equal("cycled by 80 % at 25 °C, 294 days", AgedTestCells.All[0].ToString());
        Assert.Equal("stored 65 % full at 44 °C, 210 days", AgedTestCells.All[7].ToString());
        Assert.Equal(4, AgedTestCells.All.Count(cell => cell.IsStored));
    }
}

using System.Text.Json.Nodes;
using RigScenarios.Charts;
using RigScenarios.Charts.ParallelAxes;
using RigScenarios.Notebooks.Tests.Domain;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>The picture of very many scenarios counts every one of them.</summary>
public sealed class ParallelAxesChartTests
{
    [Fact]
    public void Every_row_of_the_picture_holds_all_lines()
    {
        // 20 rows in 4 gaps, three lines of which one breaks off at the second axis.
        var figure = Chart([1, 2, double.NaN], [5, 6, 7], [3, 3, 4]);
        Each.Of(Rows(figure, 0).Take(20), row => Assert.Equal(2, row, 0.02));
        Each.Of(Rows(figure, 0).Skip(20), row => Assert.Equal(3, row, 0.02));
        Assert.Equal(40, Rows(figure, 0).Count);
        Assert.Contains("Of 1 of them a value is not known", figure.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void Groups_together_are_all_scenarios()
    {
        var figure = SpreadGallery.Many(5000);
        Each.Of(Rows(figure, 0).Zip(Rows(figure, 1)), row => Assert.Equal(5000, row.First + row.Second, 50.0));
        // Three columns for each of five axes: the place, and how many of each group lie there.
        var rows = FigureParts.Json(figure)["points"]!["rows"]!.AsArray().Skip(1).ToList();
        Each.Of(Enumerable.Range(0, 5), axis => Assert.Equal(5000, rows.Sum(row =>
            (row![3 * axis + 1]?.GetValue<int>() ?? 0) + (row[3 * axis + 2]?.GetValue<int>() ?? 0))));
        Assert.Equal(["brick", "pocket", "large block", null], rows.Take(4).Select(row => row![6]?.GetValue<string>()));
        Assert.Contains("last until 18:00", FigureParts.Words(figure), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_from_one_end_to_the_other_is_straight()
    {
        // One line falls from the left end to the right one and one stands still, so that both axes have a length.
        var figure = Chart([0, 1], [1, 1.0], [0, 0]);
        var cells = FigureParts.Json(figure)["data"]![0]!["z"]!.AsArray()
            .Select(row => row!.AsArray().Index().Where(cell => cell.Item is not null).Select(cell => cell.Index).ToList())
            .Where(row => row.Count > 0).Take(20).ToList();
        Assert.Contains(0, cells[0]);
        Assert.Contains(95, cells[0]);
        // All of the second axis lies on one value: both lines end in its middle.
        Assert.Contains(48, cells[^1]);
        // On the way there each goes 48 of 96 cells in 20 rows: the lowest and the highest cell of a row are those lines.
        Each.Of(Enumerable.Range(0, 20), row =>
        {
            Assert.InRange(cells[row].Min() - 48 * row / 20.0, -0.5, 0.5);
            Assert.InRange(cells[row].Max() - (95 - 47 * row / 20.0), -0.5, 0.5);
        });
    }

    [Fact]
    public void The_picture_of_a_hundred_thousand_is_no_larger_than_that_of_ten_thousand()
    {
        var (some, many) = (SpreadGallery.Many(10_000), SpreadGallery.Many(100_000));
        Assert.InRange(many.Specification.Length / (double)some.Specification.Length, 0.7, 1.6);
        Assert.InRange(many.Specification.Length, 1, 500_000);
        Assert.Contains("A line for each of 100000 scenarios", many.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_not_be_drawn_is_refused()
    {
        ParallelAxis Axis(params double[] values) => new(new ChartAxis("a"), values);
        var chart = new ParallelAxesChart { Slug = "p", Title = "?", Axes = [Axis(1, 2), Axis(1, 2)] };
        _ = chart.ToFigure();
        Assert.Throws<InvalidOperationException>((chart with { Axes = [Axis(1)] }).ToFigure);
        Assert.Throws<InvalidOperationException>((chart with { Axes = [Axis(), Axis()] }).ToFigure);
        Assert.Throws<InvalidOperationException>((chart with { Axes = [Axis(1, 2), Axis(1)] }).ToFigure);
        Assert.Throws<InvalidOperationException>((chart with { Groups = [new("a", _ => true)] }).ToFigure);
        Assert.Throws<InvalidOperationException>(
            (chart with { Axes = [Axis(1, 2), Axis(0, 2) with { Names = ["one", "two"] }] }).ToFigure);
        Assert.Throws<InvalidOperationException>(
            (chart with { Axes = [Axis(1, 2), Axis(0, 0.5) with { Names = ["one", "two"] }] }).ToFigure);
    }

    private static Figure Chart(params IReadOnlyList<double>[] axes) => new ParallelAxesChart
    {
        Slug = "parallel", Title = "?", Axes = [.. axes.Select((values, i) => new ParallelAxis(new($"axis {i}", "h"), values))],
    }.ToFigure();

    /// <summary>The lines in each row of a group's cells, without the strips of the axes.</summary>
    private static List<double> Rows(Figure figure, int group) =>
        [.. FigureParts.Json(figure)["data"]![group]!["customdata"]!.AsArray().OfType<JsonArray>().Where(row => row.Count > 0)
            .Select(row => row.Sum(cell => cell?.GetValue<double>() ?? 0))];
}

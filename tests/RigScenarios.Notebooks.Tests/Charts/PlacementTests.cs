using RigScenarios.Charts;
using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Labels never lie over each other or over lines: held on many random charts of a fixed seed.</summary>
public sealed class PlacementTests
{
    private static readonly PlotArea Area = new(500, 300, new AxisRange(0, 10, false), new AxisRange(0, 20, false));

    [Fact]
    public void Labels_in_the_margin_never_overlap()
    {
        Drawn.Cases(firstSeed: 7, cases: 200, random =>
        {
            var labels = Enumerable.Range(0, 1 + random.Next(16)).Select(i => ($"line {i}", random.NextDouble() * 300)).ToList();
            var placed = new LabelPlacement(Area, 200, []).InMargin(labels);
            Assert.NotNull(placed);
            AssertApart([.. placed.Select(label => label.Box)]);
            Each.Of(placed, label => Assert.InRange(label.Box.Bottom, 0, 300 + ChartStyle.TextHeight));
        });
    }

    [Fact]
    public void More_labels_than_the_margin_holds_get_no_place() =>
        Assert.Null(new LabelPlacement(Area, 200, []).InMargin([.. Enumerable.Range(0, 30).Select(i => ($"line {i}", 150.0))]));

    [Fact]
    public void Labels_beside_line_ends_cover_neither_lines_nor_each_other()
    {
        Drawn.Cases(firstSeed: 11, cases: 200, atLeast: 150, (random, looked) =>
        {
            var lines = Enumerable.Range(0, 4).Select(_ => (IReadOnlyList<(double X, double Y)>)
                [(0, random.Next(300)), (random.Next(1, 250), random.Next(300)), (random.Next(250, 480), random.Next(300))])
                    .ToList();
            var placement = new LabelPlacement(Area, 0, lines);
            var boxes = lines.Select((line, i) => placement.BesideEnd($"line {i}<br>voltage cut-off", line[^1]))
                .OfType<PlacedLabel>().Select(l => l.Box).ToList();
            AssertApart(boxes);
            if (boxes.Count > 1)
                looked.One();
            Assert.DoesNotContain(boxes,
                box => lines.Exists(line => line.Zip(line.Skip(1)).Any(piece => box.IsCrossed(piece.First, piece.Second))));
        });
    }

    [Fact]
    public void Names_above_the_plot_never_overlap_and_stay_over_it()
    {
        Drawn.Cases(firstSeed: 3, cases: 200, random =>
        {
            var names = Enumerable.Range(0, 8).Select(i => (Name: $"block number {i}", Middle: random.NextDouble() * 500))
                .OrderBy(n => n.Middle).ToList();
            var places = NameRows.Place(names, 500);
            var boxes = places.Select((place, i) => new Box(
                place.Left, place.Row * 10, place.Left + ChartStyle.TextWidth(names[i].Name, ChartStyle.FontSize - 1),
                place.Row * 10 + 9)).ToList();
            AssertApart(boxes);
            Each.Of(boxes, box => Assert.True(box.Left >= 0 && box.Right <= 500));
        });
    }

    [Theory]
    [InlineData(12.0, 16.4, 11, 17)]
    [InlineData(0, 42, 0, 50)]
    [InlineData(-8, 1, -10, 2)]
    [InlineData(3, 3, 2.4, 3.6)]
    public void A_range_ends_on_round_numbers_with_some_air(double low, double high, double from, double to)
    {
        var range = AxisRange.For(new ChartAxis("x"), [low, double.NaN, high], pad: true);
        Assert.Equal((from, to), (range.From, range.To));
    }

    [Theory]
    [InlineData(6.5, "06:30")]
    [InlineData(25, "01:00 +1")]
    [InlineData(-1, "23:00 −1")]
    public void Hours_are_written_as_clock_times(double hours, string expected) =>
        Assert.Equal(expected, AxisLayout.ClockText(hours));

    private static void AssertApart(List<Box> boxes)
    {
        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = i + 1; j < boxes.Count; j++)
                Assert.False(boxes[i].Overlaps(boxes[j]), $"{boxes[i]} and {boxes[j]}");
        }
    }
}

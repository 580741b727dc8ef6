using System.Text.Json.Nodes;
using RigScenarios.Charts.Distributions;
using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Rows;
using RigScenarios.Notebooks.Tests.Domain;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of what is not known exactly, over invented figures.</summary>
public sealed class SpreadChartTests
{
    [Fact]
    public void The_curve_of_days_falls_by_each_day_that_ends_and_stops_above_those_that_ran_on()
    {
        double[] ends = [5, 3, double.PositiveInfinity, 4];
        var figure = new LastingDays { Slug = "days", Title = "?", Time = new("end", "h"), Ends = ends }.ToFigure();
        var line = Assert.Single(FigureParts.Lines(figure));
        Assert.Equal([2.92, 3, 3, 4, 5, 5.08], Numbers(line["x"]!));
        // Of ten: all until the first ends at 3, then three of four, two, and the one that ran on.
        Assert.Equal([10, 10, 7.5, 5, 2.5, 2.5], Numbers(line["y"]!));
        Assert.Contains("1 of them still ran", figure.Caption, StringComparison.Ordinal);
        Assert.Contains("Of 4 days.", figure.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_days_make_no_more_points_than_can_be_seen_and_none_is_forgotten_at_the_end()
    {
        var ends = Enumerable.Range(0, 100_000).Select(i => i / 1000.0).ToList();
        var figure = new LastingDays { Slug = "days", Title = "?", Time = new("end", "h"), Ends = ends }.ToFigure();
        var line = Assert.Single(FigureParts.Lines(figure));
        var (x, y) = (Numbers(line["x"]!), Numbers(line["y"]!));
        Assert.InRange(x.Count, 300, 404);
        Assert.Equal((0, 10), (x[1], y[1]));
        // Five digits: the last end is 99.999 h.
        Assert.Equal((99.999, 0), (x[^2], y[^2]));
        // As many have ended by a time as lie below it, to one point of the curve.
        Each.Of(x.Zip(y).Skip(1).SkipLast(1), point => Assert.Equal(10 * (1 - point.First / 100), point.Second, 0.03));
    }

    [Fact]
    public void One_day_that_ran_for_hours_longer_is_told_and_does_not_press_the_others_together()
    {
        List<double> ends = [.. Enumerable.Range(0, 999).Select(i => 16 + i / 999.0), 40];
        var figure = new LastingDays { Slug = "days", Title = "?", Time = new("end", "h"), Ends = ends }.ToFigure();
        Assert.InRange(Numbers(FigureParts.Json(figure)["layout"]!["xaxis"]!["range"]!)[1], 17, 17.1);
        Assert.Contains("ended outside of the picture, the first at 16 h, the last at 40 h", figure.Caption,
            StringComparison.Ordinal);
        // Nothing is left out of the numbers.
        Assert.Equal(40, Numbers(Assert.Single(FigureParts.Lines(figure))["x"]!)[^2]);
    }

    [Theory]
    [InlineData(new double[0])]
    [InlineData(new[] { 3.0 })]
    [InlineData(new[] { 3.0, double.NaN })]
    [InlineData(new[] { double.PositiveInfinity, double.PositiveInfinity })]
    public void Days_without_an_end_are_refused(double[] ends) => Assert.Throws<InvalidOperationException>(() =>
        new LastingDays { Slug = "days", Title = "?", Time = new("end", "h"), Ends = ends }.ToFigure());

    [Fact]
    public void Bands_lie_in_each_other_and_only_the_middle_is_a_line()
    {
        var figure = SpreadGallery.Bands();
        var traces = FigureParts.Json(figure)["data"]!.AsArray().Select(trace => trace!).ToList();
        Assert.Equal(2, traces.Count(trace => trace["fill"] is not null));
        Assert.Equal("middle", Assert.Single(FigureParts.Lines(figure), line => line["line"]!["width"]!.GetValue<double>() > 2)
            ["name"]!.GetValue<string>());
        Assert.Contains("8 of 10 days", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("5 of 10 days", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("5 of 10 days between", figure.AlternativeText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_alone_without_edges_is_refused()
    {
        var line = new ChartLine("half", [1, 2], [1, 2]) { Kind = LineKind.BandAlone };
        Assert.Contains("\"half\"", Assert.Throws<InvalidOperationException>(() => new LineChart
        {
            Slug = "band", Title = "?", X = new("x"), Panels = [new ChartPanel(new("y"), [line])],
        }.ToFigure()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bars_of_a_tornado_begin_at_the_middle_and_the_longest_is_on_top()
    {
        var figure = SpreadGallery.HardTornado();
        Assert.Equal(["large", "setting that is best in its middle", "both better",
            "one end that nobody knows and that has a long name"], figure.Data.Rows.Select(row => row[0]));
        var sides = FigureParts.Json(figure)["data"]!.AsArray().Select(trace => trace!).ToList();
        // Low: -1.5 and -0.2 below the middle of 0.4, 0.9 above it; the end that is not known has no bar.
        Assert.Equal([-1.5, -0.2, 0.4], Numbers(sides[0]["base"]!));
        Assert.Equal([1.9, 0.6, 0.5], Numbers(sides[0]["x"]!));
        Assert.Equal([0.4, -0.9, 0.4, 0.4], Numbers(sides[1]["base"]!));
        // Both ends on one side lie below each other, or one would hide the other.
        Assert.Equal([0, 0.8, 1.8], Numbers(sides[0]["y"]!));
        Assert.Equal([0, 1.2, 2.2, 3], Numbers(sides[1]["y"]!));
        Assert.Contains("not known", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("– at its low value, 1.3 h at its high value", figure.AlternativeText.Replace("– h", "–",
            StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_end_of_a_bar_has_room_for_its_words()
    {
        foreach (var figure in new[] { SpreadGallery.Tornado(), SpreadGallery.HardTornado() })
        {
            var layout = FigureParts.Json(figure)["layout"]!;
            var range = Numbers(layout["xaxis"]!["range"]!);
            Each.Of(FigureParts.Json(figure)["data"]!.AsArray().Select(trace => trace!), side =>
            {
                Each.Of(Numbers(side["base"]!), from => Assert.True(from > range[0]));
                Each.Of(Numbers(side["base"]!).Zip(Numbers(side["x"]!)), bar => Assert.True(bar.First + bar.Second < range[1]));
            });
        }
    }

    [Fact]
    public void Clock_times_are_read_as_such_and_kept_as_hours()
    {
        var figure = SpreadGallery.Tornado();
        Assert.Contains("air, −12 to −4 °C: 16:12 at its low value, 17:54 at its high value", figure.AlternativeText,
            StringComparison.Ordinal);
        var rows = FigureParts.Json(figure)["points"]!["rows"]!.AsArray();
        Assert.Equal("low, end of the day (h since midnight of the first day)", rows[0]![1]!.GetValue<string>());
        Assert.Equal("as given: 17:02", rows[^1]![0]!.GetValue<string>());
        Assert.Equal(16.2, rows[1]![1]!.GetValue<double>());
    }

    [Fact]
    public void Shares_are_drawn_as_they_were_estimated_even_below_zero()
    {
        var figure = SpreadGallery.Shares();
        var alone = FigureParts.Json(figure)["data"]![0]!;
        Assert.Equal([52, 31, 6, -0.3], Numbers(alone["x"]!));
        Assert.Equal([5, 5, 6, 4.3], Numbers(alone["error_x"]!["array"]!));
        Assert.Equal([5, 6, 7, 3.7], Numbers(alone["error_x"]!["arrayminus"]!));
        Assert.True(Numbers(FigureParts.Json(figure)["layout"]!["xaxis"]!["range"]!)[0] < -4);
        Assert.Contains("air temperature: alone 52 % (47 to 57), together with the others 55 % (52 to 59)",
            figure.AlternativeText,
            StringComparison.Ordinal);
        Assert.Equal(9, FigureParts.Json(figure)["points"]!["rows"]!.AsArray().Count);
    }

    [Fact]
    public void What_can_not_be_drawn_is_refused()
    {
        var chart = new TornadoChart { Slug = "t", Title = "?", Value = new("h"), Middle = 1, MiddleName = "given", Bars = [] };
        Assert.Throws<InvalidOperationException>(chart.ToFigure);
        Assert.Throws<InvalidOperationException>((chart with { Bars = [new("a", 1, 2), new("a", 1, 3)] }).ToFigure);
        Assert.Throws<InvalidOperationException>((chart with { Middle = double.NaN, Bars = [new("a", 1, 2)] }).ToFigure);
        var nothing = new EstimatedShare(double.NaN, double.NaN, double.NaN);
        Assert.Throws<InvalidOperationException>(() =>
            new SharesOfSpreadChart { Slug = "s", Title = "?", Of = "it", Shares = [new("a", nothing, nothing)] }.ToFigure());
    }

    [Fact]
    public void Lines_of_equal_value_hold_all_cells_and_leave_blank_what_is_blank()
    {
        var figure = SpreadGallery.Contours();
        var lines = FigureParts.Json(figure)["data"]![0]!;
        Assert.Equal("contour", lines["type"]!.GetValue<string>());
        Assert.Equal((21, 31), (lines["z"]!.AsArray().Count, lines["z"]![0]!.AsArray().Count));
        Assert.Null(lines["z"]![0]![0]);
        // 10/(1 + exp(-(90 - 170 + 30)/18)) = 10/(1 + exp(50/18)).
        Assert.Equal(10 / (1 + Math.Exp(50 / 18.0)), lines["z"]![0]![30]!.GetValue<double>(), 4);
        Assert.Contains("Blank: the camera does not start.", figure.Caption, StringComparison.Ordinal);
        Assert.StartsWith("Lines of equal value", figure.AlternativeText, StringComparison.Ordinal);
    }

    private static List<double> Numbers(JsonNode array) => [.. array.AsArray().Select(value => value!.GetValue<double>())];
}

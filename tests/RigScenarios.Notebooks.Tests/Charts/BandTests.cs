using System.Text.Json.Nodes;
using RigScenarios.Charts;
using RigScenarios.Charts.Lines;
using RigScenarios.Notebooks.Tests.Domain;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Bands, bars and marks of line charts, held on drawn charts.</summary>
public sealed class BandTests
{
    [Fact]
    public void The_band_holds_its_line_and_nothing_is_drawn_outside_of_the_axes()
    {
        Drawn.Cases(firstSeed: 21, cases: 200, atLeast: 150, (random, looked) =>
        {
            var line = Line(random, LineKind.Curve);
            var json = FigureParts.Json(Chart([line]).ToFigure());
            var (low, high) = Range(json, "yaxis");
            var (left, right) = Range(json, "xaxis");
            var traces = json["data"]!.AsArray().Select(trace => trace!).ToList();
            Each.Of(traces.SelectMany(trace => Numbers(trace["y"]!)), y => Assert.InRange(y, low, high));
            Each.Of(traces.SelectMany(trace => Numbers(trace["x"]!)), x => Assert.InRange(x, left, right));
            var fill = Assert.Single(traces, trace => trace["fill"] is not null);
            var edges = traces.Where(trace => trace["line"]?["width"]?.GetValue<double>() == 1).ToList();
            Assert.Equal(2, edges.Count);
            // Each point of the line lies between the two edges that are drawn at the same place.
            var drawn = Assert.Single(FigureParts.Lines(Chart([line]).ToFigure()));
            for (var i = 0; i < line.X.Count; i++)
            {
                if (drawn["y"]![i] is not { } y || edges[0]["y"]![i] is not { } from)
                    continue;
                Assert.InRange(y.GetValue<double>(), from.GetValue<double>(), edges[1]["y"]![i]!.GetValue<double>());
                looked.One();
            }

            // The area reaches no farther than its edges.
            var values = edges.SelectMany(edge => Numbers(edge["y"]!)).ToList();
            Each.Of(Numbers(fill["y"]!), y => Assert.InRange(y, values.Min(), values.Max()));
        });
    }

    [Theory]
    [InlineData(LineKind.Curve)]
    [InlineData(LineKind.Steps)]
    public void A_gap_in_the_band_is_a_gap_in_the_area(LineKind kind)
    {
        var line = new ChartLine("a", [0, 1, 2, 3, 4], [5, 5, double.NaN, 6, 6])
        {
            Kind = kind, Lower = [4, 4, double.NaN, 5, 5], Upper = [6, 6, double.NaN, 8, 8],
        };
        var fill = FigureParts.Json(Chart([line]).ToFigure())["data"]!.AsArray().Single(trace => trace!["fill"] is not null)!;
        Assert.Equal("toself", fill["fill"]!.GetValue<string>());
        Assert.Single(fill["x"]!.AsArray(), x => x is null);
        Assert.Equal(kind == LineKind.Curve ? 8 : 12, fill["x"]!.AsArray().Count(x => x is not null));
    }

    [Fact]
    public void A_band_is_named_at_its_end_and_on_a_phone_in_the_legend()
    {
        var line = new ChartLine("capacity left", [0, 1], [100, 90]) { Lower = [100, 80], Upper = [100, 95],
            BandName = "between fits" };
        var figure = Chart([line]).ToFigure();
        var json = FigureParts.Json(figure);
        Assert.Contains("between fits", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains(json["layout"]!["annotations"]!.AsArray(), note => note!["text"]!.GetValue<string>() == "between fits");
        Assert.DoesNotContain(json["data"]!.AsArray(), trace => trace!["showlegend"]!.GetValue<bool>());
        // The band alone: the panel's title says what the line is.
        Assert.Single(json["narrow"]!["traces"]!.AsArray(), trace => trace!["showlegend"]!.GetValue<bool>());
        Assert.DoesNotContain(json["layout"]!["annotations"]!.AsArray(),
            note => note!["text"]!.GetValue<string>() == "capacity left");
        Assert.Contains("between 80", figure.AlternativeText, StringComparison.Ordinal);
        Assert.Equal(["capacity left", "1", "90", "80", "95", "value (W)"], figure.Data.Rows[1]);
    }

    [Fact]
    public void What_looks_the_same_in_two_panels_is_named_once_in_the_legend()
    {
        var line = new ChartLine("a", [0, 1], [1, 2]) { Lower = [0, 1], Upper = [2, 3], BandName = "band", Look = 0 };
        var other = new ChartLine("b", [0, 1], [2, 1]) { Look = 1 };
        var chart = Chart([line, other]);
        var json = FigureParts.Json((chart with { Panels = [chart.Panels[0], chart.Panels[0]] }).ToFigure());
        var narrow = json["narrow"]!["traces"]!.AsArray().Count(trace => trace!["showlegend"]!.GetValue<bool>());
        Assert.Equal(3, narrow);
    }

    [Fact]
    public void Single_points_have_a_bar_each_and_their_ends_are_in_the_file_of_all_points()
    {
        var points = new ChartLine("notes", [1, 2], [3, 5]) { Kind = LineKind.Points, Lower = [2, 4.5], Upper = [3.5, 7],
            PointNames = ["pier", "hall"], IsNamedInLegend = true };
        var json = FigureParts.Json(Chart([points]).ToFigure());
        var data = json["data"]!.AsArray();
        var drawn = Assert.Single(data, trace => trace!["error_y"] is not null)!;
        Assert.Equal([0.5, 2], Numbers(drawn["error_y"]!["array"]!));
        Assert.Equal([1, 0.5], Numbers(drawn["error_y"]!["arrayminus"]!));
        Assert.DoesNotContain(data, trace => trace!["fill"] is not null);
        var series = json["points"]!["series"]!.AsArray();
        Assert.Equal(["notes, lowest", "notes, highest", "notes"], series.Select(one => one!["name"]!.GetValue<string>()));
        Assert.Equal("notes: pier", series[2]!["names"]![0]!.GetValue<string>());
        Assert.True(drawn["showlegend"]!.GetValue<bool>());
    }

    [Fact]
    public void Marks_are_lines_in_each_panel_and_leave_the_titles_between_them_alone()
    {
        var chart = Chart([new ChartLine("a", [0, 10], [1, 2])]) with
        {
            Marks = [new ChartMark("80 % left", 4), new ChartMark("the day no longer lasts", 4.2)],
        };
        var json = FigureParts.Json((chart with { Panels = [chart.Panels[0], chart.Panels[0]] }).ToFigure());
        var shapes = json["layout"]!["shapes"]!.AsArray();
        Assert.Equal([4, 4, 4.2, 4.2], shapes.Select(shape => shape!["x0"]!.GetValue<double>()));
        var domains = new[] { "yaxis", "yaxis2" }.Select(axis => json["layout"]![axis]!["domain"]!.ToJsonString()).ToList();
        Assert.Equal([.. domains, .. domains], shapes.Select(shape =>
            new JsonArray(shape!["y0"]!.DeepClone(), shape["y1"]!.DeepClone()).ToJsonString()));
        Assert.Contains("Mark at 4 h: 80 % left.", chart.ToFigure().AlternativeText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_number_of_names_is_told() => Assert.Contains("1 names for its 2 points",
        Assert.Throws<InvalidOperationException>(() => Chart([new ChartLine("a", [0, 1], [1, 2]) { PointNames = ["x"] }])
            .ToFigure()).Message, StringComparison.Ordinal);

    private static ChartLine Line(Random random, LineKind kind)
    {
        var count = 2 + random.Next(30);
        var y = Enumerable.Range(0, count).Select(_ => random.NextDouble() < 0.1 ? double.NaN : random.Next(-50, 200) / 3.0)
            .ToList();
        return new ChartLine("a", [.. Enumerable.Range(0, count).Select(i => i * 0.37)], y)
        {
            Kind = kind, BandName = "band",
            Lower = [.. y.Select(value => value - 10 * random.NextDouble())],
            Upper = [.. y.Select(value => value + 10 * random.NextDouble())],
        };
    }

    private static LineChart Chart(IReadOnlyList<ChartLine> lines) => new()
    {
        Slug = "bands", Title = "Bands", X = new ChartAxis("time", "h"),
        Panels = [new ChartPanel(new ChartAxis("value", "W"), lines)],
    };

    private static (double From, double To) Range(JsonNode json, string axis)
    {
        var range = json["layout"]![axis]!["range"]!;
        return (range[0]!.GetValue<double>() - 1e-9, range[1]!.GetValue<double>() + 1e-9);
    }

    private static List<double> Numbers(JsonNode values) =>
        [.. values.AsArray().Where(value => value is not null).Select(value => value!.GetValue<double>())];
}

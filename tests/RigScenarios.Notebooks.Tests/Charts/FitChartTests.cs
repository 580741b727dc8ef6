using System.Text.Json.Nodes;
using RigScenarios.Charts;
using RigScenarios.Charts.Fits;
using RigScenarios.Notebooks.Tests.Domain;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of fits, over invented figures.</summary>
public sealed class FitChartTests
{
    [Fact]
    public void Both_axes_have_one_range_and_the_straight_line_goes_from_corner_to_corner()
    {
        var json = FigureParts.Json(FitGallery.Notes());
        var (x, y) = (json["layout"]!["xaxis"]!["range"]!.ToJsonString(), json["layout"]!["yaxis"]!["range"]!.ToJsonString());
        Assert.Equal(x, y);
        var line = json["data"]!.AsArray().First(trace => trace!["name"]?.GetValue<string>() == "as predicted")!;
        Assert.Equal(x, line["x"]!.ToJsonString());
        Assert.Equal(x, line["y"]!.ToJsonString());
        Assert.Contains("runtime, predicted (h)", FigureParts.Words(FitGallery.Notes()), StringComparison.Ordinal);
        Assert.Contains("runtime, measured (h)", FigureParts.Words(FitGallery.Notes()), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_left_out_and_what_still_ran_are_told_apart_by_mark_and_word()
    {
        var traces = FigureParts.Json(FitGallery.Notes())["data"]!.AsArray()
            .Where(trace => trace!["mode"]?.GetValue<string>() == "markers").Select(trace => trace!).ToList();
        Assert.Equal(["measured", "still running: at least this", "left out of the fit"],
            traces.Select(trace => trace["name"]!.GetValue<string>()));
        Assert.Equal(3, traces.Select(trace => trace["marker"]!["symbol"]!.GetValue<string>()).Distinct().Count());
        Assert.Contains("lamps in the yard: 5.6 predicted, 4.5 measured and still running", FitGallery.Notes().AlternativeText,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_to_compare_is_told()
    {
        var axis = new ChartAxis("runtime", "h");
        Assert.Contains("one measurement", Assert.Throws<ArgumentException>(() =>
            PredictedAgainstMeasured.Of("a", "a", axis, [])).Message, StringComparison.Ordinal);
        Assert.Contains("\"snow\"", Assert.Throws<ArgumentException>(() => PredictedAgainstMeasured.Of("a", "a", axis,
            [new ComparedPoint("snow", 1, double.NaN)])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gap_of_the_log_is_shaded_and_has_no_difference()
    {
        var json = FigureParts.Json(FitGallery.Log());
        var shape = Assert.Single(json["layout"]!["shapes"]!.AsArray())!;
        // Stretches 81 to 94 of 0.02 h are not compared: from the middle before to the middle behind.
        Assert.Equal(80.5 * 0.02, shape["x0"]!.GetValue<double>(), 9);
        Assert.Equal(94.5 * 0.02, shape["x1"]!.GetValue<double>(), 9);
        var difference = FigureParts.Lines(FitGallery.Log()).Single(line => line["name"]!.GetValue<string>() == "difference");
        Assert.Equal(14, difference["y"]!.AsArray().Count(y => y is null));
        // 0.03 V at most.
        Each.Of(difference["y"]!.AsArray().OfType<JsonNode>(), y => Assert.InRange(y.GetValue<double>(), -30.001, 30.001));
        Assert.EndsWith("Shaded: not compared.", FitGallery.Log().Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void Spans_are_those_of_95_per_cent()
    {
        var rows = FitGallery.Spans().Data.Rows;
        // exp(-0.05 ± 1.96·0.08) and exp(-0.14 ± 1.96·0.02): definition of the lognormal interval.
        Assert.Equal(["capacity, before", "81.32", "111.3"], rows[0]);
        Assert.Equal(["capacity, now", "83.59", "90.41"], rows[1]);
        // A lower end that was found otherwise goes first.
        Assert.Equal("102", rows[3][1]);
    }

    [Fact]
    public void The_chances_of_all_steps_are_one_together()
    {
        foreach (var curve in FigureParts.Lines(FitGallery.One()))
        {
            var (x, y) = (Numbers(curve["x"]!), Numbers(curve["y"]!));
            // Steps of 1 %, chances in %: the area under the curve is 100. Beyond 3.2 standard deviations lie 0.14 %.
            Assert.InRange(Enumerable.Range(1, x.Count - 1).Sum(i => (x[i] - x[i - 1]) * (y[i] + y[i - 1]) / 2), 99.7, 100);
        }
    }

    [Fact]
    public void The_area_of_two_values_is_as_wide_as_their_correlation_says()
    {
        var now = FigureParts.Lines(FitGallery.Both())[0];
        var (x, y) = (Numbers(now["x"]!), Numbers(now["y"]!));
        Assert.Equal(x[0], x[^1], 3);
        Assert.Equal(y[0], y[^1], 3);
        // Source: for a normal in two dimensions 95 % lie within r² = -2·ln(0.05) = 5.991 (chi-squared, 2 degrees of freedom).
        Each.Of(x.Zip(y), point =>
        {
            var (a, b) = ((Math.Log(point.First / 100) + 0.14) / 0.02, (Math.Log(point.Second / 100) - 0.06) / 0.03);
            Assert.Equal(5.991, (a * a - 2 * 0.9 * a * b + b * b) / (1 - 0.81), 0.05);
        });
    }

    private static List<double> Numbers(JsonNode values) => [.. values.AsArray().Select(value => value!.GetValue<double>())];
}

using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Charts.Days;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Domain;

public sealed class DayBandChartTests
{
    [Fact]
    public void The_band_holds_the_line_to_its_end_and_goes_on_to_the_last_stop()
    {
        var (middle, weaker, stronger) = (Day(88), Day(70), Day(100));
        var figure = DayBandChart.Of(middle, weaker, stronger, "The day", "what is not known");
        var lines = FigureParts.Lines(figure);
        Assert.Equal(2, lines.Count);
        var edges = FigureParts.Json(figure)["data"]!.AsArray().Select(trace => trace!)
            .Where(trace => trace["line"]?["width"]?.GetValue<double>() == 1).ToList();
        Assert.Equal(4, edges.Count);
        for (var panel = 0; panel < 2; panel++)
        {
            var (low, line, high) = (edges[2 * panel]["y"]!, lines[panel]["y"]!, edges[2 * panel + 1]["y"]!);
            var drawn = Enumerable.Range(0, line.AsArray().Count).Where(i => line[i] is not null).ToList();
            Each.Of(drawn, i => Assert.InRange(Number(line[i]!), Number(low[i]!), Number(high[i]!)));
            Assert.Equal(middle.Simulation.Series.Count, drawn.Count);
            // Beyond the line's end the band alone goes on, to where the stronger battery stops.
            Assert.True(drawn[^1] < line.AsArray().Count - 1);
            Assert.Equal(6.5 + stronger.Simulation.Runtime.Hours, Number(lines[panel]["x"]!.AsArray()[^1]!), 3);
        }
    }

    [Fact]
    public void Each_stop_is_marked_and_the_band_is_named()
    {
        var words = FigureParts.Words(DayBandChart.Of(Day(88), Day(70), Day(100), "The day", "what is not known"));
        foreach (var mark in new[] { "earliest stop: ", "expected stop: ", "latest stop: ", "what is not known" })
            Assert.Contains(mark, words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_battery_three_times_is_a_band_of_no_width()
    {
        var answer = Day(88);
        var figure = DayBandChart.Of(answer, answer, answer, "The day", "nothing");
        var edges = FigureParts.Json(figure)["data"]!.AsArray().Select(trace => trace!)
            .Where(trace => trace["line"]?["width"]?.GetValue<double>() == 1).ToList();
        Assert.Equal(edges[0]["y"]!.ToJsonString(), edges[1]["y"]!.ToJsonString());
        Assert.Equal(edges[2]["y"]!.ToJsonString(), edges[3]["y"]!.ToJsonString());
    }

    [Fact]
    public void A_result_without_series_is_refused_with_the_way_out()
    {
        var ended = Day(88, AnswerOptions.EndOnly);
        Assert.Contains("SeriesPoints", Assert.Throws<ArgumentException>(() =>
            DayBandChart.Of(ended, ended, ended, "The day", "nothing")).Message, StringComparison.Ordinal);
    }

    private static double Number(JsonNode value) => value.GetValue<double>();

    private static RigAnswer Day(double left, AnswerOptions? options = null)
    {
        var build = DemoData.Harbour.Builds["tripod"];
        var battery = build.Battery with { CapacityLeft = Ratio.FromPercent(left), ResistanceGrowth = 1.3 };
        return RigAnswer.Of(
            DemoData.Harbour with { Builds = DemoData.Harbour.Builds.With("tripod", build with { Battery = battery }) }, "tripod",
            ["day-one"], options, cancellation: TestContext.Current.CancellationToken);
    }
}

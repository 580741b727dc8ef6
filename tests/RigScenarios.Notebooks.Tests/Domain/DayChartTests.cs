using RigScenarios.Answers;
using RigScenarios.Charts.Days;

namespace RigScenarios.Notebooks.Tests.Domain;

public sealed class DayChartTests
{
    private static RigAnswer Day(string day) =>
        RigAnswer.Of(DemoData.Harbour, "tripod", [day], cancellation: TestContext.Current.CancellationToken);

    [Fact]
    public void Three_panels_have_their_units()
    {
        var words = FigureParts.Words(DayChart.Of(Day("day-one"), "A day"));
        Assert.Contains("battery voltage (V)", words, StringComparison.Ordinal);
        Assert.Contains("charge left (%)", words, StringComparison.Ordinal);
        Assert.Contains("power drawn from the battery (W)", words, StringComparison.Ordinal);
        Assert.Contains("clock time", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_hold_the_series_and_stop_where_the_run_stops()
    {
        var result = Day("day-one");
        var lines = FigureParts.Lines(DayChart.Of(result, "A day"));
        Assert.Equal(3, lines.Count);
        Each.Of(lines, line =>
        {
            Assert.Equal(result.Simulation.Series.Count, line["x"]!.AsArray().Count);
            Assert.Equal(6.5 + result.Simulation.Runtime.Hours, line["x"]!.AsArray()[^1]!.GetValue<double>(), 3);
        });
    }

    [Fact]
    public void An_early_end_is_told_in_the_words_of_the_answer()
    {
        var result = Day("day-one");
        Assert.False(result.Simulation.Completes);
        var figure = DayChart.Of(result, "A day");
        foreach (var text in new[] { figure.Caption, figure.AlternativeText })
        {
            Assert.Contains(AnswerSentences.Questions(result)[0].Words, text, StringComparison.Ordinal);
            Assert.Contains("before wrap", text, StringComparison.Ordinal);
        }

        Assert.Contains(AnswerSentences.Because(result, result.Simulation.FirstStop!.Reason), FigureParts.Words(figure),
            StringComparison.Ordinal);
        Assert.Contains("stops at 14:31", FigureParts.Words(figure), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_that_lasts_shows_no_cut_off_and_says_what_is_left()
    {
        var result = Day("day-three");
        Assert.True(result.Simulation.Completes);
        var figure = DayChart.Of(result, "A day");
        Assert.DoesNotContain("cut-off 11.2 V", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("wrap", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains($"with {AnswerTimes.Length(result.Reserve.Time)} left", figure.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_days_are_shaded_and_nights_break_the_line()
    {
        var result = RigAnswer.Of(DemoData.Harbour, "tripod", [], cancellation: TestContext.Current.CancellationToken);
        var figure = DayChart.Of(result, "All days");
        Assert.Equal(3, FigureParts.Json(figure)["layout"]!["shapes"]!.AsArray().Count);
        Each.Of(FigureParts.Lines(figure), line => Assert.Equal(2, line["y"]!.AsArray().Count(value => value is null)));
    }

    [Fact]
    public void Every_block_is_shaded_numbered_and_named()
    {
        var result = Day("day-one");
        var figure = DayChart.Of(result, "A day");
        Assert.Equal(result.Simulation.Blocks.Count, FigureParts.Json(figure)["layout"]!["shapes"]!.AsArray().Count);
        Each.Of(result.Simulation.Blocks, block => Assert.Contains(block.Title, figure.Caption, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_call_time_the_time_is_counted_in_hours()
    {
        var days = DemoData.Harbour.Days;
        var scenario = DemoData.Harbour with { Days = days.With("day-three", days["day-three"] with { Starts = null }) };
        var figure = DayChart.Of(RigAnswer.Of(scenario, "tripod", ["day-three"],
            cancellation: TestContext.Current.CancellationToken), "A day");
        Assert.Contains("time from the start of the day (h)", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Equal(0, FigureParts.Lines(figure)[0]["x"]!.AsArray()[0]!.GetValue<double>(), 6);
    }

    [Fact]
    public void The_makers_temperatures_go_first_in_the_cold_and_only_there()
    {
        Assert.Contains(DayCautions.MakersTemperatures, DayChart.Of(Day("day-one"), "A day").Cautions);
        var workshop = RigAnswer.Of(DemoData.TeachingKit, "full-rig", ["workshop"],
            cancellation: TestContext.Current.CancellationToken);
        Assert.DoesNotContain(DayCautions.MakersTemperatures, DayChart.Of(workshop, "A day").Cautions);
        Assert.Contains("predicted, not measured", DayChart.Of(workshop, "A day").Cautions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_result_without_series_is_refused_with_the_way_out()
    {
        var result = RigAnswer.Of(DemoData.Harbour, "tripod", ["day-one"], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        Assert.Contains("SeriesPoints", Assert.Throws<ArgumentException>(() => DayChart.Of(result, "A day")).Message,
            StringComparison.Ordinal);
    }
}

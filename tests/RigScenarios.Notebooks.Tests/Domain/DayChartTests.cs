using RigScenarios.Answers;
using RigScenarios.Charts.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Notebooks.Tests.Domain;

public sealed class DayChartTests
{
    private static readonly TimeOnly? Starts = DemoData.Harbour.Days["day-one"].Starts;

    private static DayResult Day(string day) => ScenarioRun.Run(DemoData.Harbour, "tripod", day, cancellation: TestContext.Current.CancellationToken);

    [Fact]
    public void Three_panels_have_their_units()
    {
        var words = FigureParts.Words(DayChart.Of(Day("day-one"), "A day", Starts));
        Assert.Contains("battery voltage (V)", words, StringComparison.Ordinal);
        Assert.Contains("charge left (%)", words, StringComparison.Ordinal);
        Assert.Contains("power drawn from the battery (W)", words, StringComparison.Ordinal);
        Assert.Contains("clock time", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_hold_the_series_and_stop_where_the_run_stops()
    {
        var result = Day("day-one");
        var lines = FigureParts.Lines(DayChart.Of(result, "A day", Starts));
        Assert.Equal(3, lines.Count);
        Assert.All(lines, line =>
        {
            Assert.Equal(result.Series.Count, line["x"]!.AsArray().Count);
            Assert.Equal(6.5 + result.Runtime.Hours, line["x"]!.AsArray()[^1]!.GetValue<double>(), 3);
        });
    }

    [Fact]
    public void An_early_end_is_told_with_its_cause_block_and_clock_time()
    {
        var result = Day("day-one");
        Assert.False(result.ReachesEnd);
        var figure = DayChart.Of(result, "A day", Starts);
        foreach (var text in new[] { figure.Caption, figure.AlternativeText })
        {
            Assert.Contains("voltage falls to its cut-off", text, StringComparison.Ordinal);
            Assert.Contains("At 15:01, in \"Waiting for the boats\"", text, StringComparison.Ordinal);
            Assert.Contains("1 h 59 min short", text, StringComparison.Ordinal);
        }

        Assert.Contains(result.EndCause, FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("cut-off 11.2 V", FigureParts.Words(figure), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_that_is_reached_shows_no_cut_off_and_says_what_is_left()
    {
        var result = Day("day-three");
        Assert.True(result.ReachesEnd);
        var figure = DayChart.Of(result, "A day", TimeOnly.Parse("05:30", null));
        Assert.DoesNotContain("cut-off 11.2 V", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("end of the day", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("of the charge left", figure.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_block_is_shaded_numbered_and_named()
    {
        var result = Day("day-one");
        var figure = DayChart.Of(result, "A day", Starts);
        Assert.Equal(result.Blocks.Count, FigureParts.Json(figure)["layout"]!["shapes"]!.AsArray().Count);
        Assert.All(result.Blocks, block => Assert.Contains(block.Title, figure.Caption, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_beginning_the_time_is_counted_in_hours() =>
        Assert.Contains("time from the start of the day (h)", FigureParts.Words(DayChart.Of(Day("day-one"), "A day")), StringComparison.Ordinal);

    [Fact]
    public void The_makers_temperatures_go_first_in_the_cold_and_only_there()
    {
        Assert.Contains(DayCautions.MakersTemperatures, DayChart.Of(Day("day-one"), "A day").Cautions);
        var workshop = ScenarioRun.Run(DemoData.TeachingKit, "full-rig", "workshop", cancellation: TestContext.Current.CancellationToken);
        Assert.DoesNotContain(DayCautions.MakersTemperatures, DayChart.Of(workshop, "A day").Cautions);
        Assert.Contains("±2 %", DayChart.Of(workshop, "A day").Cautions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_result_without_series_is_refused_with_the_way_out()
    {
        var result = ScenarioRun.Run(DemoData.Harbour, "tripod", "day-one", DayRunOptions.EndOnly, TestContext.Current.CancellationToken);
        Assert.Contains("SeriesPoints", Assert.Throws<ArgumentException>(() => DayChart.Of(result, "A day")).Message, StringComparison.Ordinal);
    }
}

using System.Text.Json.Nodes;
using RigScenarios.Charts;
using RigScenarios.Charts.Bars;
using RigScenarios.Charts.HeatMaps;
using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Pages;
using Snapshooter.Xunit3;

namespace RigScenarios.Notebooks.Tests.Charts;

public sealed class FigureTests
{
    [Fact]
    public void The_same_chart_gives_the_same_figure_to_the_letter()
    {
        Assert.Equal(Discharge("98 Wh").Specification, Discharge("98 Wh").Specification);
        Snapshot.Match(JsonNode.Parse(Discharge("98 Wh").Specification)!.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public void No_name_can_end_the_script_or_become_markup()
    {
        var figure = Discharge("</script><b>98 Wh</b>");
        Assert.DoesNotContain("<", figure.Specification, StringComparison.Ordinal);
        var names = JsonNode.Parse(figure.Specification)!["data"]!.AsArray().Select(trace => trace!["name"]?.GetValue<string>());
        Assert.Contains("&lt;/script&gt;&lt;b&gt;98 Wh&lt;/b&gt;: voltage cut-off", names);
    }

    [Fact]
    public void A_page_escapes_every_text()
    {
        const string evil = "<img src=x onerror=\"go()\">'&";
        var html = new ChartPage { Title = evil, Footer = evil }
            .WithHeading(evil).WithProse(evil).WithAnswer(evil, evil).With(Discharge(evil))
            .With(ChartTable.Of(evil).With(evil)).With(new PrintedPart(evil)).ToHtml()
                .Replace(ChartScript.Html, "", StringComparison.Ordinal);
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x onerror=&quot;go()&quot;&gt;&#39;&amp;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_chart_gives_its_numbers_and_its_words()
    {
        var figure = Discharge("98 Wh");
        Assert.Equal(["98 Wh", "2", "12", "", "", "battery voltage (V)"], figure.Data.Rows[2]);
        Assert.Equal(["150 Wh", "2.5", "13", "12.5", "13.5", "battery voltage (V)"], figure.Data.Rows[5]);
        Assert.Equal(
            "Line chart of battery voltage (V) over time since start (h). 98 Wh: from 16.4 V at 0 h to 12 V at 2 h, where it "
                + "ends: voltage cut-off. "
            + "150 Wh: from 16.4 V at 0 h to 13 V at 2.5 h, between 12.5 V and "
                + "13.5 V. Limit: camera cut-off 12.0 V.",
            figure.AlternativeText);
    }

    [Fact]
    public void A_line_of_very_many_points_gives_a_readable_table()
    {
        var x = Enumerable.Range(0, 1001).Select(i => i / 100.0).ToList();
        var table = Chart([new ChartLine("long", x, x)]).ToFigure().Data;
        Assert.Equal(25, table.Rows.Count);
        Assert.Equal(("0", "10"), (table.Rows[0][1], table.Rows[^1][1]));
    }

    [Fact]
    public void Values_that_are_no_numbers_leave_a_gap()
    {
        var figure = Chart([new ChartLine("gap", [0, 1, 2], [3, double.NaN, 4])]).ToFigure();
        Assert.Null(JsonNode.Parse(figure.Specification)!["data"]![1]!["y"]![1]);
    }

    [Fact]
    public void A_heat_map_says_what_cannot_be_seen()
    {
        var map = Map(threshold: 3);
        Assert.Equal("Blank: the camera does not start.", map.ToFigure().Caption);
        Assert.Equal("Blank: the camera does not start. All values shown lie at or above \"half a day\".",
            Map(threshold: 0.5).ToFigure().Caption);
        Assert.Equal(["40", "–", "4"], map.ToFigure().Data.Rows[1]);
    }

    [Fact]
    public void A_threshold_is_drawn_only_where_it_is_crossed()
    {
        Assert.Equal(4, JsonNode.Parse(Map(threshold: 3).ToFigure().Specification)!["data"]!.AsArray().Count);
        Assert.Equal(2, JsonNode.Parse(Map(threshold: 0.5).ToFigure().Specification)!["data"]!.AsArray().Count);
    }

    [Fact]
    public void Bars_say_their_values()
    {
        var figure = new BarChart
        {
            Slug = "joints", Title = "What each joint carries", Value = new ChartAxis("moment", "N·m"),
            Bars = [new ChartBar("handle", 2.123456), new ChartBar("arm", 4, 1)], Limits = [new BarLimit("rated 5 N·m", 5)],
        }.ToFigure();
        Assert.Equal("Bar chart of moment (N·m). handle: 2.12 N·m; arm: 1 to 4 N·m. Limit: rated 5 N·m.", figure.AlternativeText);
    }

    [Fact]
    public void Wrong_input_is_told_in_words()
    {
        Assert.Contains("as many of both", Assert.Throws<ArgumentException>(() => new ChartLine("a", [1, 2], [1])).Message,
            StringComparison.Ordinal);
        Assert.Contains("at least one line", Assert.Throws<InvalidOperationException>(() => Chart([]).ToFigure()).Message,
            StringComparison.Ordinal);
        Assert.Contains("voltage-over-day", Assert.Throws<ArgumentException>(() => Map(1) with { Slug = "No Slug" } is var m
            ? m.ToFigure() : null).Message, StringComparison.Ordinal);
        Assert.Contains("2 columns (a, b)", Assert.Throws<ArgumentException>(() => ChartTable.Of("a", "b").With(1)).Message,
            StringComparison.Ordinal);
    }

    private static Figure Discharge(string name) => Chart(
    [
        new ChartLine(name, [0, 1, 2], [16.400000000000002, 15, 12]) { EndCause = "voltage cut-off" },
        new ChartLine("150 Wh", [0, 1, 2.5], [16.4, 15.5, 13]) { Lower = [16, 15, 12.5], Upper = [16.5, 16, 13.5] },
    ]).ToFigure();

    private static LineChart Chart(IReadOnlyList<ChartLine> lines) => new()
    {
        Slug = "discharge",
        Title = "Battery voltage",
        X = new ChartAxis("time since start", "h"),
        Panels = [new ChartPanel(new ChartAxis("battery voltage", "V"),
            lines) { Limits = [new LimitLine("camera cut-off 12.0 V", 12)] }],
        Blocks = [new ChartBlock("scene 12", 0, 1), new ChartBlock("scene 14", 1, 2)],
    };

    private static HeatMapChart Map(double threshold) => new()
    {
        Slug = "map", Title = "Runtime", X = new ChartAxis("air temperature", "°C"), Y = new ChartAxis("load", "W"),
        Value = new ChartAxis("runtime", "h"),
        Columns = [-10, 20], Rows = [30, 40], Cells = [[2, 5], [double.NaN, 4]], BlankMeans = "the camera does not start",
        Threshold = new HeatMapThreshold("half a day", threshold),
    };
}

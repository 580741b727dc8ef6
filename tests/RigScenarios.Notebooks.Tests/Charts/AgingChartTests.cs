using System.Text.Json.Nodes;
using RigScenarios.Answers.Years;
using RigScenarios.Batteries;
using RigScenarios.Cells.Aging;
using RigScenarios.Charts;
using RigScenarios.Charts.Aging;
using RigScenarios.Charts.Style;
using RigScenarios.Notebooks.Tests.Domain;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of aging show the figures of the model and no others.</summary>
public sealed class AgingChartTests
{
    private static readonly Duration ThreeYears = Duration.FromDays(3 * 365.25);

    [Fact]
    public void A_cell_of_the_storage_map_is_what_the_model_says_there()
    {
        var map = Map(AgingGallery.OverStorage());
        var (columns, rows) = (Numbers(map["x"]!), Numbers(map["y"]!));
        foreach (var (celsius, charge) in new[] { (20.0, 100.0), (5, 40), (45, 80) })
        {
            var life = LifeInWords.Usual with
            {
                Place = StoragePlace.At(Temperature.FromDegreesCelsius(celsius)), Kept = Kept.At(Ratio.FromPercent(charge)),
            };
            var left = BatteryLife.After(AgingSets.Nmc, false, [life.Use(ThreeYears)]).Age.CapacityLeft.Percent;
            Assert.Equal(left, map["z"]![rows.IndexOf(charge)]![columns.IndexOf(celsius)]!.GetValue<double>(), 0.01);
        }
    }

    [Fact]
    public void Warmer_fuller_and_more_often_never_leave_more()
    {
        foreach (var figure in new[] { AgingGallery.OverStorage(), AgingGallery.OverUse() })
        {
            var z = Map(figure)["z"]!.AsArray().Select(row => Numbers(row!)).ToList();
            for (var row = 0; row < z.Count; row++)
            {
                for (var column = 1; column < z[row].Count; column++)
                    Assert.True(z[row][column] <= z[row][column - 1], $"{figure.Slug}, row {row}, column {column}");
            }
        }
    }

    [Fact]
    public void The_life_that_is_told_is_ringed_and_one_beyond_the_map_is_not()
    {
        Assert.Equal(2, Rings(AgingGallery.OverStorage()));
        Assert.Contains("as told, 20 °C and 100 %", AgingGallery.OverStorage().Caption, StringComparison.Ordinal);
        Assert.Equal(2, Rings(AgingGallery.OverUse()));
        var hot = LifeInWords.Usual with { Place = StoragePlace.At(Temperature.FromDegreesCelsius(60)) };
        Assert.Equal(0, Rings(FadeMap.OverStorage(hot, null, ThreeYears)));
    }

    [Fact]
    public void Ways_to_keep_are_those_of_the_years_and_the_way_of_now_stands_out()
    {
        var (figure, years) = (AgingGallery.Places(), AgingGallery.Years.Value);
        Assert.Equal(years.Storage.Select(YearsSentences.Way), figure.Data.Rows.Select(row => row[0]));
        Each.Of(years.Storage.Zip(figure.Data.Rows), way => Assert.Equal(way.First.Eighty is { } day
            ? (day.DayNumber - years.From.DayNumber) / 365.25 : 40, double.Parse(way.Second[1]), 0.01));
        var colours = FigureParts.Json(figure)["data"]![0]!["marker"]!["color"]!.AsArray()
            .Select(colour => colour!.GetValue<string>()).ToList();
        Assert.Equal(years.Storage.Select(way => way.IsAsNow), colours.Select(colour => colour == SeriesStyle.Number(1).Colour));
    }

    [Fact]
    public void The_years_ahead_are_drawn_as_they_were_run_and_each_band_holds_its_line()
    {
        var (figure, years) = (AgingGallery.Ahead(), AgingGallery.Years.Value);
        var lines = FigureParts.Lines(figure);
        Assert.Equal(["capacity", "resistance", "in the planned air", "at −10 °C"],
            lines.Select(line => line["name"]!.GetValue<string>()));
        Assert.Equal(years.Batteries[0].Ages.Select(at => at.Age.CapacityLeft.Percent), Numbers(lines[0]["y"]!), Near);
        Assert.Equal(years.Days.Select(row => row.Days.Runtime.Hours), Numbers(lines[2]["y"]!), Near);
        var edges = FigureParts.Json(figure)["data"]!.AsArray().Select(trace => trace!)
            .Where(trace => trace["line"]?["width"]?.GetValue<double>() == 1).ToList();
        Assert.Equal(8, edges.Count);
        for (var i = 0; i < lines.Count; i++)
        {
            var (low, middle, high) = (Numbers(edges[2 * i]["y"]!), Numbers(lines[i]["y"]!), Numbers(edges[2 * i + 1]["y"]!));
            Each.Of(Enumerable.Range(0, middle.Count), at => Assert.InRange(middle[at], low[at], high[at]));
        }

        Assert.Contains("wrap, ", FigureParts.Words(figure), StringComparison.Ordinal);
    }

    [Fact]
    public void Dates_within_the_years_are_marked_where_they_lie()
    {
        var years = AgingGallery.Years.Value;
        var shapes = FigureParts.Json(AgingGallery.Ahead())["layout"]!["shapes"]!.AsArray();
        var dates = new[] { years.Batteries[0].Eighty.Middle, years.LastDay.Middle }.OfType<DateOnly>()
            .Select(date => (date.DayNumber - years.From.DayNumber) / 365.25).Where(at => at is > 0 and <= 5).ToList();
        // In each of the three panels.
        Assert.Equal(dates.SelectMany(at => Enumerable.Repeat(at, 3)), shapes.Select(shape => shape!["x0"]!.GetValue<double>()),
            Near);
    }

    [Fact]
    public void Batteries_side_by_side_end_where_their_discharges_end()
    {
        var lines = FigureParts.Lines(AgingGallery.Batteries());
        Assert.Equal(3, lines.Count);
        var ends = lines.ConvertAll(line => Numbers(line["x"]!)[^1]);
        Assert.True(ends[0] > ends[1] && ends[1] > ends[2], string.Join(", ", ends));
        Assert.EndsWith($"What ends each: {EndCause.VoltageCutoff.InWords()}.", AgingGallery.Batteries().Caption,
            StringComparison.Ordinal);
        Assert.Contains("mine<br>", FigureParts.Words(AgingGallery.Batteries()), StringComparison.Ordinal);
        Assert.Equal(3, lines.Select(line => line["line"]!["dash"]!.GetValue<string>()).Distinct().Count());
    }

    [Fact]
    public void A_discharge_without_its_points_is_refused_with_the_way_out() => Assert.Contains("SeriesPoints",
        Assert.Throws<ArgumentException>(() => BatteriesSideBySide.Of([], "a", "a")).Message, StringComparison.Ordinal);

    private static bool Near(double one, double other) => Math.Abs(one - other) <= 1e-4 * Math.Max(1, Math.Abs(one));

    private static int Rings(Figure figure) => FigureParts.Json(figure)["data"]!.AsArray()
        .Count(trace => trace!["marker"]?["symbol"]?.GetValue<string>() == "circle-open");

    private static JsonNode Map(Figure figure) =>
        FigureParts.Json(figure)["data"]!.AsArray().Single(trace => trace!["type"]!.GetValue<string>() == "heatmap")!;

    private static List<double> Numbers(JsonNode values) => [.. values.AsArray().Select(value => value!.GetValue<double>())];
}

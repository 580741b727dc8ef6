using System.Text.Json.Nodes;
using RigScenarios.Batteries;
using RigScenarios.Cells.Aging;
using RigScenarios.Charts;
using RigScenarios.Charts.Aging;
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
    public void A_way_to_keep_is_a_bar_from_the_least_to_the_most_with_the_figure_beside_it()
    {
        var figure = AgingGallery.Places();
        Assert.Equal(["in the fridge, half full", "81", "96.1"], figure.Data.Rows[0]);
        Assert.Contains("94.6 % (81 to 96.1)", FigureParts.Words(figure), StringComparison.Ordinal);
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

    private static int Rings(Figure figure) => FigureParts.Json(figure)["data"]!.AsArray()
        .Count(trace => trace!["marker"]?["symbol"]?.GetValue<string>() == "circle-open");

    private static JsonNode Map(Figure figure) =>
        FigureParts.Json(figure)["data"]!.AsArray().Single(trace => trace!["type"]!.GetValue<string>() == "heatmap")!;

    private static List<double> Numbers(JsonNode values) => [.. values.AsArray().Select(value => value!.GetValue<double>())];
}

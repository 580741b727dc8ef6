using System.Text.Json.Nodes;
using RigScenarios.Charts;
using RigScenarios.Charts.Costs;
using RigScenarios.Charts.Search;
using RigScenarios.Costs;
using RigScenarios.Notebooks.Tests.Domain;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of money show the figures of the model and no others.</summary>
public sealed class CostChartTests
{
    [Fact]
    public void Both_lines_are_the_costs_day_by_day_and_the_shade_is_where_buying_costs_no_more()
    {
        var figure = CostGallery.InPlaces();
        var lines = FigureParts.Lines(figure);
        Assert.Equal(["buying", "renting"], lines.Select(line => line["name"]!.GetValue<string>()));
        Assert.Equal(Enumerable.Range(1, 20).Select(day => (double)day), Numbers(lines[0]["x"]!));
        // By hand: 100 to buy and 30 a day; 100 a day, 300 a week.
        Assert.Equal([130, 160, 190, 220, 250, 280, 310, 340], Numbers(lines[0]["y"]!).Take(8));
        Assert.Equal([100, 200, 300, 300, 300, 300, 300, 400], Numbers(lines[1]["y"]!).Take(8));
        Assert.Equal([(2.0, 7.0), (8, 20)], Shades(figure));
        Assert.Contains("Buying costs no more from 2 to 6, from 8 on shooting days a year.", figure.AlternativeText,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_days_that_are_planned_are_marked_and_within_the_chart()
    {
        var figure = CostGallery.Pays();
        Assert.Contains("planned: 40", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.True(Numbers(FigureParts.Lines(figure)[0]["x"]!)[^1] >= 50);
        var kit = CostGallery.Kit(CostGallery.Terms, new OwnedThing("lens", 100_000) { Resale = 0, Rent = new RentPrice(1) });
        Assert.Contains("Buying costs more than renting at every number of days.", CostOverDays.Of(kit, "EUR").Caption,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => CostOverDays.Of(kit, "EUR", 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CostOverDays.Of(kit, "EUR", 366));
        Assert.Throws<ArgumentException>(() => CostOverDays.Of(kit with { Together = null }, "EUR"));
    }

    [Fact]
    public void A_front_has_a_panel_for_each_wish_and_a_pick_looks_the_same_in_all()
    {
        var lines = FigureParts.Json(CostGallery.Front())["data"]!.AsArray().Select(trace => trace!)
            .Where(trace => trace["mode"]?.GetValue<string>() == "markers" && trace["x"]!.AsArray().Count > 0).ToList();
        // Three picks and the others, in both panels; rig 6 says nothing of what is left and is in the first alone.
        Assert.Equal(8, lines.Count);
        Assert.Equal([3, 2], lines.Where(line => line["name"]!.GetValue<string>().StartsWith("others", StringComparison.Ordinal))
            .Select(line => Numbers(line["x"]!).Count));
        Each.Of(lines.GroupBy(line => line["name"]!.GetValue<string>()), pair =>
        {
            Assert.Equal(2, pair.Count());
            Assert.Single(pair.Select(line => line["marker"]!.ToJsonString()).Distinct());
        });
        Assert.Equal(4, lines.Select(line => line["marker"]!["symbol"]!.GetValue<string>()).Distinct().Count());
        Assert.Contains("left after wrap not known", CostGallery.Front().AlternativeText, StringComparison.Ordinal);
        Assert.Contains("Of 1 of 6 a figure is not known", CostGallery.Front().Caption, StringComparison.Ordinal);
        Assert.Contains("there may be more", CostGallery.Undecided().Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_not_be_drawn_is_refused()
    {
        FrontPoint[] points = [new("rig", [1, double.NaN, double.NaN])];
        Assert.Throws<ArgumentException>(() => FrontChart.Of("front", "?", CostGallery.Axes, points));
        Assert.Throws<ArgumentException>(() => FrontChart.Of("front", "?", [CostGallery.Axes[0]], [new("rig", [1])]));
        Assert.Throws<ArgumentException>(() => FrontChart.Of("front", "?", CostGallery.Axes, [new("rig", [1, 2])]));
    }

    private static List<(double From, double To)> Shades(Figure figure) =>
        [.. FigureParts.Json(figure)["layout"]!["shapes"]!.AsArray().Where(shape => shape!["type"]!.GetValue<string>() == "rect")
            .Select(shape => (shape!["x0"]!.GetValue<double>(), shape["x1"]!.GetValue<double>())).Distinct()];

    private static List<double> Numbers(JsonNode array) => [.. array.AsArray().Select(value => value!.GetValue<double>())];
}

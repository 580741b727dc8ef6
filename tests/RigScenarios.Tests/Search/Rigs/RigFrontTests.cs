using System.Text.Json.Nodes;
using RigScenarios.Charts;
using RigScenarios.Charts.Search;
using RigScenarios.Scenarios;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Search.Rigs;

/// <summary>The picture of a front shows the figures of the search and no others.</summary>
public class RigFrontTests
{
    [Fact]
    public void Every_rig_stands_at_its_cost_and_at_what_it_gives()
    {
        var result = RigSearch.Find(SmallQuestion.Of("{light: {parts: [thrifty]}, flat: {parts: [small, large]}}",
            "musts: {lasts: {}}"), cancellation: TestContext.Current.CancellationToken);
        var marks = Marks(RigFront.Of(result)!);
        var panels = result.Question.Best.Wishes.Count(wish => wish != RigWish.LeastCost);
        Assert.Equal(5 * panels, marks.Count);
        Assert.Equal([1180.0, 1220, 1240, 1350, 1370], marks.Take(5).Select(mark => mark.X));
        Assert.Equal(["rig 1: 1,180 EUR", "rig 2: 1,220 EUR", "rig 3: 1,240 EUR", "rig 4: 1,350 EUR", "rig 5: 1,370 EUR"],
            marks.Take(5).Select(mark => mark.Name));
        var day = result.Question.Best.Wishes.Where(wish => wish != RigWish.LeastCost).ToList().IndexOf(RigWish.LongestDay);
        Each.Of(result.Picks.Zip(marks.Skip(5 * day)), pair =>
            Assert.Equal(pair.First.Figures.Reserve!.Value.Hours, pair.Second.Y, 2), atLeast: 5);
        Assert.Contains("rig 1: 1,180 EUR", RigFront.Of(result)!.AlternativeText, StringComparison.Ordinal);
    }

    private static List<(string Name, double X, double Y)> Marks(Figure figure) =>
        [.. JsonNode.Parse(figure.Specification)!["data"]!.AsArray().Select(trace => trace!)
            .Where(trace => trace["mode"]?.GetValue<string>() == "markers" && trace["x"]!.AsArray().Count == 1)
            .Select(trace => (trace["name"]!.GetValue<string>(), trace["x"]![0]!.GetValue<double>(),
                trace["y"]![0]!.GetValue<double>()))];
}

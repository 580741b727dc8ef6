using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Charts.Balance;
using RigScenarios.Files;
using RigScenarios.Notebooks.Tests.Domain;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>The picture of tipping shows the figures that the answer's limit has.</summary>
public sealed class TippingWindChartTests
{
    private static readonly string Hall = Path.Combine(DemoData.Root, "data/scenarios/market-hall.yaml");

    [Fact]
    public void The_line_ends_where_it_tips_without_wind_and_the_point_is_the_file_s_own()
    {
        var balance = Of(("wind", "6 m/s"), ("slope", "2 °"), ("wanted-lean", "10 °"));
        var figure = TippingWindChart.Of(balance)!;
        var traces = JsonNode.Parse(figure.Specification)!["data"]!.AsArray().Select(trace => trace!).ToList();

        var curve = Numbers(Trace(traces, "tips, head tilted"));
        Assert.Equal(0, curve[^1].Y, 1e-6);
        Assert.Equal(balance.Stand!.TipAngle.Degrees, curve[^1].X, 1e-3);
        Each.Of(curve.SkipLast(1), point => Assert.Equal(
            balance.TippingMean(balance.Stand!, Angle.FromDegrees(point.X))!.Value.MetersPerSecond, point.Y, 0.05));
        Assert.Equal((2.0, 6.0), Assert.Single(Numbers(Trace(traces, "as it is"))));
        Each.Of(Numbers(Trace(traces, "wanted lean")), point => Assert.Equal(10, point.X));
        Assert.Contains("As it is: a slope of 2° and a mean wind of 6 m/s", figure.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void No_line_rests_on_colour_alone()
    {
        var figure = TippingWindChart.Of(Of(("wind", "6 m/s"), ("wanted-lean", "10 °")))!;
        // The thin edges of a band look as their line does.
        var lines = JsonNode.Parse(figure.Specification)!["data"]!.AsArray()
            .Where(trace => trace!["mode"]?.GetValue<string>() == "lines" && trace["line"]?["dash"] is not null
                && trace["line"]!["width"]!.GetValue<double>() > 1).ToList();

        Assert.True(lines.Count >= 3, $"{lines.Count} lines");
        Assert.Equal(lines.Count, lines.Select(line => line!["line"]!["dash"]!.GetValue<string>()).Distinct().Count());
    }

    [Fact]
    public void Without_a_tripod_there_is_none() => Assert.Null(TippingWindChart.Of(
        ScenarioBalance.Of(ScenarioFile.Read(Hall), "shoulder")));

    private static BuildBalance Of(params (string Field, string Text)[] settings) => ScenarioBalance.Of(ScenarioPath.SetAll(
        ScenarioFile.Read(Hall),
        settings.Select(setting => ($"builds.tripod.on-legs.{setting.Field}", setting.Text))), "tripod");

    private static JsonNode Trace(IEnumerable<JsonNode> traces, string name) =>
        traces.First(trace => trace["name"]?.GetValue<string>().StartsWith(name, StringComparison.Ordinal) == true);

    private static List<(double X, double Y)> Numbers(JsonNode trace) =>
        [.. trace["x"]!.AsArray().Zip(trace["y"]!.AsArray(), (x, y) => (x!.GetValue<double>(), y!.GetValue<double>()))];
}

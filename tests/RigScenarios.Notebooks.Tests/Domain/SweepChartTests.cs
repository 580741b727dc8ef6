using RigScenarios.Charts.Days;
using RigScenarios.Charts.Sweeps;
using RigScenarios.Sweeps;

namespace RigScenarios.Notebooks.Tests.Domain;

public sealed class SweepChartTests
{
    private const string Ambient = "days.day-one.ambient";
    private const string Energy = "parts.brick-190wh.battery.energy";

    private static SweepTable Harbour(params SweepAxis[] axes) =>
        GridSweep.Run(DemoData.Harbour, "tripod", "day-one", axes, cancellation: TestContext.Current.CancellationToken);

    [Fact]
    public void Each_load_mix_is_a_curve_named_at_its_end()
    {
        var axis = new SweepAxis("parts.brick-98wh.battery.energy", ["50 Wh", "98 Wh", "0.15 kWh", "290 Wh"]);
        var mixes = DemoData.TeachingKit.Builds.Keys
            .Select(build => new LoadMixSweep(build,
                GridSweep.Run(DemoData.TeachingKit, build, "workshop", [axis],
                cancellation: TestContext.Current.CancellationToken))).ToList();
        var figure = RuntimeOverCapacity.Of(mixes, "Sizes");
        var lines = FigureParts.Lines(figure);
        Assert.Equal(3, lines.Count);
        Each.Of(lines, line => Assert.Equal([50, 98, 150, 290], line["x"]!.AsArray().Select(x => x!.GetValue<double>())));
        // More on the rig, less runtime, at every size.
        Assert.True(lines[0]["y"]![1]!.GetValue<double>() > lines[1]["y"]![1]!.GetValue<double>());
        Assert.True(lines[1]["y"]![1]!.GetValue<double>() > lines[2]["y"]![1]!.GetValue<double>());
        var words = FigureParts.Words(figure);
        Each.Of(["battery energy (Wh)", "runtime (h)", "planned day: 8 h 35 min", "camera-only", "full-rig"],
            word => Assert.Contains(word, words, StringComparison.Ordinal));
        Assert.Contains("mass and size stay", figure.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cold_shows_runtime_with_its_band_and_energy()
    {
        var figure = OverAmbient.Of(Harbour(new SweepAxis(Ambient, ["-20 °C", "-8 °C", "20 °C"])), "Cold");
        var words = FigureParts.Words(figure);
        Each.Of(["air temperature (°C)", "runtime (h)", "energy delivered (Wh)", "planned day: 10 h 30 min"],
            word => Assert.Contains(word, words, StringComparison.Ordinal));
        Assert.Equal(2, FigureParts.Lines(figure).Count);
        var edges = FigureParts.Json(figure)["data"]!.AsArray()
            .Where(trace => trace!["line"]?["dash"]?.GetValue<string>() == "2px,2px").ToList();
        Assert.Equal(2, edges.Count);
        Each.Of(new[] { 0, 1, 2 }, i =>
        {
            var ends = edges.Select(edge => edge!["y"]![i]!.GetValue<double>()).Order().ToList();
            // 5 % either way is claimed from -20 to 40 °C for such a load.
            Assert.Equal(0.05, (ends[1] - ends[0]) / (ends[1] + ends[0]), 1e-3);
        });
        Assert.Contains(DayCautions.MakersTemperatures, figure.Cautions);
    }

    [Fact]
    public void The_makers_temperatures_are_named_over_warm_air_too() =>
        Assert.Contains(DayCautions.MakersTemperatures,
            OverAmbient.Of(Harbour(new SweepAxis(Ambient, ["20 °C", "40 °C"])), "Heat").Cautions);

    [Fact]
    public void The_map_has_the_value_of_each_combination_in_its_cell()
    {
        // The first axis falls and the second rises: the map is ordered by itself.
        var table = Harbour(new SweepAxis(Ambient, ["20 °C", "-8 °C"]), new SweepAxis(Energy, ["98 Wh", "190 Wh", "290 Wh"]));
        var figure = SweepHeatMap.Of(table, "Map", ("-8 °C", "190 Wh"));
        var map = FigureParts.Json(figure)["data"]!.AsArray().Single(trace => trace!["type"]!.GetValue<string>() == "heatmap")!;
        Assert.Equal([-8, 20], map["x"]!.AsArray().Select(x => x!.GetValue<double>()));
        foreach (var row in table.Rows)
        {
            var column = row.Values[0] == "-8 °C" ? 0 : 1;
            var line = row.Values[1] switch { "98 Wh" => 0, "190 Wh" => 1, _ => 2 };
            Assert.Equal(row.Result.Runtime.Hours, map["z"]![line]![column]!.GetValue<double>(), tolerance: 1e-3);
        }

        Assert.Contains("lasts the day: 10 h 30 min", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("air temperature (°C)", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("battery energy (Wh)", FigureParts.Words(figure), StringComparison.Ordinal);
    }

    [Fact]
    public void The_present_value_is_ringed_and_told()
    {
        var table = Harbour(new SweepAxis(Ambient, ["-8 °C", "20 °C"]), new SweepAxis(Energy, ["98 Wh", "190 Wh"]));
        var figure = SweepHeatMap.Of(table, "Map", ("-8 °C", "0.19 kWh"));
        var rings = FigureParts.Json(figure)["data"]!.AsArray()
            .Where(trace => trace!["marker"]?["symbol"]?.GetValue<string>() == "circle-open").ToList();
        Assert.Equal(2, rings.Count);
        Each.Of(rings,
            ring => Assert.Equal((-8, 190), (ring!["x"]![0]!.GetValue<double>(), ring["y"]![0]!.GetValue<double>())));
        Assert.Contains("−8 °C and 0.19 kWh", figure.Caption, StringComparison.Ordinal);
        Assert.DoesNotContain("<", figure.Specification, StringComparison.Ordinal);
    }

    [Fact]
    public void Plain_numbers_make_an_axis_without_unit()
    {
        var axis = SweepChartAxis.Of(new SweepAxis("builds.tripod.battery.resistance-growth", ["1", "1.5"]));
        Assert.Equal("resistance against a new battery", axis.Axis.Label);
        Assert.Equal([1, 1.5], axis.Values);
    }

    [Fact]
    public void Values_of_two_kinds_are_refused() =>
        Assert.Contains("98 Wh",
            Assert.Throws<ArgumentException>(() => SweepChartAxis.Of(new SweepAxis("a.b", ["1 V", "2 A"]))).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_sweep_with_the_wrong_number_of_axes_is_refused()
    {
        var one = Harbour(new SweepAxis(Ambient, ["-8 °C", "20 °C"]));
        Assert.Throws<ArgumentException>(() => SweepHeatMap.Of(one, "Map"));
        var energy = Harbour(new SweepAxis(Energy, ["98 Wh", "190 Wh"]));
        Assert.Throws<ArgumentException>(() => OverAmbient.Of(energy, "Cold"));
    }
}

using System.Text.Json.Nodes;
using RigScenarios.Charts;
using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Sweeps;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Sensitivity;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Domain;

/// <summary>Pictures of many scenarios show what the records say and nothing else.</summary>
public sealed class SweepFigureTests
{
    private const string Ambient = "days.day-one.ambient";
    private const string Energy = "parts.brick-190wh.battery.energy";
    private const string Brick = "builds.tripod.battery.item";

    private static SweepQuestion Question(SweepPlan plan) => new(DemoData.Harbour, "tripod", ["day-one"], plan,
        SweepColumns.Choose(DemoData.Harbour, ["lasts", "ends_at_h", "stopped_by"]));

    private static SweepRecord Record(long number, bool? lasts, double? ends, params string[] values) =>
        new(number, values, [SweepCell.Of(lasts), SweepCell.Of(ends), SweepCell.Of("")]);

    [Fact]
    public void Every_scenario_is_a_line_in_the_group_that_its_record_names()
    {
        var question = Question(new SweepPlan
        {
            Axes = [new(Ambient, ["-8 °C", "265 K"]), new(Brick, ["brick", "spare", "block"])],
        });
        List<SweepRecord> records =
        [
            Record(0, true, 18.5, "-8 °C", "brick"), Record(1, false, 16, "-8 °C", "spare"),
            Record(2, true, 19, "-8 °C", "block"),
            Record(3, true, 18, "265 K", "brick"), Record(4, null, null, "265 K", "spare"),
            Record(5, false, 15, "265 K", "block"),
        ];
        var figure = SweepLines.Of(question, records, "ends_at_h", "lasts",
            new SweepLinesOptions { ResultAxis = ChartAxis.ClockTime("runs until") });
        var words = FigureParts.Words(figure);
        Each.Of(["lasts: yes: 3", "lasts: no: 2", "brick", "spare", "block", "15:00", "19:00"],
            word => Assert.Contains(word, words, StringComparison.Ordinal));
        Assert.Contains("over air temperature (°C), item, runs until", figure.AlternativeText, StringComparison.Ordinal);
        Assert.Contains("In 1 scenarios nobody can say", figure.Caption, StringComparison.Ordinal);
        // 265 K are -8.15 °C: 96 steps from there to -8 °C, of which nothing is known in one scenario.
        var rows = Rows(figure);
        Assert.Equal(-8.15 + 0.15 / 192, rows[0][0]!.GetValue<double>(), 4);
        Assert.Equal((2, 1), (rows[^1][1]!.GetValue<int>(), rows[^1][2]!.GetValue<int>()));
        Assert.Equal((1, 1), (rows[0][1]!.GetValue<int>(), rows[0][2]!.GetValue<int>()));
        Assert.Equal(["brick", "spare", "block", null], rows.Take(4).Select(row => row[3]?.GetValue<string>()));
    }

    [Fact]
    public void Only_the_fields_that_are_asked_for_are_drawn_in_their_order_and_words()
    {
        const string Cooling = "parts.brick-190wh.battery.heat-conductance";
        var question = Question(new SweepPlan { Axes = [new(Ambient, ["-8 °C", "0 °C"]), new(Cooling, ["0.4 W/K", "0.5 W/K"])] });
        List<SweepRecord> records = [Record(0, true, 18, "-8 °C", "0.4 W/K"), Record(1, false, 16, "0 °C", "0.5 W/K")];
        var options = new SweepLinesOptions
        {
            Fields = [new(Cooling, "how fast it cools"), new(Ambient, "")], GroupNames = ("they last", "they end before"),
        };
        var figure = SweepLines.Of(question, records, "ends_at_h", "lasts", options);
        Assert.Contains("over how fast it cools (W/K), air temperature (°C), ends at (h).", figure.AlternativeText,
            StringComparison.Ordinal);
        Assert.Contains("they last: 1; they end before: 1.", figure.AlternativeText, StringComparison.Ordinal);
        Assert.Contains(Cooling, Assert.Throws<ArgumentException>(() => SweepLines.Of(question, records, "ends_at_h", null,
            options with { Fields = [new("days.night.ambient", "")] })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_that_is_not_there_is_refused_with_those_that_are()
    {
        var question = Question(new SweepPlan { Axes = [new(Ambient, ["-8 °C", "0 °C"])] });
        List<SweepRecord> records = [Record(0, true, 18, "-8 °C"), Record(1, true, 19, "0 °C")];
        Assert.Contains("ends_at_h", Assert.Throws<ArgumentException>(() =>
            SweepLines.Of(question, records, "runtime_h", null)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => SweepLines.Of(question, records, "lasts", null));
        Assert.Throws<ArgumentException>(() => SweepLines.Of(question, [], "ends_at_h", null));
    }

    [Fact]
    public void Chances_over_two_fields_are_counted_place_by_place()
    {
        // The first axis falls: the map is ordered by itself. Four samples each, of which one of the first place is not known.
        var plan = new SweepPlan
        {
            Axes = [new(Ambient, ["0 °C", "-8 °C"]), new(Energy, ["98 Wh", "190 Wh", "290 Wh"])],
            Uncertain = [new("builds.tripod.battery.capacity-left",
                Spread.Uniform(Ratio.FromPercent(80), Ratio.FromPercent(90)))],
            Samples = 4,
        };
        int[] lasting = [1, 3, 4, 0, 2, 4];
        var records = Enumerable.Range(0, 24).Select(i => Record(i, i == 3 ? null : i % 4 < lasting[i / 4], 1)).ToList();
        var figure = ChanceContours.Of(Question(plan), records, "lasts", "?");
        var map = FigureParts.Json(figure)["data"]![0]!;
        Assert.Equal([-8, 0], Numbers(map["x"]!));
        Assert.Equal([98, 190, 290], Numbers(map["y"]!));
        Assert.Equal([0, 10 / 3.0], Numbers(map["z"]![0]!), (one, other) => Math.Abs(one - other) < 1e-4);
        Assert.Equal([5, 7.5], Numbers(map["z"]![1]!));
        Assert.Equal([10, 10], Numbers(map["z"]![2]!));
        Assert.Contains("Of 1 nobody can say", figure.Caption, StringComparison.Ordinal);
        Assert.Contains("9 of 10 days", FigureParts.Words(figure), StringComparison.Ordinal);
        var energy = new SweepChartAxis(new ChartAxis("energy", "kWh"), [0.098, 0.19, 0.29]);
        Assert.Equal([0.098, 0.19, 0.29], Numbers(FigureParts.Json(ChanceContours.Of(Question(plan), records, "lasts", "?",
            upwards: energy))["data"]![0]!["y"]!));
        Assert.Throws<ArgumentException>(() => ChanceContours.Of(Question(plan), records, "lasts", "?",
            upwards: energy with { Values = [1, 2] }));
        Assert.Throws<ArgumentException>(() => ChanceContours.Of(Question(plan), records[..23], "lasts", "?"));
        Assert.Throws<ArgumentException>(() =>
            ChanceContours.Of(Question(new SweepPlan { Axes = [plan.Axes[0]] }), records[..2], "lasts", "?"));
    }

    [Fact]
    public void Bands_are_the_quantiles_in_the_order_of_their_axis()
    {
        var bands = new QuantileBands("runs until", "h", Ambient, [0.1, 0.25, 0.5, 0.75, 0.9],
            [new("0 °C", [16, 17, 18, 19, 20], 100, 0), new("-8 °C", [14, 15, 16, 17, 18], 97, 3), new("4 °C", [], 0, 100)]);
        var figure = MattersFigures.Of(bands, limits: [new LimitLine("planned until 18:00", 18)]);
        var middle = FigureParts.Lines(figure).Single(line => line["name"]?.GetValue<string>() == "middle");
        Assert.Equal("[-8,0,4]", middle["x"]!.ToJsonString());
        Assert.Equal("[16,18,null]", middle["y"]!.ToJsonString());
        Each.Of(["8 of 10 days", "5 of 10 days", "planned until 18:00"],
            word => Assert.Contains(word, FigureParts.Words(figure), StringComparison.Ordinal));
        Assert.Contains("Of 103 nobody can say", figure.Caption, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => MattersFigures.Of(bands with { Shares = [0.1, 0.2, 0.5, 0.75, 0.9] }));
        Assert.Throws<ArgumentException>(() => MattersFigures.Of(bands with { Path = "" }));
    }

    [Fact]
    public void One_at_a_time_says_between_which_values_each_goes()
    {
        var tornado = new Tornado("runs until", "h", 17, 0.1, 0.9,
            [new("air", Ambient, "-10 °C", "-6 °C", 16.5, 17.4), new("label", Energy, "180.00004 Wh", "200 Wh", 16, double.NaN)]);
        var figure = MattersFigures.Of(tornado, ChartAxis.ClockTime("runs until"));
        Assert.Contains("label, 180 Wh to 200 Wh: 16:00 at its low value, – at its high value", figure.AlternativeText,
            StringComparison.Ordinal);
        Assert.Contains("all in the middle", FigureParts.Words(figure), StringComparison.Ordinal);
        Assert.Contains("below which 10 of 100 lie, to a high one, above which 10 of 100 lie", figure.Caption,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => MattersFigures.Of(tornado with { Middle = double.NaN }));
    }

    [Fact]
    public void Shares_are_in_per_cent_and_nothing_is_drawn_where_nothing_varies()
    {
        var indices = new SobolIndices
        {
            Things = [new("air", [Ambient], new(0.6, 0.55, 0.65), new(0.7, 0.66, 0.74))], Mean = 17, Variance = 0.3,
            Level = Ratio.FromPercent(95), Rows = 1000, RowsUnknown = 2, Runs = 3000,
        };
        var figure = MattersFigures.Of(indices, "the end");
        Assert.Contains("air: alone 60 % (55 to 65), together with the others 70 % (66 to 74)", figure!.AlternativeText,
            StringComparison.Ordinal);
        Assert.Contains("2 of 1000 rows are left out", figure.Caption, StringComparison.Ordinal);
        Assert.Null(MattersFigures.Of(indices with { Variance = 0 }, "the end"));
    }

    [Fact]
    public void Days_of_which_nobody_can_say_are_told_and_not_drawn()
    {
        var axis = ChartAxis.ClockTime("runs until");
        var figure = MattersFigures.Of([17, double.NaN, 18, 19], axis, "?", [new ChartMark("wrap 18:30", 18.5)]);
        Assert.Contains("Of 1 more nobody can say. Of 3 days.", figure!.Caption, StringComparison.Ordinal);
        Assert.Contains("Mark at 18:30: wrap 18:30.", figure.AlternativeText, StringComparison.Ordinal);
        Assert.Null(MattersFigures.Of([17, double.NaN], axis, "?"));
    }

    [Fact]
    public void A_sweep_that_was_run_is_drawn_from_end_to_end()
    {
        var question = Question(new SweepPlan
        {
            Uncertain =
            [
                new(Ambient, Spread.Normal(Temperature.FromDegreesCelsius(-8), TemperatureDelta.FromDegreesCelsius(2))),
                new(Energy, Spread.Normal(UnitsNet.Energy.FromWattHours(190), UnitsNet.Energy.FromWattHours(6))),
            ],
            Samples = 64,
        });
        var records = SweepRun.Records(question, cancellation: TestContext.Current.CancellationToken).ToList();
        var figure = SweepLines.Of(question, records, "ends_at_h", "lasts");
        var rows = Rows(figure);
        // Air and energy have three columns each before those of the end.
        Assert.Equal(64, rows.Sum(row => row[7]!.GetValue<int>() + row[8]!.GetValue<int>()));
        var ends = records.ConvertAll(record => record.Cells[1].Number!.Value);
        var (low, high) = (ends.Min(), ends.Max());
        Assert.Equal(low + (high - low) / 192, rows[0][6]!.GetValue<double>(), 1e-3);
        Assert.Equal(high - (high - low) / 192, rows[^1][6]!.GetValue<double>(), 1e-3);
    }

    private static List<JsonArray> Rows(Figure figure) =>
        [.. FigureParts.Json(figure)["points"]!["rows"]!.AsArray().Skip(1).Select(row => row!.AsArray())];

    private static List<double> Numbers(JsonNode array) => [.. array.AsArray().Select(value => value!.GetValue<double>())];
}

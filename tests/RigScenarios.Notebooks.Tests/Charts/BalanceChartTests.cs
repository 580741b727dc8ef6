using System.Text.Json.Nodes;
using RigScenarios.Balance;
using RigScenarios.Charts.Balance;
using UnitsNet;
using Figure = RigScenarios.Charts.Figure;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>The pictures of balance show the figures of the library, each edge under the name of its limit.</summary>
public sealed class BalanceChartTests
{
    [Fact]
    public void The_classic_envelope_has_upright_travel_ends_where_the_plate_ends()
    {
        var figure = EnvelopeChart.Of(BalanceEnvelope.OfCentreAndMass(
            BalanceGallery.Head, Length.FromMillimeters(50), BalanceGallery.Millimetres(-80, 110), Mass.FromKilograms(2),
            Mass.FromKilograms(9)));
        Each.Of(Numbers(Trace(figure, "travel front end"), "x"), x => Assert.Equal(70, x, 1e-3));
        Each.Of(Numbers(Trace(figure, "travel rear end"), "x"), x => Assert.Equal(-40, x, 1e-3));
        Each.Of(Numbers(Trace(figure, "rated load"), "y"), y => Assert.Equal(8, y, 1e-3));
        Assert.Equal(["centre of gravity ahead of the tripod socket (mm)", "mass of the whole rig (kg)"],
            figure.Data.Columns.Skip(1).Take(2).Select(column => column.Title));
    }

    [Fact]
    public void On_a_drawn_edge_its_margin_is_gone()
    {
        var envelope = BalanceGallery.PlateAndLens;
        var figure = EnvelopeChart.Of(envelope);
        foreach (var (name, margin) in new (string, Func<EnvelopeMargins, double>)[]
        {
            ("travel front end", margins => margins.TravelFront.Millimeters),
            ("travel rear end", margins => margins.TravelRear.Millimeters),
            ("creeps beyond this", margins => margins.Tilt.NewtonMeters),
        })
        {
            var trace = Trace(figure, name);
            var points = Numbers(trace, "x").Zip(Numbers(trace, "y")).ToList();
            Assert.True(points.Count > 1);
            // Five digits are drawn.
            Each.Of(points, point => Assert.Equal(0,
                margin(envelope.At(Length.FromMillimeters(point.First), Mass.FromKilograms(point.Second))), 0.02));
        }
    }

    [Fact]
    public void Limits_differ_without_colour_and_marks_say_whether_they_are_inside()
    {
        var figure = EnvelopeChart.Of(BalanceGallery.PlateAndLens, new()
        {
            Present = (Length.FromMillimeters(-160), Mass.FromGrams(1465)),
            Alternatives = [new("heavy lens", Length.FromMillimeters(-160), Mass.FromGrams(3300))],
        });
        var lines = Traces(figure).Where(trace => trace["mode"]!.GetValue<string>() == "lines").ToList();
        Assert.True(lines.Count >= 4, $"{lines.Count} lines");
        Assert.Equal(lines.Count, lines.Select(line => line["line"]!["dash"]!.GetValue<string>()).Distinct().Count());
        Assert.Contains("The rig as it is lies ", figure.Caption, StringComparison.Ordinal);
        Assert.Contains("\"heavy lens\" lies outside: tilt and load.", figure.Caption, StringComparison.Ordinal);
        Assert.Equal("evenodd", JsonNode.Parse(figure.Specification)!["layout"]!["shapes"]![0]!["fillrule"]!.GetValue<string>());
        Assert.NotEmpty(figure.Cautions);
    }

    [Fact]
    public void An_envelope_without_a_region_says_so()
    {
        var figure = EnvelopeChart.Of(BalanceEnvelope.OfCentreAndMass(BalanceGallery.Head, Length.FromMillimeters(50),
            BalanceGallery.Millimetres(80, 110), Mass.FromKilograms(2), Mass.FromKilograms(9)));
        Assert.StartsWith("Nowhere", figure.Caption, StringComparison.Ordinal);
        Assert.Empty(JsonNode.Parse(figure.Specification)!["layout"]!["shapes"]!.AsArray());
    }

    [Fact]
    public void The_moment_over_tilt_is_that_of_the_head()
    {
        var off = PartOff.Of(BalanceGallery.Build, BalanceGallery.OnHead, "battery").AsItWas;
        var figure = TiltResidualChart.Of(BalanceGallery.OnHead, new([new("battery off", off)]));
        foreach (var (name, balance) in new[] { ("as it is", BalanceGallery.OnHead), ("battery off", off) })
        {
            var trace = Trace(figure, name);
            var points = Numbers(trace, "x").Zip(Numbers(trace, "y")).ToList();
            Assert.Equal((-60, 75), (points[0].First, points[^1].First));
            Each.Of(points, point => Assert.Equal(balance.Residual(Angle.FromDegrees(point.First)).NewtonMeters,
                point.Second, 1e-3));
        }
        var worst = Trace(figure, "worst, as it is");
        Assert.Equal(BalanceGallery.OnHead.WorstResidual.NewtonMeters, Math.Abs(Numbers(worst, "y")[0]), 1e-4);
        Assert.Contains("more than friction at rest holds: let go there, it ", figure.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void The_tip_angle_goes_once_round_and_is_least_at_the_worst_pan()
    {
        var stability = StandStability.WorstTilt(BalanceGallery.Stand, BalanceGallery.OnHead);
        var figure = TipOverChart.Of(stability);
        var tips = Numbers(Trace(figure, "tip angle"), "y");
        Assert.Equal(stability.TipAngle.Degrees, tips.Min(), 0.01);
        Assert.Equal(tips[0], tips[^1], 1e-3);
        Each.Of(TiltYardstick.All, yardstick =>
            Assert.Contains($"{yardstick.Tilt.Degrees:0.#}° {yardstick.What}", figure.Caption, StringComparison.Ordinal));
        Assert.Equal(BalanceCautions.TipOver, figure.Cautions[0]);
    }

    [Fact]
    public void Shares_of_the_moment_add_up_and_the_largest_comes_first()
    {
        var figure = MomentShareChart.Of(BalanceGallery.Build.MassProperties, Length.Zero, BalanceGallery.Names);
        Assert.Equal(BalanceGallery.Build.Parts.Count, figure.Data.Rows.Count);
        var values = figure.Data.Rows.Select(row => double.Parse(row[1].Replace("−", "-", StringComparison.Ordinal),
            System.Globalization.CultureInfo.InvariantCulture)).ToList();
        var rig = BalanceGallery.Build.MassProperties;
        Assert.Equal(rig.Mass.Kilograms * rig.Centre.X.Meters * 9.80665, values.Sum(), 0.01);
        Assert.Equal(values.Max(Math.Abs), Math.Abs(values[0]));
    }

    [Fact]
    public void A_change_of_stance_is_told_step_by_step()
    {
        var table = StanceTable.Of(StanceChange.Between(BalanceGallery.Build, BalanceGallery.Shoulder),
            new(Duration.FromSeconds(20), Duration.FromSeconds(30), Duration.FromSeconds(15)), BalanceGallery.Head,
            BalanceGallery.Names);
        Assert.Equal(["comes off", "Lens support, long", ""], table.Rows[0]);
        Assert.Equal(["goes on", "pad", ""], table.Rows[1]);
        Assert.Equal(["moves", "Plate with guard", "50 mm forward"], table.Rows[2]);
        Assert.Equal(["in all", "3 steps by hand", "1 min 05 s with your own times for a step"], table.Rows[^1]);
    }

    private static List<JsonNode> Traces(Figure figure) =>
        [.. JsonNode.Parse(figure.Specification)!["data"]!.AsArray().Select(trace => trace!)];

    private static JsonNode Trace(Figure figure, string name) =>
        Traces(figure).Single(trace => trace["name"]?.GetValue<string>() == name);

    private static List<double> Numbers(JsonNode trace, string axis) =>
        [.. trace[axis]!.AsArray().Where(value => value is not null).Select(value => value!.GetValue<double>())];
}

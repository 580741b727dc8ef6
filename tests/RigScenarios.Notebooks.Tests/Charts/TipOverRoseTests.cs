using System.Globalization;
using System.Xml.Linq;
using RigScenarios.Balance;
using RigScenarios.Charts.Balance;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Charts;

public class TipOverRoseTests
{
    [Fact]
    public void The_line_is_as_far_out_as_the_lean_at_which_it_tips()
    {
        var stability = Stability(80);
        var svg = XElement.Parse(TipOverRose.Of(stability).Svg);
        var points = Points(svg);
        var rings = svg.Elements().Where(element => element.Name.LocalName == "circle"
            && element.Attribute("class")!.Value.StartsWith("rs-line", StringComparison.Ordinal)).ToList();
        var (x, y) = (Value(rings[0], "cx"), Value(rings[0], "cy"));
        // The first ring is 5 degrees.
        var perDegree = Value(rings[0], "r") / 5;
        for (var i = 0; i < points.Count; i++)
        {
            var tip = stability.AtPan(Angle.FromDegrees(i * 360.0 / points.Count)).TipAngle.Degrees;
            Assert.Equal(tip, Math.Sqrt(Math.Pow(points[i].X - x, 2) + Math.Pow(points[i].Y - y, 2)) / perDegree, 0.01);
        }
    }

    [Fact]
    public void A_stand_that_tips_by_itself_is_told_in_words() =>
        Assert.Contains("tips over by itself", TipOverRose.Of(Stability(1200)).Caption, StringComparison.Ordinal);

    private static StandStability Stability(double ahead) => StandStability.Of(
        new Stand { FootRadius = Length.FromMeters(0.6), Mass = Mass.FromKilograms(6), CentreHeight = Length.FromMeters(0.8),
            CameraPlateHeight = Length.FromMeters(1.5) },
        new PlacedBuild(
            new([new("rig", new PlacedPart { Mass = Mass.FromKilograms(6),
            Placement = Placement.At(RigPoint.FromMillimetres(ahead, 10, 60)) })])).MassProperties, Length.Zero);

    private static List<(double X, double Y)> Points(XElement svg) =>
        [.. svg.Elements().Single(element => element.Name.LocalName == "polygon").Attribute("points")!.Value.Split(' ')
            .Select(point => point.Split(',').Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray())
            .Select(pair => (pair[0], pair[1]))];

    private static double Value(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}

using System.Globalization;
using System.Xml.Linq;
using RigScenarios.Balance;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;
using RigScenarios.Parts;
using Snapshooter.Xunit3;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>What a ruler laid on the drawing would find; read back from the SVG and not from what made it.</summary>
public sealed class RigDrawingTests
{
    private const double Pixel = 0.02;

    [Fact]
    public void A_box_is_as_long_as_the_scale_bar_says()
    {
        var sheet = Sheet(Two());
        var scale = Scale(sheet);
        foreach (var (view, height) in new[] { ("side", 60.0), ("above", 100.0) })
        {
            var box = Outline(sheet, view, "body");
            Assert.Equal(200 * scale, box.Right - box.Left, Pixel);
            Assert.Equal(height * scale, box.Bottom - box.Top, Pixel);
        }
    }

    [Fact]
    public void Up_is_up_left_is_up_and_the_lens_points_right()
    {
        var sheet = Sheet(Two());
        Assert.True(Outline(sheet, "side", "weight").Bottom < Outline(sheet, "side", "body").Top);
        Assert.True(Outline(sheet, "above", "weight").Bottom < Outline(sheet, "above", "body").Top);
        Assert.True(Outline(sheet, "side", "weight").Left > Outline(sheet, "side", "body").Left + 1);
    }

    [Fact]
    public void Both_views_stand_in_line()
    {
        var sheet = Sheet(BalanceGallery.Build);
        foreach (var name in BalanceGallery.Build.Parts.Keys)
        {
            var (side, above) = (Outline(sheet, "side", name), Outline(sheet, "above", name));
            Assert.Equal((side.Left, side.Right), (above.Left, above.Right));
        }
        Assert.Equal(Centre(sheet, "side").X, Centre(sheet, "above").X);
    }

    [Fact]
    public void The_mark_stands_at_the_centre_of_gravity()
    {
        // 2 kg at (0, 0, 30) and 1 kg at (60, 90, 120) mm: by hand (20, 30, 60).
        var sheet = Sheet(Two());
        var scale = Scale(sheet);
        var (side, above) = (Outline(sheet, "side", "body"), Outline(sheet, "above", "body"));
        var (sideMark, aboveMark) = (Centre(sheet, "side"), Centre(sheet, "above"));
        Assert.Equal(120 * scale, sideMark.X - side.Left, Pixel);
        Assert.Equal(60 * scale, side.Bottom - sideMark.Y, Pixel);
        Assert.Equal(80 * scale, above.Bottom - aboveMark.Y, Pixel);
        Assert.Contains("20 mm ahead of the tripod socket, 30 mm to the camera's left, 60 mm above the base plane",
            RigDrawing.Of(Two()).AlternativeText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_turned_box_shows_its_projected_outline()
    {
        // A rectangle of 200 by 100 turned by 45° is (200 + 100)/√2 wide both ways.
        var build = Two();
        var sheet = Sheet(build.With("body",
            build.Parts["body"] with { Placement = new() { Orientation = new(Angle.FromDegrees(45), Angle.Zero, Angle.Zero) } }));
        var box = Outline(sheet, "above", "body");
        Assert.Equal(300 / Math.Sqrt(2) * Scale(sheet), box.Right - box.Left, Pixel);
        Assert.Equal(300 / Math.Sqrt(2) * Scale(sheet), box.Bottom - box.Top, Pixel);
    }

    [Theory]
    [InlineData("side")]
    [InlineData("above")]
    public void A_part_moves_as_the_page_is_told(string view)
    {
        // On a carrier turned by 30° and pitched by 20°, so that a move shows in both views and both ways.
        var build = Two().With("arm",
            Box(100, 300, 20, 20, new Placement { Orientation = new(Angle.FromDegrees(30), Angle.FromDegrees(20), Angle.Zero) }))
            .With("slider", Box(50, 20, 20, 20, Placement.On("arm", RigPoint.FromMillimetres(40, 0, 10))));
        var options = new RigDrawingOptions { Moveable = new([new("slider", BalanceGallery.Millimetres(-50, 100))]) };
        var moved = build.With("slider",
            build.Parts["slider"] with { Placement = Placement.On("arm", RigPoint.FromMillimetres(70, 0, 10)) });
        var (before, after) = (Sheet(build, options), Sheet(moved, options));
        Assert.Equal(Scale(before), Scale(after));
        var part = Part(before, view, "slider");
        var move = part.Attribute("data-move")!.Value.Split(',')
            .Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToList();
        var (from, to, still, stillAfter) = (Outline(before, view, "slider"), Outline(after, view, "slider"),
            Outline(before, view, "body"), Outline(after, view, "body"));
        Assert.Equal(move[0] * 0.03, to.Left - stillAfter.Left - (from.Left - still.Left), 2 * Pixel);
        Assert.Equal(move[1] * 0.03, to.Top - stillAfter.Top - (from.Top - still.Top), 2 * Pixel);
        Assert.True(Math.Abs(move[1]) > 100);
        Assert.Equal(("0.04", "-0.05", "0.1"), (part.Attribute("data-at")!.Value, part.Attribute("data-least")!.Value,
            part.Attribute("data-greatest")!.Value));
        Assert.Equal("slider", part.Attribute("data-words")!.Value);
        // A drawing by itself moves nothing, so it has no controls; the page that moves parts makes them.
        Assert.Equal((null, null, "img"), (part.Attribute("role"), part.Attribute("tabindex"), before.Attribute("role")!.Value));
    }

    [Theory]
    [InlineData(ChartStyle.Width)]
    [InlineData(ChartStyle.NarrowWidth)]
    public void Nothing_else_jumps_while_a_part_is_moved(int width)
    {
        // A slider on a slider: the frame must hold for both at their ends together, and for what hangs on them.
        PlacedBuild At(double rods, double plate) => Two()
            .With("rods", Box(200, 300, 60, 15, Placement.On("body", RigPoint.FromMillimetres(rods, 0, -20))))
            .With("plate", Box(300, 60, 80, 90, Placement.On("rods", RigPoint.FromMillimetres(plate, 0, 0))))
            .With("battery", Box(1000, 50, 90, 110, Placement.On("plate", RigPoint.FromMillimetres(-60, 0, 0))));
        var options = new RigDrawingOptions { Moveable =
            new([new("rods", BalanceGallery.Millimetres(-80, 120)), new("plate", BalanceGallery.Millimetres(-400, -30))]) };
        string[] frames = [.. from rods in new[] { -80, 0, 120 }
                              from plate in new[] { -400, -150, -30 }
                              let sheet = Read(new RigSheet(At(rods, plate), options, width).ToSvg("rs-wide"))
                              let body = (Side: Outline(sheet, "side", "body"), Above: Outline(sheet, "above", "body"))
                              let battery = Outline(sheet, "side", "battery")
                              where battery.Left >= 0 && battery.Right <= width
                              select $"{Scale(sheet)} {body.Side} {body.Above}"];
        Assert.Equal(9, frames.Length);
        Assert.Single(frames.Distinct());
    }

    [Fact]
    public void The_plate_stands_where_the_head_is()
    {
        var sheet = Sheet(BalanceGallery.Build, BalanceGallery.Options);
        var plate = sheet.Descendants().Single(element => (string?)element.Attribute("class") == "rs-plate");
        var travel = plate.Elements().Single(element => (string?)element.Attribute("class") == "rs-line");
        var block = plate.Elements().Single(element => (string?)element.Attribute("class") == "rs-rest-fill");
        Assert.Equal(110 * Scale(sheet), Value(travel, "width"), Pixel);
        var at = (Value(block, "x") + (Value(block, "width") / 2) - Value(travel, "x")) / Scale(sheet);
        Assert.Equal((BalanceGallery.OnHead.CameraPlate - BalanceGallery.Head.CameraPlateTravel.Least).Millimeters, at, 0.1);
    }

    [Theory]
    [InlineData(ChartStyle.Width)]
    [InlineData(ChartStyle.NarrowWidth)]
    public void No_number_lies_over_another_or_over_the_centre(int width)
    {
        AssertApart(new RigSheet(BalanceGallery.Build, BalanceGallery.Options, width), width);
        // Invented rigs of a fixed seed, with many small parts in one place.
        Drawn.Cases(firstSeed: 5, cases: 40, random =>
        {
            var parts = Enumerable.Range(0, 3 + random.Next(16)).Select(i => KeyValuePair.Create($"part {i}", Box(
                10 + random.Next(900), 10 + random.Next(200), 10 + random.Next(120), 8 + random.Next(120),
                Placement.At(RigPoint.FromMillimetres(random.Next(-200, 250), random.Next(-90, 90), random.Next(-60, 160))))));
            AssertApart(new RigSheet(new(new OrderedMap<PlacedPart>(parts)), new(), width), width);
        });
    }

    [Fact]
    public void No_name_becomes_markup_and_nothing_is_fetched_or_run()
    {
        const string evil = "\"><script>go()</script>'&";
        var build = Two().With(evil, Box(10, 10, 10, 10, new()));
        var drawing = RigDrawing.Of(build,
            new() { Names = new([new(evil, evil)]), Moveable = new([new(evil, BalanceGallery.Millimetres(-1, 1))]) });
        foreach (var svg in new[] { drawing.Svg, drawing.NarrowSvg })
        {
            var names = XElement.Parse(svg).Descendants().Select(element => element.Name.LocalName).Distinct();
            Assert.Subset(new HashSet<string> { "g", "line", "polygon", "rect", "circle", "path", "text" }, names.ToHashSet());
            Assert.DoesNotContain("style=", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("href", svg, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_page_shows_it_with_its_words_and_numbers()
    {
        var html = PartHtml.Of(new DrawingPart(RigDrawing.Of(BalanceGallery.Build, BalanceGallery.Options)));
        Assert.StartsWith("<figure class=\"rs-figure rs-drawing\" data-drawing=\"rig-to-scale\">", html,
            StringComparison.Ordinal);
        Assert.Contains("class=\"rs-wide\"", html, StringComparison.Ordinal);
        Assert.Contains("class=\"rs-narrow\"", html, StringComparison.Ordinal);
        Assert.Contains("Tighten the tilt lock", html, StringComparison.Ordinal);
        Assert.Contains("<summary>The numbers</summary>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_part_is_in_both_views_and_in_the_list()
    {
        var sheet = Sheet(BalanceGallery.Build, BalanceGallery.Options);
        foreach (var name in BalanceGallery.Build.Parts.Keys)
        {
            Assert.Equal(2, sheet.Descendants().Count(element => (string?)element.Attribute("data-part") == name));
            Assert.Equal(2, sheet.Descendants().Count(element => (string?)element.Attribute("data-label") == name));
            Assert.Contains(sheet.Elements(), element => element.Value.StartsWith(BalanceGallery.Names[name] + ", ",
                StringComparison.Ordinal));
        }
        Assert.Equal("plate", Part(sheet, "side", "battery").Attribute("data-on")!.Value);
    }

    [Fact]
    public void Loads_on_the_shoulder_are_said()
    {
        // 3 kg at x = 20 mm, pad at 0, hands at 200 mm: hands 2.94 N, pad the rest of 29.42 N. With the pad at 60 mm the hands
        // must hold down.
        string Text(double pad) =>
            RigDrawing.Of(Two(),
            new() { Shoulder = ShoulderBalance.Of(new(Length.FromMillimeters(pad), Length.FromMillimeters(200)),
            Two().MassProperties) }).Svg;
        Assert.Contains("hands carry 2.9 N (0.3 kg)", Text(0), StringComparison.Ordinal);
        Assert.Contains("pad carries 26.5 N (2.7 kg)", Text(0), StringComparison.Ordinal);
        Assert.Contains("hands hold down 8.4 N", Text(60), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_is_not_there_cannot_be_moved() => Assert.Contains("accepted: \"body\", \"weight\"",
        Assert.Throws<ArgumentException>(() => RigDrawing.Of(Two(),
            new() { Moveable = new([new("lens", BalanceGallery.Millimetres(0, 1))]) })).Message, StringComparison.Ordinal);

    [Fact]
    public void The_drawing_looks_as_it_did() =>
        Snapshot.Match(XElement.Parse(RigDrawing.Of(Two(),
        new() { Moveable = new([new("weight", BalanceGallery.Millimetres(20, 120))]) }).Svg).ToString().ReplaceLineEndings("\n"));

    private static void AssertApart(RigSheet sheet, double width)
    {
        foreach (var view in sheet.Views)
        {
            List<Box> boxes = [.. view.Labels.Select(label => label.Box), RigSigns.Around(view.Centre, RigSigns.CentreRadius)];
            for (var i = 0; i < boxes.Count; i++)
            {
                for (var j = i + 1; j < boxes.Count; j++)
                    Assert.False(boxes[i].Overlaps(boxes[j]), $"{boxes[i]} and {boxes[j]}");
            }
            Each.Of(view.Labels, label => Assert.True(label.Box.Left >= 0 && label.Box.Right <= width));
        }
    }

    private static PlacedBuild Two() => new(new OrderedMap<PlacedPart>(
    [
        new("body", Box(2000, 200, 100, 60, new())),
        new("weight", Box(1000, 40, 40, 40, Placement.At(RigPoint.FromMillimetres(60, 90, 100)))),
    ]));

    private static PlacedPart Box(double grams, double length, double width, double height, Placement placement) => new()
    {
        Mass = Mass.FromGrams(grams), Size = new(Length.FromMillimeters(length), Length.FromMillimeters(width),
            Length.FromMillimeters(height)),
        BoxMiddle = RigPoint.FromMillimetres(0, 0, height / 2), Placement = placement,
    };

    private static XElement Sheet(PlacedBuild build, RigDrawingOptions? options = null) =>
        Read(RigDrawing.Of(build, options).Svg);

    private static XElement Read(string svg)
    {
        var sheet = XElement.Parse(svg);
        foreach (var element in sheet.DescendantsAndSelf())
            element.Name = element.Name.LocalName;
        return sheet;
    }

    private static XElement View(XElement sheet, string view) =>
        sheet.Elements("g").Single(element => (string?)element.Attribute("data-view") == view);

    private static XElement Part(XElement sheet, string view, string name) =>
        View(sheet, view).Elements("g").Single(element => (string?)element.Attribute("data-part") == name);

    private static Box Outline(XElement sheet, string view, string name)
    {
        var points = Part(sheet, view, name).Element("polygon")!.Attribute("points")!.Value.Split(' ')
            .Select(point => point.Split(',').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToList()).ToList();
        return new(points.Min(p => p[0]), points.Min(p => p[1]), points.Max(p => p[0]), points.Max(p => p[1]));
    }

    private static (double X, double Y) Centre(XElement sheet, string view)
    {
        var ring = View(sheet, view).Elements("g").Single(element => (string?)element.Attribute("class") == "rs-centre")
            .Element("circle")!;
        return (Value(ring, "cx"), Value(ring, "cy"));
    }

    /// <summary>SVG units a millimetre, from the scale bar and what is written beside it.</summary>
    private static double Scale(XElement sheet)
    {
        var text = sheet.Elements("text").Single(element => element.Value.EndsWith(" mm, both views", StringComparison.Ordinal));
        var path = text.ElementsBeforeSelf("path").Last().Attribute("d")!.Value;
        var length = double.Parse(path[(path.IndexOf('h', StringComparison.Ordinal) + 1)..path.LastIndexOf('m')],
            CultureInfo.InvariantCulture);
        return length / double.Parse(text.Value.Split(' ')[0], CultureInfo.InvariantCulture);
    }

    private static double Value(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}

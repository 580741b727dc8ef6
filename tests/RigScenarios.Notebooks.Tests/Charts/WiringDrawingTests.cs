using System.Xml.Linq;
using RigScenarios.Answers;
using RigScenarios.Charts.Wiring;
using RigScenarios.Files;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests.Charts;

public class WiringDrawingTests
{
    [Fact]
    public void Every_element_stands_once_in_both_drawings_and_the_first_to_fail_is_marked_with_words()
    {
        var wiring = Night("thin-lead");
        var drawing = WiringDrawing.Of(wiring);

        foreach (var svg in new[] { drawing.Svg, drawing.NarrowSvg })
        {
            var names = XDocument.Parse(svg).Descendants().Select(element => element.Attribute("data-element")?.Value)
                .OfType<string>().ToList();
            Assert.Equal(names.Distinct(), names);
            Each.Of(new[] { "battery", "plate", "splitter", "camera", "monitor", "lens-motors", "transmitter",
                "outlet a of plate" }, name => Assert.Contains(name, names));
            Assert.Contains("camera: stops", svg, StringComparison.Ordinal);
            Assert.Contains("thin lead, AWG", svg, StringComparison.Ordinal);
        }
        Assert.Contains("camera: 10.60\u00a0V", drawing.AlternativeText, StringComparison.Ordinal);
        Assert.Contains("measure it", string.Join(" ", drawing.Cautions), StringComparison.Ordinal);
    }

    [Fact]
    public void No_two_texts_and_no_two_boxes_of_a_drawing_overlap()
    {
        foreach (var svg in new[] { WiringDrawing.Of(Night("thin-lead")).Svg, WiringDrawing.Of(Night("heavy-lead")).NarrowSvg })
        {
            var root = XDocument.Parse(svg).Root!;
            XNamespace ns = "http://www.w3.org/2000/svg";
            var boxes = root.Descendants(ns + "rect").Where(rect => rect.Attribute("class")!.Value != "rs-weakest")
                .Select(rect => (Top: Number(rect, "y"), Height: Number(rect, "height"))).OrderBy(box => box.Top).ToList();
            Each.Of(boxes.Zip(boxes.Skip(1)), pair => Assert.True(pair.First.Top + pair.First.Height <= pair.Second.Top));
            var width = double.Parse(root.Attribute("viewBox")!.Value.Split(' ')[2],
                System.Globalization.CultureInfo.InvariantCulture);
            // 0.6 of the size a character, as labels are placed everywhere.
            Each.Of(root.Descendants(ns + "text").Where(text => text.Attribute("text-anchor") is null),
                text => Assert.True(Number(text, "x") + (text.Value.Length * 13 * 0.6) <= width + 1, text.Value));
        }
    }

    [Fact]
    public void The_chart_marks_the_lowest_voltage_of_each_device_and_the_least_that_it_takes()
    {
        var answer = Night("thin-lead");
        var figure = VoltageChart.Of(answer);

        // The camera goes out of its input: its lowest voltage is that of its stop.
        var stop = new AnswerTimes(answer.Plan.Days).At(answer.Simulation.FirstStop!.At);
        Assert.Contains($"camera 10.6 V at {stop}", figure.Caption, StringComparison.Ordinal);
        Assert.Contains("least for camera", figure.Specification, StringComparison.Ordinal);
        Assert.Contains("lowest of each", figure.Specification, StringComparison.Ordinal);
    }

    private static double Number(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, System.Globalization.CultureInfo.InvariantCulture);

    private static RigAnswer Night(string build) =>
        RigAnswer.Of(ScenarioFile.Read(Path.Combine(Checkout.Root, "data", "scenarios", "night-dolly.yaml")), build, ["night"],
            cancellation: TestContext.Current.CancellationToken);
}

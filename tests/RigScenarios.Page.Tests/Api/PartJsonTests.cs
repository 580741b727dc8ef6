using System.Text.Json;
using System.Text;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Tests.Api;

/// <summary>Parts of a page as the living page takes them.</summary>
public sealed class PartJsonTests
{
    [Fact]
    public void A_drawing_brings_both_its_sheets_its_words_and_its_numbers()
    {
        var drawing = new Drawing
        {
            Slug = "rig", Title = "A <rig>", Caption = "To scale.", Cautions = ["Hold on."], AlternativeText = "A box.",
            Svg = "<svg><text>a &lt; b</text></svg>", NarrowSvg = "<svg/>",
            Data = ChartTable.Of("part").With("camera"),
        };
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
            PartJson.Write(json, new DrawingPart(drawing));
        var part = JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray())).RootElement;
        string? Text(string name) => part.GetProperty(name).GetString();
        Assert.Equal(("drawing", "rig", "A <rig>", "To scale.", "A box."),
            (Text("type"), Text("slug"), Text("title"), Text("caption"), Text("alternative")));
        Assert.Equal((drawing.Svg, drawing.NarrowSvg), (Text("svg"), Text("narrowSvg")));
        Assert.Equal("Hold on.", part.GetProperty("cautions")[0].GetString());
        Assert.Equal("camera", part.GetProperty("table").GetProperty("rows")[0][0].GetString());
    }
}

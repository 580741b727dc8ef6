using System.Text.Json.Nodes;

namespace RigScenarios.Charts.HeatMaps;

/// <summary>Rings one place of a finished heat map.</summary>
internal static class PresentValueMark
{
    // Wide enough to go around a cell's number.
    private const int Diameter = 40;

    /// <summary>The figure with a ring at a place given in the units of its axes.</summary>
    public static Figure On(Figure figure, double x, double y)
    {
        var specification = JsonNode.Parse(figure.Specification)!;
        // At the end, so that what differs on a phone, told by the traces' order, still meets its traces. White around black:
        // the ring shows on the dark and on the bright end of the colours.
        var traces = specification["data"]!.AsArray();
        traces.Add(Ring(x, y, "#ffffff", 6));
        traces.Add(Ring(x, y, "#000000", 2.5));
        return figure with { Specification = specification.ToJsonString().Replace("<", "\\u003c", StringComparison.Ordinal) };
    }

    private static JsonObject Ring(double x, double y, string colour, double width) => new()
    {
        ["type"] = "scatter",
        ["mode"] = "markers",
        ["x"] = new JsonArray(Rounding.ForChart(x)),
        ["y"] = new JsonArray(Rounding.ForChart(y)),
        ["marker"] = new JsonObject
        {
            ["symbol"] = "circle-open",
            ["size"] = Diameter,
            ["color"] = colour,
            ["line"] = new JsonObject { ["width"] = width, ["color"] = colour },
        },
        ["showlegend"] = false,
        // Whole in the outermost cells too.
        ["cliponaxis"] = false,
        ["hoverinfo"] = "skip",
    };
}

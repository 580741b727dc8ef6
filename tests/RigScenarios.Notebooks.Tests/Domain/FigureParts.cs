using System.Text.Json.Nodes;
using RigScenarios.Charts;

namespace RigScenarios.Notebooks.Tests.Domain;

/// <summary>Reads out of a figure's JSON what a reader would see.</summary>
internal static class FigureParts
{
    public static JsonNode Json(Figure figure) => JsonNode.Parse(figure.Specification)!;

    /// <summary>The traces that a reader sees as lines: with points joined, and no band's edge.</summary>
    public static List<JsonNode> Lines(Figure figure) =>
        [.. Json(figure)["data"]!.AsArray().Select(trace => trace!)
            .Where(trace => trace["mode"]?.GetValue<string>().Contains("lines", StringComparison.Ordinal) == true
                && trace["line"]?["width"]?.GetValue<double>() > 2)];

    /// <summary>All words that stand in the chart: annotations, axis titles, names of traces.</summary>
    public static string Words(Figure figure)
    {
        var json = Json(figure);
        var layout = json["layout"]!.AsObject();
        var axes = layout.Where(member => member.Key.StartsWith("xaxis", StringComparison.Ordinal))
            .Select(member => member.Value?["title"]?["text"]?.GetValue<string>());
        var notes = layout["annotations"]!.AsArray().Select(note => note!["text"]!.GetValue<string>());
        var names = json["data"]!.AsArray().Select(trace => trace!["name"]?.GetValue<string>());
        return string.Join('\n', axes.Concat(notes).Concat(names).OfType<string>());
    }
}

using System.Text.Json;
using Plotly.NET;

namespace RigScenarios.Charts.Style;

/// <summary>A chart of Plotly.NET as plotly.js's own names: the one place that speaks with that library.</summary>
internal static class OtherChart
{
    /// <summary>The chart's traces and its own layout.</summary>
    public static (IReadOnlyList<PlotlyTrace> Traces, IReadOnlyDictionary<string, object?> Layout) Read(GenericChart chart)
    {
        // Its own writer, because what a trace holds are its own types.
        using var written = JsonDocument.Parse(GenericChart.toJson(chart));
        var whole = written.RootElement;
        return (
            [.. whole.GetProperty("data").EnumerateArray()
                .Select(trace => new PlotlyTrace(trace.GetProperty("type").GetString()!,
                    Members(trace).Select(member => (member.Key, member.Value))))],
            Members(whole.GetProperty("layout")));
    }

    private static Dictionary<string, object?> Members(JsonElement thing) =>
        thing.EnumerateObject().ToDictionary(member => member.Name, member => (object?)member.Value.Clone());
}

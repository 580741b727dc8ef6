using System.Text.Encodings.Web;
using System.Text.Json;

namespace RigScenarios.Charts.Style;

/// <summary>Puts traces and a layout in the house style together to the JSON that plotly.js draws.</summary>
/// <remarks>Written here and not by Plotly.NET: that library with what it needs is larger than all of ours, and a page that
/// computes in the browser would carry it.</remarks>
internal sealed class PlotlySpecification(IEnumerable<PlotlyTrace> traces)
{
    // The default encoder writes every letter beyond the plain ones as six; of HTML only "<" matters, and ToJson escapes it.
    private static readonly JsonSerializerOptions Names =
        new(JsonSerializerDefaults.Web) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Dictionary<string, object?> layout = HouseLayout();
    private ChartPoints? points;
    private IReadOnlyDictionary<string, object?> narrowLayout = new Dictionary<string, object?>();
    private IReadOnlyList<IReadOnlyDictionary<string, object?>> narrowTraces = [];

    /// <summary>Sets members of the layout, over the house style.</summary>
    public PlotlySpecification With(IReadOnlyDictionary<string, object?> members)
    {
        foreach (var (name, value) in members)
        {
            if (value is not null)
                layout[name] = value;
        }

        return this;
    }

    /// <summary>What differs on a phone: members of the layout, and for each trace, in order, its members.</summary>
    public PlotlySpecification WithNarrow(
        IReadOnlyDictionary<string, object?> layoutMembers,
        IReadOnlyList<IReadOnlyDictionary<string, object?>>? traceMembers = null)
    {
        narrowLayout = layoutMembers;
        narrowTraces = traceMembers ?? [];
        return this;
    }

    /// <summary>Says what the numbers are, for a file of all points.</summary>
    public PlotlySpecification WithPoints(ChartPoints what)
    {
        points = what;
        return this;
    }

    /// <summary>The whole as JSON. Every "&lt;" is escaped, so that no text in it can end the script it stands in.</summary>
    public string ToJson()
    {
        var whole = new Dictionary<string, object?>
        {
            ["data"] = traces.Select(trace => trace.Members),
            ["layout"] = layout,
            ["config"] = new { displaylogo = false, responsive = true, displayModeBar = false },
            ["narrow"] = new { layout = narrowLayout, traces = narrowTraces, below = ChartStyle.NarrowBelow },
        };
        if (points is not null)
            whole["points"] = points;
        return JsonSerializer.Serialize(whole, Names).Replace("<", "\\u003c");
    }

    private static Dictionary<string, object?> HouseLayout() => new()
    {
        ["font"] = new { family = ChartStyle.FontFamily, size = ChartStyle.FontSize, color = ChartStyle.Ink },
        ["paper_bgcolor"] = "#ffffff",
        ["plot_bgcolor"] = "#ffffff",
        ["hoverlabel"] = new
        {
            bgcolor = "#ffffff",
            font = new { family = ChartStyle.FontFamily, color = ChartStyle.Ink },
        },
        ["showlegend"] = false,
    };
}

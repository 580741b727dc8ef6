using System.Text.Json;
using Plotly.NET;

namespace RigScenarios.Charts.Style;

/// <summary>Puts traces and a layout in the house style together to the JSON that plotly.js draws.</summary>
/// <remarks>Built without Plotly.NET's defaults: their template costs 90 ms a chart and is process-wide, changeable
/// state.</remarks>
internal sealed class PlotlySpecification(IEnumerable<Trace> traces)
{
    private readonly IReadOnlyList<Trace> traces = [.. traces];
    private readonly Layout layout = HouseLayout();
    private static readonly JsonSerializerOptions PointNames = new(JsonSerializerDefaults.Web);
    private ChartPoints? points;
    private IReadOnlyDictionary<string, object?> narrowLayout = new Dictionary<string, object?>();
    private IReadOnlyList<IReadOnlyDictionary<string, object?>> narrowTraces = [];

    /// <summary>A trace from plotly.js's own names; members without a value are left out.</summary>
    public static Trace Trace(string type, IEnumerable<(string Name, object? Value)> members)
    {
        var trace = new Trace(type);
        foreach (var (name, value) in members.Where(member => member.Value is not null))
            trace.SetProperty(name, value!);
        return trace;
    }

    /// <summary>Sets members of the layout, over the house style.</summary>
    public PlotlySpecification With(IReadOnlyDictionary<string, object?> members)
    {
        foreach (var (name, value) in members.Where(member => member.Value is not null))
            layout.SetProperty(name, value!);
        return this;
    }

    /// <summary>Sets the members of another layout, over the house style.</summary>
    public PlotlySpecification With(Layout other)
    {
        foreach (var member in other.GetProperties(true))
            layout.SetProperty(member.Key, member.Value);
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
        var config = new Config();
        config.SetProperty("displaylogo", false);
        config.SetProperty("responsive", true);
        config.SetProperty("displayModeBar", false);
        var chart = GenericChart.combine(traces.Select(trace => GenericChart.ofTraceObject(false, trace)));
        chart = GenericChart.setConfig(config, GenericChart.setLayout(layout, chart));
        var wide = GenericChart.toJson(chart);
        var narrow = JsonSerializer.Serialize(new { layout = narrowLayout, traces = narrowTraces,
            below = ChartStyle.NarrowBelow });
        var told = points is null ? "" : $",\"points\":{JsonSerializer.Serialize(points, PointNames)}";
        return $"{wide.TrimEnd()[..^1]},\"narrow\":{narrow}{told}}}".Replace("<", "\\u003c");
    }

    private static Layout HouseLayout()
    {
        var house = new Layout();
        house.SetProperty("font", new { family = ChartStyle.FontFamily, size = ChartStyle.FontSize, color = ChartStyle.Ink });
        house.SetProperty("paper_bgcolor", "#ffffff");
        house.SetProperty("plot_bgcolor", "#ffffff");
        house.SetProperty("hoverlabel",
            new { bgcolor = "#ffffff", font = new { family = ChartStyle.FontFamily, color = ChartStyle.Ink } });
        house.SetProperty("showlegend", false);
        return house;
    }
}

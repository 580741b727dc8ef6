namespace RigScenarios.Charts.Style;

/// <summary>One trace as plotly.js takes it, from its own names; members without a value are left out.</summary>
internal sealed class PlotlyTrace
{
    /// <summary>A trace of a kind; of two members of one name the later stands.</summary>
    public PlotlyTrace(string kind, IEnumerable<(string Name, object? Value)> members)
    {
        var all = new Dictionary<string, object?> { ["type"] = kind };
        foreach (var (name, value) in members)
        {
            if (value is not null)
                all[name] = value;
        }

        (Kind, Members) = (kind, all);
    }

    /// <summary>Its kind: "scatter".</summary>
    public string Kind { get; }

    /// <summary>All its members, its kind among them.</summary>
    public IReadOnlyDictionary<string, object?> Members { get; }
}

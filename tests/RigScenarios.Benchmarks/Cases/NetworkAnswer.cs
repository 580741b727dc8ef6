using System.Text.Json.Nodes;
using RigScenarios.Parts;
using RigScenarios.Wiring;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>Solves a network at one voltage and puts the answer into the fields of a result file.</summary>
internal static class NetworkAnswer
{
    public static JsonObject Of(StaticNetworkCase one)
    {
        var point = one.Network.TrySolve(one.Terminals, one.States);
        var elements = new JsonObject();
        foreach (var (name, at) in point?.Elements ?? OrderedMap<ElementPoint>.Empty)
        {
            var figures = new JsonObject { ["inletV"] = at.Inlet.Volts };
            if (at.Outlet is { } outlet)
                figures["outletV"] = outlet.Volts;
            figures["currentA"] = at.Current.Amperes;
            if (at.OutputCurrent is { } output)
                figures["outputCurrentA"] = output.Amperes;
            elements[name] = figures;
        }

        var factor = one.Network.LoadFactorAtEdge(one.Terminals, one.States);
        return new JsonObject
        {
            ["id"] = one.Id,
            ["solvable"] = point is not null,
            ["rootCurrentA"] = point?.Current.Amperes,
            ["elements"] = elements,
            ["loadScaleAtEdge"] = double.IsFinite(factor) ? factor : null,
        };
    }
}

using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Fits.Bench;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>A case of the kind `pulse`: the steps in a log.</summary>
internal static class PulseCase
{
    public static JsonObject Answer(string id, JsonElement element, string folder)
    {
        var log = LogCase.Read(element, folder);
        var steps = PulseTest.Find(log.Rows, ElectricCurrent.FromAmperes(element.GetProperty("leastStepA").GetDouble()),
            Duration.FromSeconds(element.GetProperty("windowS").GetDouble()));
        return new()
        {
            ["id"] = id,
            ["log"] = LogCase.Facts(log),
            ["steps"] = new JsonArray([.. steps.Select(step => new JsonObject
            {
                ["at_s"] = step.At.Seconds,
                ["stepA"] = step.Step.Amperes,
                ["r0Ohm"] = step.Resistance0.Ohms,
                ["r1Ohm"] = step.Resistance1.Ohms,
                ["tauS"] = step.TimeConstant.Seconds,
                ["se"] = new JsonArray(step.Resistance0Error.Ohms, step.Resistance1Error.Ohms, step.TimeConstantError.Seconds),
                ["at_edge"] = !step.TimeConstantFound,
                ["r10Ohm"] = step.After10Seconds.Ohms,
            })]),
        };
    }
}

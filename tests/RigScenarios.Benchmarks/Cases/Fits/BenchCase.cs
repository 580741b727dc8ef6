using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Fits.Bench;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>A case of the kind `bench`: the open-circuit table of a slow discharge.</summary>
internal static class BenchCase
{
    public static JsonObject Answer(string id, JsonElement element, string folder)
    {
        var log = LogCase.Read(element, folder);
        var found = BenchTest.Find(log.Rows, element.GetProperty("seriesGroups").GetInt32(),
            ElectricResistance.FromOhms(element.GetProperty("resistanceOhm").GetDouble()),
            ElectricPotential.FromVolts(element.GetProperty("cutoffVoltageV").GetDouble()),
            element.GetProperty("nodes").GetInt32());
        return new()
        {
            ["id"] = id,
            ["log"] = LogCase.Facts(log),
            ["table"] = new JsonObject
            {
                ["capacityAh"] = found.Capacity.AmpereHours,
                ["soc"] = new JsonArray([.. found.Table.Points.Select(point =>
                    JsonValue.Create(point.StateOfCharge.DecimalFractions))]),
                ["voltageV"] = new JsonArray([.. found.Table.Points.Select(point => JsonValue.Create(point.Voltage.Volts))]),
                ["pooled"] = found.Pooled,
            },
        };
    }
}

using System.Text.Json.Nodes;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Days;

/// <summary>Runs the whole of a case, with its wiring, its limits and its reserve; fields of one-day-format.md.</summary>
internal static class OneDayAnswer
{
    public static JsonObject Of(DayCase one, CancellationToken cancellation = default)
    {
        var build = one.Scenario.Builds.Keys.First();
        var (powered, plan) = ScenarioPlan.Of(one.Scenario, build, []);
        var result = DaySimulation.Run(powered, plan, new SimulationOptions(SeriesPoints: 0), null, cancellation);
        return new JsonObject { [build] = Fields(result, one.Scenario.Days.Keys) };
    }

    private static JsonObject Fields(SimulationResult result, IEnumerable<string> days)
    {
        var fields = DayFields.Common(result, days);
        var reserve = result.Reserve;
        fields["reserve_h"] = reserve.Time.Hours;
        fields["reserve_more_than"] = reserve.IsLowerBound;
        fields["reserve_Wh"] = reserve.Energy.WattHours;
        fields["reserve_ends"] = reserve.Ends?.ToString() ?? (reserve.IsLowerBound ? null : "not reached");
        fields["devices"] =
            new JsonObject(result.Devices.Select(item => KeyValuePair.Create(item.Key, (JsonNode?)DeviceOf(item.Value))));
        fields["runtime_h"] = result.Runtime.Hours;
        fields["drop_outs"] = new JsonArray([.. result.DropOuts.Select(drop => new JsonObject
        {
            ["element"] = drop.Element, ["at_h"] = drop.At.Hours, ["right_after_change"] = drop.RightAfterChange,
        })]);
        fields["limits"] = new JsonArray([.. result.Limits.Select(LimitOf)]);
        return fields;
    }

    private static JsonObject DeviceOf(DeviceTimeline device) => new()
    {
        ["essential"] = device.Essential,
        ["first_stop_h"] = device.FirstStop?.At.Hours,
        ["reason"] = device.FirstStop?.Reason.ToString(),
        ["down"] = new JsonArray([.. DayFields.Downs(device).Select(down => new JsonObject
        {
            ["from_h"] = down.From.Hours, ["to_h"] = down.To.Hours, ["cause"] = down.Cause, ["reason"] = down.Reason.ToString(),
        })]),
    };

    private static JsonObject LimitOf(Limit limit) => new()
    {
        ["element"] = limit.Element,
        ["kind"] = limit.Kind switch
        {
            LimitKind.RatedCurrent => "rated current",
            LimitKind.Current => "current",
            LimitKind.OutputCurrent => "output current",
            LimitKind.Fuse => "fuse",
            LimitKind.LowestVoltage => "lowest voltage",
            LimitKind.Input => "input",
            LimitKind.SwitchOff => "switch-off",
            LimitKind.CutOff => "cut-off",
            LimitKind.Temperature => "temperature",
            var other => other.ToString(),
        },
        ["case"] = limit.Case switch { LoadCase.Steady => "steady", LoadCase.Peak => "peak", _ => "start-up" },
        ["side"] = limit.Side == LimitSide.StaysUnder ? "under" : "over",
        ["worst"] = Figure(limit.Worst),
        ["allowed"] = Figure(limit.Allowed!),
        ["left"] = limit.Share,
        ["at_h"] = limit.At!.Time.Hours,
        ["day"] = limit.At.Day,
        ["block"] = limit.At.Block,
    };

    // V, A or °C.
    private static double Figure(IQuantity quantity) => quantity switch
    {
        Temperature temperature => temperature.DegreesCelsius,
        ElectricPotential voltage => voltage.Volts,
        _ => ((ElectricCurrent)quantity).Amperes,
    };
}

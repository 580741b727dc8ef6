using System.Text.Json.Nodes;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>How a run through a network went, in the terms of network-format.md: a device has stopped as soon as something above
/// it has, wanted or not.</summary>
/// <param name="Result">What the simulation found.</param>
/// <param name="End">When the run ended.</param>
/// <param name="Cause">Why.</param>
/// <param name="Charge">Charge of the pack then.</param>
/// <param name="Temperature">Its temperature.</param>
/// <param name="Voltage">Its voltage in the last solution; null where there is none.</param>
/// <param name="AtStep">Whether it ended right after a change.</param>
/// <param name="BlocksFinished">Blocks completed before.</param>
/// <param name="Stops">When each device stopped, and the element that stopped it; null for the end of the run.</param>
internal sealed record NetworkRunAnswer(
    SimulationResult Result, Duration End, string Cause, Ratio Charge, Temperature Temperature, ElectricPotential? Voltage,
    bool AtStep, int BlocksFinished,
    OrderedMap<(Duration At, string? Because)> Stops)
{
    /// <summary>The stop of the first essential device; the end of the run if none stopped before.</summary>
    public required Duration BuildRuntime { get; init; }

    public static NetworkRunAnswer Of(NetworkRunCase one, CancellationToken cancellation = default)
    {
        // A few points, so that there is one at the end.
        var result = NetworkSimulation.Run(
            one.Network, one.Pack, one.Ambient, one.Start, one.Blocks, one.Options.TimeLimit!.Value,
            new SimulationOptions(SeriesPoints: 4), cancellation);
        var devices = one.Network.Elements.OfType<Device>().ToList();
        OrderedMap<(Duration At, string? Because)> StopsUntil(Duration end) => new(devices.Select(device =>
            KeyValuePair.Create(device.Name, StopOf(one.Network, result, device) ?? (end, null))));
        Duration FirstOf(OrderedMap<(Duration At, string? Because)> stops, Duration end) =>
            devices.Where(device => device.Essential).Select(device => stops[device.Name].At).Append(end).Min();

        if (result.FirstStop is { } stop)
        {
            var stops = StopsUntil(stop.At);
            return new NetworkRunAnswer(
                result, stop.At, stop.Reason.ToString(), stop.Charge, stop.Temperature, stop.Voltage, stop.RightAfterChange,
                result.Stretches.Count(block => stop.RightAfterChange ? block.End <= stop.At : block.End < stop.At), stops)
            {
                BuildRuntime = FirstOf(stops, stop.At),
            };
        }

        // The time limit comes before a block that would begin then, so that the last block is not finished.
        var (end, pack) = (result.Days[^1].End, result.Batteries.Values.First());
        var all = StopsUntil(end);
        return new NetworkRunAnswer(
            result, end, new StopReason(StopKind.TimeOver).ToString(), pack.ChargeLeft, pack.Spans[^1].TemperatureAtEnd,
            result.Series[^1].Voltage, false,
            result.Stretches.Count - 1, all)
        {
            BuildRuntime = FirstOf(all, end),
        };
    }

    public JsonObject ToJson(string id) => new()
    {
        ["id"] = id,
        ["t_end_s"] = End.Seconds,
        ["cause"] = Cause,
        ["z_end"] = Charge.DecimalFractions,
        ["T_end_K"] = Temperature.Kelvins,
        ["V_end"] = Voltage?.Volts,
        ["at_step"] = AtStep,
        ["blocksFinished"] = BlocksFinished,
        ["buildRuntime_s"] = BuildRuntime.Seconds,
        ["devices"] = new JsonObject(Stops.Select(stop => KeyValuePair.Create(stop.Key, (JsonNode?)new JsonObject
        {
            ["stop_s"] = stop.Value.At.Seconds, ["because"] = stop.Value.Because ?? "end of the run",
        }))),
        ["dropOuts"] = new JsonArray([.. Result.DropOuts.Select(drop => new JsonObject
        {
            ["element"] = drop.Element, ["at_s"] = drop.At.Seconds, ["rightAfterChange"] = drop.RightAfterChange,
        })]),
        ["elements"] = new JsonObject(Result.Loads.Select(load => KeyValuePair.Create(load.Key, (JsonNode?)LoadOf(load.Value)))),
    };

    private static JsonObject LoadOf(ElementLoad load)
    {
        var figures = new JsonObject { ["maxCurrentA"] = load.Current.Amperes, ["at_s"] = load.At.Seconds };
        if (load.OutputCurrent is { } output)
            (figures["maxOutputCurrentA"], figures["outputAt_s"]) = (output.Amperes, load.OutputAt!.Value.Seconds);
        return figures;
    }

    private static (Duration At, string? Because)? StopOf(WiringNetwork network, SimulationResult result, Device device)
    {
        var above = new HashSet<string> { device.Name };
        for (var feed = device.FedBy; feed is not null; feed = network.Elements.First(element => element.Name == feed).FedBy)
            above.Add(feed);
        return result.DropOuts.FirstOrDefault(drop => above.Contains(drop.Element)) is { } drop ? (drop.At, drop.Element) : null;
    }
}

using System.Text.Json.Nodes;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Days;

/// <summary>The fields that results of both kinds of day cases have; hours from midnight of the first day.</summary>
internal static class DayFields
{
    /// <summary>What was run, day by day and battery by battery.</summary>
    /// <param name="result">The result.</param>
    /// <param name="days">The short names of the days.</param>
    public static JsonObject Common(SimulationResult result, IEnumerable<string> days) => new()
    {
        ["completes"] = result.Completes,
        ["swaps"] = new JsonArray([.. result.Swaps.Select(swap => new JsonObject
        {
            ["at_h"] = swap.Time.Hours,
            ["day"] = swap.Day,
            ["comes_off"] = swap.Off,
            ["comes_off_percent"] = swap.ChargeOff?.Percent,
            ["goes_on"] = swap.On,
            ["goes_on_percent"] = swap.ChargeOn.Percent,
            ["forced"] = swap.Forced,
        })]),
        ["days"] = new JsonArray([.. days.Zip(result.Days, (name, day) => new JsonObject
        {
            ["day"] = name,
            ["at_start_percent"] = new JsonArray([.. day.ChargeAtStart.Values.Select(charge => (JsonNode)charge.Percent)]),
            ["at_end_percent"] = new JsonArray([.. day.ChargeAtEnd.Values.Select(charge => (JsonNode)charge.Percent)]),
            ["from_packs_Wh"] = day.FromPacks.WattHours,
            ["from_wall_Wh"] = day.FromWall.WattHours,
        })]),
        ["batteries"] = new JsonObject(result.Batteries.Select(item => KeyValuePair.Create(item.Key, (JsonNode?)new JsonObject
        {
            ["charge_left_percent"] = item.Value.ChargeLeft.Percent,
            ["delivered_Wh"] = item.Value.Delivered.WattHours,
            ["charged_Wh"] = item.Value.Charged.WattHours,
        }))),
        ["from_packs_Wh"] = result.FromPacks.WattHours,
        ["from_wall_Wh"] = result.FromWall.WattHours,
    };

    /// <summary>The times in which a device is down; neighbouring pieces of one reason are one, and have the cause of the
    /// first.</summary>
    public static IReadOnlyList<(Duration From, Duration To, string Cause, StopReason Reason)> Downs(DeviceTimeline device)
    {
        var downs = new List<(Duration From, Duration To, string Cause, StopReason Reason)>();
        foreach (var span in device.Spans.Where(span => span.Activity == DeviceActivity.Down))
        {
            if (downs.Count > 0 && downs[^1].Reason == span.Reason && downs[^1].To.Seconds.Equals(span.Start.Seconds))
                downs[^1] = downs[^1] with { To = span.End };
            else
                downs.Add((span.Start, span.End, CauseOf(span), span.Reason!));
        }

        return downs;
    }

    private static string CauseOf(DeviceSpan span) => span.Awaits is { } awaited ? new StopReason(awaited).ToString()
        : span.Reason!.Kind is StopKind.PlannedSwap or StopKind.NothingLeft or StopKind.WaitingForCharge
            ? span.Reason.ToString() : "drop-out";
}

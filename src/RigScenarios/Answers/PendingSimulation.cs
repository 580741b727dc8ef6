using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What is left after the last block; negative where the day is not reached.</summary>
public sealed record Reserve(Duration Time, bool IsLowerBound, Energy Energy, StopReason? Ends);

/// <summary>When an essential device stopped without a plan.</summary>
public sealed record PendingStop(Duration At, StopReason Reason, int Day, string Block);

/// <summary>One device over the days.</summary>
public sealed record PendingDevice(string Title, bool Essential, PendingStop? FirstStop, Duration Runtime);

/// <summary>How the days went.</summary>
public sealed record PendingResult(
    bool Completes, OrderedMap<PendingDevice> Devices, IReadOnlyList<Limit> Limits, Reserve Reserve, Duration Runtime,
    OrderedMap<IReadOnlyList<AssumedValue>> Assumed, ExpectedError ExpectedError, Temperature ColdestBattery, IReadOnlyList<DayOutcome> Days, IReadOnlyList<Swap> Swaps);

internal static class PendingSimulation
{
    public static PendingResult Run(PoweredBuild powered, DayPlan plan, CancellationToken cancellation)
    {
        var day = plan.Days[0];
        var result = DayRun.Run(powered, day, day.Ambient!.Value, DayRunOptions.EndOnly, cancellation);
        var start = Duration.FromHours(day.Starts?.ToTimeSpan().TotalHours ?? 8);
        StopReason Reason(string cause) => cause.StartsWith("drop-out of ", StringComparison.Ordinal) ? new(StopKind.ShortOfVoltage, cause[12..])
            : new(cause == "empty" ? StopKind.Empty : cause == "time limit" ? StopKind.TimeOver : StopKind.VoltageCutoff);
        var devices = result.Devices.Select(device => KeyValuePair.Create(device.Device, new PendingDevice(
            device.Title, device.Essential,
            device.Runtime.Seconds >= result.Planned.Seconds - 1 ? null : new PendingStop(start + device.Runtime, Reason(device.Cause), 1, result.EndBlock), device.Runtime)));
        var assumed = OrderedMap<IReadOnlyList<AssumedValue>>.Empty.With(powered.Build.Battery.Item, result.Assumed);
        return new(result.ReachesEnd, new(devices), [], new(result.Margin, result.RuntimeIsLowerBound, Energy.Zero, Reason(result.EndCause)), result.Runtime, assumed,
            result.ExpectedError, result.ColdestBattery, [], []);
    }
}

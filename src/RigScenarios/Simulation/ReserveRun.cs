using RigScenarios.Days;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>Goes on after the last block, to find how much longer the essential devices run.</summary>
internal static class ReserveRun
{
    /// <summary>The result with its reserve and its runtime.</summary>
    public static SimulationResult Add(SimulationResult result, EventLoop loop, DayPlan plan, DaySchedule schedule,
        SimulationAccount account)
    {
        var (start, end) = (schedule.Days[0].Start, schedule.Days[^1].End);
        if (FirstStop(result) is { } stop)
        {
            return result with
            {
                Runtime = stop.At - Duration.FromSeconds(start),
                Reserve = new Reserve(stop.At - LastWanted(result, plan, schedule, stop), false, Energy.Zero, null),
            };
        }

        var before = account.JoulesOut;
        var longest = end + Reserve.Longest.Seconds;
        loop.Swaps.Bays.PowerIsGone(end);
        StopReason? ends = null;
        var reached = loop.Run(Again(plan.Days[^1], schedule.Days.Count - 1, end, longest), first: false,
            () => (ends = Stopped(loop)) is not null || loop.Swaps.Done.Count >= BatterySwaps.Most);
        loop.Swaps.Settle(reached);
        var time = Duration.FromSeconds(reached - end);
        return result with
        {
            Runtime = Duration.FromSeconds(reached - start),
            Reserve = new Reserve(time, ends is null, Energy.FromJoules(account.JoulesOut - before), ends),
        };
    }

    // Without an essential device the rig counts, which stops with its battery.
    private static DeviceStop? FirstStop(SimulationResult result)
    {
        var essential = result.Devices.Values.Where(device => device.Essential).ToList();
        if (essential.Count > 0)
            return essential.Select(device => device.FirstStop).OfType<DeviceStop>().MinBy(stop => stop.At.Seconds);
        if (result.FirstStop is not { } rig)
            return null;
        var at = result.Stretches.LastOrDefault(stretch => stretch.Start <= rig.At) ?? result.Stretches[0];
        return new DeviceStop(rig.At, rig.Reason, at.Day, at.Block);
    }

    private static StopReason? Stopped(EventLoop loop)
    {
        var essential = loop.Devices.Where(device => device.Device.Essential).ToList();
        if (essential.Count == 0)
            return loop.FirstStop?.Reason;
        return essential.Find(device => device.IsStopped)?.Reason;
    }

    private static Duration LastWanted(SimulationResult result, DayPlan plan, DaySchedule schedule, DeviceStop stop)
    {
        var wanting = result.Devices.Where(device => device.Value.Essential && device.Value.FirstStop is { } own
            && own.At.Seconds.Equals(stop.At.Seconds)).Select(device => device.Key).ToList();
        var day = stop.Day - 1;
        var time = schedule.Days[day].Start;
        var last = stop.At.Seconds;
        foreach (var (name, block) in plan.Days[day].Blocks)
        {
            time += block.Length.Seconds;
            if (time > last
                && (wanting.Count == 0
                || wanting.Exists(device => result.WasWanted(device, Duration.FromSeconds(time - block.Length.Seconds),
                Duration.FromSeconds(time)))))
                last = time;
        }

        return Duration.FromSeconds(last);
    }

    private static IEnumerable<DayStretch> Again(ShootingDay day, int index, double from, double to)
    {
        while (from < to)
        {
            foreach (var stretch in DaySchedule.Stretches(day, index, from))
                yield return stretch;
            from += day.Length.Seconds;
        }
    }
}

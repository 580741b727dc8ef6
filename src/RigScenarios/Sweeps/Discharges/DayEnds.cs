using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Days;
using RigScenarios.Limits;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>
/// Reads how days went from the ends of their discharges, by the rules of the simulation: what stopped, which essential device
/// missed it first, and how much of the day that leaves. Where the ends don't say it for certain they say nothing, and the days
/// are simulated.
/// </summary>
/// <param name="discharges">The discharges.</param>
internal sealed class DayEnds(DayDischarges discharges)
{
    private const double SecondsPerHour = 3600;

    private readonly RigShape rig = discharges.Shape;

    /// <summary>The figures of the days; null where the ends don't say them.</summary>
    /// <param name="ends">The end of each day's discharge.</param>
    public DayFigures? Read(ReadOnlySpan<BatchCaseEnd> ends)
    {
        var starts = new DaySchedule(discharges.Plan).Days;
        for (var day = 0; day < ends.Length; day++)
        {
            ref readonly var end = ref ends[day];
            // Where a trifle moves the end far the small errors of formula and batch do, too.
            if (end.GrazesLimit)
                return null;
            var isLast = day + 1 == ends.Length;
            if (end.Cause == EndCause.TimeLimit)
            {
                if (!isLast)
                    continue;
                return Lasting(discharges.Limits[day], starts[0].Start, starts[day].Start, day, null);
            }
            if (StopOf(day, end) is not { } stop || FirstMissed(day, end, stop.Element) is not { } missed)
                return null;
            if (missed.Segment < rig.Days[day].Count)
                return Stopped(day, missed, stop, starts[0].Start, starts[day].Start);
            if (isLast)
                return Lasting(missed.Seconds, starts[0].Start, starts[day].Start, day, stop.Reason);
        }
        return null;
    }

    /// <summary>Whether the whole rig stopped where its discharges ended: no device goes on without what stopped.</summary>
    /// <param name="discharges">The discharges.</param>
    /// <param name="ends">The end of each day's discharge.</param>
    public static bool IsOver(DayDischarges discharges, ReadOnlySpan<BatchCaseEnd> ends)
    {
        var read = new DayEnds(discharges);
        for (var day = 0; day < ends.Length; day++)
        {
            if (ends[day].Cause == EndCause.TimeLimit)
                continue;
            if (read.StopOf(day, ends[day]) is not { } stop)
                return false;
            for (var device = 0; device < read.rig.Essential; device++)
            {
                if (!read.rig.Hangs(device, stop.Element))
                    return false;
            }
        }
        return true;
    }

    private DayFigures Lasting(double seconds, double first, double start, int day, StopReason? reason) => new()
    {
        Lasts = true,
        Runtime = (start + seconds - first) / SecondsPerHour,
        EndsAt = (start + seconds) / SecondsPerHour,
        Reserve = (seconds - rig.Days[day].Length) / SecondsPerHour,
        ReserveIsLowerBound = reason is null,
        StoppedBy = reason?.ToString(),
    };

    private DayFigures Stopped(int day, Missed missed, (StopReason Reason, int Element) stop, double first, double start) => new()
    {
        Lasts = false,
        Runtime = (start + missed.Seconds - first) / SecondsPerHour,
        EndsAt = (start + missed.Seconds) / SecondsPerHour,
        Reserve = (missed.Seconds - LastWanted(day, missed, stop.Element)) / SecondsPerHour,
        ReserveIsLowerBound = false,
        StoppedBy = stop.Reason.ToString(),
        StoppedIn = BlockOf(day, missed),
    };

    // What stopped, and the element that did; -1 for the battery. Null where that is not certain.
    private (StopReason Reason, int Element)? StopOf(int day, in BatchCaseEnd end)
    {
        if (end.Cause != EndCause.VoltageCutoff)
            return (end.Cause.AsStop(), -1);
        var shape = rig.Days[day];
        var state = shape.States[end.SegmentsFinished % shape.Count];
        ref readonly var formula = ref discharges.Formulas[day][state];
        if (formula.Stops < 0)
            return (end.Cause.AsStop(), -1);
        if (end.AtStep && !formula.StopsFirstAtOnce)
            return null;
        // Where the rig goes on without what stopped, another discharge would begin.
        for (var device = 0; device < rig.Essential; device++)
        {
            if (rig.Wants(device, state) && rig.Hangs(device, formula.Stops))
                return (new(StopKind.ShortOfVoltage, rig.NameOf(formula.Stops)), formula.Stops);
        }
        return null;
    }

    // When an essential device that is dead by then is wanted first.
    private Missed? FirstMissed(int day, in BatchCaseEnd end, int element)
    {
        var shape = rig.Days[day];
        for (var i = 0; i <= shape.Count; i++)
        {
            var segment = end.SegmentsFinished + i;
            if (!IsMissed(shape.States[segment % shape.Count], element))
                continue;
            var begin = (segment / shape.Count * shape.Length) + shape.Starts[segment % shape.Count];
            return i > 0 || end.AtStep ? new(segment, begin, true) : new(segment, end.Seconds, false);
        }
        return null;
    }

    private bool IsMissed(int state, int element)
    {
        for (var device = 0; device < rig.Essential; device++)
        {
            if (rig.Wants(device, state) && rig.Hangs(device, element))
                return true;
        }
        return false;
    }

    // The end of the last block in which one of the devices that stopped then was wanted.
    private double LastWanted(int day, Missed missed, int element)
    {
        var shape = rig.Days[day];
        var state = shape.States[missed.Segment];
        var last = missed.Seconds;
        foreach (var (end, states) in shape.WholeBlocks)
        {
            if (end <= last)
                continue;
            for (var device = 0; device < rig.Essential; device++)
            {
                if (rig.Wants(device, state) && rig.Hangs(device, element)
                    && Array.Exists(states, one => rig.Wants(device, one)))
                    last = end;
            }
        }
        return last;
    }

    // A stop at the last moment of a take belongs to the take.
    private string BlockOf(int day, Missed missed)
    {
        var shape = rig.Days[day];
        if (!missed.AtBegin)
            return shape.Blocks[missed.Segment];
        var (before, at) = missed.Segment > 0 ? (shape, missed.Segment - 1)
            : day > 0 ? (rig.Days[day - 1], rig.Days[day - 1].Count - 1) : (shape, 0);
        return before.Rolling[at] ? before.Blocks[at] : shape.Blocks[missed.Segment];
    }

    /// <summary>The moment at which an essential device is missed.</summary>
    /// <param name="Segment">The segment, counted on beyond the day.</param>
    /// <param name="Seconds">From the start of the day, s.</param>
    /// <param name="AtBegin">Whether the segment begins then.</param>
    private readonly record struct Missed(int Segment, double Seconds, bool AtBegin);
}

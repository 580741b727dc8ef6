namespace RigScenarios.Batteries.Batch;

/// <summary>Writes down how a case ended.</summary>
/// <typeparam name="T">The lanes.</typeparam>
/// <typeparam name="TWells">One well or two.</typeparam>
internal static class LaneEnd<T, TWells> where T : unmanaged, ILanes<T> where TWells : IWells
{
    // An end that a trifle moves by more than this part of its time grazes a limit.
    private const double Moved = 1e-3;

    /// <summary>A limit holds right after a step of the demand.</summary>
    public static void AtOnce(ref LaneBlock<T> block, int lane, in LaneCase one, ref BatchCaseEnd end)
    {
        ref readonly var first = ref block.First;
        ref readonly var pack = ref block.Pack;
        var gap = Lane.Get(first.Voltage, lane) - Lane.Get(pack.CutoffVoltage, lane);
        var near = Lane.Get(block.State.Charge, lane) - Lane.Get(block.State.Lag, lane);
        var cause = Lane.Get(block.Demand.Power, lane) > 0 && Lane.Get(first.Margin, lane) < 0 ? EndCause.PowerLimit
            : gap <= 0 ? EndCause.VoltageCutoff
            : near <= 0 ? EndCause.Empty
            : Lane.Get(first.Current, lane) >= Lane.Get(pack.MaximumCurrent, lane) ? EndCause.OverCurrent
            : EndCause.OverTemperature;
        Write(block, lane, one, 0, 0, ref end);
        end.Cause = cause;
        end.AtStep = true;

        // A trifle less and it would have gone on.
        end.GrazesLimit |= cause == EndCause.VoltageCutoff
            && -gap < Lane.Get(LaneJudge<T, TWells>.Trifles(block, first, block.State.Charge), lane);
    }

    /// <summary>A limit is met within the step in hand.</summary>
    public static void Within(ref LaneBlock<T> block, int lane, in LaneCase one, ref BatchCaseEnd end)
    {
        var soonest = Lane.Get(block.Soonest, lane);
        var length = Lane.Get(block.Demand.Length, lane);
        Write(block, lane, one, Math.Min(soonest, 1 + (1 / length)), length, ref end);
        end.AtStep = false;
        end.Cause = Lane.Get(block.PowerRoot, lane) == soonest ? EndCause.PowerLimit
            : Lane.Get(block.VoltageRoot, lane) == soonest ? EndCause.VoltageCutoff
            : Lane.Get(block.EmptyRoot, lane) == soonest ? EndCause.Empty
            : Lane.Get(block.CurrentRoot, lane) == soonest ? EndCause.OverCurrent
            : EndCause.OverTemperature;
        var trifle = Lane.Get(LaneJudge<T, TWells>.Trifles(block, block.Last, block.End.Charge), lane);
        var approach = (Lane.Get(block.First.Voltage, lane) - Lane.Get(block.Last.Voltage, lane)) / length;
        if (end.Cause == EndCause.OverCurrent)
        {
            trifle *= Math.Abs(Lane.Get(block.Last.Response, lane));
            approach = (Lane.Get(block.Last.Current, lane) - Lane.Get(block.First.Current, lane)) / length;
        }
        else if (end.Cause != EndCause.VoltageCutoff)
        {
            return;
        }

        // It is approached so slowly that a trifle less would have let it pass the block, or moves it far.
        var remaining = one.Target - one.Start - end.Seconds;
        end.GrazesLimit |= approach * Math.Min(remaining, Moved * end.Seconds) < trifle;
    }

    /// <summary>The time limit is reached, by a step that was taken.</summary>
    public static void TimeOver(ref LaneBlock<T> block, int lane, in LaneCase one, ref BatchCaseEnd end)
    {
        Write(block, lane, one, 0, 0, ref end);
        end.Seconds = one.Limit - one.Start;
        end.Cause = EndCause.TimeLimit;
        end.AtStep = false;
    }

    // The state is that at a part of the step in hand.
    private static void Write(in LaneBlock<T> block, int lane, in LaneCase one, double part, double length, ref BatchCaseEnd end)
    {
        ref readonly var state = ref block.State;
        ref readonly var last = ref block.End;
        var lag = Between(state.Lag, last.Lag);
        end.Charge = Between(state.Charge, last.Charge);
        end.NearCharge = end.Charge - lag;
        end.Kelvin = Between(state.Kelvin, last.Kelvin);
        end.LowestKelvin = Math.Min(end.Kelvin, Lane.Get(block.LowestKelvin, lane));
        end.DeliveredJoules = Lane.Get(block.Delivered, lane)
            + (part == 0 ? 0 : part * Lane.Get(LaneRunner<T, TWells>.DeliveredIn(block), lane));
        end.SegmentsFinished = one.Finished;
        end.Seconds = Math.Max(0, Lane.Get(block.Demand.Time, lane) - one.Start + (part * length));
        end.GrazesLimit = Lane.Get(block.Grazed, lane) - one.Start < end.Seconds * (1 - Moved);

        double Between(T from, T to) => part == 0 ? Lane.Get(from, lane)
            : Lane.Get(from, lane) + (part * (Lane.Get(to, lane) - Lane.Get(from, lane)));
    }
}

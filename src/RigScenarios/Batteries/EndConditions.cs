using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>
/// The conditions that end a discharge, each as a gap that is above zero as long as the run goes on, and where in a step the
/// first one closes.
/// </summary>
internal sealed class EndConditions
{
    // In the order in which they are looked at right after a step of the demand.
    private static readonly EndCause[] Order =
        [EndCause.PowerLimit, EndCause.WatchedVoltage, EndCause.VoltageCutoff, EndCause.Empty, EndCause.OverCurrent,
            EndCause.OverTemperature];

    private static readonly EndCause[] OrderWithCharge =
        [EndCause.PowerLimit, EndCause.WatchedVoltage, EndCause.WatchedCharge, EndCause.VoltageCutoff, EndCause.Empty,
            EndCause.OverCurrent, EndCause.OverTemperature];

    // The power limit stands first in each order; a charge has none, and a rest ends at nothing.
    private static readonly EndCause[] OrderOfRest = [EndCause.PowerLimit];

    private static readonly EndCause[] OrderOfCharge =
        [EndCause.PowerLimit, EndCause.WatchedVoltage, EndCause.Full, EndCause.OverTemperature, EndCause.UnderTemperature];

    private readonly EndCause[] order;
    private readonly bool charges;
    private readonly double watchedCharge;
    private readonly double fullCharge;
    private readonly double minimumTemperature;
    private readonly double cutoffVoltage;
    private readonly double watchedVoltage;
    private readonly bool watchesTerminals;
    private readonly double maximumCurrent;
    private readonly double maximumTemperature;
    private readonly double[] gaps = new double[Vector512<double>.Count + 1];

    /// <param name="pack">The pack with its limits.</param>
    /// <param name="watchedVoltage">The terminal voltage that is watched, V; null if none is.</param>
    /// <param name="watchedCharge">The state of charge that is watched; null if none is.</param>
    /// <param name="charge">The conditions of a charge; null for a discharge.</param>
    public EndConditions(PackParameters pack, double? watchedVoltage, double? watchedCharge = null, ChargeWindow? charge = null)
    {
        charges = charge is not null;
        order = charge == ChargeWindow.Rest ? OrderOfRest
            : charges ? OrderOfCharge : watchedCharge is null ? Order : OrderWithCharge;
        this.watchedCharge = watchedCharge ?? 0;
        fullCharge = charge?.UpTo ?? 1;
        minimumTemperature = charge?.LowestKelvin ?? 0;
        cutoffVoltage = pack.CutoffVoltage;
        maximumCurrent = pack.MaximumCurrent;
        maximumTemperature = charge?.HighestKelvin ?? pack.MaximumTemperature;
        watchesTerminals = watchedVoltage is not null;
        this.watchedVoltage = watchedVoltage ?? 0;
    }

    /// <summary>The first condition that holds right after a step of the demand, in their order; null if none does.</summary>
    public EndCause? RightAfterStep(DischargeStep step, in PackState state)
    {
        // The power limit alone holds strictly: at the limit itself there is still a voltage.
        ref readonly var point = ref step.First;
        if (!charges && point.PowerMargin[0] < 0)
            return EndCause.PowerLimit;
        var lanes = StateLanes.Same(state);
        foreach (var cause in order.AsSpan(1))
        {
            if (cause == EndCause.WatchedVoltage && !Watches(step.Draw))
                continue;
            if (Gap(cause, point, lanes)[0] <= 0)
                return cause;
        }

        return null;
    }

    /// <summary>The condition that closes first within [0, <paramref name="end"/>] of the step, and where; null if none
    /// does.</summary>
    public EndCause? FirstWithin(DischargeStep step, double end, in CircuitLanes endPoint, in PackState endState,
        out double theta)
    {
        EndCause? first = null;
        theta = end;
        foreach (var cause in order)
        {
            if (cause == EndCause.WatchedVoltage && !Watches(step.Draw))
                continue;
            if (cause == EndCause.PowerLimit && (charges || !step.Draw.HasPowerLimit))
                continue;
            if (Closes(cause, step, end, endPoint, endState, out var where) && (first is null || where < theta))
            {
                first = cause;
                theta = where;
            }
        }

        return first;
    }

    private bool Watches(in TerminalDraw draw) => draw.Solved?.Watches ?? watchesTerminals;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector512<double> Gap(EndCause cause, in CircuitLanes point, in StateLanes state) => cause switch
    {
        EndCause.PowerLimit => point.PowerMargin,
        EndCause.WatchedVoltage => point.Watched - Vector512.Create(watchedVoltage),
        EndCause.VoltageCutoff => point.Voltage - Vector512.Create(cutoffVoltage),
        EndCause.Empty => state.Near,
        EndCause.WatchedCharge => state.Near - Vector512.Create(watchedCharge),
        EndCause.Full => Vector512.Min(Vector512.Create(fullCharge) - state.Charge, Vector512<double>.One - state.Near),
        EndCause.UnderTemperature => state.Kelvin - Vector512.Create(minimumTemperature),
        EndCause.OverCurrent => Vector512.Create(maximumCurrent) - point.Current,
        _ => Vector512.Create(maximumTemperature) - state.Kelvin,
    };

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Closes(EndCause cause, DischargeStep step, double end, in CircuitLanes endPoint, in PackState endState,
        out double theta)
    {
        theta = end;
        var inStep = Gap(cause, step.Circuits, step.States);

        // Mostly the gap is wide against its change over the step.
        var least = Collocation.Least(inStep);
        if (end == 1 && least > Collocation.Largest(inStep) - least)
            return false;

        var count = 0;
        while (Position(count) < end)
            gaps[count] = inStep[Collocation.LanesInOrder[count++]];
        gaps[count] = Gap(cause, endPoint, StateLanes.Same(endState))[0];
        for (var i = 0; i <= count; i++)
        {
            if (gaps[i] <= 0)
            {
                theta = i == 0 ? 0 : Root(cause, step, Position(i - 1), i == count ? end : Position(i));
                return true;
            }

            // Between the places the gap may close and open again: looked at where it is least and small against its change
            // nearby.
            var left = i > 0 ? gaps[i - 1] : double.NegativeInfinity;
            var right = i < count ? gaps[i + 1] : double.NegativeInfinity;
            if (right <= 0 || gaps[i] > Math.Max(left, right) - gaps[i] || (i > 0 && left < gaps[i])
                || (i < count && right < gaps[i]))
                continue;
            var low = i > 0 ? Position(i - 1) : 0;
            var high = i < count ? (i + 1 == count ? end : Position(i + 1)) : end;
            var lowest = Lowest(cause, step, low, high);
            if (GapAt(cause, step, lowest) > 0)
                continue;
            theta = Root(cause, step, low, lowest);
            return true;
        }

        return false;

        static double Position(int i) => Collocation.Places[Collocation.LanesInOrder[i]];
    }

    // Methods of their own, so that the functions are made only where they are needed.
    private double Lowest(EndCause cause, DischargeStep step, double low, double high) =>
        RootBracket.Minimum(at => GapAt(cause, step, at), low, high, 1e-9);

    private double Root(EndCause cause, DischargeStep step, double low, double high) =>
        RootBracket.Root(at => GapAt(cause, step, at), low, high, 1e-14);

    private double GapAt(EndCause cause, DischargeStep step, double theta)
    {
        var state = step.StateAt(theta);
        step.Solve(theta, state, out var point);
        return Gap(cause, point, StateLanes.Same(state))[0];
    }
}

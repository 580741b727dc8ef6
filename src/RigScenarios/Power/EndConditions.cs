namespace RigScenarios.Power;

/// <summary>
/// The conditions that end a discharge, each as a gap that is above zero as long as the run goes on, and where in a step the first one closes.
/// </summary>
internal sealed class EndConditions
{
    // In the order in which they are looked at right after a step of the demand.
    private static readonly EndCause[] Order =
        [EndCause.PowerLimit, EndCause.WatchedVoltage, EndCause.VoltageCutoff, EndCause.Empty, EndCause.OverCurrent, EndCause.OverTemperature];

    // Nodes and check points of a step, merged in their order; a check point is stored as the complement of its index.
    private static readonly (double Theta, int Index)[] Samples =
    [
        .. Collocation.Nodes.Select((theta, i) => (Theta: theta, Index: i))
            .Concat(Collocation.CheckPoints.Select((theta, k) => (Theta: theta, Index: ~k)))
            .OrderBy(sample => sample.Theta),
    ];

    private readonly double cutoffVoltage;
    private readonly double watchedVoltage;
    private readonly double maximumCurrent;
    private readonly double maximumTemperature;
    private readonly double[] gaps = new double[Samples.Length + 1];

    /// <param name="pack">The pack with its limits.</param>
    /// <param name="watchedVoltage">V; negative infinity if none is watched.</param>
    public EndConditions(PackParameters pack, double watchedVoltage)
    {
        cutoffVoltage = pack.CutoffVoltage;
        maximumCurrent = pack.MaximumCurrent;
        maximumTemperature = pack.MaximumTemperature;
        this.watchedVoltage = watchedVoltage;
    }

    /// <summary>The first condition that holds right after a step of the demand, in their order; null if none does.</summary>
    public EndCause? RightAfterStep(in CircuitPoint point, in PackState state)
    {
        // The power limit alone holds strictly: at the limit itself there is still a voltage.
        if (point.PowerMargin < 0)
            return EndCause.PowerLimit;
        foreach (var cause in Order.AsSpan(1))
        {
            if (Gap(cause, point, state) <= 0)
                return cause;
        }

        return null;
    }

    /// <summary>The condition that closes first within [0, <paramref name="end"/>] of the step, and where; null if none does.</summary>
    public EndCause? FirstWithin(DischargeStep step, double end, in CircuitPoint endPoint, in PackState endState, out double theta)
    {
        EndCause? first = null;
        theta = end;
        foreach (var cause in Order)
        {
            if (cause == EndCause.WatchedVoltage && double.IsNegativeInfinity(watchedVoltage))
                continue;
            if (cause == EndCause.PowerLimit && step.Draw.Power == 0)
                continue;
            if (Closes(cause, step, end, endPoint, endState, out var where) && (first is null || where < theta))
            {
                first = cause;
                theta = where;
            }
        }

        return first;
    }

    private double Gap(EndCause cause, in CircuitPoint point, in PackState state) => cause switch
    {
        EndCause.PowerLimit => point.PowerMargin,
        EndCause.WatchedVoltage => point.Voltage - watchedVoltage,
        EndCause.VoltageCutoff => point.Voltage - cutoffVoltage,
        EndCause.Empty => state.Charge,
        EndCause.OverCurrent => maximumCurrent - point.Current,
        _ => maximumTemperature - state.Kelvin,
    };

    private bool Closes(EndCause cause, DischargeStep step, double end, in CircuitPoint endPoint, in PackState endState, out double theta)
    {
        theta = end;
        var count = 0;
        while (Samples[count].Theta < end)
        {
            var index = Samples[count].Index;
            gaps[count++] = index >= 0
                ? Gap(cause, step.Points[index], step.States[index])
                : Gap(cause, step.CheckCircuits[~index], step.CheckStates[~index]);
        }

        gaps[count] = Gap(cause, endPoint, endState);
        for (var i = 0; i <= count; i++)
        {
            if (gaps[i] <= 0)
            {
                theta = i == 0 ? 0 : Root(cause, step, Position(i - 1), i == count ? end : Position(i));
                return true;
            }

            // Between the samples the gap may close and open again: looked at where it is least and small against its change nearby.
            var left = i > 0 ? gaps[i - 1] : double.NegativeInfinity;
            var right = i < count ? gaps[i + 1] : double.NegativeInfinity;
            if (right <= 0 || gaps[i] > Math.Max(left, right) - gaps[i] || (i > 0 && left < gaps[i]) || (i < count && right < gaps[i]))
                continue;
            var low = i > 0 ? Position(i - 1) : 0;
            var high = i < count ? (i + 1 == count ? end : Position(i + 1)) : end;
            var least = RootBracket.Minimum(at => GapAt(cause, step, at), low, high, 1e-9);
            if (GapAt(cause, step, least) > 0)
                continue;
            theta = Root(cause, step, low, least);
            return true;
        }

        return false;

        static double Position(int i) => Samples[i].Theta;
    }

    private double Root(EndCause cause, DischargeStep step, double low, double high) =>
        RootBracket.Root(at => GapAt(cause, step, at), low, high, 1e-14);

    private double GapAt(EndCause cause, DischargeStep step, double theta)
    {
        var state = step.StateAt(theta);
        CircuitPoint point = default;
        step.Solve(state, ref point);
        return Gap(cause, point, state);
    }
}

using System.Runtime.InteropServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>The case in a lane: which one it is, and where it stands in its demand. Boundaries are counted from the start of the
/// demand, so that they don't drift.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct LaneCase
{
    private readonly BatchDemand demand;
    private readonly double scale;
    private double repetitionStart;
    private int index;

    /// <param name="place">The place of the case among those of the batch.</param>
    /// <param name="one">The case.</param>
    public LaneCase(int place, in BatchCase one)
    {
        Place = place;
        demand = one.Demand;
        scale = one.DemandScale;
        var ends = demand.Ends;
        Start = one.DemandOffset % demand.Period;
        while (index < ends.Length && Start > ends[index] - DemandCursor.Snap)
            index++;
        if (index > 0 && Start < ends[index - 1])
            Start = ends[index - 1];
        if (index == ends.Length)
            (index, Start) = (0, 0);
        Limit = Start + one.TimeLimit;
    }

    /// <summary>The place of the case among those of the batch.</summary>
    public int Place { get; }

    /// <summary>Time at which the run begins, s from the start of the demand.</summary>
    public double Start { get; }

    /// <summary>The time limit, s from the start of the demand.</summary>
    public double Limit { get; }

    /// <summary>Segments finished since the run began.</summary>
    public int Finished { get; private set; }

    /// <summary>P in W, Ic in A and g in S of the segment that holds.</summary>
    public readonly (double Power, double Current, double Conductance) Draw =>
        (demand.Powers[index] * scale, demand.Currents[index] * scale, demand.Conductances[index] * scale);

    /// <summary>The voltage at which the discharge ends in the segment that holds, V; null for the pack's own cut-off.</summary>
    public readonly double? EndVoltage => demand.EndVoltages?[index];

    /// <summary>End of the segment that holds or the time limit, whichever comes first: the limit where both are within a
    /// rounding of each other. In s from the start of the demand.</summary>
    public readonly double Target
    {
        get
        {
            var boundary = repetitionStart + demand.Ends[index];
            return Limit <= boundary + DemandCursor.Snap ? Limit : boundary;
        }
    }

    /// <summary>Passes to the next segment.</summary>
    public void Advance()
    {
        Finished++;
        if (++index < demand.Ends.Length)
            return;
        index = 0;
        repetitionStart += demand.Period;
    }
}

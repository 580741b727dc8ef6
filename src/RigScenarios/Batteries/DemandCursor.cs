using UnitsNet.Units;

namespace RigScenarios.Batteries;

/// <summary>Where a run stands in its repeating demand, in plain SI numbers. Boundaries are counted from the start of the demand,
/// so that they don't drift.</summary>
internal sealed class DemandCursor
{
    /// <summary>A time this close to a boundary, s, is taken as the boundary: offsets come from sums of rounded
    /// numbers.</summary>
    public const double Snap = 1e-9;

    private readonly TerminalDraw[] draws;
    private readonly double[] ends;
    private double repetitionStart;

    /// <param name="demand">The demand.</param>
    /// <param name="offset">Where in it the run begins, s; 0 or more.</param>
    public DemandCursor(Demand demand, double offset)
        : this(
            [.. demand.Segments.Select(segment => new TerminalDraw(
                (double)segment.ConstantPower.As(PowerUnit.Watt), segment.ConstantCurrent.Amperes, segment.Conductance.Siemens))],
            [.. demand.Segments.Select(segment => segment.Length.Seconds)],
            offset)
    {
    }

    /// <param name="draws">The draw in each segment.</param>
    /// <param name="lengths">The length of each segment, s; above 0.</param>
    /// <param name="offset">Where in them the run begins, s; 0 or more.</param>
    public DemandCursor(TerminalDraw[] draws, double[] lengths, double offset)
    {
        this.draws = draws;
        ends = new double[draws.Length];
        var end = 0.0;
        for (var i = 0; i < draws.Length; i++)
        {
            end += lengths[i];
            ends[i] = end;
        }

        Start = offset % end;
        while (Index < ends.Length && Start > ends[Index] - Snap)
            Index++;
        if (Index > 0 && Start < ends[Index - 1])
            Start = ends[Index - 1];
        if (Index == ends.Length)
            (Index, Start) = (0, 0);
    }

    /// <summary>Time at which the run begins, s from the start of the demand.</summary>
    public double Start { get; }

    /// <summary>Index of the segment that holds.</summary>
    public int Index { get; private set; }

    /// <summary>Segments finished since the run began.</summary>
    public int Finished { get; private set; }

    /// <summary>The draw of the segment that holds.</summary>
    public TerminalDraw Draw => draws[Index];

    /// <summary>Number of segments in one repetition.</summary>
    public int Count => draws.Length;

    /// <summary>End of the segment that holds, s from the start of the demand.</summary>
    public double Boundary => repetitionStart + ends[Index];

    /// <summary>Passes to the next segment; true if its draw is another one.</summary>
    public bool Advance()
    {
        var before = Draw;
        Finished++;
        Index++;
        if (Index == draws.Length)
        {
            Index = 0;
            repetitionStart += ends[^1];
        }

        return Draw != before;
    }

    /// <summary>A time as an offset from the start of the demand's present repetition, s.</summary>
    public double OffsetOf(double time) => Math.Max(0, time - repetitionStart);
}

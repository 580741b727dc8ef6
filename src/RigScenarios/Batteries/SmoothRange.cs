using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>
/// The range in which the model is smooth: a piece of the open-circuit voltage for each well and a temperature band. A step ends
/// where it leaves that range.
/// </summary>
/// <remarks>
/// The far well's voltage acts through the heat of mixing alone, and only its second derivative jumps at a point of the table.
/// So its piece may be wrong for a while: the heat that this costs is S·3600·Q·aQ·(1 - c)·J·d³/6 for a jump J and a distance d to
/// the point, however fast the point is passed.
/// </remarks>
internal sealed class SmoothRange
{
    // How far a temperature, K, or a state of charge of the near well passes the edge of its range before the next holds: a pack
    // that rests on an edge must not flicker.
    private const double BandOverlap = 1e-9;
    private const double NearOverlap = 1e-10;

    // Change of temperature, K, that the wrong piece of the far well may cost, over the tolerance: a kelvin moves the voltage by
    // less than 0.01 of itself.
    private const double KelvinPerTolerance = 1;

    private const int LastNode = Collocation.Count - 1;

    private readonly PackParameters pack;
    private readonly double reach;
    private int near;
    private int nextNear;
    private int band;
    private int nextBand;

    public SmoothRange(PackParameters pack, in PackState start, double tolerance)
    {
        this.pack = pack;
        if (pack.HasFarWell)
        {
            reach = Math.Cbrt(6 * KelvinPerTolerance * tolerance * pack.HeatCapacity
                / (pack.Groups * pack.ChargePerUnit * (1 - pack.NearShare)));
        }

        // On a point of the table the lower piece holds: the charge falls.
        near = pack.OpenCircuit.IndexOf(start.Near);
        if (near > 0 && start.Near <= pack.OpenCircuit.Pieces[near].Start)
            near--;
        var kelvin = start.Kelvin;
        band = Math.Max(0, Array.FindLastIndex(pack.Bands, one => kelvin >= one.From));
        (nextNear, nextBand) = (near, band);
    }

    /// <summary>What holds in a step that begins in a state.</summary>
    public StepPieces At(in PackState state) => new(
        pack.OpenCircuit.Pieces[near], pack.HasFarWell ? pack.OpenCircuit.Pieces[FarAt(state)] : default, pack.Bands[band]);

    /// <summary>Where charge and temperature rise or fall from the edge of two ranges, the one that they go into.</summary>
    /// <param name="state">The state.</param>
    /// <param name="nearRate">d(zn)/dt, 1/s.</param>
    /// <param name="heatingRate">dT/dt, K/s.</param>
    public void ChooseByDirection(in PackState state, double nearRate, double heatingRate)
    {
        if (band > 0 && state.Kelvin == pack.Bands[band].From && heatingRate < 0)
            band--;
        if (nearRate > 0 && state.Near >= pack.OpenCircuit.Pieces[near].End && near < pack.OpenCircuit.Pieces.Length - 1)
            near++;
        (nextNear, nextBand) = (near, band);
    }

    /// <summary>The time, s, after which the near well is a little beyond the next point of the table; infinite if there is
    /// none.</summary>
    /// <param name="charge">zn.</param>
    /// <param name="rate">d(zn)/dt, 1/s.</param>
    public double TimeToPoint(double charge, double rate)
    {
        ref readonly var piece = ref pack.OpenCircuit.Pieces[near];

        // On a point itself: what comes next shows where the step leads.
        if (pack.HasFarWell && (rate < 0 ? charge - piece.Start : piece.End - charge) < 10 * NearOverlap)
            return double.PositiveInfinity;
        if (rate < 0)
            return (1.05 * Math.Max(0, charge - piece.Start) / -rate) + 1e-6;
        return rate > 0 && near < pack.OpenCircuit.Pieces.Length - 1
            ? (1.05 * Math.Max(0, piece.End - charge) / rate) + 1e-6 : double.PositiveInfinity;
    }

    /// <summary>Where the step leaves the range, θ; 1 if it doesn't.</summary>
    public double LeavesAt(DischargeStep step)
    {
        (nextNear, nextBand) = (near, band);
        var theta = pack.HasFarWell ? Wells(step) : OneWell(step);
        var current = pack.Bands[band];
        for (var i = 1; i < Collocation.Count; i++)
        {
            var kelvin = step.States.Kelvin[i];
            if (kelvin >= current.From - BandOverlap && kelvin <= current.To + BandOverlap)
                continue;
            var isColder = kelvin < current.From;
            var (edge, neighbour) = isColder ? (current.From - BandOverlap, band - 1) : (current.To + BandOverlap, band + 1);
            var crossing = PlaceOfTemperature(step, edge, Collocation.Nodes[i - 1], Collocation.Nodes[i]);
            if (crossing < theta)
            {
                theta = crossing;
                (nextNear, nextBand) = (near, neighbour);
            }

            break;
        }

        return theta;
    }

    /// <summary>Takes what holds after the place that was found last, if the step goes so far.</summary>
    public void Pass() => (near, band) = (nextNear, nextBand);

    // The charge of one well falls all the time, or rises all the time.
    private double OneWell(DischargeStep step)
    {
        ref readonly var piece = ref pack.OpenCircuit.Pieces[near];
        var last = step.States.Charge[LastNode];
        if (near > 0 && last <= piece.Start)
            return PlaceOfNear(step, piece.Start, near - 1, 0, 1);
        return near < pack.OpenCircuit.Pieces.Length - 1 && last >= piece.End
            ? PlaceOfNear(step, piece.End, near + 1, 0, 1) : 1;
    }

    // The near well may fall and rise again: it is looked at from node to node.
    private double Wells(DischargeStep step)
    {
        var pieces = pack.OpenCircuit.Pieces;
        ref readonly var piece = ref pieces[near];
        var low = near > 0 ? piece.Start - NearOverlap : double.NegativeInfinity;
        var high = near < pieces.Length - 1 ? piece.End + NearOverlap : double.PositiveInfinity;
        var (lowFar, highFar) = FarEnds(step.Pieces.Far);
        var (charges, lags) = (step.States.Charge, step.States.Lag);
        for (var i = 1; i < Collocation.Count; i++)
        {
            var (from, to) = (Collocation.Nodes[i - 1], Collocation.Nodes[i]);
            var theta = 1.0;
            var charge = charges[i] - lags[i];
            if (charge < low)
                theta = PlaceOfNear(step, low, near - 1, from, to);
            else if (charge > high)
                theta = PlaceOfNear(step, high, near + 1, from, to);
            var far = charges[i] + (lags[i] * pack.FarPerLag);
            if (far < lowFar || far > highFar)
            {
                var edge = far < lowFar ? lowFar : highFar;
                var place = PlaceOfFar(step, edge, from, to);
                if (place < theta)
                {
                    theta = place;
                    nextNear = near;
                }
            }

            if (theta < 1)
                return theta;
        }

        return 1;
    }

    // Methods of their own, so that the functions are made only where they are needed.
    private double PlaceOfNear(DischargeStep step, double edge, int neighbour, double from, double to)
    {
        nextNear = neighbour;
        return RootBracket.Root(at => step.NearAt(at) - edge, from, to, 1e-14);
    }

    private static double PlaceOfFar(DischargeStep step, double edge, double from, double to) =>
        RootBracket.Root(at => step.FarAt(at) - edge, from, to, 1e-14);

    private static double PlaceOfTemperature(DischargeStep step, double edge, double from, double to) =>
        RootBracket.Root(at => step.StateAt(at).Kelvin - edge, from, to, 1e-14);

    // The piece of the far well: the next one already where its point is within reach.
    private int FarAt(in PackState state)
    {
        var pieces = pack.OpenCircuit.Pieces;
        var charge = state.Charge + (state.Lag * pack.FarPerLag);
        var index = pack.OpenCircuit.IndexOf(charge);
        if (state.Lag > 0 && index > 0 && charge - pieces[index].Start < ReachAt(index))
            return index - 1;
        return state.Lag < 0 && index < pieces.Length - 1 && pieces[index].End - charge < ReachAt(index + 1) ? index + 1 : index;
    }

    // How far the far well may go with a piece.
    private (double Low, double High) FarEnds(in MonotoneCubic.Piece piece)
    {
        var index = pack.OpenCircuit.IndexOf(piece.Start);
        return (index > 0 ? piece.Start - ReachAt(index) : double.NegativeInfinity,
            index < pack.OpenCircuit.Pieces.Length - 1 ? piece.End + ReachAt(index + 1) : double.PositiveInfinity);
    }

    // Within which distance of a point it hardly matters which of its two pieces holds; the point between pieces index - 1 and
    // index.
    private double ReachAt(int index)
    {
        ref readonly var below = ref pack.OpenCircuit.Pieces[index - 1];
        ref readonly var above = ref pack.OpenCircuit.Pieces[index];
        return Math.Min(
            reach / (pack.OpenCircuit.CurvatureJumpRoots[index] + 1e-9),
            0.5 * Math.Min(below.End - below.Start, above.End - above.Start));
    }
}

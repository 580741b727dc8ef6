using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// Runs one discharge: takes steps of controlled error, begins anew at each step of the demand, each point of the open-circuit
/// table
/// and each edge of a temperature band, and stops where the first end condition is met.
/// </summary>
internal sealed class DischargeRun
{
    // A step of this length, s, is accepted whatever its error: what is left undone in it moves no result. It is reached only
    // right before a power limit, where the current turns with an infinite slope.
    private const double ShortestStep = 1e-4;

    // How far a temperature, K, passes the edge of its band before the next holds: a pack that rests on an edge must not flicker.
    private const double BandOverlap = 1e-9;

    private const int LastNode = Collocation.Count - 1;

    private readonly PackParameters pack;
    private readonly DischargeOptions options;
    private readonly DemandCursor cursor;
    private readonly DischargeStep step;
    private readonly EndConditions conditions;
    private readonly SeriesRecorder recorder;
    private readonly RunObserver? observer;
    private readonly double[] firstLengths;
    private readonly double limit;
    private readonly double startKelvin;
    private readonly double ambientKelvin;
    private readonly double ambientSlope;

    private PackState state;
    private double time;
    private double nextLength;
    private int piece;
    private int band;
    private double charge;
    private double delivered;
    private double chemical;
    private double heatToAmbient;

    public DischargeRun(Pack pack, Temperature ambient, DischargeStart start, Demand demand, DischargeOptions options)
        : this(new PackParameters(pack), ambient, start, new DemandCursor(demand, start.DemandOffset.Seconds), options, null)
    {
    }

    /// <param name="pack">The pack.</param>
    /// <param name="ambient">Temperature of the air around it.</param>
    /// <param name="start">The state at the start; where the cursor stands, it does not say.</param>
    /// <param name="cursor">The demand, and where in it the run begins.</param>
    /// <param name="options">When to stop, how exactly, how much to keep.</param>
    /// <param name="observer">Told of each moment that is looked at; null for none.</param>
    /// <param name="ambientSlope">How fast the temperature of the air rises from <paramref name="ambient"/>, K/s.</param>
    /// <param name="charge">The conditions of a charge; null for a discharge.</param>
    public DischargeRun(
        PackParameters pack, Temperature ambient, DischargeStart start, DemandCursor cursor, DischargeOptions options,
        RunObserver? observer,
        double ambientSlope = 0, ChargeWindow? charge = null)
    {
        this.pack = pack;
        this.options = options;
        this.cursor = cursor;
        this.observer = observer;
        ambientKelvin = ambient.Kelvins;
        this.ambientSlope = ambientSlope;
        startKelvin = start.Temperature?.Kelvins ?? ambientKelvin;
        state = new PackState(start.StateOfCharge.DecimalFractions, start.Voltage1.Volts, start.Voltage2.Volts, startKelvin);
        firstLengths = new double[cursor.Count];
        time = cursor.Start;
        limit = cursor.Start + (options.TimeLimit ?? DischargeOptions.LongestRun).Seconds;
        step = new DischargeStep(this.pack, ambientSlope);
        conditions = new EndConditions(this.pack, options.WatchedVoltage?.Volts, options.WatchedCharge?.DecimalFractions, charge);
        recorder = new SeriesRecorder(options.SeriesPoints);
        piece = PieceBelow(state.Charge);
        band = BandOf(startKelvin);
    }

    /// <summary>Runs to the end.</summary>
    public DischargeResult Run(CancellationToken cancellation)
    {
        ChooseByDirection();
        var afterStep = true;
        var theta = 0.0;
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            Begin(afterStep, theta);
            if (afterStep)
            {
                if (conditions.RightAfterStep(step, state) is { } atOnce)
                    return End(atOnce, atStep: true, step.First[0]);
                recorder.Add(time - cursor.Start, step.First[0], state, atStep: true);
                observer?.AfterChange(time - cursor.Start, step.First[0], state, AirKelvin);
                var first = firstLengths[cursor.Index];
                nextLength = first > 0 ? first : 0.3 * Math.Min(pack.TimeConstant1, pack.TimeConstant2);
            }

            // A limit within a rounding of a boundary is met there: the time limit comes before what would begin then.
            var target = limit <= cursor.Boundary + DemandCursor.Snap ? limit : cursor.Boundary;
            TakeStep(target - time);
            if (afterStep)
                firstLengths[cursor.Index] = step.Length;
            var toTarget = step.Length == target - time;

            theta = LeavesSmoothRange(out var nextPiece, out var nextBand);
            var endState = theta == 1 ? step.States[LastNode] : step.StateAt(theta);
            step.Solve(theta, endState, out var endPoint);

            var cause = conditions.FirstWithin(step, theta, endPoint, endState, out var eventTheta);
            if (cause is not null)
            {
                theta = eventTheta;
                endState = step.StateAt(theta);
                step.Solve(theta, endState, out endPoint);
            }

            var stepEnds = cause is null && theta == 1 && toTarget;
            Record(theta, endPoint[0], endState, stepEnds);
            observer?.Step(step.Lanes(theta, endPoint[0], endState, time - cursor.Start));
            Accumulate(theta);
            state = endState;
            time = stepEnds ? target : time + (theta * step.Length);
            if (cause is { } found)
                return End(found, atStep: false, endPoint[0]);

            (piece, band) = (nextPiece, nextBand);
            afterStep = false;
            if (!stepEnds)
                continue;
            if (time == limit)
                return End(EndCause.TimeLimit, atStep: false, endPoint[0]);
            afterStep = cursor.Advance();
        }
    }

    private double AirKelvin => ambientKelvin + (ambientSlope * (time - cursor.Start));

    private void Begin(bool afresh, double lastTheta)
    {
        step.Hold(pack.OpenCircuit.Pieces[piece], pack.Bands[band], cursor.Draw, AirKelvin);
        if (afresh)
            step.Begin(state);
        else
            step.Continue(state, lastTheta);
    }

    private void TakeStep(double remaining)
    {
        var length = nextLength;

        // The next point of the open-circuit table; a little beyond, so that the step reaches it.
        var rate = -step.First.ChargeRate[0];
        if (rate > 0)
            length = Math.Min(length, (1.05 * Math.Max(0, state.Charge - step.Piece.Start) / rate) + 1e-6);
        else if (rate < 0 && piece < pack.OpenCircuit.Pieces.Length - 1)
            length = Math.Min(length, (1.05 * Math.Max(0, step.Piece.End - state.Charge) / -rate) + 1e-6);
        if (length > 0.9 * remaining)
            length = remaining;
        else if (length > 0.5 * remaining)
            length = 0.5 * remaining;

        while (true)
        {
            var converged = step.TrySolve(length, options.RelativeTolerance, out var error);
            var ratio = error / options.RelativeTolerance;
            if (ratio <= 1 || length <= ShortestStep)
            {
                // A step that was cut short for another reason says little of how long the next may be.
                nextLength = Math.Max(length * Growth(ratio, 4), ShortestStep);
                return;
            }

            length = Math.Max(length * (converged ? Math.Max(Growth(ratio, 0.8), 0.1) : 0.25), Math.Min(ShortestStep, remaining));
        }
    }

    private static double Growth(double ratio, double most) =>
        Math.Min(most, 0.9 * Math.Pow(Math.Max(ratio, 1e-12), -1.0 / Collocation.Count));

    // Where the step leaves its open-circuit piece or its temperature band; 1 if it doesn't.
    private double LeavesSmoothRange(out int nextPiece, out int nextBand)
    {
        var theta = 1.0;
        (nextPiece, nextBand) = (piece, band);
        var knot = step.Piece.Start;
        if (piece > 0 && step.States.Charge[LastNode] <= knot)
        {
            theta = PlaceOfCharge(knot);
            nextPiece = piece - 1;
        }
        else if (piece < pack.OpenCircuit.Pieces.Length - 1 && step.States.Charge[LastNode] >= step.Piece.End)
        {
            theta = PlaceOfCharge(step.Piece.End);
            nextPiece = piece + 1;
        }

        var current = step.Band;
        for (var i = 1; i < Collocation.Count; i++)
        {
            var kelvin = step.States.Kelvin[i];
            if (kelvin >= current.From - BandOverlap && kelvin <= current.To + BandOverlap)
                continue;
            var isColder = kelvin < current.From;
            var (edge, neighbour) = isColder ? (current.From - BandOverlap, band - 1) : (current.To + BandOverlap, band + 1);
            var crossing = PlaceOfTemperature(edge, Collocation.Nodes[i - 1], Collocation.Nodes[i]);
            if (crossing < theta)
            {
                theta = crossing;
                (nextPiece, nextBand) = (piece, neighbour);
            }

            break;
        }

        return theta;
    }

    private double PlaceOfCharge(double knot) => RootBracket.Root(at => step.ChargeAt(at) - knot, 0, 1, 1e-14);

    private double PlaceOfTemperature(double edge, double low, double high) =>
        RootBracket.Root(at => step.StateAt(at).Kelvin - edge, low, high, 1e-14);

    private void Record(double theta, in CircuitPoint endPoint, in PackState endState, bool atStep)
    {
        if (!recorder.Enabled)
            return;
        var from = time - cursor.Start;
        for (var i = 1; i < Collocation.Count && Collocation.Nodes[i] < theta; i++)
            recorder.Add(from + (Collocation.Nodes[i] * step.Length), step.Circuits[i], step.States[i], atStep: false);
        recorder.Add(from + (theta * step.Length), endPoint, endState, atStep);
    }

    private void Accumulate(double theta)
    {
        var integrals = step.Integrate(theta);
        charge += integrals.Charge;
        delivered += integrals.Delivered;
        chemical += integrals.Chemical;
        heatToAmbient += integrals.HeatToAmbient;
    }

    private int PieceBelow(double z)
    {
        // On a point of the table the lower piece holds: the charge falls.
        var index = pack.OpenCircuit.IndexOf(z);
        return index > 0 && z <= pack.OpenCircuit.Pieces[index].Start ? index - 1 : index;
    }

    private int BandOf(double kelvin) => Math.Max(0, Array.FindLastIndex(pack.Bands, one => kelvin >= one.From));

    // A start on the edge of two bands or pieces: the one towards which temperature or charge moves.
    private void ChooseByDirection()
    {
        Begin(afresh: true, 0);
        if (band > 0 && state.Kelvin == pack.Bands[band].From && step.HeatingRate < 0)
            band--;
        if (step.First.ChargeRate[0] > 0 && state.Charge >= step.Piece.End && piece < pack.OpenCircuit.Pieces.Length - 1)
            piece++;
    }

    private DischargeResult End(EndCause cause, bool atStep, in CircuitPoint point)
    {
        var none = cause == EndCause.PowerLimit && atStep;
        if (atStep && !none)
            recorder.Add(time - cursor.Start, point, state, atStep: true);

        var stored = pack.HeatCapacity * (state.Kelvin - startKelvin);
        return new DischargeResult(
            Duration.FromSeconds(time - cursor.Start),
            cause,
            atStep,
            cursor.Finished,
            new DischargeStart
            {
                StateOfCharge = Ratio.FromDecimalFractions(Math.Clamp(state.Charge, 0, 1)),
                Temperature = Temperature.FromKelvins(state.Kelvin),
                Voltage1 = ElectricPotential.FromVolts(state.Voltage1),
                Voltage2 = ElectricPotential.FromVolts(state.Voltage2),
                DemandOffset = Duration.FromSeconds(cursor.OffsetOf(time)),
            },
            none ? null : ElectricPotential.FromVolts(point.Voltage),
            none ? null : ElectricCurrent.FromAmperes(point.Current),
            recorder.Points(),
            new EnergyAccount(
                Energy.FromJoules(chemical),
                Energy.FromJoules(delivered),
                Energy.FromJoules(stored + heatToAmbient),
                Energy.FromJoules(heatToAmbient),
                ElectricCharge.FromCoulombs(charge)));
    }
}

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

    private readonly PackParameters pack;
    private readonly DischargeOptions options;
    private readonly DemandCursor cursor;
    private readonly DischargeStep step;
    private readonly SmoothRange range;
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
        state = start.State(ambientKelvin);
        if (!pack.HasFarWell)
            state = state with { Lag = 0 };
        startKelvin = state.Kelvin;
        firstLengths = new double[cursor.Count];
        time = cursor.Start;
        limit = cursor.Start + (options.TimeLimit ?? DischargeOptions.LongestRun).Seconds;
        step = new DischargeStep(this.pack, ambientSlope);
        conditions = new EndConditions(this.pack, options.WatchedVoltage?.Volts, options.WatchedCharge?.DecimalFractions, charge);
        recorder = new SeriesRecorder(options.SeriesPoints);
        range = new SmoothRange(pack, state, options.RelativeTolerance);
    }

    /// <summary>Runs to the end.</summary>
    public DischargeResult Run(CancellationToken cancellation)
    {
        // A start on the edge of two ranges: the one towards which temperature or charge moves.
        Begin(afresh: true, 0);
        range.ChooseByDirection(state, NearRate, step.HeatingRate);
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

            theta = range.LeavesAt(step);
            var endState = theta == 1 ? step.States[Collocation.Count - 1] : step.StateAt(theta);
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

            range.Pass();
            afterStep = false;
            if (!stepEnds)
                continue;
            if (time == limit)
                return End(EndCause.TimeLimit, atStep: false, endPoint[0]);
            afterStep = cursor.Advance();
        }
    }

    private double AirKelvin => ambientKelvin + (ambientSlope * (time - cursor.Start));

    // d(zn)/dt at the start of the step, 1/s.
    private double NearRate => pack.HasFarWell
        ? (step.First.ChargeRate[0] / pack.NearShare) + (state.Lag * step.First.ExchangeRate[0]) : step.First.ChargeRate[0];

    private void Begin(bool afresh, double lastTheta)
    {
        step.Hold(range.At(state), cursor.Draw, AirKelvin);
        if (afresh)
            step.Begin(state);
        else
            step.Continue(state, lastTheta);
    }

    private void TakeStep(double remaining)
    {
        // To the next point of the open-circuit table, a little beyond, so that the step reaches it.
        var length = Math.Min(nextLength, range.TimeToPoint(state.Near, NearRate));
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
            DischargeStart.Of(state) with { DemandOffset = Duration.FromSeconds(cursor.OffsetOf(time)) },
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

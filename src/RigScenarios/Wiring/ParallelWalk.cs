using RigScenarios.Batteries;
using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>
/// One run of packs in parallel: an embedded Runge-Kutta pair of order 5 and 4 over the states of all packs (J. R. Dormand and P. J. Prince, J. Comput. Appl. Math.
/// 6 (1980) 19-26), because the step of a single pack knows no second one. The circuit is the same.
/// </summary>
internal sealed class ParallelWalk
{
    private const double Tolerance = 1e-9;
    private const int Values = 6;

    // Stage times are not needed: nothing depends on time itself.
    private static readonly double[][] Stages =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    private static readonly double[] Fourth = [5179.0 / 57600, 0, 7571.0 / 16695, 393.0 / 640, -92097.0 / 339200, 187.0 / 2100, 1.0 / 40];

    private readonly WiringNetwork network;
    private readonly WiringDraw draw;
    private readonly PackParameters[] packs;
    private readonly ParallelBus bus;
    private readonly double ambient;
    private readonly bool[] ended;
    private readonly PackState[] states;
    private readonly (double Time, EndCause Cause)?[] ends;
    private readonly double[][] slopes;

    // z, v1, v2, T, charge out (A·s) and energy out (J) of each pack, then the energy into the wiring.
    private double[] y;

    public ParallelWalk(WiringNetwork network, WiringDraw draw, IReadOnlyList<ParallelSource> sources, double ambient)
    {
        (this.network, this.draw, this.ambient) = (network, draw, ambient);
        packs = [.. sources.Select(source => new PackParameters(source.Pack))];
        bus = new ParallelBus(packs, [.. sources.Select(source => source.ForwardDrop.Volts)], [.. sources.Select(source => source.Resistance.Ohms)], draw);
        ended = new bool[packs.Length];
        states = new PackState[packs.Length];
        ends = new (double, EndCause)?[packs.Length];
        y = new double[(packs.Length * Values) + 1];
        slopes = [.. Enumerable.Range(0, 7).Select(_ => new double[y.Length])];
        for (var i = 0; i < packs.Length; i++)
        {
            var start = sources[i].Start;
            (y[i * Values], y[(i * Values) + 1], y[(i * Values) + 2]) = (start.StateOfCharge.DecimalFractions, start.Voltage1.Volts, start.Voltage2.Volts);
            y[(i * Values) + 3] = start.Temperature?.Kelvins ?? ambient;
        }
    }

    public ParallelResult Run(double limit, CancellationToken cancellation)
    {
        var series = new List<ParallelPoint>();
        double time = 0, step = 1;
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            if (Settle(time) is { } atOnce)
                return End(time, atOnce, series);
            series.Add(PointAt(time));
            if (limit - time <= 1e-9)
                return End(time, (null, EndCause.TimeLimit), series);

            step = Math.Min(step, limit - time);
            double[] next;
            while (true)
            {
                next = Step(step, out var error);
                if (error <= 1 || step < 1e-4)
                {
                    var grown = step * Math.Clamp(0.9 * Math.Pow(Math.Max(error, 1e-10), -0.2), 0.2, 4);

                    // The first moment at which something ends lies inside this step, or not: the step is cut there.
                    if (LeastGap(next) <= 0)
                    {
                        var from = step;
                        var at = RootBracket.Root(length => length == 0 ? 1 : LeastGap(Step(length, out _)), 0, from, 1e-7);
                        next = Step(at, out _);
                        step = at;
                    }
                    time += step;
                    step = Math.Max(grown, 1e-3);
                    break;
                }
                step *= Math.Clamp(0.9 * Math.Pow(error, -0.2), 0.1, 0.9);
            }
            y = next;
        }
    }

    // Packs that have ended are taken out, one after the other, until the rest can go on; else what ends the run.
    private (string? Element, EndCause? Cause)? Settle(double time)
    {
        while (true)
        {
            Solve(y);
            if (bus.PowerMargin < 0)
                return (null, EndCause.PowerLimit);
            var (least, which, cause) = (0.0, -1, EndCause.Empty);
            for (var i = 0; i < packs.Length; i++)
            {
                if (!ended[i] && GapOf(i, out var what) is var gap && gap <= least)
                    (least, which, cause) = (gap, i, what);
            }
            if (which < 0)
                break;
            (ended[which], ends[which]) = (true, (time, cause));
            if (Array.TrueForAll(ended, one => one))
                return (null, cause);
        }
        return draw.Watches && bus.Watched <= 0 ? (network[draw.Shortest(bus.Volts)].Name, null) : null;
    }

    // A pack that rests behind its diode has no current, and ends only when it is asked.
    private double GapOf(int i, out EndCause cause)
    {
        cause = EndCause.Empty;
        if (bus.Currents[i] <= 0)
            return double.PositiveInfinity;
        var pack = packs[i];
        (double Gap, EndCause Cause)[] gaps =
        [
            (bus.PackVolts[i] - pack.CutoffVoltage, EndCause.VoltageCutoff), (states[i].Charge, EndCause.Empty),
            (pack.MaximumCurrent - bus.Currents[i], EndCause.OverCurrent), (pack.MaximumTemperature - states[i].Kelvin, EndCause.OverTemperature),
        ];
        var first = gaps.MinBy(one => one.Gap);
        cause = first.Cause;
        return first.Gap;
    }

    private double LeastGap(double[] at)
    {
        Solve(at);
        var least = Math.Min(bus.PowerMargin, draw.Watches ? bus.Watched : double.PositiveInfinity);
        for (var i = 0; i < packs.Length; i++)
        {
            if (!ended[i])
                least = Math.Min(least, GapOf(i, out _));
        }
        return least;
    }

    private double[] Step(double length, out double error)
    {
        var at = y;
        for (var stage = 0; stage < 7; stage++)
        {
            at = (double[])y.Clone();
            for (var j = 0; j < stage; j++)
            {
                for (var k = 0; k < at.Length; k++)
                    at[k] += length * Stages[stage][j] * slopes[j][k];
            }
            Slopes(at, slopes[stage]);
        }

        // The last stage stands at the solution of order 5.
        error = 0;
        for (var k = 0; k < packs.Length * Values; k++)
        {
            var fourth = y[k];
            for (var j = 0; j < 7; j++)
                fourth += length * Fourth[j] * slopes[j][k];
            var scale = (k % Values) switch { 3 => 10, 4 => 3600, 5 => 36000, _ => 1.0 };
            error = Math.Max(error, Math.Abs(at[k] - fourth) / (Tolerance * scale));
        }
        return at;
    }

    private void Slopes(double[] at, double[] slope)
    {
        Solve(at);
        for (var i = 0; i < packs.Length; i++)
        {
            var (pack, point, state, k) = (packs[i], bus.Points[i], states[i], i * Values);
            slope[k] = point.ChargeRate[0];
            slope[k + 1] = ((point.PairDriver[0] * pack.Resistance1) - state.Voltage1) / pack.TimeConstant1;
            slope[k + 2] = ((point.PairDriver[0] * pack.Resistance2) - state.Voltage2) / pack.TimeConstant2;
            slope[k + 3] = (point.Heat[0] - (pack.HeatConductance * (state.Kelvin - ambient))) / pack.HeatCapacity;
            slope[k + 4] = bus.Currents[i];
            slope[k + 5] = bus.Currents[i] * bus.PackVolts[i];
        }
        slope[^1] = bus.Amperes * bus.Volts;
    }

    private void Solve(double[] at)
    {
        for (var i = 0; i < packs.Length; i++)
            states[i] = new PackState(at[i * Values], at[(i * Values) + 1], at[(i * Values) + 2], at[(i * Values) + 3]);
        bus.Solve(states, ended);
    }

    private ParallelPoint PointAt(double time) => new(
        Duration.FromSeconds(time), ElectricPotential.FromVolts(bus.Volts), [.. bus.Currents.Select(amperes => ElectricCurrent.FromAmperes(amperes))],
        [.. states.Select(state => Ratio.FromDecimalFractions(state.Charge))]);

    private ParallelResult End(double time, (string? Element, EndCause? Cause) why, List<ParallelPoint> series) => new(
        Duration.FromSeconds(time), why.Element, why.Cause,
        [.. packs.Select((_, i) => new ParallelSourceResult(
            new DischargeStart
            {
                StateOfCharge = Ratio.FromDecimalFractions(Math.Clamp(y[i * Values], 0, 1)),
                Voltage1 = ElectricPotential.FromVolts(y[(i * Values) + 1]),
                Voltage2 = ElectricPotential.FromVolts(y[(i * Values) + 2]),
                Temperature = Temperature.FromKelvins(y[(i * Values) + 3]),
            },
            Energy.FromJoules(y[(i * Values) + 5]), ElectricCharge.FromCoulombs(y[(i * Values) + 4]),
            ends[i] is { } end ? Duration.FromSeconds(end.Time) : null, ends[i]?.Cause))],
        Energy.FromJoules(y[^1]), series.AsReadOnly());
}

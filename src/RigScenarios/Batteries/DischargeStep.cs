using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>
/// One step of the integration: exponential collocation. The drivers of the state (I·rho of the resistor-capacitor pairs, dz/dt,
/// the lag of the near well, heat) are
/// polynomials through the nodes of the step; what they do to the state follows exactly, also where the step is long
/// against a time constant. The drivers are found by fixed-point iteration; the same formulas give the state anywhere in the
/// step.
/// </summary>
/// <remarks>
/// The method is the collocation form of exponential time differencing: M. Hochbruck and A. Ostermann, "Exponential integrators",
/// Acta Numerica 19 (2010) 209-286. The places of the step stand side by side in the lanes of vectors
/// (<see cref="Collocation.Places"/>). The temperature of the air is a straight line in time: the difference to it is what
/// decays. One instance serves one run, it
/// holds the work space.
/// </remarks>
internal sealed class DischargeStep(PackParameters pack, double ambientSlope)
{
    private const int Count = Collocation.Count;
    private const int LargestIterations = 25;

    // Change of temperature in a step, K, beside which heat need not be exact: where a pack rests, what is left of the heat of
    // mixing is the difference of two voltages that are the same but for their last digits, and no step is short enough for it.
    private const double LeastWarming = 1e-6;

    private readonly LagBranch? lag = pack.HasFarWell ? new LagBranch(pack) : null;
    private readonly double thermalRate = pack.HeatConductance / pack.HeatCapacity;

    // What the rising ambient takes from the difference of temperature, as a heat: W.
    private readonly double slopeHeat = ambientSlope * pack.HeatCapacity;
    private readonly Vector512<double>[] weights1 = new Vector512<double>[Count];
    private readonly Vector512<double>[] weights2 = new Vector512<double>[Count];
    private readonly Vector512<double>[] weightsHeat = new Vector512<double>[Count];
    private readonly Vector512<double>[] weightsCharge = ChargeWeights();
    private readonly double[] pairCoefficients = new double[Count];
    private readonly double[] chargeCoefficients = new double[Count];
    private readonly double[] heatCoefficients = new double[Count];

    private double ambient;
    private PackState start;
    private CircuitLanes first;
    private StateLanes states;
    private CircuitLanes circuits;
    private StepPieces pieces;
    private TerminalDraw draw;
    private Trend pairTrend;
    private Trend chargeTrend;
    private Trend heatTrend;

    // The drivers at the nodes that the states rest on; the circuit in those states gives them again, to the tolerance.
    private Vector512<double> pairDriver;
    private Vector512<double> chargeRate;
    private Vector512<double> heat;

    /// <summary>What holds throughout this step.</summary>
    public ref readonly StepPieces Pieces => ref pieces;

    /// <summary>The draw at the terminals in this step.</summary>
    public ref readonly TerminalDraw Draw => ref draw;

    /// <summary>Length of the step, s.</summary>
    public double Length { get; private set; }

    /// <summary>States at the places of the step.</summary>
    public ref readonly StateLanes States => ref states;

    /// <summary>The circuit at the places of the step.</summary>
    public ref readonly CircuitLanes Circuits => ref circuits;

    /// <summary>The circuit at the start of the step, in all lanes.</summary>
    public ref readonly CircuitLanes First => ref first;

    /// <summary>dT/dt at the start of the step, K/s.</summary>
    public double HeatingRate => (first.Heat[0] / pack.HeatCapacity) - (thermalRate * (start.Kelvin - ambient));

    /// <summary>Sets what holds in the next step, and the temperature of the air at its start, K.</summary>
    public void Hold(in StepPieces smooth, in TerminalDraw demanded, double air) =>
        (pieces, draw, ambient) = (smooth, demanded, air);

    /// <summary>Sets the state at the start of a step that goes on from the last one, which ended at <paramref name="theta"/> of
    /// its length.</summary>
    public void Continue(in PackState state, double theta)
    {
        pairTrend = Trend.Of(pairCoefficients, theta, Length);
        chargeTrend = Trend.Of(chargeCoefficients, theta, Length);
        heatTrend = Trend.Of(heatCoefficients, theta, Length);
        lag?.Continue(theta);
        Set(state);
    }

    /// <summary>Sets the state at the start of a step that has nothing to do with the last one, and solves the circuit
    /// there.</summary>
    public void Begin(in PackState state)
    {
        pairTrend = chargeTrend = heatTrend = default;
        lag?.Begin();
        Set(state);
    }

    /// <summary>Solves the circuit in the state at θ of the step, with the piece, the band and the draw of this step; in all
    /// lanes the same.</summary>
    public void Solve(double theta, in PackState state, out CircuitLanes point) =>
        Circuit.SolveOne(pack, in pieces, in draw, state, ambient + (theta * Length * ambientSlope), out point);

    /// <summary>
    /// Tries a step of the length. True if the iteration converged; then <paramref name="error"/> is the largest deviation of the
    /// circuit
    /// from the polynomials between the nodes, relative, weighted for its effect.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool TrySolve(double length, double tolerance, out double error)
    {
        Length = length;
        Guess();
        lag?.Guess(length, first);
        Collocation.Branch(Collocation.Places, length / pack.TimeConstant1, weights1, out var decay1);
        Collocation.Branch(Collocation.Places, length / pack.TimeConstant2, weights2, out var decay2);
        Collocation.Branch(Collocation.Places, length * thermalRate, weightsHeat, out var decayHeat);

        // Limits of the change; a driver that is zero throughout stays so.
        var pairLimit = (0.02 * tolerance * Math.Abs(first.PairDriver[0])) + 1e-300;
        var heatLimit = 0.2 * tolerance * (Math.Abs(first.Heat[0]) + LeastHeat);
        var air = AmbientAt(Collocation.Places);
        var converged = false;
        for (var iteration = 0; iteration < LargestIterations && !converged; iteration++)
        {
            states = StatesWith(Collocation.Places, weights1, weights2, weightsHeat, weightsCharge, decay1, decay2, decayHeat,
                lag is null ? Vector512<double>.Zero : lag.Along());
            Circuit.Solve(pack, in pieces, in draw, in states, air, out circuits);
            converged = lag is null || lag.Settles(circuits, states.Lag, tolerance);
            converged &= Collocation.IsNear(circuits.PairDriver, pairDriver, pairLimit)
                && Collocation.IsNear(circuits.Heat, heat, heatLimit);
            (pairDriver, chargeRate, heat) = (circuits.PairDriver, circuits.ChargeRate, circuits.Heat);
        }

        Collocation.Coefficients(pairDriver, pairCoefficients);
        Collocation.Coefficients(chargeRate, chargeCoefficients);
        Collocation.Coefficients(heat, heatCoefficients);
        lag?.Close();
        error = converged ? Deviation() : double.PositiveInfinity;
        return converged;
    }

    /// <summary>State of charge at θ of the step.</summary>
    public double ChargeAt(double theta) => start.Charge + (Length * Collocation.Integral(chargeCoefficients, theta));

    /// <summary>State of charge of the near well at θ of the step.</summary>
    public double NearAt(double theta) => lag is null ? ChargeAt(theta) : ChargeAt(theta) - lag.At(theta);

    /// <summary>State of charge of the far well at θ of the step of a pack that has one.</summary>
    public double FarAt(double theta) => ChargeAt(theta) + (lag!.At(theta) * pack.FarPerLag);

    /// <summary>The state at θ of the step, 0…1 (a little beyond is allowed).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public PackState StateAt(double theta)
    {
        if (PlainCollocation.IsQuicker)
            return PlainStateAt(theta);
        Span<Vector512<double>> at1 = stackalloc Vector512<double>[Count];
        Span<Vector512<double>> at2 = stackalloc Vector512<double>[Count];
        Span<Vector512<double>> atHeat = stackalloc Vector512<double>[Count];
        Span<Vector512<double>> atCharge = stackalloc Vector512<double>[Count];
        var place = Vector512.Create(theta);
        Collocation.Branch(place, Length / pack.TimeConstant1, at1, out var decay1);
        Collocation.Branch(place, Length / pack.TimeConstant2, at2, out var decay2);
        Collocation.Branch(place, Length * thermalRate, atHeat, out var decayHeat);
        Collocation.Branch(place, 0, atCharge, out _);
        return StatesWith(place, at1, at2, atHeat, atCharge, decay1, decay2, decayHeat,
            lag is null ? Vector512<double>.Zero : Vector512.Create(lag.At(theta)))[0];
    }

    /// <summary>The same at the one place alone.</summary>
    internal PackState PlainStateAt(double theta)
    {
        Span<double> on = stackalloc double[Count];
        var decay = PlainCollocation.BranchAt(theta, Length / pack.TimeConstant1, on);
        var voltage1 = (PlainCollocation.WeightedAt(on, pairDriver) * (Length * pack.Resistance1 / pack.TimeConstant1))
            + (decay * start.Voltage1);
        decay = PlainCollocation.BranchAt(theta, Length / pack.TimeConstant2, on);
        var voltage2 = (PlainCollocation.WeightedAt(on, pairDriver) * (Length * pack.Resistance2 / pack.TimeConstant2))
            + (decay * start.Voltage2);
        decay = PlainCollocation.BranchAt(theta, Length * thermalRate, on);
        var warmer = (PlainCollocation.WeightedAt(on, heat - Vector512.Create(slopeHeat)) * (Length / pack.HeatCapacity))
            + (decay * (start.Kelvin - ambient));
        return new(ChargeAt(theta), voltage1, voltage2, warmer + (theta * (Length * ambientSlope)) + ambient,
            lag?.At(theta) ?? 0);
    }

    /// <summary>Charge (A·s), delivered and chemical energy and heat to the air (J), from the start of the step to θ.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public StepIntegrals Integrate(double theta)
    {
        var weights = Collocation.IntegralWeights(theta) * Length;
        return new StepIntegrals(
            Vector512.Sum(weights * circuits.Current),
            Vector512.Sum(weights * circuits.Current * circuits.Voltage),
            Vector512.Sum(weights * circuits.ChemicalPower),
            pack.HeatConductance * Vector512.Sum(weights * (states.Kelvin - AmbientAt(Collocation.Places))));
    }

    private void Set(in PackState state)
    {
        start = state;
        Solve(0, state, out first);
        lag?.Set(state.Lag, first);
    }

    // First values of the drivers for the iteration: the course of the step before, where this one goes on from it; else they are
    // constant.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Guess()
    {
        var time = Collocation.Places * Length;
        pairDriver = first.PairDriver + pairTrend.After(time);
        chargeRate = first.ChargeRate + chargeTrend.After(time);
        heat = first.Heat + heatTrend.After(time);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private StateLanes StatesWith(
        Vector512<double> places,
        ReadOnlySpan<Vector512<double>> on1,
        ReadOnlySpan<Vector512<double>> on2,
        ReadOnlySpan<Vector512<double>> onHeat,
        ReadOnlySpan<Vector512<double>> onCharge,
        Vector512<double> decay1,
        Vector512<double> decay2,
        Vector512<double> decayHeat,
        Vector512<double> lags) => new(
            Collocation.Response(onCharge, chargeRate, Length, Vector512<double>.One, start.Charge),
            Collocation.Response(on1, pairDriver, Length * pack.Resistance1 / pack.TimeConstant1, decay1, start.Voltage1),
            Collocation.Response(on2, pairDriver, Length * pack.Resistance2 / pack.TimeConstant2, decay2, start.Voltage2),
            Collocation.Response(onHeat, heat - Vector512.Create(slopeHeat), Length / pack.HeatCapacity, decayHeat,
                start.Kelvin - ambient) + AmbientAt(places),
            lags);

    /// <summary>What the places of the step were like; those beyond θ, which it does not reach, stand for its end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ObservedLanes Lanes(double theta, in CircuitPoint endPoint, in PackState endState, double startSeconds)
    {
        var reached = Vector512.LessThan(Collocation.Places, Vector512.Create(theta));
        var places = Vector512.ConditionalSelect(reached, Collocation.Places, Vector512.Create(theta));
        return new ObservedLanes(
            (places * Length) + Vector512.Create(startSeconds),
            Vector512.ConditionalSelect(reached, circuits.Voltage, Vector512.Create(endPoint.Voltage)),
            Vector512.ConditionalSelect(reached, circuits.Current, Vector512.Create(endPoint.Current)),
            Vector512.ConditionalSelect(reached, states.Kelvin, Vector512.Create(endState.Kelvin)),
            AmbientAt(places));
    }

    /// <summary>Temperature of the air at places of the step, K.</summary>
    public Vector512<double> AmbientAt(Vector512<double> places) =>
        (places * (Length * ambientSlope)) + Vector512.Create(ambient);

    // W.
    private double LeastHeat => LeastWarming * pack.HeatCapacity / Length;

    // The voltage is looked at too: under constant current the drivers say nothing of its course, on which the events depend.
    // Heat works on the rest only through the temperature, so it may be less exact.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Deviation()
    {
        var error = Relative(circuits.PairDriver);
        error = Math.Max(error, Relative(circuits.ChargeRate));
        error = Math.Max(error, 0.03 * Relative(circuits.Heat, LeastHeat));
        if (lag is not null)
            error = Math.Max(error, 0.3 * lag.Deviation(states.Lag));
        return Math.Max(error, 0.3 * Relative(circuits.Voltage));

        static double Relative(Vector512<double> values, double least = 1e-300) =>
            Collocation.Deviation(values) / (Collocation.LargestSize(values) + least);
    }

    private static Vector512<double>[] ChargeWeights()
    {
        var weights = new Vector512<double>[Count];
        Collocation.Branch(Collocation.Places, 0, weights, out _);
        return weights;
    }
}

using RigScenarios.Cells;

namespace RigScenarios.Power;

/// <summary>
/// One step of the integration: exponential collocation. The drivers of the state (I·rho of the resistor-capacitor pairs, dz/dt, heat) are
/// polynomials through the nodes of the step; what they do to the state follows exactly, also where the step is long
/// against a time constant. The drivers are found by fixed-point iteration; the same formulas give the state anywhere in the step.
/// </summary>
/// <remarks>
/// The method is the collocation form of exponential time differencing: M. Hochbruck and A. Ostermann, "Exponential integrators",
/// Acta Numerica 19 (2010) 209-286, section 2.2. One instance serves one run, it holds the work space.
/// </remarks>
internal sealed class DischargeStep(PackParameters pack, double ambient)
{
    private const int Count = Collocation.Count;
    private const int LargestIterations = 25;

    private readonly double thermalTime = pack.HeatConductance > 0 ? pack.HeatCapacity / pack.HeatConductance : double.PositiveInfinity;
    private readonly double[] decays = new double[3 * Count];
    private readonly double[] responses1 = new double[Count * Count];
    private readonly double[] responses2 = new double[Count * Count];
    private readonly double[] responsesHeat = new double[Count * Count];
    private readonly double[] responsesCharge = ChargeResponses();

    private readonly double[] pairDriver = new double[Count];
    private readonly double[] chargeRate = new double[Count];
    private readonly double[] heat = new double[Count];
    private readonly double[] pairCoefficients = new double[Count];
    private readonly double[] chargeCoefficients = new double[Count];
    private readonly double[] heatCoefficients = new double[Count];

    private readonly double[] voltage = new double[Count];

    private PackState start;
    private MonotoneCubic.Piece piece;
    private TemperatureBand band;
    private TerminalDraw draw;
    private Trend pairTrend;
    private Trend chargeTrend;
    private Trend heatTrend;

    /// <summary>The open-circuit piece that holds in this step.</summary>
    public MonotoneCubic.Piece Piece
    {
        get => piece;
        set => piece = value;
    }

    /// <summary>The temperature band that holds in this step.</summary>
    public TemperatureBand Band
    {
        get => band;
        set => band = value;
    }

    /// <summary>The draw at the terminals in this step.</summary>
    public TerminalDraw Draw
    {
        get => draw;
        set => draw = value;
    }

    /// <summary>Length of the step, s.</summary>
    public double Length { get; private set; }

    /// <summary>States at the nodes.</summary>
    public PackState[] States { get; } = new PackState[Count];

    /// <summary>The circuit at the nodes.</summary>
    public CircuitPoint[] Points { get; } = new CircuitPoint[Count];

    /// <summary>States at the check points.</summary>
    public PackState[] CheckStates { get; } = new PackState[Collocation.CheckPoints.Length];

    /// <summary>The circuit at the check points.</summary>
    public CircuitPoint[] CheckCircuits { get; } = new CircuitPoint[Collocation.CheckPoints.Length];

    /// <summary>Sets the state at the start of a step that goes on from the last one, which ended at <paramref name="theta"/> of its length.</summary>
    public void Continue(in PackState state, double theta)
    {
        pairTrend = Trend.Of(pairCoefficients, theta, Length);
        chargeTrend = Trend.Of(chargeCoefficients, theta, Length);
        heatTrend = Trend.Of(heatCoefficients, theta, Length);
        Set(state);
    }

    /// <summary>Sets the state at the start of a step that has nothing to do with the last one, and solves the circuit there.</summary>
    public void Begin(in PackState state)
    {
        pairTrend = chargeTrend = heatTrend = default;
        Set(state);
    }

    private void Set(in PackState state)
    {
        start = state;
        States[0] = state;
        Solve(state, ref Points[0]);
    }

    /// <summary>Solves the circuit in a state, with the piece, the band and the draw of this step.</summary>
    public void Solve(in PackState state, ref CircuitPoint point)
    {
        Circuit.Solve(pack, in piece, in band, in draw, in state, ref point);
    }

    /// <summary>dT/dt at the start of the step, K/s.</summary>
    public double HeatingRate => (Points[0].Heat - (pack.HeatConductance * (start.Kelvin - ambient))) / pack.HeatCapacity;

    /// <summary>
    /// Tries a step of the length. True if the iteration converged; then <paramref name="error"/> is the largest deviation of the circuit
    /// from the polynomials between the nodes, relative, weighted for its effect.
    /// </summary>
    public bool TrySolve(double length, double tolerance, out double error)
    {
        Guess(length);
        Length = length;
        Prepare();

        // Scales of the drivers; a driver that is zero throughout stays so.
        var pairScale = 1 / (Math.Abs(Points[0].PairDriver) + 1e-300);
        var heatScale = 0.1 / (Math.Abs(Points[0].Heat) + 1e-300);
        var converged = false;
        for (var iteration = 0; iteration < LargestIterations && !converged; iteration++)
        {
            UpdateCoefficients();
            var change = 0.0;
            for (var i = 1; i < Count; i++)
            {
                States[i] = StateAtNode(i);
                Solve(States[i], ref Points[i]);
                ref readonly var point = ref Points[i];
                change = Math.Max(change, Math.Abs(point.PairDriver - pairDriver[i]) * pairScale);
                change = Math.Max(change, Math.Abs(point.Heat - heat[i]) * heatScale);
                Store(i, point);
            }

            converged = change < 0.02 * tolerance;
            if (!double.IsFinite(change))
                break;
        }

        UpdateCoefficients();
        error = converged ? Deviation() : double.PositiveInfinity;
        return converged;
    }

    /// <summary>State of charge at θ of the step.</summary>
    public double ChargeAt(double theta) => start.Charge + (Length * Collocation.Integral(chargeCoefficients, theta));

    /// <summary>The state at θ of the step, 0…1 (a little beyond is allowed).</summary>
    public PackState StateAt(double theta)
    {
        Span<double> response = stackalloc double[Count];
        var time = theta * Length;
        var charge = ChargeAt(theta);
        var x1 = time / pack.TimeConstant1;
        var decay1 = Math.Exp(-x1);
        Collocation.Response(x1, theta, decay1, response);
        var voltage1 = (decay1 * start.Voltage1) + (Length * pack.Resistance1 / pack.TimeConstant1 * Collocation.Dot(pairCoefficients, response));
        var x2 = time / pack.TimeConstant2;
        var decay2 = Math.Exp(-x2);
        Collocation.Response(x2, theta, decay2, response);
        var voltage2 = (decay2 * start.Voltage2) + (Length * pack.Resistance2 / pack.TimeConstant2 * Collocation.Dot(pairCoefficients, response));
        var x3 = time / thermalTime;
        var decay3 = Math.Exp(-x3);
        Collocation.Response(x3, theta, decay3, response);
        var kelvin = ambient + (decay3 * (start.Kelvin - ambient)) + (Length / pack.HeatCapacity * Collocation.Dot(heatCoefficients, response));
        return new PackState(charge, voltage1, voltage2, kelvin);
    }

    /// <summary>Charge (A·s), delivered and chemical energy and heat to the air (J), from the start of the step to θ.</summary>
    public StepIntegrals Integrate(double theta)
    {
        Span<double> weights = stackalloc double[Count];
        Collocation.WeightsUpTo(theta, weights);
        double charge = 0, delivered = 0, chemical = 0, warmth = 0;
        for (var j = 0; j < Count; j++)
        {
            ref readonly var point = ref Points[j];
            var weight = weights[j] * Length;
            charge += weight * point.Current;
            delivered += weight * point.Current * point.Voltage;
            chemical += weight * point.ChemicalPower;
            warmth += weight * (States[j].Kelvin - ambient);
        }

        return new StepIntegrals(charge, delivered, chemical, pack.HeatConductance * warmth);
    }

    // First values of the drivers for the iteration: the course of the step before, where this one goes on from it; else they are constant.
    private void Guess(double length)
    {
        for (var j = 0; j < Count; j++)
        {
            Store(j, Points[0]);
            var time = Collocation.Nodes[j] * length;
            pairDriver[j] += pairTrend.After(time);
            chargeRate[j] += chargeTrend.After(time);
            heat[j] += heatTrend.After(time);
        }
    }

    private void Prepare()
    {
        for (var i = 1; i < Count; i++)
        {
            var theta = Collocation.Nodes[i];
            var row = i * Count;
            Branch(theta, pack.TimeConstant1, out decays[i], responses1.AsSpan(row, Count));
            Branch(theta, pack.TimeConstant2, out decays[Count + i], responses2.AsSpan(row, Count));
            Branch(theta, thermalTime, out decays[(2 * Count) + i], responsesHeat.AsSpan(row, Count));
        }
    }

    private void Branch(double theta, double timeConstant, out double decay, Span<double> response)
    {
        var x = theta * Length / timeConstant;
        decay = Math.Exp(-x);
        Collocation.Response(x, theta, decay, response);
    }

    private PackState StateAtNode(int i)
    {
        var row = i * Count;
        var pairs1 = Collocation.Dot(pairCoefficients, responses1.AsSpan(row, Count));
        var pairs2 = Collocation.Dot(pairCoefficients, responses2.AsSpan(row, Count));
        var warmth = Collocation.Dot(heatCoefficients, responsesHeat.AsSpan(row, Count));
        var charge = Collocation.Dot(chargeCoefficients, responsesCharge.AsSpan(row, Count));
        return new PackState(
            start.Charge + (Length * charge),
            (decays[i] * start.Voltage1) + (Length * pack.Resistance1 / pack.TimeConstant1 * pairs1),
            (decays[Count + i] * start.Voltage2) + (Length * pack.Resistance2 / pack.TimeConstant2 * pairs2),
            ambient + (decays[(2 * Count) + i] * (start.Kelvin - ambient)) + (Length / pack.HeatCapacity * warmth));
    }

    private void Store(int node, in CircuitPoint point)
    {
        pairDriver[node] = point.PairDriver;
        chargeRate[node] = point.ChargeRate;
        heat[node] = point.Heat;
    }

    private void UpdateCoefficients()
    {
        Collocation.Coefficients(pairDriver, pairCoefficients);
        Collocation.Coefficients(chargeRate, chargeCoefficients);
        Collocation.Coefficients(heat, heatCoefficients);
    }

    // The voltage is looked at too: under constant current the drivers say nothing of its course, on which the events depend.
    // Heat works on the rest only through the temperature, so it may be less exact.
    private double Deviation()
    {
        Span<double> coefficients = stackalloc double[Count];
        double pairScale = 1e-300, chargeScale = 1e-300, heatScale = 1e-300;
        for (var j = 0; j < Count; j++)
        {
            voltage[j] = Points[j].Voltage;
            pairScale = Math.Max(pairScale, Math.Abs(pairDriver[j]));
            chargeScale = Math.Max(chargeScale, Math.Abs(chargeRate[j]));
            heatScale = Math.Max(heatScale, Math.Abs(heat[j]));
        }

        Collocation.Coefficients(voltage, coefficients);
        var error = 0.0;
        for (var k = 0; k < CheckStates.Length; k++)
        {
            var theta = Collocation.CheckPoints[k];
            CheckStates[k] = StateAt(theta);
            Solve(CheckStates[k], ref CheckCircuits[k]);
            ref readonly var circuit = ref CheckCircuits[k];
            error = Math.Max(error, Math.Abs(circuit.PairDriver - Collocation.Value(pairCoefficients, theta)) / pairScale);
            error = Math.Max(error, Math.Abs(circuit.ChargeRate - Collocation.Value(chargeCoefficients, theta)) / chargeScale);
            error = Math.Max(error, 0.03 * Math.Abs(circuit.Heat - Collocation.Value(heatCoefficients, theta)) / heatScale);
            error = Math.Max(error, 0.3 * Math.Abs(circuit.Voltage - Collocation.Value(coefficients, theta)) / Math.Abs(circuit.Voltage));
        }

        return error;
    }


    private static double[] ChargeResponses()
    {
        var table = new double[Count * Count];
        for (var i = 1; i < Count; i++)
            Collocation.Response(0, Collocation.Nodes[i], 1, table.AsSpan(i * Count, Count));
        return table;
    }
}

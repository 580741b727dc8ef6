using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>
/// The lag of the near well in a step: one more branch that decays, at the rate of the step's start. That the rate changes with
/// the temperature is a part of its driver: w' = -lambda·w + ((1 - c)/c)·i + (lambda - 1/tau(T))·w.
/// </summary>
internal sealed class LagBranch(PackParameters pack)
{
    private const int Count = Collocation.Count;

    private readonly Vector512<double>[] weights = new Vector512<double>[Count];
    private readonly double[] coefficients = new double[Count];

    // The driver at the nodes that the states rest on, 1/s.
    private Vector512<double> driver;
    private Vector512<double> decay;
    private Trend trend;
    private double rate;
    private double start;
    private double length;

    /// <summary>Goes on from the last step, which ended at <paramref name="theta"/> of its length.</summary>
    public void Continue(double theta) => trend = Trend.Of(coefficients, theta, length);

    /// <summary>Has nothing to do with the last step.</summary>
    public void Begin() => trend = default;

    /// <summary>Sets the lag at the start of a step, and the circuit there.</summary>
    public void Set(double lag, in CircuitLanes first)
    {
        start = lag;
        rate = first.ExchangeRate[0];
    }

    /// <summary>Begins a trial step of a length, s: first values of the driver for the iteration.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Guess(double seconds, in CircuitLanes first)
    {
        length = seconds;
        Collocation.Branch(Collocation.Places, seconds * rate, weights, out decay);
        driver = DriverIn(first, Vector512.Create(start)) + trend.After(Collocation.Places * seconds);
    }

    /// <summary>The lag at the places of the step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Vector512<double> Along() =>
        Collocation.Response(weights, driver, length, decay, start);

    /// <summary>Takes the driver from the circuit; true if it is the one that the states rest on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Settles(in CircuitLanes circuits, Vector512<double> lag, double tolerance)
    {
        var next = DriverIn(circuits, lag);
        var before = driver;
        driver = next;
        return Collocation.IsNear(next, before, (0.05 * tolerance * Scale(lag)) + 1e-300);
    }

    /// <summary>Ends the iteration.</summary>
    public void Close() => Collocation.Coefficients(driver, coefficients);

    /// <summary>The largest deviation of the driver from its polynomial, relative to how fast the lag goes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Deviation(Vector512<double> lag) => Collocation.Deviation(driver) / (Scale(lag) + 1e-300);

    /// <summary>The lag at θ of the step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double At(double theta)
    {
        if (PlainCollocation.IsQuicker)
            return PlainAt(theta);
        Span<Vector512<double>> on = stackalloc Vector512<double>[Count];
        Collocation.Branch(Vector512.Create(theta), length * rate, on, out var left);
        return (Collocation.Weighted(on, driver)[0] * length) + (left[0] * start);
    }

    /// <summary>The same at the one place alone.</summary>
    internal double PlainAt(double theta)
    {
        Span<double> on = stackalloc double[Count];
        var left = PlainCollocation.BranchAt(theta, length * rate, on);
        return (PlainCollocation.WeightedAt(on, driver) * length) + (left * start);
    }

    private Vector512<double> DriverIn(in CircuitLanes circuits, Vector512<double> lag) =>
        (circuits.ChargeRate * -pack.LagPerCharge) + ((Vector512.Create(rate) - circuits.ExchangeRate) * lag);

    private double Scale(Vector512<double> lag) =>
        Collocation.LargestSize(driver) + (rate * Collocation.LargestSize(lag));
}

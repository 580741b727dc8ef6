using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using RigScenarios.Batteries;

namespace RigScenarios.Wiring;

/// <summary>A network in one combination of states as a formula at the pack's terminals, I = Ic + g·V + P/V, in plain SI numbers
/// (docs/wiring.md, "Reduced demand").</summary>
/// <param name="Amperes">Ic, A; below 0 where that fits best.</param>
/// <param name="Siemens">g, S; below 0 where that fits best.</param>
/// <param name="Watts">P, W.</param>
/// <param name="Error">By how much the current differs at most from that of the network, as a share of it.</param>
/// <param name="StopVolts">The voltage of the terminals at which the first element runs short, V; 0 where none does in the
/// range.</param>
/// <param name="Stops">That element; -1 for none.</param>
/// <param name="StopsFirstAtOnce">Whether the same element is the first to stop, too, where the voltage falls below that at
/// once.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ReducedDraw(
    double Amperes, double Siemens, double Watts, double Error, double StopVolts, int Stops, bool StopsFirstAtOnce)
{
    // How far below its stop a step of the demand may throw the voltage and still be looked at: heavy loads take a tenth or two.
    private const double DeepestFall = 0.6;

    private const int Rounds = 4;

    private const double Trifle = 1e-9;

    // Chebyshev's places on -1…1: a fit there is off by about the same everywhere.
    private static readonly Vector512<double> Places = Lanes(i => -Math.Cos((i + 0.5) * Math.PI / 8));

    private static readonly Vector512<double> Shares = Lanes(i => i / 7.0);

    /// <summary>Reduces a draw.</summary>
    /// <param name="draw">The network in its states.</param>
    /// <param name="network">The network.</param>
    /// <param name="lowest">The lowest voltage of the terminals, V: that at which the pack ends; above 0.</param>
    /// <param name="highest">The highest, V: that of the full pack without load.</param>
    /// <param name="airKelvin">Temperature of the air, which is that of the copper, K.</param>
    /// <returns>The formula; null where it is none: the network has no solution at some voltage of the range, or something is
    /// short of voltage already at the highest.</returns>
    public static ReducedDraw? Of(WiringDraw draw, WiringNetwork network, double lowest, double highest, double airKelvin)
    {
        var air = Vector512.Create(airKelvin);
        if (StopOf(draw, lowest, highest, air) is not { } stop)
            return null;
        var (stops, sure) = (-1, true);
        if (stop > 0)
        {
            stops = draw.Shortest(stop, airKelvin);
            sure = StopsFirst(draw, network, stops, stop, air);
        }

        var fit = Fit(draw, Math.Max(lowest, stop), highest, air);
        return fit with { StopVolts = stop, Stops = stops, StopsFirstAtOnce = sure };
    }

    // Least squares of the relative error, by orthogonal columns; one lane is one voltage.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static ReducedDraw Fit(WiringDraw draw, double lowest, double highest, Vector512<double> air)
    {
        var middle = (lowest + highest) / 2;
        var (volts, current) = Currents(draw, Vector512.Create(middle) + (Places * ((highest - lowest) / 2)), air);
        if (Vector512.EqualsAll(current, Vector512<double>.Zero))
            return new(0, 0, 0, 0, 0, -1, true);
        var share = volts / middle;
        var one = Vector512<double>.One / current;
        var (rise, fall) = (share / current, one / share);

        // Gram and Schmidt: the power first, for it is nearly all of most draws.
        var q1 = Unit(fall, out var r11);
        var r12 = Vector512.Sum(q1 * one);
        var q2 = Unit(one - (q1 * r12), out var r22);
        var (r13, r23) = (Vector512.Sum(q1 * rise), Vector512.Sum(q2 * rise));
        var q3 = Unit(rise - (q1 * r13) - (q2 * r23), out var r33);
        var siemens = Vector512.Sum(q3) / r33;
        var amperes = (Vector512.Sum(q2) - (r23 * siemens)) / r22;
        var watts = (Vector512.Sum(q1) - (r12 * amperes) - (r13 * siemens)) / r11;

        var formula = new ReducedDraw(amperes, siemens / middle, watts * middle, 0, 0, -1, true).WithoutTrifles(middle);
        // Between the places of the fit, and at both ends, it is held against the network.
        var (between, known) = Currents(draw, Vector512.Create(lowest) + (Shares * (highest - lowest)), air);
        return formula with
        {
            Error = Math.Max(Largest(formula.At(volts) / current), Largest(formula.At(between) / known)),
        };
    }

    // What is left of a part that the network does not have is a rounding.
    private ReducedDraw WithoutTrifles(double volts)
    {
        var trifle = Trifle * (Math.Abs(Amperes) + Math.Abs(Siemens * volts) + Math.Abs(Watts / volts));
        return this with
        {
            Amperes = Math.Abs(Amperes) < trifle ? 0 : Amperes,
            Siemens = Math.Abs(Siemens * volts) < trifle ? 0 : Siemens,
            Watts = Math.Abs(Watts / volts) < trifle ? 0 : Watts,
        };
    }

    private static Vector512<double> Unit(Vector512<double> column, out double length)
    {
        length = Math.Sqrt(Vector512.Sum(column * column));
        return column / length;
    }

    private static double Largest(Vector512<double> quotients)
    {
        var off = Vector512.Abs(quotients - Vector512<double>.One);
        var largest = 0.0;
        for (var i = 0; i < Vector512<double>.Count; i++)
            largest = Math.Max(largest, off[i]);
        return largest;
    }

    private Vector512<double> At(Vector512<double> volts) =>
        Vector512.Create(Amperes) + (volts * Siemens) + (Vector512.Create(Watts) / volts);

    private static (Vector512<double> Volts, Vector512<double> Current) Currents(WiringDraw draw, Vector512<double> volts,
        Vector512<double> air)
    {
        CircuitLanes point = default;
        draw.Solve(volts, Vector512<double>.Zero, air, ref point);
        return (volts, point.Current);
    }

    // The voltage at which the first element runs short; 0 for none, null where there is no solution or it is short all along.
    private static double? StopOf(WiringDraw draw, double lowest, double highest, Vector512<double> air)
    {
        var (low, high) = (lowest, highest);
        for (var round = 0; round < Rounds; round++)
        {
            CircuitLanes point = default;
            draw.Solve(Vector512.Create(low) + (Shares * (high - low)), Vector512<double>.Zero, air, ref point);
            if (point.PowerMargin[7] < 0 || point.Watched[7] <= 0)
                return null;
            var first = 7;
            while (first >= 0 && point.PowerMargin[first] >= 0 && point.Watched[first] > 0)
                first--;
            if (first < 0)
                return 0;
            // Where the network ends before anything drops out, no formula says so.
            if (point.PowerMargin[first] < 0)
                return null;
            var step = (high - low) / 7;
            (low, high) = (low + (first * step), low + ((first + 1) * step));
            if (round == Rounds - 1)
                return low + (step * (0 - point.Watched[first]) / (point.Watched[first + 1] - point.Watched[first]));
        }

        return null;
    }

    // Below its stop the largest shortfall, relative to the threshold, may be another element's: then who stops first hangs on
    // how far a step throws the voltage.
    private static bool StopsFirst(WiringDraw draw, WiringNetwork network, int stops, double stop, Vector512<double> air)
    {
        var solvable = draw.Look(Vector512.Create(stop) * (Vector512.Create(DeepestFall) + (Shares * (1 - DeepestFall))), air);
        var own = draw.Inlet(stops) / network.ThresholdOf(stops)!.Value;
        for (var i = 0; i < network.Count; i++)
        {
            if (i == stops || network.ThresholdOf(i) is not { } threshold || !draw.IsLookedAt(i))
                continue;
            // The elements are in the order in which equal ones stop.
            var left = draw.Inlet(i) / threshold;
            var before = i < stops ? Vector512.LessThanOrEqual(left, own) : Vector512.LessThan(left, own);
            if ((before & solvable & Vector512.LessThan(left, Vector512<double>.One)) != Vector512<double>.Zero)
                return false;
        }

        return true;
    }

    private static Vector512<double> Lanes(Func<int, double> lane)
    {
        Span<double> values = stackalloc double[Vector512<double>.Count];
        for (var i = 0; i < values.Length; i++)
            values[i] = lane(i);
        return Vector512.Create<double>(values);
    }
}

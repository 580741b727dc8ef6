using System.Runtime.Intrinsics;

namespace RigScenarios.Batteries;

/// <summary>
/// A draw at the terminals that is no formula but the answer of something behind them: wiring. It is asked for the operating
/// point on a source of given
/// voltage and resistance, in eight states at once.
/// </summary>
internal abstract class SolvedDraw
{
    /// <summary>True where it has a voltage to watch.</summary>
    public abstract bool Watches { get; }

    /// <summary>Part of the current through the terminals that changes the charge: less than 1 where a charge loses some to side
    /// reactions.</summary>
    public virtual double ChargeFactor => 1;

    /// <summary>
    /// Sets voltage, current, power margin and watch margin of the point. The power margin is above zero as long as there is a
    /// solution and below where
    /// there is none; there the voltage stays near that of the limit, so that a trial step can pass it.
    /// </summary>
    /// <param name="source">E, V.</param>
    /// <param name="resistance">R between the source and the terminals, Ω; 0 or more.</param>
    /// <param name="air">Temperature of the air, which is that of the copper, K.</param>
    /// <param name="point">What is set.</param>
    public abstract void Solve(Vector512<double> source, Vector512<double> resistance, Vector512<double> air,
        ref CircuitLanes point);
}

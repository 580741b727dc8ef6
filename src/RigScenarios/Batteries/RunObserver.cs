using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace RigScenarios.Batteries;

/// <summary>What a run was like at eight moments of a step, in the order of
/// <see cref="Numerics.Collocation.LanesInOrder"/>.</summary>
/// <param name="Seconds">From the start of the run, s.</param>
/// <param name="Volts">At the pack's terminals, V.</param>
/// <param name="Amperes">Out of the pack, A.</param>
/// <param name="Kelvin">Temperature of the pack, K.</param>
/// <param name="Air">Temperature of the air, K.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ObservedLanes(
    Vector512<double> Seconds, Vector512<double> Volts, Vector512<double> Amperes, Vector512<double> Kelvin,
    Vector512<double> Air);

/// <summary>
/// Looks on while a discharge runs. It is told of the first moment of each stretch of the demand and of every step, never of a
/// moment in which the run
/// ends right after a change.
/// </summary>
internal abstract class RunObserver
{
    /// <summary>Tells of the moment right after a change of the demand, in which nothing ends.</summary>
    /// <param name="seconds">From the start of the run, s.</param>
    /// <param name="point">At the terminals.</param>
    /// <param name="state">The pack.</param>
    /// <param name="airKelvin">Temperature of the air, K.</param>
    public abstract void AfterChange(double seconds, in CircuitPoint point, in PackState state, double airKelvin);

    /// <summary>Tells of the moments of one step.</summary>
    public abstract void Step(in ObservedLanes lanes);
}

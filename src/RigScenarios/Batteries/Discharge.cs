using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// The discharge of a pack under a demand: how long it lasts, what ends it, and the way there. Model and method:
/// docs/discharge.md.
/// </summary>
public static class Discharge
{
    /// <summary>
    /// Runs a discharge to its end. The run is exact to the tolerance of the options: steps of the demand, points of the tables
    /// and end
    /// conditions are met exactly, also a condition that is met only for a moment inside a step.
    /// </summary>
    /// <param name="pack">The pack.</param>
    /// <param name="ambient">Temperature of the air around it, the same all the time; above 0 K.</param>
    /// <param name="start">The state at the start.</param>
    /// <param name="demand">The demand at its terminals.</param>
    /// <param name="options">When to stop, how exactly, how much to keep.</param>
    /// <param name="cancellation">Ends the run early.</param>
    /// <returns>How it went. The start counts as a step of the demand: a condition that holds there ends the run at 0
    /// s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ambient temperature is not above 0 K, or the start's lag leaves one of
    /// the wells below empty or above full.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static DischargeResult Run(
        Pack pack, Temperature ambient, DischargeStart start, Demand demand, DischargeOptions options,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(options);
        Require.Positive(ambient.Kelvins, "K", nameof(ambient));
        start.RequireWells(pack.NearShare);
        return new DischargeRun(pack, ambient, start, demand, options).Run(cancellation);
    }
}

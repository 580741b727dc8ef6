using RigScenarios.Builds;
using RigScenarios.Days;

namespace RigScenarios.Simulation;

/// <summary>
/// Days in a row with several batteries: one is on the rig, the others rest or are charged, and swaps follow a policy. All is continuous in time; what
/// happens is found where it happens. Model and limits: docs/days.md.
/// </summary>
public static class DaySimulation
{
    /// <summary>Runs a build through the days of a plan. The plan's batteries stand in for the build's own.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="ArgumentException">The plan has no day or no battery, a day is empty or lasts into the next, or an internal battery's device is not there.</exception>
    /// <exception cref="InvalidOperationException">What a device draws in a state that is asked of it is not known.</exception>
    /// <exception cref="Wiring.WiringException">With a full pack and no load something would see more than its maximum voltage.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static SimulationResult Run(PoweredBuild powered, DayPlan plan, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(powered);
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Batteries.Count == 0)
            throw new ArgumentException("The plan has no battery; accepted: one or more.", nameof(plan));
        foreach (var device in plan.Internal.Keys)
        {
            if (!powered.Devices.ContainsKey(device))
                throw new ArgumentException($"The internal battery of \"{device}\" belongs to no device of the build; its devices: {string.Join(", ", powered.Devices.Keys)}.", nameof(plan));
        }
        return new DayPlanWalk(powered, plan, progress, cancellation).Run();
    }
}

using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>
/// Packs in parallel through diodes behind one wiring: at each moment the bus is solved with the packs' own circuits, so that equal packs share and unequal
/// ones take over in turn. Model: docs/days.md.
/// </summary>
public static class ParallelRun
{
    /// <summary>Runs until an element of the wiring is short of voltage, no pack is left, or the time is over. A pack that ends itself leaves the others to go on.</summary>
    /// <param name="network">The wiring.</param>
    /// <param name="states">The state of each device by its name; one that isn't named is off.</param>
    /// <param name="sources">The packs with their diodes; one or more.</param>
    /// <param name="ambient">Temperature of the air; above 0 K.</param>
    /// <param name="limit">The longest time; above 0.</param>
    /// <param name="cancellation">Ends the run early.</param>
    /// <exception cref="ArgumentException">There is no source, or a name is no device here, or the device has no such state.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ambient temperature is not above 0 K, or the limit not above 0.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static ParallelResult Run(
        WiringNetwork network, OrderedMap<string> states, IReadOnlyList<ParallelSource> sources, Temperature ambient, Duration limit,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(sources);
        Require.Positive(ambient.Kelvins, "K", nameof(ambient));
        Require.Positive(limit.Seconds, "s", nameof(limit));
        if (sources.Count == 0)
            throw new ArgumentException("There is no source; accepted: one or more.", nameof(sources));
        var draw = new WiringDraw(network, network.StateOf(states), new bool[network.Count]);
        return new ParallelWalk(network, draw, sources, ambient.Kelvins).Run(limit.Seconds, cancellation);
    }
}

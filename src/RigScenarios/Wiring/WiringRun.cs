using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>
/// Runs a pack with wiring behind it: devices take their states block by block, what runs short of voltage drops out for good, until the last
/// essential device has stopped or the pack ends. Model: docs/wiring.md.
/// </summary>
public static class WiringRun
{
    /// <summary>Runs to the end.</summary>
    /// <param name="network">The wiring.</param>
    /// <param name="pack">The pack at its root.</param>
    /// <param name="ambient">Temperature of the air around the pack; above 0 K.</param>
    /// <param name="start">The state of the pack at the start, and where in the blocks the run begins.</param>
    /// <param name="blocks">The blocks, repeated from the first one; one or more.</param>
    /// <param name="options">When to stop, how exactly, how much to keep; the wiring has its own voltages to watch.</param>
    /// <param name="cancellation">Ends the run early.</param>
    /// <exception cref="WiringException">With the full pack and no load something would see more than its maximum voltage.</exception>
    /// <exception cref="ArgumentException">There is no block, a block names no device or no state of one, or a voltage to watch is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ambient temperature is not above 0 K.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static WiringResult Run(
        WiringNetwork network,
        Pack pack,
        Temperature ambient,
        DischargeStart start,
        IReadOnlyList<WiringBlock> blocks,
        DischargeOptions options,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(blocks);
        ArgumentNullException.ThrowIfNull(options);
        Require.Positive(ambient.Kelvins, "K", nameof(ambient));
        if (blocks.Count == 0)
            throw new ArgumentException("There is no block; accepted: one or more.", nameof(blocks));
        if (options.WatchedVoltage is not null)
            throw new ArgumentException("The wiring watches its own voltages; accepted: no watched voltage.", nameof(options));
        var highest = pack.SeriesGroups * pack.OpenCircuitVoltage.Points[^1].Voltage;
        if (network.OverVoltages(highest) is { Count: > 0 } wrong)
            throw new WiringException(string.Join(Environment.NewLine, wrong));
        return new WiringWalk(network, pack, ambient, start, blocks, options).Run(cancellation);
    }
}

using System.Globalization;
using RigScenarios.Batteries;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>A wiring of bare elements on one battery, for whoever has no build: the same simulation, with blocks that repeat
/// instead of a day.</summary>
public static class NetworkSimulation
{
    /// <summary>Runs until the last essential device has stopped, the battery ends or the time is over; times are from the
    /// start.</summary>
    /// <param name="network">The wiring.</param>
    /// <param name="pack">The battery at its root.</param>
    /// <param name="ambient">Temperature of the air; above 0 K.</param>
    /// <param name="start">The state of the battery at the start.</param>
    /// <param name="blocks">The blocks, repeated from the first one; one or more.</param>
    /// <param name="limit">The time that is looked at; above 0.</param>
    /// <param name="options">What is kept.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="WiringException">With the full battery and no load something would see more than its maximum
    /// voltage.</exception>
    /// <exception cref="ArgumentException">There is no block, or a block names no device or no state of one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ambient temperature is not above 0 K, or the limit not above
    /// 0.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static SimulationResult Run(
        WiringNetwork network, Pack pack, Temperature ambient, DischargeStart start, IReadOnlyList<WiringBlock> blocks,
        Duration limit, SimulationOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(blocks);
        Require.Positive(ambient.Kelvins, "K", nameof(ambient));
        Require.Positive(limit.Seconds, "s", nameof(limit));
        if (blocks.Count == 0)
            throw new ArgumentException("There is no block; accepted: one or more.", nameof(blocks));
        foreach (var block in blocks)
            network.StateOf(block.States);
        var day = new ShootingDay { Starts = TimeOnly.MinValue, Ambient = ambient,
            Blocks = new(Repeated(blocks, limit.Seconds)) };
        var battery = new KitBattery(PartOf(pack)) { Charge = start.StateOfCharge,
            StartTemperature = start.Temperature ?? ambient, Made = new PackAssumptions(pack, []) };
        var plan = new DayPlan { Days = [day], Batteries = new([KeyValuePair.Create("pack", battery)]), TakesAnyCharge = true };
        var rig = new SimulatedRig(network, null,
            stretch => blocks[int.Parse(stretch.Name, CultureInfo.InvariantCulture) % blocks.Count].States, null);
        return DaySimulation.RunRig(rig, plan, (options ?? new SimulationOptions()) with { FindsReserve = false },
            null, cancellation);
    }

    private static IEnumerable<KeyValuePair<string, DayBlock>> Repeated(IReadOnlyList<WiringBlock> blocks, double seconds)
    {
        var number = 0;
        for (var time = 0.0; time < seconds; number++)
        {
            var length = Math.Min(blocks[number % blocks.Count].Length.Seconds, seconds - time);
            yield return new(number.ToString(CultureInfo.InvariantCulture),
                new DayBlock { Length = Duration.FromSeconds(length) });
            time += length;
        }
    }

    // Only its name and its voltage are ever looked at: the pack is given.
    private static Part PartOf(Pack pack)
    {
        var volts = pack.SeriesGroups * pack.OpenCircuitVoltage.At(Ratio.FromDecimalFractions(0.5));
        return new Part { Name = "battery", Kind = PartKind.Battery,
            Battery = new Battery { Energy = Energy.FromWattHours(volts.Volts * pack.Capacity.AmpereHours), Voltage = volts } };
    }
}

using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>What each block asks of the battery.</summary>
internal static class BlockDemands
{
    /// <summary>The blocks of all days with the power that the battery must deliver at its nominal voltage, with copper at 20
    /// °C.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="plan">The days.</param>
    /// <param name="schedule">The days on one line of time.</param>
    /// <param name="cancellation">Stops it.</param>
    public static IReadOnlyList<BlockSpan> Of(SimulatedRig rig, DayPlan plan, DaySchedule schedule,
        CancellationToken cancellation)
    {
        var volts = plan.Batteries.Values.First().Part.Battery!.Voltage.Volts;
        var watts = new Dictionary<OrderedMap<string>, double>();
        var spans = new List<BlockSpan>();
        foreach (var (index, day) in plan.Days.Index())
        {
            var start = schedule.Days[index].Start;
            foreach (var (name, block) in day.Blocks)
            {
                cancellation.ThrowIfCancellationRequested();
                var end = start + block.Length.Seconds;

                // All takes of a block draw the same, and so do its resets.
                double? inTakes = null, inResets = null;
                var joules = DaySchedule.StretchesOf(index, name, block, start).Sum(stretch => (stretch.End - stretch.Start)
                    * (stretch.InReset ? inResets ??= WattsOf(stretch) : inTakes ??= WattsOf(stretch)));
                spans.Add(new BlockSpan(
                    index + 1, name, block.Title ?? name, Duration.FromSeconds(start), Duration.FromSeconds(end),
                    Power.FromWatts(end > start ? joules / (end - start) : 0)));
                start = end;
            }
        }

        return spans;

        double WattsOf(DayStretch stretch) => WattsIn(rig.StatesIn(stretch, reserveCharges: false));

        double WattsIn(OrderedMap<string> states)
        {
            if (watts.TryGetValue(states, out var known))
                return known;
            var draw = new WiringDraw(rig.Network, rig.Network.StateOf(states), new bool[rig.Network.Count]);
            var figures = draw.At(volts, Cable.ReferenceKelvin);

            // Where cables can't carry it: what the devices ask for.
            return watts[states] = figures is not null
                ? volts * Enumerable.Range(0, rig.Network.Count).Where(i => rig.Network.ParentOf(i) < 0)
                    .Sum(i => figures[i].Current)
                : rig.Network.Elements.OfType<Device>().Sum(device =>
                    device.DrawIn(states.TryGetValue(device.Name, out var state) ? state : Device.Off).WattsAt(volts));
        }
    }
}

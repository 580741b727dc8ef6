using System.Runtime.Intrinsics;
using RigScenarios.Batteries;
using RigScenarios.Numerics;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>The largest loads of an element of the wiring over a run.</summary>
/// <param name="Current">Largest current into it.</param>
/// <param name="At">When that is first reached, from midnight of the first day.</param>
/// <param name="OutputCurrent">Largest current out of it; regulators only.</param>
/// <param name="OutputAt">When that is first reached; regulators only.</param>
public sealed record ElementLoad(ElectricCurrent Current, Duration At, ElectricCurrent? OutputCurrent, Duration? OutputAt);

/// <summary>Keeps the largest currents of each element while a run lasts.</summary>
internal sealed class LoadTracker(WiringNetwork network)
{
    // A later moment counts only if it is larger by more than this, relative.
    private const double Flat = 1e-9;

    private readonly (double Value, double Seconds)[] current = new (double, double)[network.Count];
    private readonly (double Value, double Seconds)[] output = new (double, double)[network.Count];

    /// <summary>Looks at the last solution of a draw.</summary>
    public void See(WiringDraw draw, in ObservedLanes lanes)
    {
        for (var i = 0; i < network.Count; i++)
        {
            See(ref current[i], draw.Current(i), lanes.Seconds);
            if (network[i] is Regulator)
                See(ref output[i], draw.Output(i), lanes.Seconds);
        }
    }

    /// <summary>The loads, by name.</summary>
    public OrderedMap<ElementLoad> Loads() =>
        new(network.Elements.Select((element, i) => KeyValuePair.Create(element.Name, new ElementLoad(
        ElectricCurrent.FromAmperes(current[i].Value), Duration.FromSeconds(current[i].Seconds),
        element is Regulator ? ElectricCurrent.FromAmperes(output[i].Value) : null, element is Regulator
            ? Duration.FromSeconds(output[i].Seconds) : null))));

    private static void See(ref (double Value, double Seconds) known, Vector512<double> value, Vector512<double> seconds)
    {
        var largest = Collocation.Largest(value);
        if (!(largest > known.Value * (1 + Flat)))
            return;
        var lane = 0;
        foreach (var place in Collocation.LanesInOrder)
        {
            if (value[place] >= largest * (1 - Flat))
            {
                lane = place;
                break;
            }
        }

        known = (value[lane], seconds[lane]);
    }
}

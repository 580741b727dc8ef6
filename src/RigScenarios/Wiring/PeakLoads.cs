using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>The largest loads of each element, from the extremes of the terminal voltage under each draw.</summary>
internal static class PeakLoads
{
    public static OrderedMap<ElementLoad> Of(WiringNetwork network, LoadWitness witness)
    {
        var current = new Peak[network.Count];
        var output = new Peak[network.Count];
        var inlet = new Peak[network.Count];
        foreach (var (draw, volts, seconds) in witness.Points)
        {
            if (draw.At(volts) is not { } figures)
                continue;
            for (var i = 0; i < network.Count; i++)
            {
                current[i].See(figures[i].Current, seconds);
                output[i].See(figures[i].Output, seconds);
                if (network.ThresholdOf(i) is not null && draw.IsLookedAt(i))
                    inlet[i].See(1 / figures[i].Inlet, seconds);
            }
        }

        return new OrderedMap<ElementLoad>(network.Elements.Select((element, i) => KeyValuePair.Create(element.Name, new ElementLoad(
            ElectricCurrent.FromAmperes(current[i].Value),
            Duration.FromSeconds(current[i].Seconds),
            element is Regulator ? ElectricCurrent.FromAmperes(output[i].Value) : null,
            element is Regulator ? Duration.FromSeconds(output[i].Seconds) : null,
            inlet[i].Value > 0 ? ElectricPotential.FromVolts(1 / inlet[i].Value) : null,
            inlet[i].Value > 0 ? Duration.FromSeconds(inlet[i].Seconds) : null))));
    }

    // A largest value and the first moment of it; two that differ by rounding only are equal.
    private struct Peak
    {
        private const double Equal = 1e-9;
        private bool any;

        public double Value { get; private set; }

        public double Seconds { get; private set; }

        public void See(double value, double seconds)
        {
            if (!any || value > Value * (1 + Equal) || (value >= Value * (1 - Equal) && seconds < Seconds))
                (Value, Seconds) = (value, seconds);
            any = true;
        }
    }
}

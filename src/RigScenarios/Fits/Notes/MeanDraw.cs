using RigScenarios.Builds;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>A build's wiring under the mean powers of its devices.</summary>
internal static class MeanDraw
{
    private const string Mean = "mean";

    private const double LowestVolts = 0.5;

    /// <summary>The draw at the terminals.</summary>
    /// <param name="network">The wiring.</param>
    /// <param name="watts">Mean power of each device, W; one that isn't named is off.</param>
    public static WiringDraw Of(WiringNetwork network, IReadOnlyDictionary<string, double> watts)
    {
        var mean = new WiringNetwork(network.Elements.Select(element => element is Device device
            ? device with { States = new([new(Mean, DeviceDraw.OfPower(Power.FromWatts(watts.GetValueOrDefault(device.Name))))]) }
            : element));
        return new WiringDraw(mean, _ => Mean, new bool[mean.Count]);
    }

    /// <summary>
    /// The voltage of the battery's terminals at which the device stops that ended a run, or the essential device that stops
    /// first: its own least voltage, or that of a regulator or plate above it, with what the wires take at that draw. Null where
    /// nothing but the battery itself can end it.
    /// </summary>
    /// <param name="powered">The build.</param>
    /// <param name="network">Its wiring.</param>
    /// <param name="stretch">What ran at the end.</param>
    /// <param name="device">The device; null for the essential ones, or for all that ran where none is essential.</param>
    /// <param name="within">How near it is found, V.</param>
    public static ElectricPotential? StopVoltage(PoweredBuild powered, WiringNetwork network, RunStretch stretch, string? device,
        double within)
    {
        var watts = stretch.States[0].Devices.ToDictionary(item => item.Key, item => (double)item.Value.Watts,
            StringComparer.Ordinal);
        var draw = Of(network, watts);
        var ran = powered.Devices.Where(item => watts.GetValueOrDefault(item.Key) > 0).ToList();
        var ends = device is not null ? [device] : (ran.Exists(item => item.Value.Essential)
            ? ran.Where(item => item.Value.Essential) : ran).Select(item => item.Key).ToList();
        var volts = ends.SelectMany(name => Above(network, network.NumberOf(name))).Distinct()
            .Where(element => network.ThresholdOf(element) is not null)
            .Select(element => Lowest(draw, element, network.ThresholdOf(element)!.Value, within)).DefaultIfEmpty(0).Max();
        // What stops below the battery's own cut-off is never reached, unless somebody saw it stop.
        return volts > 0 && (device is not null || volts > CutoffOf(powered)) ? ElectricPotential.FromVolts(volts) : null;
    }

    private static double CutoffOf(PoweredBuild powered) => Batteries.PackModel.From(
        powered.Battery.Battery!, powered.Battery.Mass, powered.Battery.Size, null).Pack.CutoffVoltage.Volts;

    private static IEnumerable<int> Above(WiringNetwork network, int element)
    {
        for (var at = element; at >= 0; at = network.ParentOf(at))
            yield return at;
    }

    // The inlet's voltage rises with the terminals': halve.
    private static double Lowest(WiringDraw draw, int element, double threshold, double within)
    {
        var (low, high) = (LowestVolts, 60.0);
        // Behind a regulator a voltage stands still, whatever the terminals do.
        if (!Reaches(high) || Reaches(low))
            return 0;
        while (high - low > within)
        {
            var middle = (low + high) / 2;
            (low, high) = Reaches(middle) ? (low, middle) : (middle, high);
        }
        return high;

        bool Reaches(double volts) => draw.At(volts, Cable.ReferenceKelvin) is { } figures && figures[element].Inlet >= threshold;
    }
}

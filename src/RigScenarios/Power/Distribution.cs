using RigScenarios.Builds;

namespace RigScenarios.Power;

/// <summary>
/// What hangs on the pack of a build, with wires and contacts taken as perfect: the power that the pack must deliver for given
/// states, and the voltages at which something drops out. Regulators take power out / efficiency + own draw.
/// </summary>
/// <remarks>
/// The elements and the order of drop-outs are those of the wiring model with every wire at 0 Ω: switch, regulators and
/// devices stop, and stay stopped, when their inlet falls below their threshold.
/// </remarks>
internal sealed class Distribution
{
    private readonly PoweredBuild build;
    private readonly List<Element> elements = [];
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);

    public Distribution(PoweredBuild build)
    {
        this.build = build;
        Add(Build.BatteryFeed, -1, ElementKind.Source, 0);
        if (build.Plate is { Plate: { } plate })
            Add(build.Build.Plate!, 0, ElementKind.Switch, plate.SwitchOffVoltage?.Volts ?? 0);
        foreach (var (name, regulator) in build.Regulators)
            Add(name, numbers[regulator.FedBy], ElementKind.Regulator, regulator.Data.InputMinimum.Volts);
        foreach (var (name, device) in build.Devices)
            Add(name, numbers[device.FedBy], ElementKind.Device, device.Voltage?.Minimum?.Volts ?? 0);
    }

    /// <summary>What kind of element stands in the network.</summary>
    private enum ElementKind
    {
        Source,
        Switch,
        Regulator,
        Device,
    }

    /// <summary>A network state: which elements have stopped by themselves.</summary>
    public sealed class Stopped
    {
        private readonly HashSet<int> own = [];

        public void Add(int element) => own.Add(element);

        public bool Contains(int element) => own.Contains(element);
    }

    public string NameOf(int element) => elements[element].Name;

    public int NumberOf(string name) => numbers[name];

    /// <summary>Whether an element has stopped, or something above it has.</summary>
    public bool IsDead(int element, Stopped stopped)
    {
        for (; element >= 0; element = elements[element].Parent)
        {
            if (stopped.Contains(element))
                return true;
        }
        return false;
    }

    /// <summary>Power in W at the inlet of every element; element 0 is the pack.</summary>
    public double[] Watts(Func<string, PowerState> stateOf, Stopped stopped)
    {
        var inlet = new double[elements.Count];
        for (var index = elements.Count - 1; index >= 0; index--)
        {
            if (IsDead(index, stopped))
            {
                inlet[index] = 0;
                continue;
            }
            var element = elements[index];
            inlet[index] = element.Kind switch
            {
                ElementKind.Device => (double)build.Devices[element.Name].DrawIn(stateOf(element.Name)).Watts,
                ElementKind.Regulator => (inlet[index] / build.Regulators[element.Name].Data.Efficiency.DecimalFractions)
                    + (double)(build.Regulators[element.Name].Data.OwnDraw ?? UnitsNet.Power.Zero).Watts,
                ElementKind.Switch => inlet[index] + (double)(build.Plate!.Plate!.OwnDraw ?? UnitsNet.Power.Zero).Watts,
                _ => inlet[index],
            };
            if (element.Parent >= 0)
                inlet[element.Parent] += inlet[index];
        }
        return inlet;
    }

    /// <summary>
    /// The highest threshold in V of what now runs straight on the pack's voltage; null if nothing there has one. A device
    /// that draws nothing in its state is not looked at.
    /// </summary>
    public double? WatchedVolts(double[] watts, Stopped stopped)
    {
        double? highest = null;
        for (var index = 1; index < elements.Count; index++)
        {
            if (Watches(index, watts, stopped) && (highest is null || elements[index].Threshold > highest))
                highest = elements[index].Threshold;
        }
        return highest;
    }

    /// <summary>The element that is shortest of voltage, relative to its threshold, at a pack voltage: the first to stop.</summary>
    public int ShortestOf(double volts, double[] watts, Stopped stopped)
    {
        var shortest = -1;
        for (var index = 1; index < elements.Count; index++)
        {
            if (Watches(index, watts, stopped) && (shortest < 0 || Shortfall(index, volts) > Shortfall(shortest, volts)))
                shortest = index;
        }
        return shortest;
    }

    private double Shortfall(int element, double volts) => (elements[element].Threshold - volts) / elements[element].Threshold;

    private bool Watches(int index, double[] watts, Stopped stopped) =>
        elements[index].Threshold > 0 && !IsDead(index, stopped) && OnPackVoltage(index) && (elements[index].Kind != ElementKind.Device || watts[index] > 0);

    private bool OnPackVoltage(int index)
    {
        for (var parent = elements[index].Parent; parent >= 0; parent = elements[parent].Parent)
        {
            if (elements[parent].Kind == ElementKind.Regulator)
                return false;
        }
        return true;
    }

    private void Add(string name, int parent, ElementKind kind, double threshold)
    {
        numbers[name] = elements.Count;
        elements.Add(new Element(name, parent, kind, threshold));
    }

    private sealed record Element(string Name, int Parent, ElementKind Kind, double Threshold);
}

using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>
/// The wiring between a pack's terminals and the devices: a tree of wires, switches, regulators and devices, solved for voltages
/// and currents
/// everywhere. Model, equations and limits: docs/wiring.md.
/// </summary>
/// <remarks>Immutable. "What if" is a new network of changed elements.</remarks>
public sealed class WiringNetwork
{
    private readonly WiringElement[] elements;
    private readonly int[] parents;
    private readonly int[] sources;
    private readonly double?[] thresholds;

    /// <param name="elements">The elements in any order. Of two that would stop at the same moment, the one listed first
    /// stops.</param>
    /// <exception cref="WiringException">
    /// A name stands twice, an element is fed by nothing that is there, elements feed each other in a circle, or a device feeds
    /// something; all problems at once.
    /// </exception>
    public WiringNetwork(IEnumerable<WiringElement> elements)
    {
        ArgumentNullException.ThrowIfNull(elements);
        this.elements = WiringOrder.Of([.. elements]);
        var numbers = this.elements.Index().ToDictionary(item => item.Item.Name, item => item.Index, StringComparer.Ordinal);
        parents = [.. this.elements.Select(element => element.FedBy is { } above ? numbers[above] : -1)];
        sources = new int[parents.Length];
        for (var i = 0; i < parents.Length; i++)
            sources[i] = parents[i] < 0 ? -1 : this.elements[parents[i]] is Regulator ? parents[i] : sources[parents[i]];
        thresholds = [.. this.elements.Select(Threshold)];
    }

    /// <summary>The elements, each after the one that feeds it.</summary>
    public IReadOnlyList<WiringElement> Elements => Array.AsReadOnly(elements);

    internal int Count => elements.Length;

    internal WiringElement this[int index] => elements[index];

    /// <summary>
    /// The operating point at a given voltage of the pack's terminals; null if there is none, because what is demanded can't be
    /// delivered through
    /// these wires at any voltage of the devices. Everything runs, also what is below its minimum voltage.
    /// </summary>
    /// <param name="terminals">Voltage of the pack's terminals; above 0.</param>
    /// <param name="states">The state of each device by its name; one that isn't named is off.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not above 0.</exception>
    /// <exception cref="ArgumentException">A name is no device here, or the device has no such state.</exception>
    public OperatingPoint? TrySolve(ElectricPotential terminals, OrderedMap<string> states)
    {
        Require.Positive(terminals.Volts, "V", nameof(terminals));
        var draw = new WiringDraw(this, StateOf(states), new bool[Count]);
        return draw.At(terminals.Volts, Cable.ReferenceKelvin) is { } figures
            ? new OperatingPoint(this, terminals.Volts, figures, Cable.ReferenceKelvin) : null;
    }

    /// <summary>
    /// The operating point behind a source with a resistance, such as a pack at rest: the highest voltage of its terminals that
    /// satisfies
    /// V = E - R·I; null if there is none.
    /// </summary>
    /// <param name="source">Voltage without load; above 0.</param>
    /// <param name="resistance">Resistance of the source; 0 or more.</param>
    /// <param name="states">The state of each device by its name; one that isn't named is off.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not above 0, or the resistance is negative.</exception>
    /// <exception cref="ArgumentException">A name is no device here, or the device has no such state.</exception>
    public OperatingPoint? TrySolve(ElectricPotential source, ElectricResistance resistance, OrderedMap<string> states)
    {
        Require.Positive(source.Volts, "V", nameof(source));
        Require.NotNegative(resistance.Ohms, "Ω", nameof(resistance));
        return WiringLimits.BehindSource(this, source.Volts, resistance.Ohms, StateOf(states));
    }

    /// <summary>
    /// How many times all draws (also what regulators take themselves) could grow until nothing can deliver them at this voltage
    /// of the terminals. Below 1:
    /// there is no operating point. Infinite above 1000.
    /// </summary>
    /// <param name="terminals">Voltage of the pack's terminals; above 0.</param>
    /// <param name="states">The state of each device by its name; one that isn't named is off.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not above 0.</exception>
    /// <exception cref="ArgumentException">A name is no device here, or the device has no such state.</exception>
    public double LoadFactorAtEdge(ElectricPotential terminals, OrderedMap<string> states)
    {
        Require.Positive(terminals.Volts, "V", nameof(terminals));
        return WiringLimits.LoadFactorAtEdge(this, terminals.Volts, StateOf(states));
    }

    /// <summary>
    /// Every device and regulator that would see more than its maximum voltage, worst first: at its inlet stands the pack's
    /// voltage without
    /// load, or what the regulator above it gives. Such a wiring must not be connected.
    /// </summary>
    /// <param name="highest">The pack's voltage without load, full.</param>
    public IReadOnlyList<OverVoltage> OverVoltages(ElectricPotential highest) => WiringLimits.OverVoltages(this, highest.Volts);

    /// <summary>The number of the element of that name; -1 if there is none.</summary>
    internal int NumberOf(string name) => Array.FindIndex(elements, element => element.Name == name);

    internal int ParentOf(int element) => parents[element];

    /// <summary>The regulator that an element hangs on; -1 if it is the pack.</summary>
    internal int SourceOf(int element) => sources[element];

    /// <summary>The inlet voltage below which an element stops, V; null if it never does.</summary>
    internal double? ThresholdOf(int element) => thresholds[element];

    internal Func<string, string> StateOf(OrderedMap<string> states)
    {
        ArgumentNullException.ThrowIfNull(states);
        foreach (var name in states.Keys)
        {
            if (!Array.Exists(elements, element => element is Device && element.Name == name))
                throw new ArgumentException(
                    $"There is no device named \"{name}\" in the wiring; its devices: "
                        + $"{string.Join(", ", elements.OfType<Device>().Select(device => device.Name))}.", nameof(states));
        }

        return name => states.TryGetValue(name, out var state) ? state : Device.Off;
    }

    private static double? Threshold(WiringElement element) => element switch
    {
        LowVoltageSwitch guard => guard.OpensBelow?.Volts,
        Regulator regulator => regulator.InputMinimum?.Volts,
        Device device => device.MinimumVoltage?.Volts,
        _ => null,
    };
}

using System.Runtime.Intrinsics;
using RigScenarios.Batteries;

namespace RigScenarios.Wiring;

/// <summary>
/// A network in one combination of device states and stopped elements, made ready for solving: each regulator's outlet is a fixed voltage, so what hangs
/// behind it is solved once, and is a constant power to what feeds it.
/// </summary>
internal sealed class WiringDraw : SolvedDraw
{
    private readonly WiringNetwork network;
    private readonly double factor;
    private readonly DeviceDraw?[] draws;
    private readonly bool[] live;
    private readonly int[] inletNodes;
    private readonly double[] inletVolts;
    private readonly double[] outputAmperes;
    private readonly double[] regulatorWatts;
    private readonly RadialPart root;
    private readonly (int Element, int Node, double Threshold)[] watched;
    private readonly double fixedMargin = double.PositiveInfinity;
    private readonly bool unsolvable;

    /// <param name="network">The network.</param>
    /// <param name="stateOf">The state of a device, by its name.</param>
    /// <param name="stopped">True for each element that has stopped by itself.</param>
    /// <param name="factor">All draws, also those of regulators themselves, are taken so many times.</param>
    public WiringDraw(WiringNetwork network, Func<string, string> stateOf, ReadOnlySpan<bool> stopped, double factor = 1)
    {
        this.network = network;
        this.factor = factor;
        var count = network.Count;
        draws = new DeviceDraw?[count];
        live = new bool[count];
        inletNodes = new int[count];
        inletVolts = new double[count];
        outputAmperes = new double[count];
        regulatorWatts = new double[count];
        for (var i = 0; i < count; i++)
        {
            var parent = network.ParentOf(i);
            live[i] = !stopped[i] && (parent < 0 || live[parent]);
            if (network[i] is Device device)
                draws[i] = device.DrawIn(stateOf(device.Name));
        }

        for (var i = count - 1; i >= 0; i--)
        {
            if (live[i] && network[i] is Regulator regulator)
                unsolvable |= !SolveBehind(i, regulator);
        }

        root = Part(-1);
        var watches = new List<(int, int, double)>();
        for (var i = 0; i < count; i++)
        {
            if (network.ThresholdOf(i) is not { } threshold || !IsLookedAt(i))
                continue;
            if (network.SourceOf(i) < 0)
                watches.Add((i, inletNodes[i], threshold));
            else
                fixedMargin = Math.Min(fixedMargin, inletVolts[i] - threshold);
        }

        watched = [.. watches];
    }

    /// <inheritdoc/>
    public override bool Watches => watched.Length > 0 || double.IsFinite(fixedMargin);

    /// <inheritdoc/>
    public override void Solve(Vector512<double> source, Vector512<double> resistance, ref CircuitLanes point)
    {
        var solvable = root.Solve(source, resistance, out var pivot);
        if (unsolvable)
            solvable = Vector512<double>.Zero;
        point.Voltage = root.Volts(0);
        point.Current = root.Current();

        // (V·dE/dV)² is b² - 4·a·P·R where all draws are at the terminals; it goes to 0 straight with the distance from the limit. Beyond the limit: by how
        // much the source is too low for these voltages.
        var margin = pivot * point.Voltage;
        var missing = source - (point.Voltage + (resistance * point.Current));
        var beyond = Vector512.Min(missing, Vector512.Create(-1e-12)) * point.Voltage;
        point.PowerMargin = Vector512.ConditionalSelect(solvable, margin * margin, beyond);

        var least = Vector512.Create(fixedMargin);
        foreach (var (_, node, threshold) in watched)
            least = Vector512.Min(least, root.Volts(node) - Vector512.Create(threshold));
        point.Watched = least;
    }

    /// <summary>
    /// The draw as a formula and the terminal voltage to watch (V; null for none), if no resistance stands between the terminals and anything that hangs on them:
    /// the formula is solved faster. Null otherwise, also where something is short of voltage whatever the terminals do.
    /// </summary>
    public (TerminalDraw Draw, double? Watched)? AtTerminals()
    {
        if (root.AtTerminals is not { } draw || unsolvable || fixedMargin <= 0)
            return null;
        return (draw, watched.Length > 0 ? watched.Max(one => one.Threshold) : null);
    }

    /// <summary>Current out of a regulator, A; 0 for other elements and for one that has stopped.</summary>
    public double OutputOf(int element) => outputAmperes[element];

    /// <summary>Inlet voltage (V), inlet current and output current (A) of every element at a voltage of the terminals; null if there is no solution.</summary>
    public ElementFigures[]? At(double terminalVolts)
    {
        var solvable = root.Solve(Vector512.Create(terminalVolts), Vector512<double>.Zero, out _);
        if (unsolvable || solvable == Vector512<double>.Zero)
            return null;
        var figures = new ElementFigures[network.Count];
        for (var i = network.Count - 1; i >= 0; i--)
        {
            if (!live[i])
                continue;
            var inlet = InletAt(i);
            var own = network[i] switch
            {
                Device => DrawnAt(i, inlet),
                Regulator => regulatorWatts[i] / inlet,
                _ => figures[i].Current,
            };
            figures[i] = new ElementFigures(inlet, own, outputAmperes[i]);
            var parent = network.ParentOf(i);
            if (parent >= 0 && network[parent] is not Regulator)
                figures[parent] = figures[parent] with { Current = figures[parent].Current + own };
        }

        return figures;
    }

    /// <summary>The element that is shortest of voltage, relative to its threshold, at a voltage of the terminals: the first to stop; -1 if none is watched.</summary>
    public int Shortest(double terminalVolts)
    {
        root.Solve(Vector512.Create(terminalVolts), Vector512<double>.Zero, out _);
        var (shortest, largest) = (-1, double.NegativeInfinity);
        for (var i = 0; i < network.Count; i++)
        {
            if (network.ThresholdOf(i) is not { } threshold || !IsLookedAt(i))
                continue;
            var shortfall = (threshold - InletAt(i)) / threshold;
            if (shortfall > largest)
                (shortest, largest) = (i, shortfall);
        }

        return shortest;
    }

    /// <summary>The least of what the watched voltages stand above their thresholds at a voltage of the terminals, V; infinite if nothing is watched.</summary>
    public double LeastMargin(double terminalVolts)
    {
        root.Solve(Vector512.Create(terminalVolts), Vector512<double>.Zero, out _);
        return watched.Select(one => root.Volts(one.Node)[0] - one.Threshold).Append(fixedMargin).Min();
    }

    /// <summary>Whether an element is held against its threshold: it runs and, if it is a device, draws.</summary>
    public bool IsLookedAt(int element) => live[element] && (draws[element] is not { } draw || Draws(draw));

    private static bool Draws(DeviceDraw draw) => (double)draw.ConstantPower.Watts > 0 || draw.ConstantCurrent.Amperes > 0 || draw.Conductance.Siemens > 0;

    private double InletAt(int element) => network.SourceOf(element) < 0 ? root.Volts(inletNodes[element])[0] : inletVolts[element];

    private double DrawnAt(int element, double volts)
    {
        var draw = draws[element]!;
        return factor * (draw.ConstantCurrent.Amperes + (draw.Conductance.Siemens * volts) + ((double)draw.ConstantPower.Watts / volts));
    }

    private bool SolveBehind(int element, Regulator regulator)
    {
        var part = Part(element);
        var output = regulator.Output.Volts;
        var solvable = part.Solve(Vector512.Create(output), Vector512<double>.Zero, out _) != Vector512<double>.Zero;
        for (var i = element + 1; i < network.Count; i++)
        {
            if (live[i] && network.SourceOf(i) == element)
                inletVolts[i] = part.Volts(inletNodes[i])[0];
        }

        var current = part.Current()[0];
        outputAmperes[element] = current;
        regulatorWatts[element] = (output * current / regulator.Efficiency.DecimalFractions)
            + (factor * (double)regulator.OwnDraw.Watts)
            + (regulator.LossPerAmpere.Volts * current)
            + (regulator.LossResistance.Ohms * current * current);
        return solvable;
    }

    // What hangs on a regulator's outlet, or on the pack for -1; the parts of regulators in it are solved already.
    private RadialPart Part(int source)
    {
        var nodes = new List<RadialNode> { new(-1, 0) };
        var outlets = new int[network.Count];
        for (var i = source + 1; i < network.Count; i++)
        {
            if (!live[i] || network.SourceOf(i) != source)
                continue;
            var parent = network.ParentOf(i);
            var node = parent == source ? 0 : outlets[parent];
            inletNodes[i] = outlets[i] = node;
            switch (network[i])
            {
                case Wire { Resistance.Ohms: > 0 } wire:
                    outlets[i] = nodes.Count;
                    nodes.Add(new RadialNode(node, wire.Resistance.Ohms));
                    break;
                case Regulator:
                    nodes[node].Watts += regulatorWatts[i];
                    break;
                case Device:
                    var draw = draws[i]!;
                    nodes[node].Watts += factor * (double)draw.ConstantPower.Watts;
                    nodes[node].Amperes += factor * draw.ConstantCurrent.Amperes;
                    nodes[node].Siemens += factor * draw.Conductance.Siemens;
                    break;
            }
        }

        return new RadialPart(nodes);
    }
}

/// <summary>What an element sees, in plain numbers; all 0 for one that is dead.</summary>
/// <param name="Inlet">V.</param>
/// <param name="Current">At the inlet, A.</param>
/// <param name="Output">A regulator's output current, A.</param>
[System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Auto)]
internal readonly record struct ElementFigures(double Inlet, double Current, double Output);

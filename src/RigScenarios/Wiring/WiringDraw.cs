using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using RigScenarios.Batteries;

namespace RigScenarios.Wiring;

/// <summary>
/// A network in one combination of device states and stopped elements, made ready for solving: each regulator's outlet is a fixed
/// voltage, so what hangs
/// behind it is solved apart, and is a constant power to what feeds it. Copper has the temperature of the air.
/// </summary>
/// <remarks>One instance serves one thread: it holds the work space, and the figures of the last solution.</remarks>
internal sealed class WiringDraw : SolvedDraw
{
    private readonly WiringNetwork network;
    private readonly double factor;
    private readonly DeviceDraw?[] draws;
    private readonly (double Watts, double Siemens, double Amperes)[] drawn;
    private readonly bool[] live;
    private readonly int[] inletNodes;
    private readonly (int Element, RadialPart Part)[] regulators;
    private readonly Dictionary<int, RadialPart> parts = [];
    private readonly RadialPart root;
    private readonly (int Element, double Threshold)[] watched;
    private readonly bool hasCopperBehind;
    private readonly Vector512<double>[] inlets;
    private readonly Vector512<double>[] outputs;
    private readonly Vector512<double>[] taken;
    private readonly Vector512<double>[] currents;

    private Vector512<double> preparedAir = Vector512.Create(double.NaN);
    private Vector512<double> solvableBehind;

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
        drawn = new (double, double, double)[count];
        live = new bool[count];
        inletNodes = new int[count];
        inlets = new Vector512<double>[count];
        outputs = new Vector512<double>[count];
        taken = new Vector512<double>[count];
        currents = new Vector512<double>[count];
        for (var i = 0; i < count; i++)
        {
            var parent = network.ParentOf(i);
            live[i] = !stopped[i] && (parent < 0 || live[parent]);
            if (network[i] is Device device && device.DrawIn(stateOf(device.Name)) is var draw)
            {
                draws[i] = draw;
                drawn[i] = ((double)draw.ConstantPower.Watts, draw.Conductance.Siemens, draw.ConstantCurrent.Amperes);
            }
        }

        // Those that hang on others first.
        regulators = [.. Enumerable.Range(0, count).Reverse().Where(i => live[i] && network[i] is Regulator)
            .Select(i => (i, Part(i)))];
        root = Part(-1);
        parts.Add(-1, root);
        foreach (var (element, part) in regulators)
            parts.Add(element, part);
        hasCopperBehind = Array.Exists(regulators, regulator => regulator.Part.HasCopper);
        watched = [.. Enumerable.Range(0, count).Where(i => network.ThresholdOf(i) is not null && IsLookedAt(i))
            .Select(i => (i, network.ThresholdOf(i)!.Value))];
        Prepare(Vector512.Create(Cable.ReferenceKelvin));
    }

    /// <inheritdoc/>
    public override bool Watches => watched.Length > 0;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public override void Solve(Vector512<double> source, Vector512<double> resistance, Vector512<double> air,
        ref CircuitLanes point)
    {
        Prepare(air);
        var solvable = root.Solve(source, resistance, out var pivot) & solvableBehind;
        point.Voltage = root.Volts(0);
        point.Current = root.Current();

        // (V·dE/dV)² is b² - 4·a·P·R where all draws are at the terminals; it goes to 0 straight with the distance from the
        // limit. Beyond the limit: by how
        // much the source is too low for these voltages.
        var margin = pivot * point.Voltage;
        var missing = source - (point.Voltage + (resistance * point.Current));
        var beyond = Vector512.Min(missing, Vector512.Create(-1e-12)) * point.Voltage;
        point.PowerMargin = Vector512.ConditionalSelect(solvable, margin * margin, beyond);
        var least = Vector512.Create(double.PositiveInfinity);
        foreach (var (element, threshold) in watched)
            least = Vector512.Min(least, Inlet(element) - Vector512.Create(threshold));
        point.Watched = least;
    }

    /// <summary>
    /// The draw as a formula and the terminal voltage to watch (V; null for none), if no resistance stands between the terminals
    /// and anything that hangs on them:
    /// the formula is solved faster. Null otherwise, also where something is short of voltage whatever the terminals do.
    /// </summary>
    public (TerminalDraw Draw, double? Watched)? AtTerminals()
    {
        if (hasCopperBehind || root.AtTerminals is not { } draw || solvableBehind == Vector512<double>.Zero)
            return null;
        double? highest = null;
        foreach (var (element, threshold) in watched)
        {
            if (network.SourceOf(element) < 0)
                highest = Math.Max(highest ?? 0, threshold);
            else if (inlets[element][0] <= threshold)
                return null;
        }

        return (draw, highest);
    }

    /// <summary>Solves the network at voltages of the terminals; the figures of its elements then are those of that solution.
    /// Lanes without one are zero in the result.</summary>
    public Vector512<double> Look(Vector512<double> terminalVolts, Vector512<double> air)
    {
        Prepare(air);
        var solvable = root.Solve(terminalVolts, Vector512<double>.Zero, out _) & solvableBehind;
        SumCurrents();
        return solvable;
    }

    /// <summary>Inlet voltage of an element in the last solution, V; 0 for one that is dead.</summary>
    public Vector512<double> Inlet(int element) => !live[element] ? Vector512<double>.Zero : network.SourceOf(element) < 0
        ? root.Volts(inletNodes[element]) : inlets[element];

    /// <summary>Current into an element after <see cref="Look"/>, A.</summary>
    public Vector512<double> Current(int element) => currents[element];

    /// <summary>Current out of a regulator, A; 0 for other elements and for one that has stopped.</summary>
    public Vector512<double> Output(int element) => outputs[element];

    /// <summary>Inlet voltage (V), inlet current and output current (A) of every element at a voltage of the terminals; null if
    /// there is no solution.</summary>
    public ElementFigures[]? At(double terminalVolts, double airKelvin)
    {
        if (Look(Vector512.Create(terminalVolts), Vector512.Create(airKelvin)) == Vector512<double>.Zero)
            return null;
        var figures = new ElementFigures[network.Count];
        for (var i = 0; i < figures.Length; i++)
        {
            if (live[i])
                figures[i] = new ElementFigures(Inlet(i)[0], currents[i][0], outputs[i][0]);
        }

        return figures;
    }

    /// <summary>The element that is shortest of voltage, relative to its threshold, at a voltage of the terminals: the first to
    /// stop; -1 if none is watched.</summary>
    public int Shortest(double terminalVolts, double airKelvin)
    {
        Look(Vector512.Create(terminalVolts), Vector512.Create(airKelvin));
        var (shortest, largest) = (-1, double.NegativeInfinity);
        foreach (var (element, threshold) in watched)
        {
            var shortfall = (threshold - Inlet(element)[0]) / threshold;
            if (shortfall > largest)
                (shortest, largest) = (element, shortfall);
        }

        return shortest;
    }

    /// <summary>The least of what the watched voltages stand above their thresholds at a voltage of the terminals, V; infinite if
    /// nothing is watched.</summary>
    public double LeastMargin(double terminalVolts, double airKelvin)
    {
        Look(Vector512.Create(terminalVolts), Vector512.Create(airKelvin));
        return watched.Select(one => Inlet(one.Element)[0] - one.Threshold).Append(double.PositiveInfinity).Min();
    }

    /// <summary>Whether an element runs.</summary>
    public bool IsLive(int element) => live[element];

    /// <summary>Whether an element is held against its threshold: it runs and, if it is a device, draws.</summary>
    public bool IsLookedAt(int element) => live[element] && (draws[element] is not { } draw || draw.DrawsAnything);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void SumCurrents()
    {
        Array.Clear(currents);
        for (var i = network.Count - 1; i >= 0; i--)
        {
            if (!live[i])
                continue;
            if (draws[i] is not null)
                currents[i] = CurrentAt(Inlet(i), drawn[i].Watts, drawn[i].Siemens, drawn[i].Amperes);
            else if (network[i] is Regulator)
            {
                currents[i] = taken[i] / Inlet(i);
            }

            var parent = network.ParentOf(i);
            if (parent >= 0 && network[parent] is not Regulator)
                currents[parent] += currents[i];
        }
    }

    private Vector512<double> CurrentAt(Vector512<double> inlet, double watts, double siemens, double amperes) =>
        ((Vector512.Create(watts) / inlet) + (inlet * siemens) + Vector512.Create(amperes)) * factor;

    // Solves what hangs behind regulators; what has no copper behind any need not be solved again.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Prepare(Vector512<double> air)
    {
        if (air == preparedAir)
            return;
        var copper = Cable.CopperFactor(air);
        if (!hasCopperBehind && !double.IsNaN(preparedAir[0]))
        {
            if (root.HasCopper)
            {
                root.Prepare(copper);
                foreach (var (element, _) in regulators)
                {
                    if (network.SourceOf(element) < 0)
                        root.AddWatts(inletNodes[element], taken[element]);
                }
            }

            preparedAir = air;
            return;
        }

        preparedAir = air;
        solvableBehind = Vector512<double>.AllBitsSet;
        foreach (var part in parts.Values)
            part.Prepare(copper);
        foreach (var (element, part) in regulators)
            SolveBehind(element, (Regulator)network[element], part);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void SolveBehind(int element, Regulator regulator, RadialPart part)
    {
        var output = regulator.Output.Volts;
        solvableBehind &= part.Solve(Vector512.Create(output), Vector512<double>.Zero, out _);
        for (var i = element + 1; i < network.Count; i++)
        {
            if (live[i] && network.SourceOf(i) == element)
                inlets[i] = part.Volts(inletNodes[i]);
        }

        var current = part.Current();
        outputs[element] = current;
        taken[element] = (current * (output / regulator.Efficiency.DecimalFractions))
            + Vector512.Create(factor * (double)regulator.OwnDraw.Watts)
            + (current * regulator.LossPerAmpere.Volts) + (current * current * regulator.LossResistance.Ohms);
        parts[network.SourceOf(element)].AddWatts(inletNodes[element], taken[element]);
    }

    // What hangs on a regulator's outlet, or on the pack for -1.
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
                case Wire wire when wire.Resistance.Ohms > 0 || wire.Copper.Ohms > 0:
                    outlets[i] = nodes.Count;
                    nodes.Add(new RadialNode(node, wire.Resistance.Ohms, wire.Copper.Ohms));
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
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ElementFigures(double Inlet, double Current, double Output);

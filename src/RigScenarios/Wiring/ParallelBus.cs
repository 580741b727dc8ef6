using System.Runtime.Intrinsics;
using RigScenarios.Batteries;

namespace RigScenarios.Wiring;

/// <summary>
/// The common terminals of several packs behind diodes, at one moment. A pack carries current only if its voltage less the drop is above the bus; those that do
/// are one source with the resistances in parallel, so that the wiring is solved as behind one pack.
/// </summary>
internal sealed class ParallelBus(IReadOnlyList<PackParameters> packs, double[] drops, double[] ohms, SolvedDraw load)
{
    private readonly SourceProbe probe = new();
    private readonly int[] order = new int[packs.Count];

    /// <summary>Voltage of the bus after the last solution, V.</summary>
    public double Volts { get; private set; }

    /// <summary>Current into the wiring, A.</summary>
    public double Amperes { get; private set; }

    /// <summary>Above 0 as long as there is a solution.</summary>
    public double PowerMargin { get; private set; }

    /// <summary>The least of what the watched voltages of the wiring stand above their thresholds, V.</summary>
    public double Watched { get; private set; }

    /// <summary>Current of each pack after the last solution, A.</summary>
    public double[] Currents { get; } = new double[packs.Count];

    /// <summary>Voltage at each pack's own terminals, V.</summary>
    public double[] PackVolts { get; } = new double[packs.Count];

    /// <summary>What the circuit of each pack does at its current; null for one that has ended.</summary>
    public CircuitLanes[] Points { get; } = new CircuitLanes[packs.Count];

    /// <summary>Solves the bus, then each pack at its current.</summary>
    public void Solve(ReadOnlySpan<PackState> states, ReadOnlySpan<bool> ended)
    {
        Span<double> source = stackalloc double[packs.Count];
        Span<double> resistance = stackalloc double[packs.Count];
        var count = 0;
        for (var i = 0; i < packs.Count; i++)
        {
            Currents[i] = 0;
            if (ended[i])
                continue;
            CircuitOf(i, states[i], new TerminalDraw(0, 0, 0, probe));
            (source[i], resistance[i]) = (probe.Source - drops[i], probe.Resistance + ohms[i] + 1e-9);
            order[count++] = i;
        }

        var voltages = source.ToArray();
        Array.Sort(order, 0, count, Comparer<int>.Create((a, b) => voltages[b].CompareTo(voltages[a])));

        // The highest first; the next joins as long as the bus lies below it.
        double conductance = 0, weighted = 0;
        var joined = 0;
        var point = default(CircuitLanes);
        while (joined < count && (joined == 0 || Volts < voltages[order[joined]]))
        {
            var i = order[joined++];
            conductance += 1 / resistance[i];
            weighted += source[i] / resistance[i];
            load.Solve(Vector512.Create(weighted / conductance), Vector512.Create(1 / conductance), ref point);
            Volts = point.Voltage[0];
        }

        (Amperes, PowerMargin, Watched) = (point.Current[0], point.PowerMargin[0], point.Watched[0]);
        for (var k = 0; k < joined; k++)
            Currents[order[k]] = Math.Max(0, (source[order[k]] - Volts) / resistance[order[k]]);
        for (var i = 0; i < packs.Count; i++)
        {
            Points[i] = CircuitOf(i, states[i], new TerminalDraw(0, Currents[i], 0));
            PackVolts[i] = Points[i].Voltage[0];
        }
    }

    private CircuitLanes CircuitOf(int i, in PackState state, in TerminalDraw draw)
    {
        var pack = packs[i];
        var piece = pack.OpenCircuit.Pieces[pack.OpenCircuit.IndexOf(state.Charge)];
        var kelvin = state.Kelvin;
        var band = pack.Bands[Math.Max(0, Array.FindLastIndex(pack.Bands, one => kelvin >= one.From))];
        Circuit.Solve(pack, in piece, in band, in draw, StateLanes.Same(state), out var point);
        return point;
    }

    /// <summary>Draws nothing and keeps what it was asked behind.</summary>
    private sealed class SourceProbe : SolvedDraw
    {
        public double Source { get; private set; }

        public double Resistance { get; private set; }

        public override bool Watches => false;

        public override void Solve(Vector512<double> source, Vector512<double> resistance, ref CircuitLanes point)
        {
            (Source, Resistance) = (source[0], resistance[0]);
            (point.Voltage, point.Current, point.Watched) = (source, Vector512<double>.Zero, source);
            point.PowerMargin = Vector512.Create(double.PositiveInfinity);
        }
    }
}

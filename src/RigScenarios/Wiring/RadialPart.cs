using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using RigScenarios.Batteries;
using RigScenarios.Numerics;

namespace RigScenarios.Wiring;

/// <summary>
/// A tree of resistances behind one source, with a draw I = Ic + g·V + P/V at any of its nodes: what hangs on the pack, or on a
/// regulator's outlet. Solved
/// for eight sources at once, one in each lane. Plain SI doubles: V, A, W, Ω, S, K.
/// </summary>
/// <remarks>
/// The solution with the highest voltages (docs/wiring.md). Newton from the voltages without constant power falls monotonically
/// to it, because each draw
/// is convex in its voltage: J. M. Ortega and W. C. Rheinboldt, Iterative Solution of Nonlinear Equations in Several Variables
/// (1970), 13.3
/// [from memory]. The linear system of each iteration is a tree, so it is eliminated from the leaves to the root; it has a
/// non-negative inverse
/// exactly as long as all pivots are above 0, and where one isn't, there is no solution.
/// One instance serves one thread: it holds the work space, and the voltages of the last solution.
/// </remarks>
internal sealed partial class RadialPart
{
    // Newton about doubles the digits, so that what is left after a change this small is nothing; right at the edge of what can
    // be delivered it
    // gains one bit at a time, hence the large number of iterations.
    private const double SmallestChange = 1e-10;
    private const int MostIterations = 80;

    private readonly RadialNode[] nodes;
    private readonly int[] parents;
    private readonly Vector512<double>[] resistances;
    private readonly Vector512<double>[] watts;
    private readonly bool[] hasWatts;
    private readonly Vector512<double>[] volts;
    private readonly Vector512<double>[] constants;
    private readonly Vector512<double>[] slopes;

    /// <param name="nodes">The nodes; the first is the source's terminal, each other stands after its parent.</param>
    public RadialPart(IReadOnlyList<RadialNode> nodes)
    {
        this.nodes = [.. nodes];
        parents = [.. nodes.Select(node => node.Parent)];
        resistances = [.. nodes.Select(node => Vector512.Create(node.Resistance))];
        watts = [.. nodes.Select(node => Vector512.Create(node.Watts))];
        hasWatts = [.. nodes.Select(node => node.Watts > 0)];
        volts = new Vector512<double>[parents.Length];
        constants = new Vector512<double>[parents.Length];
        slopes = new Vector512<double>[parents.Length];
    }

    /// <summary>Whether any resistance goes with the temperature of the air.</summary>
    public bool HasCopper => Array.Exists(nodes, node => node.Copper > 0);

    /// <summary>The whole draw, where all of it is at the source's terminal; null otherwise.</summary>
    public TerminalDraw? AtTerminals => parents.Length == 1
        ? new TerminalDraw(watts[0][0], nodes[0].Amperes, nodes[0].Siemens) : null;

    /// <summary>Voltages at a node after the last solution; where there is none, those at which the search found that
    /// out.</summary>
    public Vector512<double> Volts(int node) => volts[node];

    /// <summary>Sets all copper to temperatures, and takes the power of regulators out of all nodes.</summary>
    /// <param name="copperFactor">How many times its resistance at 20 °C copper has.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Prepare(Vector512<double> copperFactor)
    {
        for (var node = 0; node < nodes.Length; node++)
        {
            resistances[node] = Vector512.Create(nodes[node].Resistance) + (copperFactor * nodes[node].Copper);
            watts[node] = Vector512.Create(nodes[node].Watts);
            hasWatts[node] = nodes[node].Watts > 0;
        }
    }

    /// <summary>Adds the power that a regulator takes at a node.</summary>
    public void AddWatts(int node, Vector512<double> more)
    {
        watts[node] += more;
        hasWatts[node] |= Vector512.GreaterThanAny(more, Vector512<double>.Zero);
    }

    /// <summary>
    /// Solves behind sources of voltage E and resistance R. Lanes without a solution are zero in the result; in the others all
    /// bits are set.
    /// </summary>
    /// <param name="source">E, V.</param>
    /// <param name="resistance">R, Ω; 0 or more.</param>
    /// <param name="pivot">dE/dV at the first node: 1 without a source resistance, towards 0 where the source can just
    /// deliver.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Vector512<double> Solve(Vector512<double> source, Vector512<double> resistance, out Vector512<double> pivot)
    {
        if (PlainCollocation.IsQuicker)
            return PlainSolve(source, resistance, out pivot);
        for (var node = 0; node < volts.Length; node++)
            volts[node] = Vector512.Max(source, Vector512.Create(1e-9));
        var solvable = Vector512<double>.AllBitsSet;
        Pass(source, resistance, withPower: false, ref solvable, out pivot);
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            if (!Pass(source, resistance, withPower: true, ref solvable, out pivot))
                break;
        }

        return solvable;
    }

    /// <summary>The sum of all draws at the voltages of the last solution, A.</summary>
    public Vector512<double> Current()
    {
        var sum = Vector512<double>.Zero;
        for (var node = 0; node < volts.Length; node++)
        {
            sum += (volts[node] * nodes[node].Siemens) + Vector512.Create(nodes[node].Amperes);
            if (hasWatts[node])
                sum += watts[node] / volts[node];
        }

        return sum;
    }

    // One Newton iteration; true while the voltages of a solvable lane still fall.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Pass(
        Vector512<double> source, Vector512<double> resistance, bool withPower, ref Vector512<double> solvable,
        out Vector512<double> pivot)
    {
        // The tangent of each draw: constant + slope·V.
        for (var node = 0; node < volts.Length; node++)
        {
            var constant = Vector512.Create(nodes[node].Amperes);
            var slope = Vector512.Create(nodes[node].Siemens);
            if (withPower && hasWatts[node])
            {
                var drawn = watts[node] / volts[node];
                constant += drawn + drawn;
                slope -= drawn / volts[node];
            }

            constants[node] = constant;
            slopes[node] = slope;
        }

        for (var node = volts.Length - 1; node > 0; node--)
        {
            var own = (slopes[node] * resistances[node]) + Vector512<double>.One;
            solvable &= Vector512.GreaterThan(own, Vector512<double>.Zero);
            constants[node] /= own;
            slopes[node] /= own;
            constants[parents[node]] += constants[node];
            slopes[parents[node]] += slopes[node];
        }

        pivot = (slopes[0] * resistance) + Vector512<double>.One;
        solvable &= Vector512.GreaterThan(pivot, Vector512<double>.Zero);

        var falls = Take(0, (source - (resistance * constants[0])) / pivot, ref solvable);
        for (var node = 1; node < volts.Length; node++)
        {
            var above = volts[parents[node]];
            falls |= Take(node, above - ((constants[node] + (slopes[node] * above)) * resistances[node]), ref solvable);
        }

        return (falls & solvable) != Vector512<double>.Zero;
    }

    // A lane that has no solution keeps its last voltages.
    private Vector512<double> Take(int node, Vector512<double> next, ref Vector512<double> solvable)
    {
        solvable &= Vector512.GreaterThan(next, Vector512<double>.Zero);
        var before = volts[node];
        volts[node] = Vector512.ConditionalSelect(solvable, next, before);
        return Vector512.GreaterThan(before - next, next * SmallestChange);
    }
}

/// <summary>A node of a <see cref="RadialPart"/>.</summary>
/// <param name="Parent">The node above it; -1 for the first.</param>
/// <param name="Resistance">Between it and the node above, what doesn't go with the temperature, Ω.</param>
/// <param name="Copper">Copper between it and the node above, at 20 °C, Ω.</param>
internal sealed record RadialNode(int Parent, double Resistance, double Copper = 0)
{
    /// <summary>P of devices, W; regulators add theirs when they are solved.</summary>
    public double Watts { get; set; }

    /// <summary>Ic, A.</summary>
    public double Amperes { get; set; }

    /// <summary>g, S.</summary>
    public double Siemens { get; set; }
}

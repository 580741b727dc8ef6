using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Wiring;

/// <content>The same solution, one lane after the other, for the browser; see <see cref="PlainCollocation"/>.</content>
internal sealed partial class RadialPart
{
    private const int Lanes = 8;

    /// <summary>As <see cref="Solve"/>.</summary>
    internal Vector512<double> PlainSolve(
        Vector512<double> sources, Vector512<double> sourceResistances, out Vector512<double> pivots)
    {
        pivots = default;
        Vector512<double> solvables = default;
        var pivot = PlainCollocation.Of(ref pivots);
        var source = PlainCollocation.Of(ref sources);
        var resistance = PlainCollocation.Of(ref sourceResistances);
        var solvable = MemoryMarshal.CreateSpan(ref Unsafe.As<Vector512<double>, long>(ref solvables), Lanes);
        var all = new PlainLanes(this);
        for (var lane = 0; lane < Lanes; lane++)
        {
            // Where only one state is asked for, all lanes hold it.
            if (lane > 0 && source[lane] == source[lane - 1] && resistance[lane] == resistance[lane - 1] && all.IsAsBefore(lane))
            {
                (solvable[lane], pivot[lane]) = (solvable[lane - 1], pivot[lane - 1]);
                all.CopyBefore(lane);
                continue;
            }

            solvable[lane] = all.Solve(lane, source[lane], resistance[lane], out pivot[lane]) ? -1 : 0;
        }

        return solvables;
    }

    /// <summary>The nodes' lanes as numbers in a row: those of a node stand together.</summary>
    private readonly ref struct PlainLanes(RadialPart part)
    {
        private readonly RadialNode[] nodes = part.nodes;
        private readonly int[] parents = part.parents;
        private readonly bool[] hasWatts = part.hasWatts;
        private readonly Span<double> resistances = MemoryMarshal.Cast<Vector512<double>, double>(part.resistances.AsSpan());
        private readonly Span<double> watts = MemoryMarshal.Cast<Vector512<double>, double>(part.watts.AsSpan());
        private readonly Span<double> volts = MemoryMarshal.Cast<Vector512<double>, double>(part.volts.AsSpan());
        private readonly Span<double> constants = MemoryMarshal.Cast<Vector512<double>, double>(part.constants.AsSpan());
        private readonly Span<double> slopes = MemoryMarshal.Cast<Vector512<double>, double>(part.slopes.AsSpan());

        public bool IsAsBefore(int lane)
        {
            for (var at = lane; at < volts.Length; at += Lanes)
            {
                if (resistances[at] != resistances[at - 1] || watts[at] != watts[at - 1])
                    return false;
            }

            return true;
        }

        public void CopyBefore(int lane)
        {
            for (var at = lane; at < volts.Length; at += Lanes)
                volts[at] = volts[at - 1];
        }

        public bool Solve(int lane, double source, double resistance, out double pivot)
        {
            for (var at = lane; at < volts.Length; at += Lanes)
                volts[at] = Math.Max(source, 1e-9);
            var solvable = true;
            Pass(lane, source, resistance, withPower: false, ref solvable, out pivot);
            for (var iteration = 0; iteration < MostIterations; iteration++)
            {
                if (!Pass(lane, source, resistance, withPower: true, ref solvable, out pivot))
                    break;
            }

            return solvable;
        }

        private bool Pass(int lane, double source, double resistance, bool withPower, ref bool solvable, out double pivot)
        {
            for (var node = 0; node < nodes.Length; node++)
            {
                var at = (node * Lanes) + lane;
                var (constant, slope) = (nodes[node].Amperes, nodes[node].Siemens);
                if (withPower && hasWatts[node])
                {
                    var drawn = watts[at] / volts[at];
                    constant += drawn + drawn;
                    slope -= drawn / volts[at];
                }

                (constants[at], slopes[at]) = (constant, slope);
            }

            for (var node = nodes.Length - 1; node > 0; node--)
            {
                var (at, above) = ((node * Lanes) + lane, (parents[node] * Lanes) + lane);
                var own = (slopes[at] * resistances[at]) + 1;
                solvable &= own > 0;
                constants[above] += constants[at] /= own;
                slopes[above] += slopes[at] /= own;
            }

            pivot = (slopes[lane] * resistance) + 1;
            solvable &= pivot > 0;
            var falls = Take(lane, (source - (resistance * constants[lane])) / pivot, ref solvable);
            for (var node = 1; node < nodes.Length; node++)
            {
                var at = (node * Lanes) + lane;
                var above = volts[(parents[node] * Lanes) + lane];
                falls |= Take(at, above - ((constants[at] + (slopes[at] * above)) * resistances[at]), ref solvable);
            }

            return falls && solvable;
        }

        private bool Take(int at, double next, ref bool solvable)
        {
            solvable &= next > 0;
            var before = volts[at];
            if (solvable)
                volts[at] = next;
            return before - next > next * SmallestChange;
        }
    }
}

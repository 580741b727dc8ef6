using System.Collections;
using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// The points at which a figure is asked for: two tables A and B of points drawn apart from each other, and for each set of
/// coordinates the table A with these taken from B (A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto and S. Tarantola,
/// "Variance based sensitivity analysis of model output. Design and estimator for the total sensitivity index", Computer Physics
/// Communications 181 (2010), pp. 259-270). One table follows the other; the tables of the sets are made while they are read.
/// </summary>
internal sealed class VarianceDesign : IReadOnlyList<double[]>
{
    private readonly double[][] first;
    private readonly double[][] second;
    private readonly IReadOnlyList<IReadOnlyList<int>> sets;

    /// <param name="dimensions">Coordinates of a point.</param>
    /// <param name="rows">Points of each table.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="sets">The sets of coordinates.</param>
    public VarianceDesign(int dimensions, int rows, long seed, IReadOnlyList<IReadOnlyList<int>> sets)
    {
        var drawn = new SeededSequence(seed);
        (first, second, this.sets) = (Table(), Table(), sets);

        double[][] Table()
        {
            var table = new double[rows][];
            for (var row = 0; row < rows; row++)
            {
                table[row] = new double[dimensions];
                for (var at = 0; at < dimensions; at++)
                    table[row][at] = drawn.Unit();
            }
            return table;
        }
    }

    /// <summary>All points of all tables.</summary>
    public int Count => first.Length * (sets.Count + 2);

    /// <summary>The points of A and B, which are drawn apart from each other.</summary>
    public IReadOnlyList<double[]> Apart => [.. first, .. second];

    /// <summary>A point, by its number over all tables: A, B, then one table for each set.</summary>
    /// <param name="index">The number, from 0.</param>
    public double[] this[int index]
    {
        get
        {
            var (table, row) = Math.DivRem(index, first.Length);
            if (table < 2)
                return table == 0 ? first[row] : second[row];
            var point = (double[])first[row].Clone();
            foreach (var at in sets[table - 2])
                point[at] = second[row][at];
            return point;
        }
    }

    /// <inheritdoc/>
    public IEnumerator<double[]> GetEnumerator()
    {
        for (var at = 0; at < Count; at++)
            yield return this[at];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

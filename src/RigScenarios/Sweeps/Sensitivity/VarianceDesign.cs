using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// The points at which a figure is asked for: two tables A and B of points drawn apart from each other, and for each set of
/// coordinates the table A with these taken from B (A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto and S. Tarantola,
/// "Variance based sensitivity analysis of model output. Design and estimator for the total sensitivity index", Computer Physics
/// Communications 181 (2010), pp. 259-270).
/// </summary>
internal sealed class VarianceDesign
{
    /// <param name="dimensions">Coordinates of a point.</param>
    /// <param name="rows">Points of each table.</param>
    /// <param name="seed">The seed.</param>
    public VarianceDesign(int dimensions, int rows, long seed)
    {
        var drawn = new SeededSequence(seed);
        A = Table();
        B = Table();

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

    /// <summary>The first table: a row is a point.</summary>
    public IReadOnlyList<double[]> A { get; }

    /// <summary>The second table.</summary>
    public IReadOnlyList<double[]> B { get; }

    /// <summary>The first table with some coordinates from the second.</summary>
    /// <param name="coordinates">Which.</param>
    public IReadOnlyList<double[]> Swapped(IReadOnlyList<int> coordinates) =>
    [
        .. A.Zip(B, (one, other) =>
        {
            var point = (double[])one.Clone();
            foreach (var at in coordinates)
                point[at] = other[at];
            return point;
        }),
    ];
}

namespace RigScenarios.Numerics;

/// <summary>
/// Points of which each coordinate has exactly one in each of as many slices as there are points: M. D. McKay, R. J. Beckman
/// and W. J. Conover, "A comparison of three methods for selecting values of input variables in the analysis of output from a
/// computer code", Technometrics 21 (1979). The place within a slice is by dice.
/// </summary>
internal sealed class LatinHypercube : IPointSource
{
    // The orders of the slices take other bits than the places within them.
    private const ulong Orders = 1UL << 48;

    private readonly long points;
    private readonly RandomPoints within;
    private readonly ShuffledPlaces[] orders;

    /// <param name="dimensions">How many coordinates a point has.</param>
    /// <param name="points">How many points there are, 1 or more.</param>
    /// <param name="seed">Which points.</param>
    public LatinHypercube(int dimensions, long points, long seed)
    {
        this.points = points;
        within = new RandomPoints(dimensions, seed);
        orders = [.. Enumerable.Range(0, dimensions).Select(dimension =>
            new ShuffledPlaces(points, unchecked((ulong)seed), Orders + (ulong)dimension))];
    }

    /// <inheritdoc/>
    public int Dimensions => orders.Length;

    /// <inheritdoc/>
    public void Fill(long number, Span<double> point)
    {
        within.Fill(number, point);
        for (var dimension = 0; dimension < orders.Length; dimension++)
        {
            var slice = orders[dimension].At(number);
            // Rounding must not push the last place of a slice into the next one.
            point[dimension] = Math.Min((slice + point[dimension]) / points, Math.BitDecrement((slice + 1.0) / points));
        }
    }
}

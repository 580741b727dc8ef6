namespace RigScenarios.Numerics;

/// <summary>Points as by dice.</summary>
/// <param name="dimensions">How many coordinates a point has.</param>
/// <param name="seed">Which points.</param>
internal sealed class RandomPoints(int dimensions, long seed) : IPointSource
{
    /// <inheritdoc/>
    public int Dimensions => dimensions;

    /// <inheritdoc/>
    public void Fill(long number, Span<double> point)
    {
        for (var first = 0; first < dimensions; first += 2)
        {
            var (one, other) = CountedBits.At(unchecked((ulong)seed), (ulong)number, (ulong)first);
            point[first] = CountedBits.Share(one);
            if (first + 1 < dimensions)
                point[first + 1] = CountedBits.Share(other);
        }
    }
}

using System.Numerics;

namespace RigScenarios.Numerics;

/// <summary>
/// The sequence of I. M. Sobol (1967), which fills the unit cube evenly from its first points on, in the order of I. A.
/// Antonov and V. M. Saleev (1979); any point by its number alone. The numbers it is made of are those of S. Joe
/// and F. Y. Kuo, "Constructing Sobol sequences with better two-dimensional projections", SIAM Journal on Scientific Computing
/// 30 (2008), pp. 2635-2654.
/// </summary>
/// <remarks>
/// With a seed it is scrambled as J. Matoušek proposes, "On the L2-discrepancy for anchored boxes", Journal of Complexity 14
/// (1998), pp. 527-556: the bits of each coordinate are mixed from the first to the last by a triangular matrix, and a point of
/// chance is added bit by bit. The points stay as even as before, none lies in the corner of the cube, and each by itself is as
/// likely to be anywhere as anywhere else.
/// </remarks>
public sealed class SobolSequence : IPointSource
{
    /// <summary>The greatest number of coordinates.</summary>
    public static int MostDimensions => SobolDirections.All.Count + 1;

    // As many as a double holds, besides half a step.
    private const int Bits = 52;

    private const ulong Matrices = 1UL << 49;
    private const ulong Shifts = 1UL << 50;

    // For each dimension one number for each bit of a point's number.
    private readonly ulong[][] directions;
    private readonly ulong[] shifts;

    /// <param name="dimensions">How many coordinates a point has, 0 to <see cref="MostDimensions"/>.</param>
    /// <param name="seed">Which scrambling; null for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too many dimensions.</exception>
    public SobolSequence(int dimensions, long? seed)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, MostDimensions);
        directions = [.. Enumerable.Range(0, dimensions).Select(Directions)];
        shifts = new ulong[dimensions];
        if (seed is not { } key)
            return;
        for (var dimension = 0; dimension < dimensions; dimension++)
        {
            Mix(directions[dimension], unchecked((ulong)key), Matrices + (ulong)dimension);
            shifts[dimension] = CountedBits.At(unchecked((ulong)key), (ulong)dimension, Shifts).First >> (64 - Bits);
        }
    }

    /// <summary>How many coordinates a point has.</summary>
    public int Dimensions => directions.Length;

    /// <summary>Writes the point of a number: each coordinate above 0 and below 1.</summary>
    /// <param name="number">The number, 0 or more.</param>
    /// <param name="point">Where the coordinates go.</param>
    public void Fill(long number, Span<double> point)
    {
        for (var dimension = 0; dimension < directions.Length; dimension++)
            point[dimension] = (Coordinate(number, dimension) + 0.5) / (1UL << Bits);
    }

    /// <summary>A coordinate of a point, without the half step that keeps it within: the sequence as it is published.</summary>
    /// <param name="number">The number of the point, 0 or more.</param>
    /// <param name="dimension">Which coordinate, from 0.</param>
    public double Exact(long number, int dimension) => (double)Coordinate(number, dimension) / (1UL << Bits);

    private ulong Coordinate(long number, int dimension)
    {
        var sum = shifts[dimension];
        var own = directions[dimension];
        for (var gray = (ulong)(number ^ (number >> 1)); gray != 0; gray &= gray - 1)
            sum ^= own[BitOperations.TrailingZeroCount(gray)];
        return sum;
    }

    private static ulong[] Directions(int dimension)
    {
        var own = new ulong[Bits];
        if (dimension == 0)
        {
            for (var bit = 0; bit < Bits; bit++)
                own[bit] = 1UL << (Bits - 1 - bit);
            return own;
        }
        var (degree, coefficients, first) = SobolDirections.All[dimension - 1];
        for (var bit = 0; bit < Bits; bit++)
        {
            if (bit < degree)
            {
                own[bit] = first[bit] << (Bits - 1 - bit);
                continue;
            }
            // The recurrence of the 2008 paper, section 1, on numbers that already stand at their place behind the point.
            own[bit] = own[bit - degree] ^ (own[bit - degree] >> degree);
            for (var before = 1; before < degree; before++)
            {
                if (((coefficients >> (degree - 1 - before)) & 1) != 0)
                    own[bit] ^= own[bit - before];
            }
        }
        return own;
    }

    /// <summary>Each bit, from the first to the last, with a choice by chance of those before it.</summary>
    private static void Mix(ulong[] own, ulong key, ulong stream)
    {
        var rows = new ulong[Bits];
        for (var bit = 0; bit < Bits; bit++)
        {
            var itself = 1UL << (Bits - 1 - bit);
            var before = ((1UL << Bits) - 1) & ~((itself << 1) - 1);
            rows[bit] = itself | (CountedBits.At(key, (ulong)bit, stream).First & before);
        }
        for (var number = 0; number < Bits; number++)
        {
            var mixed = 0UL;
            for (var bit = 0; bit < Bits; bit++)
                mixed = (mixed << 1) | ((ulong)BitOperations.PopCount(rows[bit] & own[number]) & 1);
            own[number] = mixed;
        }
    }
}

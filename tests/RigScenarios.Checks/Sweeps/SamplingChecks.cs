using RigScenarios.Numerics;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Checks.Sweeps;

/// <summary>Points of samples against published ones.</summary>
public class SamplingChecks
{
    private const string Authors = "S. Joe and F. Y. Kuo, program sobol.cc with their file new-joe-kuo-6.21201 (2010)";

    [Theory]
    [InlineData(0, 0.0, 0.0, 0.0)]
    [InlineData(1, 0.5, 0.5, 0.5)]
    [InlineData(2, 0.75, 0.25, 0.25)]
    [InlineData(3, 0.25, 0.75, 0.75)]
    [InlineData(4, 0.375, 0.375, 0.625)]
    [InlineData(5, 0.875, 0.875, 0.125)]
    [InlineData(6, 0.625, 0.125, 0.875)]
    [InlineData(7, 0.125, 0.625, 0.375)]
    [InlineData(8, 0.1875, 0.3125, 0.9375)]
    [InlineData(9, 0.6875, 0.8125, 0.4375)]
    [Source(SourceKind.IndependentProgram, Authors + ": its ten points in three dimensions, which the authors print as example")]
    public void The_first_points_of_the_Sobol_sequence(long number, params double[] point) =>
        Assert.Equal(point, Point(number, 3));

    [Theory]
    [InlineData(2, 0.75, 0.25, 0.25, 0.25, 0.75, 0.75, 0.25, 0.75, 0.75, 0.75, 0.75, 0.75, 0.25, 0.25, 0.75, 0.25, 0.75, 0.25,
        0.75, 0.25, 0.25, 0.75, 0.25, 0.25, 0.25, 0.75, 0.25)]
    [InlineData(4, 0.375, 0.375, 0.625, 0.875, 0.375, 0.125, 0.375, 0.875, 0.875, 0.625, 0.875, 0.375, 0.375, 0.625, 0.375, 0.875,
        0.375, 0.875, 0.875, 0.125, 0.125, 0.125, 0.375, 0.875, 0.875, 0.875, 0.375)]
    [InlineData(122, 0.8828125, 0.2890625, 0.6796875, 0.7578125, 0.6015625, 0.9609375, 0.8671875, 0.4453125, 0.0390625, 0.6640625,
        0.9921875, 0.4609375, 0.0078125, 0.3828125, 0.4765625, 0.1484375, 0.0859375, 0.3359375, 0.8046875, 0.4296875, 0.1640625,
        0.8671875, 0.5390625, 0.7109375, 0.3671875, 0.1015625, 0.4140625)]
    [Source(SourceKind.IndependentProgram, Authors + ", 123 points in 27 dimensions, as the tests of E. Zander's sglib (TU "
        + "Braunschweig, 2016) keep some of them; read")]
    public void Points_of_the_Sobol_sequence_in_27_dimensions(long number, params double[] point) =>
        Assert.Equal(point, Point(number, 27));

    /// <summary>Each half of each of the first d coordinates meets each half of each other one once: of the 2^d boxes that this
    /// makes, the first 2^d points have one each. So it is where the first bits of the direction numbers are
    /// independent.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(27)]
    [InlineData(52)]
    [Source(SourceKind.Paper, "I. M. Sobol, Uniformly distributed sequences with an additional uniform property, USSR "
        + "Computational Mathematics and Mathematical Physics 16 (1976), pp. 236-242: property A; that these direction numbers "
        + "have it up to 1111 dimensions say S. Joe and F. Y. Kuo beside their file; second-hand")]
    public void The_direction_numbers_have_property_A(int dimensions)
    {
        var sequence = new SobolSequence(dimensions, null);
        // Of a number whose Gray code has one bit, the point is a direction number.
        var rows = Enumerable.Range(0, dimensions).Select(dimension => Enumerable.Range(0, dimensions).Aggregate(0UL,
            (bits, bit) => sequence.Exact((2L << bit) - 1, dimension) >= 0.5 ? bits | (1UL << bit) : bits)).ToList();

        Assert.Equal(dimensions, Rank(rows));
    }

    // The words stand there as hexadecimal numbers; the first two make the first number of a point, the others the second.
    [Theory]
    [InlineData(0, 0xe169c58d6627e8d5UL, 0x9b00dbd8bc57ac4cUL)]
    [Source(SourceKind.IndependentProgram, "J. K. Salmon, M. A. Moraes, R. O. Dror and D. E. Shaw, Parallel random numbers: as "
        + "easy as 1, 2, 3 (SC11, 2011), the authors' program Random123, file kat_vectors: philox4x32, 10 rounds, counter and "
        + "key zero")]
    public void Random_points_are_those_of_the_published_bits(long seed, ulong first, ulong second)
    {
        var plan = new SweepPlan
        {
            Uncertain = [new("a", Spread.Uniform(0, 1)), new("b", Spread.Uniform(0, 1))], Method = SamplingMethod.Random,
            Seed = seed,
        };

        Assert.Equal([Share(first), Share(second)], plan.Unit(0));

        static double Share(ulong bits) => ((bits >> 12) + 0.5) / (1L << 52);
    }

    private static double[] Point(long number, int dimensions)
    {
        var sequence = new SobolSequence(dimensions, null);
        return [.. Enumerable.Range(0, dimensions).Select(dimension => sequence.Exact(number, dimension))];
    }

    /// <summary>How many rows of bits are independent, added without carry.</summary>
    private static int Rank(List<ulong> rows)
    {
        var rank = 0;
        for (var bit = 0; bit < 64; bit++)
        {
            if (rows.FindIndex(rank, row => (row >> bit & 1) != 0) is var pivot and >= 0)
            {
                (rows[rank], rows[pivot]) = (rows[pivot], rows[rank]);
                for (var row = rank + 1; row < rows.Count; row++)
                    rows[row] ^= (rows[row] >> bit & 1) != 0 ? rows[rank] : 0;
                rank++;
            }
        }
        return rank;
    }
}

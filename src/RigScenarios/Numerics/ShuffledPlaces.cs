namespace RigScenarios.Numerics;

/// <summary>
/// An order of chance of so many places, where each place is found by its number alone: nothing is kept, however many there
/// are. A Feistel network over the next power of four, walked on until it falls within (J. Black and P. Rogaway, "Ciphers with
/// arbitrary finite domains", CT-RSA 2002: cycle walking, and the network).
/// </summary>
/// <param name="count">How many places, 1 to 2^62.</param>
/// <param name="key">Which sequence of bits the order is made of.</param>
/// <param name="stream">Which part of it.</param>
internal sealed class ShuffledPlaces(long count, ulong key, ulong stream)
{
    // Four rounds of a good function can't be told from chance (M. Luby and C. Rackoff, 1988); small halves want more.
    private const int Rounds = 8;

    private readonly int halfBits = Math.Max(1, (65 - System.Numerics.BitOperations.LeadingZeroCount((ulong)(count - 1))) / 2);

    /// <summary>The place of a number.</summary>
    /// <param name="number">The number, 0 to below the count.</param>
    public long At(long number)
    {
        var place = (ulong)number;
        do
            place = Mixed(place);
        while (place >= (ulong)count);
        return (long)place;
    }

    private ulong Mixed(ulong value)
    {
        var mask = (1UL << halfBits) - 1;
        var (left, right) = (value >> halfBits, value & mask);
        for (var round = 0; round < Rounds; round++)
        {
            var bits = CountedBits.At(key, right, stream + ((ulong)round << 32)).First;
            (left, right) = (right, (left ^ bits) & mask);
        }
        return (left << halfBits) | right;
    }
}

namespace RigScenarios.Numerics;

/// <summary>
/// Bits that look drawn, each by its place alone, so that any of a million draws can be had without those before it:
/// Philox4x32-10 of J. K. Salmon, M. A. Moraes, R. O. Dror and D. E. Shaw, "Parallel random numbers: as easy as 1, 2, 3",
/// SC11, 2011.
/// </summary>
internal static class CountedBits
{
    private const int Rounds = 10;

    // Half the spacing of the numbers: none is 0 or 1, and they lie evenly around 0.5.
    private const double Spacing = 1.0 / (1L << 52);

    /// <summary>128 bits.</summary>
    /// <param name="key">Which sequence.</param>
    /// <param name="place">The place in the sequence, its low half.</param>
    /// <param name="stream">The place in the sequence, its high half: a sequence beside.</param>
    /// <returns>The first 64 bits and the second.</returns>
    public static (ulong First, ulong Second) At(ulong key, ulong place, ulong stream)
    {
        unchecked
        {
            var (c0, c1, c2, c3) = ((uint)place, (uint)(place >> 32), (uint)stream, (uint)(stream >> 32));
            var (k0, k1) = ((uint)key, (uint)(key >> 32));
            for (var round = 0; round < Rounds; round++)
            {
                var first = 0xD2511F53UL * c0;
                var second = 0xCD9E8D57UL * c2;
                (c0, c1, c2, c3) = ((uint)(second >> 32) ^ c1 ^ k0, (uint)second, (uint)(first >> 32) ^ c3 ^ k1, (uint)first);
                k0 += 0x9E3779B9;
                k1 += 0xBB67AE85;
            }
            return (c0 | ((ulong)c1 << 32), c2 | ((ulong)c3 << 32));
        }
    }

    /// <summary>A number above 0 and below 1, from 64 bits.</summary>
    public static double Share(ulong bits) => ((bits >> 12) + 0.5) * Spacing;
}

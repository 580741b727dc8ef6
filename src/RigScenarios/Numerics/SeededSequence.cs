namespace RigScenarios.Numerics;

/// <summary>
/// Numbers that look drawn and are the same for the same seed on every machine: SplitMix64 of G. Steele, D. Lea and C. Flood,
/// "Fast splittable pseudorandom number generators", OOPSLA 2014.
/// </summary>
/// <param name="seed">Where it begins.</param>
internal sealed class SeededSequence(long seed)
{
    private ulong state = unchecked((ulong)seed);

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }

    /// <summary>A number between 0 and 1, never one of the two: the middle of one of 2^52 stretches of equal length.</summary>
    public double Unit() => ((Next() >> 12) + 0.5) / (1L << 52);

    /// <summary>A whole number from 0 to below a bound.</summary>
    /// <param name="bound">The bound; 1 or more. For bounds of some thousands no number is noticeably more frequent.</param>
    public int Below(int bound) => (int)(Next() % (ulong)bound);

    /// <summary>The items in an order of chance (the shuffle of R. Fisher and F. Yates).</summary>
    public IReadOnlyList<T> Shuffled<T>(IEnumerable<T> items)
    {
        var all = items.ToList();
        for (var last = all.Count - 1; last > 0; last--)
        {
            var chosen = Below(last + 1);
            (all[last], all[chosen]) = (all[chosen], all[last]);
        }
        return all;
    }
}

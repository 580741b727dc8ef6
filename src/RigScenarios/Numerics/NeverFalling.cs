namespace RigScenarios.Numerics;

/// <summary>
/// Isotonic regression with equal weights: the never falling values nearest to given ones, by pooling neighbours that fall.
/// </summary>
/// <remarks>Pooled adjacent violators: M. Ayer et al., Ann. Math. Statist. 26 (1955) 641-647, from memory.</remarks>
internal static class NeverFalling
{
    /// <summary>The never falling values with the least sum of squared changes.</summary>
    /// <param name="values">The values.</param>
    /// <returns>As many values, and how many of them were changed.</returns>
    public static (double[] Values, int Changed) Of(ReadOnlySpan<double> values)
    {
        var pools = new List<(double Sum, int Count)>();
        foreach (var value in values)
        {
            var pool = (Sum: value, Count: 1);
            while (pools.Count > 0 && pools[^1].Sum / pools[^1].Count > pool.Sum / pool.Count)
            {
                pool = (pool.Sum + pools[^1].Sum, pool.Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }
            pools.Add(pool);
        }
        var result = new List<double>(values.Length);
        foreach (var (sum, count) in pools)
            result.AddRange(Enumerable.Repeat(count == 1 ? sum : sum / count, count));
        return ([.. result], pools.Sum(pool => pool.Count == 1 ? 0 : pool.Count));
    }
}

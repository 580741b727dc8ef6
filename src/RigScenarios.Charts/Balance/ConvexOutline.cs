namespace RigScenarios.Charts.Balance;

/// <summary>The outline of points in a plane: the smallest convex polygon around them (monotone chain, A. M. Andrew, 1979, from
/// memory).</summary>
internal static class ConvexOutline
{
    /// <summary>The corners, counter-clockwise with y upwards; as many points as differ where they lie on a line.</summary>
    public static IReadOnlyList<(double X, double Y)> Of(IEnumerable<(double X, double Y)> points)
    {
        var sorted = points.Distinct().OrderBy(point => point.X).ThenBy(point => point.Y).ToList();
        if (sorted.Count < 3)
            return sorted;
        var lower = Chain(sorted);
        sorted.Reverse();
        return [.. lower.SkipLast(1), .. Chain(sorted).SkipLast(1)];
    }

    /// <summary>Twice the area is the sum of the cross products; half of it is given.</summary>
    public static double Area(IReadOnlyList<(double X, double Y)> outline)
    {
        double sum = 0;
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
            sum += (a.X * b.Y) - (b.X * a.Y);
        }
        return Math.Abs(sum) / 2;
    }

    /// <summary>Whether a point lies in a convex outline, its edge included, whichever way round it runs.</summary>
    [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.AggressiveOptimization)]
    public static bool Holds(IReadOnlyList<(double X, double Y)> outline, (double X, double Y) point)
    {
        bool left = false, right = false;
        for (var i = 0; i < outline.Count; i++)
        {
            var turn = Turn(outline[i], outline[(i + 1) % outline.Count], point);
            left |= turn > 0;
            right |= turn < 0;
        }
        return outline.Count > 2 && !(left && right);
    }

    private static List<(double X, double Y)> Chain(List<(double X, double Y)> sorted)
    {
        // A corner sharper than this, in square metres, is the rounding of a turned box and no corner.
        const double flat = 1e-12;
        var chain = new List<(double X, double Y)>();
        foreach (var point in sorted)
        {
            while (chain.Count > 1 && Turn(chain[^2], chain[^1], point) <= flat)
                chain.RemoveAt(chain.Count - 1);
            chain.Add(point);
        }
        return chain;
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}

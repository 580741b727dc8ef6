namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Values below which a share of a sample lies.</summary>
internal static class Quantiles
{
    /// <summary>The value at a share of a sample in order, interpolated between its neighbours (Hyndman and Fan 1996, definition
    /// 7, see <see cref="QuantileBands"/>).</summary>
    /// <param name="sorted">The sample, rising; one or more.</param>
    /// <param name="share">The share that lies below, 0 to 1.</param>
    public static double OfSorted(IReadOnlyList<double> sorted, double share)
    {
        var place = share * (sorted.Count - 1);
        var below = Math.Clamp((int)Math.Floor(place), 0, sorted.Count - 1);
        var above = Math.Min(below + 1, sorted.Count - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }
}

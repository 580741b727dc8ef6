namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>The spread of a figure at one place of an axis.</summary>
/// <param name="At">The value on the axis, as the file would say it; empty where there is no axis.</param>
/// <param name="Values">The figure at each of the shares, in its unit; empty where it is known in no run.</param>
/// <param name="Known">In how many runs it is known.</param>
/// <param name="Unknown">In how many it is not: they are in no quantile.</param>
public sealed record BandAt(string At, IReadOnlyList<double> Values, int Known, int Unknown)
{
    /// <summary>The spread of a sample.</summary>
    /// <param name="at">The value on the axis; empty where there is none.</param>
    /// <param name="sample">The figure in each run; not a number where it is not known.</param>
    /// <param name="shares">The shares of the runs that lie below, each from 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside of 0 to 1.</exception>
    public static BandAt Of(string at, IReadOnlyList<double> sample, IReadOnlyList<double> shares)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(shares);
        if (shares.FirstOrDefault(share => share is not (>= 0 and <= 1), 0) is not 0 and var wrong)
            throw new ArgumentOutOfRangeException(nameof(shares), wrong, "accepted: 0 to 1.");
        double[] known = [.. sample.Where(value => !double.IsNaN(value)).Order()];
        return new(at, known.Length == 0 ? [] : [.. shares.Select(share => Quantiles.OfSorted(known, share))], known.Length,
            sample.Count - known.Length);
    }
}

/// <summary>
/// Quantiles of a figure, along an axis or alone: below the value at the share 0.1 lie a tenth of the runs, "9 of 10 days have
/// more".
/// </summary>
/// <remarks>Between two runs in order the value is interpolated (R. J. Hyndman and Y. Fan, "Sample quantiles in statistical
/// packages", The American Statistician 50 (1996), pp. 361-365, definition 7).</remarks>
/// <param name="Figure">What the figure is, in words.</param>
/// <param name="Unit">Its unit; empty for a bare number.</param>
/// <param name="Path">The field along the axis; empty where there is none.</param>
/// <param name="Shares">The shares of the runs that lie below, rising, each from 0 to 1.</param>
/// <param name="Places">The places of the axis in its order; one place where there is no axis.</param>
public sealed record QuantileBands(
    string Figure, string Unit, string Path, IReadOnlyList<double> Shares, IReadOnlyList<BandAt> Places)
{
    /// <summary>The value at one of the shares, at the first place; null where the share is none of them, or nothing is
    /// known.</summary>
    /// <param name="share">The share of the runs that lie below.</param>
    public double? At(double share)
    {
        var index = Shares.ToList().IndexOf(share);
        return index < 0 || Places[0].Values.Count == 0 ? null : Places[0].Values[index];
    }
}

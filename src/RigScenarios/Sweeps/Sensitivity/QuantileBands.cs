namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>The spread of a figure at one place of an axis.</summary>
/// <param name="At">The value on the axis, as the file would say it; empty where there is no axis.</param>
/// <param name="Values">The figure at each of the shares, in its unit; empty where it is known in no run.</param>
/// <param name="Known">In how many runs it is known.</param>
/// <param name="Unknown">In how many it is not: they are in no quantile.</param>
public sealed record BandAt(string At, IReadOnlyList<double> Values, int Known, int Unknown);

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
    string Figure, string Unit, string Path, IReadOnlyList<double> Shares, IReadOnlyList<BandAt> Places);

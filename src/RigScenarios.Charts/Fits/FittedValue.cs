namespace RigScenarios.Charts.Fits;

/// <summary>
/// What a fit knows of one thing, before and after: a share of what label or data sheet say, normal in its logarithm.
/// </summary>
/// <param name="Name">What it is ("capacity").</param>
/// <param name="PriorLog">Natural logarithm of the share that was expected before.</param>
/// <param name="PriorDeviation">Its standard deviation before, above 0.</param>
/// <param name="Log">Natural logarithm of the share that was found.</param>
/// <param name="Deviation">Its standard deviation after, above 0.</param>
public sealed record FittedValue(string Name, double PriorLog, double PriorDeviation, double Log, double Deviation)
{
    /// <summary>Of what it is a share ("of the label").</summary>
    public string Of { get; init; } = "of the label";

    /// <summary>Lower end of the 95 % interval as a share; null takes it from the standard deviation.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of the 95 % interval as a share; null takes it from the standard deviation.</summary>
    public double? High { get; init; }

    // The 97.5 % point of the standard normal distribution.
    internal const double TwoSided95 = 1.959964;

    /// <summary>The 95 % interval before, in per cent.</summary>
    internal (double Low, double High) PriorPercent =>
        (100 * Math.Exp(PriorLog - TwoSided95 * PriorDeviation), 100 * Math.Exp(PriorLog + TwoSided95 * PriorDeviation));

    /// <summary>The 95 % interval after, in per cent.</summary>
    internal (double Low, double High) Percent =>
        (100 * (Low ?? Math.Exp(Log - TwoSided95 * Deviation)), 100 * (High ?? Math.Exp(Log + TwoSided95 * Deviation)));
}

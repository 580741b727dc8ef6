namespace RigScenarios.Fits;

/// <summary>How a fit is made.</summary>
public sealed record FitOptions
{
    /// <summary>Everything that the fit can do.</summary>
    public static FitOptions Default { get; } = new();

    /// <summary>Whether each interval is checked by refitting at its ends; that takes most of the time.</summary>
    public bool ChecksIntervals { get; init; } = true;

    /// <summary>Whether notes that fit to nothing else are left out.</summary>
    public bool LeavesOutOutliers { get; init; } = true;
}

namespace RigScenarios.Charts.Sweeps;

/// <summary>A field that a sweep varied, as a picture names it.</summary>
/// <param name="Path">Its path in the file.</param>
/// <param name="Name">Its name in words; empty makes one from the path.</param>
public sealed record SweptField(string Path, string Name);

/// <summary>What a picture of all scenarios of a sweep shows, and in which words.</summary>
public sealed record SweepLinesOptions
{
    /// <summary>What the chart answers.</summary>
    public string Title { get; init; } = "Which scenarios do not last?";

    /// <summary>The fields from the top; null for all that were varied. What matters most is best seen just above the
    /// result.</summary>
    public IReadOnlyList<SweptField>? Fields { get; init; }

    /// <summary>The axis of the result; null makes one from its column.</summary>
    public ChartAxis? ResultAxis { get; init; }

    /// <summary>What the scenarios are called in which it holds, and those in which it does not; null makes that from the
    /// column.</summary>
    public (string Yes, string No)? GroupNames { get; init; }

    /// <summary>Cautions that belong to the result.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
}

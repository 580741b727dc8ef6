using RigScenarios.Limits;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// Which uncertainty matters: how likely the day lasts with all that nobody knows exactly, what of it moves the answer, and what
/// to measure first. Words for it are made by <see cref="MattersSentences"/>.
/// </summary>
public sealed record SensitivityAnswer
{
    /// <summary>The figure that is looked at, in words: "reserve after wrap".</summary>
    public required string Figure { get; init; }

    /// <summary>Its unit; empty for a bare number.</summary>
    public required string Unit { get; init; }

    /// <summary>One thing at a time.</summary>
    public required Tornado Tornado { get; init; }

    /// <summary>The shares of the variance.</summary>
    public required SobolIndices Indices { get; init; }

    /// <summary>The spread of the figure, without an axis.</summary>
    public required QuantileBands Bands { get; init; }

    /// <summary>The figure in each run of the sample that bands and chances are taken from, in the order of the runs; not a
    /// number where it is not known.</summary>
    public required IReadOnlyList<double> Sample { get; init; }

    /// <summary>How likely every essential device runs to the end of the days.</summary>
    public required Chance Lasts { get; init; }

    /// <summary>How the whole answer comes out, by its verdict: in how many runs each; empty where the whole was not
    /// asked.</summary>
    public required IReadOnlyDictionary<Verdict, int> Whole { get; init; }

    /// <summary>What to measure, that which brings most first.</summary>
    public required IReadOnlyList<RemovalGain> Removals { get; init; }

    /// <summary>How many days were run in all.</summary>
    public required long Runs { get; init; }

    /// <summary>The seed of what was drawn.</summary>
    public required long Seed { get; init; }
}

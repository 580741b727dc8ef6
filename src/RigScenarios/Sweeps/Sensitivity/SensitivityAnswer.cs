using RigScenarios.Answers;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// Which uncertainty matters: how likely the days last with all that nobody knows exactly, what of it moves the answer, and what
/// to measure first. Words for it are made by <see cref="MattersSentences"/>.
/// </summary>
public sealed record SensitivityAnswer
{
    /// <summary>What was asked, with what is uncertain filled in.</summary>
    public required SensitivityQuestion Question { get; init; }

    /// <summary>The answer with every figure as it stands in the scenario.</summary>
    public required RigAnswer AsGiven { get; init; }

    /// <summary>What was taken as uncertain.</summary>
    public required UsualUncertainty Uncertain { get; init; }

    /// <summary>The figure that is looked at.</summary>
    public required SweepColumn Figure { get; init; }

    /// <summary>One thing at a time.</summary>
    public required Tornado Tornado { get; init; }

    /// <summary>The shares of the variance.</summary>
    public required SobolIndices Indices { get; init; }

    /// <summary>The spread of the figure, without an axis.</summary>
    public required QuantileBands Bands { get; init; }

    /// <summary>The spread of the moment at which the run ends, in hours from midnight of the first day; null where several days
    /// each begin with charged batteries, or the figure is none of the days.</summary>
    public required QuantileBands? EndsAt { get; init; }

    /// <summary>The spread of the figure along an axis; null where none was asked for.</summary>
    public required QuantileBands? Along { get; init; }

    /// <summary>The figure in each run of the sample that bands and chances are taken from, in the order of the runs; not a
    /// number where it is not known.</summary>
    public required IReadOnlyList<double> Sample { get; init; }

    /// <summary>How likely every essential device runs to the end of the days; null where the figure is none of the
    /// days.</summary>
    public required Chance? Lasts { get; init; }

    /// <summary>How the whole answer comes out; null where it was not asked.</summary>
    public required WholeChance? Whole { get; init; }

    /// <summary>What to measure, that which takes most of the variance first.</summary>
    public required IReadOnlyList<RemovalGain> Removals { get; init; }

    /// <summary>The way that the days were computed, and why.</summary>
    public required SweepWay Way { get; init; }

    /// <summary>How many scenarios were run in all.</summary>
    public required long Runs { get; init; }
}

using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What is asked: how sure is a figure of one build on its days, and which uncertainty matters for it.</summary>
/// <param name="Scenario">The scenario, read or checked.</param>
/// <param name="Build">The build's short name.</param>
/// <param name="Days">The days' short names, one after the other; all of the scenario if empty.</param>
public sealed record SensitivityQuestion(Scenario Scenario, string Build, IReadOnlyList<string> Days)
{
    /// <summary>The figure that is asked for where nobody names one: the reserve after the last block.</summary>
    public const string UsualFigure = "reserve_h";

    /// <summary>The figure, by the name of a column of numbers (<see cref="Evaluation.SweepColumns"/>).</summary>
    public string Figure { get; init; } = UsualFigure;

    /// <summary>What is uncertain; null for what is usual where nobody says (<see cref="UsualUncertainty"/>).</summary>
    public UsualUncertainty? Uncertain { get; init; }

    /// <summary>How finely; the seed of everything that is drawn is in it.</summary>
    public VarianceOptions Options { get; init; } = new() { Rows = 512 };

    /// <summary>The shares between which each figure goes alone: 0 &lt; low &lt; high &lt; 1.</summary>
    public (double Low, double High) Alone { get; init; } = (0.1, 0.9);

    /// <summary>The shares of the bands, rising, each from 0 to 1.</summary>
    public IReadOnlyList<double> Shares { get; init; } = [0.05, 0.1, 0.2, 0.25, 0.5, 0.75, 0.8, 0.9, 0.95];

    /// <summary>How many times the whole answer is asked, 0 or more; 0 leaves it out.</summary>
    public int WholeSamples { get; init; } = 256;

    /// <summary>A field that takes several values, for bands along it; null for none.</summary>
    public SweepAxis? Along { get; init; }

    /// <summary>How many samples each value of <see cref="Along"/> gets, 1 or more.</summary>
    public int SamplesAlong { get; init; } = 256;

    /// <summary>The day on which it is asked; null where nobody says.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>Refuses counts and shares with which nothing can be told.</summary>
    /// <exception cref="ArgumentException">One is not accepted.</exception>
    internal static void Check(SensitivityQuestion question)
    {
        if (question.WholeSamples < 0)
            throw Refused(nameof(WholeSamples), question.WholeSamples, "0 or more; 0 leaves the whole answer out");
        if (question.Along is not null && question.SamplesAlong < 1)
            throw Refused(nameof(SamplesAlong), question.SamplesAlong, "1 or more");
        var (low, high) = question.Alone;
        if (!(low > 0 && low < high && high < 1))
            throw Refused(nameof(Alone), question.Alone, "two rising shares between 0 and 1, such as (0.1, 0.9)");
        var shares = question.Shares;
        if (shares.Count == 0 || !shares.All(share => share is >= 0 and <= 1) || shares.Zip(shares.Skip(1)).Any(pair =>
            pair.First >= pair.Second))
            throw Refused(nameof(Shares), string.Join(", ", shares), "rising shares from 0 to 1, such as 0.1, 0.5, 0.9");

        ArgumentException Refused(string name, object found, string accepted) =>
            new(FormattableString.Invariant($"{name} is {found}; accepted: {accepted}."), nameof(question));
    }
}
